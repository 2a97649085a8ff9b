import type { SchemaElement, SchemaTree } from 'hyparquet';

/** What a column of a Parquet file holds, as far as a table needs to know: a type by its name where it is neither. */
export type Holds = 'numbers' | 'text' | 'whole' | { readonly other: string };

/** Whole numbers by their converted type; a type without one is itself. */
const WHOLE: ReadonlySet<string> = new Set(['INT_8', 'INT_16', 'INT_32', 'INT_64', 'UINT_8', 'UINT_16', 'UINT_32', 'UINT_64']);
const TEXT: ReadonlySet<string> = new Set(['UTF8', 'ENUM']);

export function holdsOf({ element, children }: SchemaTree): Holds {
  const { type, converted_type: converted, logical_type: logical, repetition_type: repetition } = element;
  if (children.length > 0 || !type) return { other: converted ?? 'a group of columns' };
  if (repetition === 'REPEATED') return { other: 'a list' };
  if (converted === 'DECIMAL' || logical?.type === 'FLOAT16') return 'numbers';
  switch (type) {
    case 'DOUBLE':
    case 'FLOAT':
      return 'numbers';
    case 'INT32':
    case 'INT64':
      return converted === undefined || WHOLE.has(converted) ? 'whole' : { other: converted };
    case 'BYTE_ARRAY':
      return (converted === undefined && (logical === undefined || logical.type === 'STRING')) || (converted !== undefined && TEXT.has(converted)) ? 'text' : { other: converted ?? logical!.type };
    default:
      return { other: logical?.type ?? converted ?? type };
  }
}

/** Decimal fractions are read as whole numbers times a power of ten, which rounds twice: this takes the second rounding back. */
export function exactly({ converted_type: converted, scale = 0 }: SchemaElement): ((v: number) => number) | null {
  if (converted !== 'DECIMAL' || scale === 0) return null;
  const parts = 10 ** scale;
  return (v) => Math.round(v * parts) / parts;
}
