import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** Was davon gesagt wird, wohin die Brühe geht. */
export const SPRAY: Part = {
  assumptions: SPRAY_ASSUMPTION_WORDS,
  refusals: { 'no-alley': 'Die Krone ist so breit wie der Reihenabstand: Es bleibt keine Fahrgasse, aus der gespritzt werden kann. Kronenbreite und Reihenabstand prüfen.' }
};
