import type { Parameter } from '#core/advice/finding.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { given } from './bidi.ts';
import { DASH, formatAmount, formatNumber, formatShare } from './format.ts';
import { language } from './language.ts';
import { nozzleNames } from './names.ts';
import type { Template } from './words.ts';

export type Values = Readonly<Record<string, Parameter | number>>;
/** Turns a parameter that is an id or a code into words. */
export type Speller = (key: string, value: string) => string;

const asIs: Speller = (_key, value) => value;

const isList = (p: Parameter | number): p is readonly string[] => Array.isArray(p);

function said(key: string, p: Parameter | number, system: UnitSystem, spell: Speller): string {
  if (typeof p === 'string') return given(spell(key, p));
  if (typeof p === 'number') return formatNumber(p, 2, system);
  if (isList(p)) return nozzleNames(p);
  if (p.unit === '%') return formatShare(p.value / 100);
  if (p.unit === 'deg') {
    const size = formatNumber(Math.abs(p.value), 0) + '°';
    return key === 'turn' ? `${size} ${p.value < 0 ? language().down : language().up}` : size;
  }
  return formatAmount(p.value, p.unit, system);
}

const PLACE = /\{(\w+)(?:#([^|}]*)\|([^}]*))?\}/g;

/** Puts values into a template; a value that is missing is a dash. */
export const fill = (template: Template, values: Values, system: UnitSystem, spell: Speller = asIs): string =>
  template.replace(PLACE, (_, key: string, one?: string, more?: string) => {
    const p = Object.hasOwn(values, key) ? values[key] : undefined;
    if (p === undefined) return DASH;
    if (one === undefined || more === undefined) return said(key, p, system, spell);
    return isList(p) && p.length === 1 ? one : more;
  });
