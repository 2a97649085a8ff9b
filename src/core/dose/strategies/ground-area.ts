import { formula } from '../../working/formula.ts';
import type { Strategy } from '../strategy.ts';

/** The same on every hectare of ground, whatever stands on it: the label as most are printed. */
export const GROUND_AREA: Strategy = {
  id: 'ground-area',
  descriptor: null,
  height: 'none',
  width: 'none',
  index: formula('ground-area-index', 'I', '1', {}, '1', () => 1, { sources: ['arithmetic'], certainty: 'exact' }),
  constants: {},
  validity: ['blind-to-canopy'],
  sources: ['duga-2015']
};
