import { ALL_FIELDS, columnOf, type RecordField } from '#core/record/fields.ts';

/** Columns that every record has, before those of its fields. */
export const FRAME = ['id', 'kind', 'block', 'at', 'amends', 'reason'] as const;
export type FrameColumn = (typeof FRAME)[number];
/** Without these a line is no record. */
export const NEEDED: readonly string[] = ['id', 'kind', 'at'];

export interface FieldColumn {
  readonly field: string;
  readonly shape: RecordField;
}

/** Field by its column, in the order of the table. */
export const FIELD_COLUMNS: ReadonlyMap<string, FieldColumn> = new Map(Object.entries(ALL_FIELDS).map(([field, shape]) => [columnOf(field), { field, shape }]));

/** All columns in the order in which they are written. */
export const RECORD_COLUMNS: readonly string[] = [...FRAME, ...FIELD_COLUMNS.keys()];

/** What is written by people, and so may look like a formula. */
export const isFree = (column: string): boolean => {
  const kind = FIELD_COLUMNS.get(column)?.shape.kind;
  return column === 'reason' || kind === 'text' || kind === 'lines';
};
