import type { Part } from '../../language.ts';

/** What is said of a check on the headland. */
export const CHECK: Part = {};
