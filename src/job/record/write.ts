import Papa from 'papaparse';
import type { AnyFields, WorkRecord } from '#core/record/types.ts';
import { inOrder } from '../write.ts';
import { FIELD_COLUMNS, FRAME, isFree, RECORD_COLUMNS } from './columns.ts';
import { guarded } from '../csv/formulas.ts';
import { RECORDS_FILE, RECORDS_FORMAT, RECORDS_VERSION } from './schema.ts';

/** Records as a file: every one with all that it says, keys in the order of the schema. Equal records give equal bytes. */
export const recordsJson = (records: readonly WorkRecord[]): string =>
  JSON.stringify(inOrder(RECORDS_FILE, { format: RECORDS_FORMAT, version: RECORDS_VERSION, records }), null, 2) + '\n';

/**
 * Records as a table: a line each, a column for every field there is, numbers in the engine's units, which the column's name ends in. Begins
 * with a byte order mark, without which spreadsheets take UTF-8 for something else. See `formulas.ts` for text that looks like a formula.
 */
export function recordsCsv(records: readonly WorkRecord[]): string {
  const rows = records.map((r) => {
    const fields = r.fields as AnyFields;
    const cells: Readonly<Record<string, unknown>> = {
      ...Object.fromEntries(FRAME.map((c) => [c, r[c]])),
      ...Object.fromEntries([...FIELD_COLUMNS].map(([column, { field }]) => [column, fields[field]]))
    };
    return RECORD_COLUMNS.map((c) => {
      const v = cells[c];
      return v === undefined ? '' : isFree(c) ? guarded(String(v)) : String(v);
    });
  });
  return '\uFEFF' + Papa.unparse([[...RECORD_COLUMNS], ...rows], { newline: '\r\n' }) + '\r\n';
}
