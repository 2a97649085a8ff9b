import type { Part } from '../../language.ts';

/** What is said of loads and of the work. */
export const MIX: Part = {};
