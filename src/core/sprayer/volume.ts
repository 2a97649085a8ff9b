import { given, type Answer, type Given } from '../working/answer.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { PassPattern, Side } from './types.ts';

/** Application volume: total flow over the land that a pass serves, L/ha. B is that width; v in km/h. */
export const APPLICATION_VOLUME = formula(
  'application-volume', 'V', 'L/ha', { Q: 'L/min', v: 'km/h', B: 'm' }, '600 * Q / (v * B)', (v) => (600 * v.Q) / (v.v * v.B),
  { sources: ['pat-gardonne'], range: { Q: NOT_NEGATIVE, v: POSITIVE, B: POSITIVE } }
);
/** Flow that a wanted volume needs. */
export const FLOW_FOR_VOLUME = formula(
  'flow-for-volume', 'Q', 'L/min', { V: 'L/ha', v: 'km/h', B: 'm' }, 'V * v * B / 600', (v) => (v.V * v.v * v.B) / 600,
  { sources: ['pat-gardonne'], certainty: 'derived', range: { V: NOT_NEGATIVE, v: POSITIVE, B: POSITIVE } }
);
/** Speed at which a flow gives a wanted volume. */
export const SPEED_FOR_VOLUME = formula(
  'speed-for-volume', 'v', 'km/h', { Q: 'L/min', V: 'L/ha', B: 'm' }, '600 * Q / (V * B)', (v) => (600 * v.Q) / (v.V * v.B),
  { sources: ['pat-gardonne'], certainty: 'derived', range: { Q: POSITIVE, V: POSITIVE, B: POSITIVE } }
);
/** Land width that one pass serves: complete rows per pass (faces sprayed ÷ 2) times row spacing. */
export const WIDTH_SERVED = formula('width-served', 'B', 'm', { K: '1', R: 'm' }, 'K * R', (v) => v.K * v.R, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { K: POSITIVE, R: POSITIVE }
});
/** Work rate while spraying, ha/h. */
export const WORK_RATE = formula('work-rate', 'C', 'ha/h', { v: 'km/h', B: 'm' }, 'v * B / 10', (v) => (v.v * v.B) / 10, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { v: POSITIVE, B: POSITIVE }
});
/** Volume per 100 m of row served. */
export const PER_100_M = formula('volume-per-100-m', 'V100', 'L/100m', { V: 'L/ha', R: 'm' }, 'V * R / 100', (v) => (v.V * v.R) / 100, {
  sources: ['furness-1998'],
  certainty: 'derived',
  range: { V: NOT_NEGATIVE, R: POSITIVE }
});
/** Seconds for 100 m. */
export const PACE = formula('pace', 't', 's/100m', { v: 'km/h' }, '360 / v', (v) => 360 / v.v, { sources: ['drome-2021'], range: { v: POSITIVE } });

export interface Pass {
  /** Sides of the machine that spray. */
  readonly sides: readonly Side[];
  /** Land width served per pass, m. */
  readonly width: Answer;
  /** Faces of each row that are treated in the end. */
  readonly faces: number;
  /** Half rows that the air of one pass must fill, against the two of an alley. */
  readonly airRows: number;
}

/**
 * What a way of driving means. Width served follows from the faces sprayed per pass: every alley 1 row; one side on, both faces in
 * the end, half a row; one side, one face, a row; every second alley, two rows; whole rows, as many; a swath, its own width.
 */
export function passOf(pattern: PassPattern, R: Given): Pass {
  const both: readonly Side[] = ['left', 'right'];
  const rows = (k: number): Answer => derive(WIDTH_SERVED, { K: given(k, '1', 'stated', { path: 'pattern' }), R });
  switch (pattern.kind) {
    case 'every-alley':
      return { sides: both, width: rows(1), faces: 2, airRows: 2 };
    case 'one-side-both-faces':
      return { sides: [pattern.side], width: rows(0.5), faces: 2, airRows: 1 };
    case 'one-side-one-face':
      return { sides: [pattern.side], width: rows(1), faces: 1, airRows: 1 };
    case 'alternate-alleys':
      return { sides: both, width: rows(2), faces: 1, airRows: 2 };
    case 'whole-rows':
      return { sides: both, width: rows(pattern.rows), faces: 2, airRows: 2 * pattern.rows };
    case 'swath':
      return { sides: both, width: given(pattern.widthM, 'm', 'stated', { path: 'pattern.widthM' }), faces: 2, airRows: 2 };
  }
}
