import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_HEIGHT } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

/** By metre of crown height, as on older German and Austrian labels; row spacing and width play no part. */
export const CROWN_HEIGHT: Strategy = {
  id: 'crown-height',
  descriptor: 'h',
  height: 'crown',
  width: 'none',
  water: formula('crown-height-water', 'V', 'L/ha', { p: 'L/ha/m', h: 'm' }, 'p * h', (v) => v.p * v.h, {
    sources: ['bvl-2012'],
    range: { p: NOT_NEGATIVE, h: POSITIVE }
  }),
  waterKind: 'applied',
  index: formula('crown-height-index', 'I', '1', { h: 'm', h0: 'm' }, 'h / h0', (v) => v.h / v.h0, {
    sources: ['bvl-2012'],
    certainty: 'memory',
    range: { h: POSITIVE, h0: POSITIVE }
  }),
  constants: {
    // Published: 100 to 500 L/ha per metre. Where in that window is the grower's choice; the middle until it is made.
    p: constant('crown-height.water', 300, 'L/ha/m', [100, 500], 'assumed', 'bvl-2012'),
    h0: REFERENCE_HEIGHT
  },
  validity: ['blind-to-row-spacing', 'retired-for-new-labels'],
  sources: ['bvl-2012']
};
