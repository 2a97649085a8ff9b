import { guarded, unguarded } from './formulas.ts';

/** A text as a CSV field that reads back the same, and that no spreadsheet takes for a formula. */
export function csvCell(text: string): string {
  const safe = guarded(text);
  return /[",\r\n]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** What was written by `csvCell`, its quotes taken away already; nearly every name has no apostrophe and is looked at no further. */
export const csvText = (field: string): string => (field.includes("'") ? unguarded(field) : field);
