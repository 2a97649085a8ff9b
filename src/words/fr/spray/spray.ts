import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** What is said of where the spray goes. */
export const SPRAY: Part = {
  assumptions: SPRAY_ASSUMPTION_WORDS,
  refusals: { 'no-alley': 'La végétation est aussi large que la distance entre rangs : il ne reste pas d’interrang d’où pulvériser. Vérifiez la largeur de végétation et la distance entre rangs.' }
};
