import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** What is said of where the spray goes. */
export const SPRAY: Part = {
  assumptions: SPRAY_ASSUMPTION_WORDS,
  refusals: { 'no-alley': 'A copa é tão larga como a distância entre linhas: não resta entrelinha de onde pulverizar. Verifique a largura da copa e a distância entre linhas.' }
};
