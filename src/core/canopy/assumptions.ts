import { GAL_PER_1000FT3_L_PER_M3 } from '../quantity/constants.ts';
import type { Assumption } from '../working/assumption.ts';

export const CANOPY_ASSUMPTIONS: readonly Assumption[] = [
  { id: 'canopy.full-leaf-density', value: 2, unit: 'm2/m3', least: 0.1, most: 10, certainty: 'memory', sources: ['habit'] },
  // The US density factor where nobody judged the trees: the ratio of the standard orchard, which is also the scale's least.
  { id: 'canopy.us-density', value: 0.7 * GAL_PER_1000FT3_L_PER_M3, unit: 'L/m3', least: 0.03, most: 0.2, certainty: 'published', sources: ['penn-state-tree-fruit', 'landers-trv'] },
  { id: 'canopy.multiplier-open', value: 0.75, unit: '1', least: 0.3, most: 1.5, certainty: 'published', sources: ['canada-trv'] },
  { id: 'canopy.multiplier-medium', value: 0.85, unit: '1', least: 0.3, most: 1.5, certainty: 'published', sources: ['canada-trv'] },
  { id: 'canopy.multiplier-dense', value: 1, unit: '1', least: 0.3, most: 1.5, certainty: 'published', sources: ['canada-trv'] }
];
