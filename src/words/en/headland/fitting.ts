import type { Part } from '../../language.ts';

/** What is said of a fitting of nozzles. */
export const FITTING: Part = {};
