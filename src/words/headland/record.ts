import { ALL_FIELDS } from '#core/record/fields.ts';
import type { Ask } from '#core/record/rules.ts';
import { display, shown, type UnitSystem } from '#core/quantity/units.ts';
import { recordWords } from '../en/headland/record.ts';
import { given, ltr } from '../bidi.ts';
import { formatAmount } from '../format.ts';
import { language, look } from '../language.ts';

/** Digits of a recorded number that are shown: as many as a prefilled one is kept with. */
const DIGITS = 6;

export const recordField = (field: string): string => look(recordWords.fields, field) ?? field;
export const askWord = ({ item }: Ask): string => look(recordWords.items, item) ?? recordField(item);

/** What a record says in a field, to the last digit: a record is no figure to be rounded for the eye. */
export function recordValue(field: string, value: string | number, system: UnitSystem): string {
  const shape = look(ALL_FIELDS, field);
  if (typeof value === 'string') return shape?.kind === 'choice' ? (look(recordWords.choices, value) ?? value) : given(value);
  if (shape?.kind !== 'number') return String(value);
  const there = Number(shown(value, shape.unit, system).toPrecision(DIGITS));
  const text = String(there).replace('-', '−').replace('.', language().decimalMark);
  const unit = display(shape.unit, system).symbol;
  return unit === '' ? text : ltr(`${text}\u00a0${unit.replaceAll(' ', '\u00a0')}`);
}

/** The same for a title, where a figure for the eye is enough. */
export function recordGlance(field: string, value: string | number, system: UnitSystem): string {
  const shape = look(ALL_FIELDS, field);
  return typeof value === 'number' && shape?.kind === 'number' ? formatAmount(value, shape.unit, system) : recordValue(field, value, system);
}
