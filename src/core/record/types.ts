import type { CALIBRATION_FIELDS, RecordField, TREATMENT_FIELDS } from './fields.ts';

export const RECORD_KINDS = ['calibration', 'treatment'] as const;
export type RecordKind = (typeof RECORD_KINDS)[number];

type Value<F extends RecordField> = F extends { readonly kind: 'number' } ? number : F extends { readonly choices: readonly (infer C)[] } ? C : string;
type Values<F extends Readonly<Record<string, RecordField>>> = { readonly [K in keyof F]?: Value<F[K]> };

export type CalibrationFields = Values<typeof CALIBRATION_FIELDS>;
export type TreatmentFields = Values<typeof TREATMENT_FIELDS>;
/** Fields of a record of which only the names are known. */
export type AnyFields = Readonly<Record<string, string | number>>;

interface Made {
  readonly id: string;
  /** Block that it is of. It may be gone from the document: a record outlives it. */
  readonly block?: string;
  /** When the record was written, ISO 8601 with time and offset. When the work was done is a field. */
  readonly at: string;
  /** Id of the earlier record in whose place this one stands; that one is kept. */
  readonly amends?: string;
  /** Why it was amended. */
  readonly reason?: string;
}

/**
 * What was done, as it was written down. Once made it is never changed and never taken away: an amendment is another record, whole, that
 * names the one it stands for and why.
 */
export type WorkRecord =
  | (Made & { readonly kind: 'calibration'; readonly fields: CalibrationFields })
  | (Made & { readonly kind: 'treatment'; readonly fields: TreatmentFields });
