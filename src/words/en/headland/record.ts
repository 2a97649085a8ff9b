import type { Part } from '../../language.ts';

/** What is said of records. */
export const RECORD: Part = {};
