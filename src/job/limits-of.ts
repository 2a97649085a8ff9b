import { ALL_FIELDS } from '#core/record/fields.ts';
import { KNOWN_ASSUMPTIONS } from './assumptions.ts';
import { ASSUMPTION_RANGE, RANGES, type Range } from './limits.ts';

/** Numbers of the document and of its records by the object that they stand in. */
const OWNERS: Record<string, Record<string, object>> = { ...RANGES, fields: ALL_FIELDS };

function owned(owner: string, field: string): Range | undefined {
  const range = Object.hasOwn(OWNERS, owner) && Object.hasOwn(OWNERS[owner]!, field) ? OWNERS[owner]![field] : undefined;
  if (!range || !('least' in range)) return undefined;
  const { least, most, unit, whole } = range as Range;
  return { least, most, unit, ...(whole ? { whole } : {}) };
}

/**
 * What the number at a place in the document may be; `undefined` where no number stands.
 * `path` is a JSON pointer (`/blocks/0/rungs/1/canopy/heightM`) or the engine's dotted path from the block or the rung
 * (`canopy.heightM`, `rowSpacingM`).
 */
export function limitsOf(path: string): Range | undefined {
  const assumption = /^\/?assumptions[/.](.+)/.exec(path)?.[1];
  if (assumption) return KNOWN_ASSUMPTIONS.get(assumption) ?? ASSUMPTION_RANGE;
  const names = path.split(/[/.]/).filter((s) => s !== '' && !/^\d+$/.test(s));
  const field = names.at(-1) ?? '';
  const owner = names.at(-2);
  if (owner === undefined) return owned('blocks', field) ?? owned('rungs', field);
  return owned(owner === 'saved' ? 'setting' : owner, field);
}
