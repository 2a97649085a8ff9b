import type { Part } from '../../language.ts';
import { SPRAY_ASSUMPTION_WORDS } from './assumptions.ts';

/** What is said of where the spray goes. */
export const SPRAY: Part = { assumptions: SPRAY_ASSUMPTION_WORDS };
