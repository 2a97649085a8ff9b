import type { Answer } from './answer.ts';

/** Plain data: what JSON can hold. */
export type Plain = null | boolean | number | string | readonly Plain[] | { readonly [key: string]: Plain };

/** JSON has no infinity and no NaN: both are null. A bound that was never set is the greatest number, and null as well. */
export const plainNumber = (value: number): number | null => (Number.isFinite(value) && Math.abs(value) < Number.MAX_VALUE ? value : null);

/**
 * An answer as plain data, its working unfolded down to the given values; a refusal under `refused`. Values are in the engine's units. What
 * several figures rest on is written under each of them, so that every figure can be read by itself.
 */
export function plainAnswer(a: Answer): Plain {
  if (a.kind === 'refused')
    return {
      refused: a.code,
      path: a.path,
      parameters: Object.fromEntries(Object.entries(a.parameters).map(([k, v]) => [k, typeof v === 'number' ? plainNumber(v) : v]))
    };
  const value = { value: plainNumber(a.value), unit: a.unit };
  if (a.kind === 'given')
    return {
      ...value,
      certainty: a.certainty,
      ...(a.path === undefined ? {} : { path: a.path }),
      ...(a.assumption === undefined ? {} : { assumption: a.assumption }),
      ...(a.sources === undefined ? {} : { sources: [...a.sources] })
    };
  const { formula } = a;
  return {
    ...value,
    symbol: formula.symbol,
    formula: formula.id,
    expression: formula.expression,
    certainty: a.certainty,
    extrapolated: a.extrapolated,
    sources: [...formula.sources],
    inputs: Object.fromEntries(Object.entries(a.inputs).map(([symbol, input]) => [symbol, plainAnswer(input)]))
  };
}

const isAnswer = (v: object): v is Answer => 'kind' in v && ((v.kind === 'refused' && 'code' in v) || ((v.kind === 'given' || v.kind === 'figure') && 'unit' in v));

/** Any data of the engine as plain data: maps become objects, undefined and functions are left out. Cycles are a programmer's error. */
export function plain(value: unknown): Plain {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value === 'number') return plainNumber(value);
  if (Array.isArray(value)) return value.map(plain);
  if (value instanceof Map) return Object.fromEntries([...value].map(([k, v]) => [String(k), plain(v)]));
  if (typeof value !== 'object') return null;
  if (isAnswer(value)) return plainAnswer(value);
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined && typeof v !== 'function').map(([k, v]) => [k, plain(v)]));
}
