import { formula } from '../working/formula.ts';
import { POSITIVE } from '../working/figure.ts';
import { constant } from './strategy.ts';

/**
 * The canopy that means "100 % of the label" for strategies whose sources leave it open: crown 2.8 m high, 1.25 m wide, rows
 * 3.5 m apart (10 000 m³/ha, 16 000 m² of leaf wall per ha), 2 m² of leaf per m³. A choice for comparison, the user's to change;
 * strategies with a reference of their own do not use it.
 */
export const REFERENCE_HEIGHT = constant('reference.crown-height', 2.8, 'm', [0.3, 15], 'assumed', 'habit');
export const REFERENCE_WIDTH = constant('reference.width', 1.25, 'm', [0.1, 12], 'assumed', 'habit');
export const REFERENCE_SPACING = constant('reference.row-spacing', 3.5, 'm', [0.5, 20], 'assumed', 'habit');
export const REFERENCE_LAD = constant('reference.leaf-density', 2, 'm2/m3', [0.1, 10], 'assumed', 'habit');

/** Tree-row volume of the reference canopy, m³/ha. */
export const REFERENCE_VOLUME = formula(
  'reference-volume', 'TRV0', 'm3/ha', { h0: 'm', W0: 'm', R0: 'm' }, '10000 * h0 * W0 / R0', (v) => (10000 * v.h0 * v.W0) / v.R0,
  { sources: ['arithmetic'], certainty: 'derived', range: { h0: POSITIVE, W0: POSITIVE, R0: POSITIVE } }
);
export const VOLUME_REFERENCE = { h0: REFERENCE_HEIGHT, W0: REFERENCE_WIDTH, R0: REFERENCE_SPACING };
