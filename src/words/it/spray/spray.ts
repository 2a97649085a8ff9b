import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** What is said of where the spray goes. */
export const SPRAY: Part = {
  assumptions: SPRAY_ASSUMPTION_WORDS,
  refusals: { 'no-alley': 'La chioma è larga quanto la distanza tra i filari: non resta interfila da cui irrorare. Verificare larghezza della chioma e distanza tra i filari.' }
};
