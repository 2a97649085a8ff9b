import type { LabelBasis } from '../types.ts';

/** Bases that leave the canopy to the adaptation; the others follow the canopy by themselves. As `product` has it; a test holds the two together. */
export const FIXED_BASES: ReadonlySet<LabelBasis> = new Set<LabelBasis>(['per-hectare', 'percent-of-water']);
