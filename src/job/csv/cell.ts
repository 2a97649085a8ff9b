import { guarded } from './formulas.ts';

/** A text as a CSV field that reads back the same. */
export const csvField = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** The same for a table that people open: no spreadsheet takes the text for a formula, see `formulas.ts`. */
export const csvCell = (text: string): string => csvField(guarded(text));
