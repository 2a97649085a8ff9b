import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** What is said of where the spray goes. */
export const SPRAY: Part = {
  assumptions: SPRAY_ASSUMPTION_WORDS,
  refusals: { 'no-alley': 'La copa es tan ancha como la distancia entre filas: no queda calle desde la que pulverizar. Compruebe el ancho de copa y la distancia entre filas.' }
};
