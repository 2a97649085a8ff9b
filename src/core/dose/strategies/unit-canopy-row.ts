import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { VOLUME_REFERENCE } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

/** Litres per unit canopy row (1 m high, 1 m wide, 100 m long), to the point of run-off. */
export const UNIT_CANOPY_ROW: Strategy = {
  id: 'unit-canopy-row',
  descriptor: 'UCR',
  height: 'crown',
  width: 'greatest',
  water: formula('unit-canopy-row-water', 'V', 'L/ha', { q: 'L/UCR', UCR: 'UCR/ha' }, 'q * UCR', (v) => v.q * v.UCR, {
    sources: ['furness-1998'],
    range: { q: NOT_NEGATIVE, UCR: NOT_NEGATIVE }
  }),
  waterKind: 'dilute',
  index: formula('unit-canopy-row-index', 'I', '1', { UCR: 'UCR/ha', UCR0: 'UCR/ha' }, 'UCR / UCR0', (v) => v.UCR / v.UCR0, {
    sources: ['furness-1998'],
    certainty: 'derived',
    range: { UCR: NOT_NEGATIVE, UCR0: POSITIVE }
  }),
  reference: formula('reference-canopy-rows', 'UCR0', 'UCR/ha', { h0: 'm', W0: 'm', R0: 'm' }, '100 * h0 * W0 / R0', (v) => (100 * v.h0 * v.W0) / v.R0, {
    sources: ['furness-1998'],
    certainty: 'derived',
    range: { h0: POSITIVE, W0: POSITIVE, R0: POSITIVE }
  }),
  // 10 L is apple practice (1 L per 10 m³); published and remembered volumes for other crops run from 9 to 50.
  constants: { q: constant('unit-canopy-row.volume', 10, 'L/UCR', [2, 60], 'memory', 'furness-1998', 'wilton-nz'), ...VOLUME_REFERENCE },
  validity: ['volume-by-crop', 'run-off-judged-in-field'],
  sources: ['furness-1998']
};
