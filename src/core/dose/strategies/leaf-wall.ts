import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_HEIGHT, REFERENCE_SPACING } from '../reference.ts';
import type { Strategy } from '../strategy.ts';

/** By leaf wall area over the faces treated; both walls of the reference row count. */
export const LEAF_WALL: Strategy = {
  id: 'leaf-wall',
  descriptor: 'LWA',
  height: 'crown',
  width: 'none',
  index: formula(
    'leaf-wall-index', 'I', '1', { LWA: 'm2/ha', LWA0: 'm2/ha' }, 'LWA / LWA0', (v) => v.LWA / v.LWA0,
    { sources: ['toews-friessleben-2012'], certainty: 'derived', range: { LWA: NOT_NEGATIVE, LWA0: POSITIVE }, published: { LWA: [8000, 19000] } }
  ),
  reference: formula('reference-leaf-wall', 'LWA0', 'm2/ha', { h0: 'm', R0: 'm' }, '20000 * h0 / R0', (v) => (20000 * v.h0) / v.R0, {
    sources: ['toews-friessleben-2012'],
    certainty: 'derived',
    range: { h0: POSITIVE, R0: POSITIVE }
  }),
  constants: { h0: REFERENCE_HEIGHT, R0: REFERENCE_SPACING },
  validity: ['blind-to-width-and-density', 'suits-narrow-walls'],
  sources: ['toews-friessleben-2012', 'eppo-pp1-239', 'walklate-cross-2012']
};
