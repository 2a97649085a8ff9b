import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** What is said of where the spray goes. */
export const SPRAY: Part = {
  assumptions: SPRAY_ASSUMPTION_WORDS,
  refusals: { 'no-alley': 'The canopy is as wide as the rows are apart: no alley is left to spray from. Check canopy width and row spacing.' }
};
