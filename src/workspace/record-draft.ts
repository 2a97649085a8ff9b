import { RECORD_FIELDS } from '#core/record/fields.ts';
import { RECORD_KINDS, type AnyFields, type RecordKind } from '#core/record/types.ts';

/** A record that is being written: what holds for the work, and what for each product. */
export interface Draft {
  readonly kind: RecordKind;
  readonly block: string;
  readonly fields: AnyFields;
  /** One record is made for each; empty for a calibration. */
  readonly products: readonly ProductDraft[];
  /** Record that it is to amend, and why. */
  readonly amends?: string;
  readonly reason?: string;
}

export interface ProductDraft {
  /** Weighed or measured out: decides which fields hold dose and total. */
  readonly unit: 'kg' | 'L';
  readonly fields: AnyFields;
}

const UNIT_FIELDS = { kg: ['productKgPerHa', 'productTotalKg'], L: ['productLPerHa', 'productTotalL'] } as const;
export const fieldsOfUnit = (unit: ProductDraft['unit']): readonly string[] => UNIT_FIELDS[unit];

export const isOfProduct = (kind: RecordKind, field: string): boolean => kind === 'treatment' && (RECORD_FIELDS.treatment as Readonly<Record<string, { part: string }>>)[field]?.part === 'product';

/** Fields of whole records, alike but for their product, as a draft. */
export function draftOf(kind: RecordKind, block: string, records: readonly AnyFields[]): Draft {
  const pick = (fields: AnyFields, ofProduct: boolean): AnyFields => Object.fromEntries(Object.entries(fields).filter(([f]) => isOfProduct(kind, f) === ofProduct));
  const products = kind === 'calibration' ? [] : records.map((r): ProductDraft => ({ unit: UNIT_FIELDS.L.some((f) => r[f] !== undefined) ? 'L' : 'kg', fields: pick(r, true) }));
  return { kind, block, fields: pick(records[0] ?? {}, false), products };
}

/** Fields of the records that a draft makes. */
export const fieldsOf = ({ fields, products }: Draft): readonly AnyFields[] => (products.length === 0 ? [fields] : products.map((p) => ({ ...fields, ...p.fields })));

const isObject = (v: unknown): v is Record<string, unknown> => typeof v === 'object' && v !== null && !Array.isArray(v);
const onlyKnown = (v: unknown, kind: RecordKind): AnyFields =>
  isObject(v) ? Object.fromEntries(Object.entries(v).filter((e): e is [string, string | number] => Object.hasOwn(RECORD_FIELDS[kind], e[0]) && (typeof e[1] === 'string' || typeof e[1] === 'number'))) : {};

/** What was kept of a draft, as far as it is one; it is judged like any record when it is made. */
export function readDraft(text: string | null): Draft | null {
  let v: unknown;
  try {
    v = JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
  if (!isObject(v) || !RECORD_KINDS.includes(v['kind'] as RecordKind) || typeof v['block'] !== 'string') return null;
  const kind = v['kind'] as RecordKind;
  const products = (Array.isArray(v['products']) ? v['products'] : []).filter(isObject).map((p): ProductDraft => ({ unit: p['unit'] === 'L' ? 'L' : 'kg', fields: onlyKnown(p['fields'], kind) }));
  return {
    kind,
    block: v['block'],
    fields: onlyKnown(v['fields'], kind),
    products: kind === 'treatment' && products.length === 0 ? [{ unit: 'kg', fields: {} }] : products,
    ...(typeof v['amends'] === 'string' ? { amends: v['amends'], reason: typeof v['reason'] === 'string' ? v['reason'] : '' } : {})
  };
}
