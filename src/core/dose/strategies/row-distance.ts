import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_HEIGHT, REFERENCE_SPACING } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

/** Litres per 100 m of row and metre of canopy height; the wall is counted once, not on both sides. */
export const ROW_DISTANCE: Strategy = {
  id: 'row-distance',
  descriptor: 'LWA',
  height: 'crown',
  width: 'none',
  water: formula('row-distance-water', 'V', 'L/ha', { X: 'L/100m/m', h: 'm', f: '1', RL: 'm/ha' }, 'X * h * f * RL / 100', (v) => (v.X * v.h * v.f * v.RL) / 100, {
    sources: ['furness-thompson'],
    range: { X: NOT_NEGATIVE, h: POSITIVE, f: [0, 1], RL: POSITIVE }
  }),
  waterKind: 'dilute',
  index: formula('row-distance-index', 'I', '1', { h: 'm', f: '1', RL: 'm/ha', h0: 'm', R0: 'm' }, 'h * f * RL * R0 / (10000 * h0)', (v) => (v.h * v.f * v.RL * v.R0) / (10000 * v.h0), {
    sources: ['furness-thompson'],
    certainty: 'derived',
    range: { h: POSITIVE, f: [0, 1], RL: POSITIVE, h0: POSITIVE, R0: POSITIVE }
  }),
  constants: {
    X: constant('row-distance.volume', 25, 'L/100m/m', [2, 100], 'published', 'furness-thompson'),
    h0: REFERENCE_HEIGHT,
    R0: REFERENCE_SPACING
  },
  validity: ['measured-in-citrus', 'run-off-judged-in-field'],
  sources: ['furness-thompson']
};
