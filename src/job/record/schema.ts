import * as z from 'zod/mini';
import { CALIBRATION_FIELDS, TREATMENT_FIELDS, type RecordField } from '#core/record/fields.ts';
import { CHOSEN_RULES } from '#core/record/rules.ts';
import type { CalibrationFields, TreatmentFields, WorkRecord } from '#core/record/types.ts';
import { ID, LENGTHS, LINES_LENGTH, RECORD_TEXT_LENGTH } from '../limits.ts';

z.config({ jitless: true });

/** No control characters, nothing that a file in UTF-8 could not hold, no mark of characters lost. */
const LINE = /^[^\p{Cc}\p{Cs}\uFFFD]*$/u;
const LINES = /^(?:\n|[^\p{Cc}\p{Cs}\uFFFD])*$/u;

const id = z.string().check(z.regex(ID));
const text = z.string().check(z.minLength(1), z.maxLength(RECORD_TEXT_LENGTH), z.regex(LINE));
const lines = z.string().check(z.minLength(1), z.maxLength(LINES_LENGTH), z.regex(LINES));

function fieldSchema(f: RecordField): z.ZodMiniType {
  switch (f.kind) {
    case 'text':
      return text;
    case 'lines':
      return lines;
    case 'number':
      return (f.whole ? z.int() : z.number()).check(z.minimum(f.least), z.maximum(f.most));
    case 'date':
      return z.iso.date();
    case 'time':
      return z.iso.time({ precision: -1 });
    case 'choice':
      return z.enum(f.choices);
  }
}

/** One object of fields, all of them optional. Its type is made of the same list as its schema. */
const fieldsSchema = <T>(fields: Readonly<Record<string, RecordField>>): z.ZodMiniType<T> =>
  z.strictObject(Object.fromEntries(Object.entries(fields).map(([k, f]) => [k, z.exactOptional(fieldSchema(f))]))) as unknown as z.ZodMiniType<T>;

const frame = {
  block: z.exactOptional(id),
  at: z.iso.datetime({ offset: true }),
  amends: z.exactOptional(id),
  reason: z.exactOptional(lines)
};

export const RECORD = z.discriminatedUnion('kind', [
  z.strictObject({ id, kind: z.literal('calibration'), ...frame, fields: fieldsSchema<CalibrationFields>(CALIBRATION_FIELDS) }),
  z.strictObject({ id, kind: z.literal('treatment'), ...frame, fields: fieldsSchema<TreatmentFields>(TREATMENT_FIELDS) })
]);

export const RECORDS = z.array(RECORD).check(z.minLength(LENGTHS.records[0]), z.maxLength(LENGTHS.records[1]));
export const RECORD_RULES = z.array(z.enum(CHOSEN_RULES)).check(z.maxLength(CHOSEN_RULES.length));

export const RECORDS_FORMAT = 'rowtailor-records';
export const RECORDS_VERSION = 1;

/** A file of records alone. */
export const RECORDS_FILE = z.strictObject({ format: z.literal(RECORDS_FORMAT), version: z.literal(RECORDS_VERSION), records: RECORDS });
export interface RecordsFile {
  readonly format: typeof RECORDS_FORMAT;
  readonly version: typeof RECORDS_VERSION;
  readonly records: readonly WorkRecord[];
}
