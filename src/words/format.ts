import { display, shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import { ltr } from './bidi.ts';
import { language } from './language.ts';

/** What stands where there is no number. */
export const DASH = '–';
const MINUS = '−';
const THIN_SPACE = '\u202f';
const FIXED_SPACE = '\u00a0';
/** A thin space as ISO 80000-1 has it, or where US units are read in English, a comma: beside a decimal comma it would be read as one. */
const groupMark = (system: UnitSystem): string => (system === 'us' && language().decimalMark !== ',' ? ',' : THIN_SPACE);

/** Below this a value is shown as nothing: it is what rounding leaves of a zero. */
const NOTHING = 1e-9;
/** From here on digits say less than powers. */
const HUGE = 1e15;

/** Figures of doses: rounding to fewer would move them by more than a part in a thousand. */
const isDose = (unit: Unit): boolean => unit.startsWith('kg') || unit.startsWith('Lprod');

/** Readings that nobody takes to more than their usual decimals. */
const COARSE: ReadonlySet<Unit> = new Set<Unit>(['%', 'deg', 'degC', 'K', 'rpm', 's/100m', 'm/s', 'km/h']);

/** Least digits that a figure keeps, whatever its usual decimals. */
function leastDigits(size: number, unit: Unit, usual: number): number {
  if (isDose(unit)) return 4;
  if (COARSE.has(unit)) return 0;
  return size < 1 || (usual === 0 && size < 10) ? 3 : 0;
}

/** Digits without mark of sign, at least `usual` decimals and at least `least` digits; further zeros are cut. */
function digitsOf(size: number, usual: number, least: number): string {
  const wanted = size > NOTHING ? Math.min(Math.max(usual, least - 1 - Math.floor(Math.log10(size))), 9) : usual;
  let text = size.toFixed(wanted);
  if (wanted > usual) {
    let end = text.length;
    const keep = text.length - wanted + usual - (usual === 0 ? 1 : 0);
    while (end > keep && text.charCodeAt(end - 1) === 48) end--;
    if (text.charCodeAt(end - 1) === 46) end--;
    text = text.slice(0, end);
  }
  return text;
}

function grouped(text: string, mark: string, point: string): string {
  const dot = text.indexOf('.');
  const end = dot === -1 ? text.length : dot;
  let whole = text.slice(0, end);
  for (let i = end - 3; i > 0; i -= 3) whole = whole.slice(0, i) + mark + whole.slice(i);
  return dot === -1 ? whole : whole + point + text.slice(dot + 1);
}

const isZero = (text: string): boolean => !/[1-9]/.test(text);

function plainly(value: number, usual: number, least: number, system: UnitSystem): string {
  if (!Number.isFinite(value)) return DASH;
  const size = Math.abs(value);
  const text = size >= HUGE ? size.toExponential(2) : grouped(digitsOf(size, usual, least), groupMark(system), language().decimalMark);
  return value < 0 && !isZero(text) ? MINUS + text : text;
}

/** Marked where a page is read from the right, so that a minus stays before it. */
const write = (...given: Parameters<typeof plainly>): string => ltr(plainly(...given));

/** A number as it stands, with so many decimals. */
export const formatNumber = (value: number, decimals: number, system: UnitSystem = 'metric'): string => write(value, decimals, 0, system);

/**
 * The figure alone, without its unit: the unit's usual decimals, more for small values (three digits) and for doses (four).
 * @param value in the engine's `unit`
 */
export function formatFigure(value: number, unit: Unit, system: UnitSystem): string {
  const there = shown(value, unit, system);
  const usual = display(unit, system).decimals;
  return write(there, usual, leastDigits(Math.abs(there), unit, usual), system);
}

/** The unit as shown, '' for a bare number. */
export const formatUnit = (unit: Unit, system: UnitSystem): string => display(unit, system).symbol;

/** A figure and its unit on one line: 438 L/ha. */
export function formatAmount(value: number, unit: Unit, system: UnitSystem): string {
  const text = formatFigure(value, unit, system);
  const symbol = formatUnit(unit, system);
  if (text === DASH || symbol === '') return text;
  return ltr(symbol === '°' ? text + symbol : text + FIXED_SPACE + symbol.replaceAll(' ', FIXED_SPACE));
}

/** A figure for a sum that a reader does again: five digits, no zeros at the end. A sum is read from the left as a whole and marks its figures not. */
export function formatExact(value: number, unit: Unit): string {
  const there = shown(value, unit, 'metric');
  return plainly(there, 0, Math.abs(there) < 1e5 ? EXACT_DIGITS : 0, 'metric');
}
const EXACT_DIGITS = 5;

/** An interval: 8 600–10 600 m³/ha. */
export const formatRange = (low: number, high: number, unit: Unit, system: UnitSystem): string =>
  ltr(`${formatFigure(low, unit, system)}–${formatAmount(high, unit, system)}`);

/** The same without its unit. */
export const formatSpan = (low: number, high: number, unit: Unit, system: UnitSystem): string => ltr(`${formatFigure(low, unit, system)}–${formatFigure(high, unit, system)}`);

/** A share 0…1 in whole percent; one decimal below ten. */
export function formatShare(share: number): string {
  const percent = share * 100;
  const text = write(percent, Math.abs(percent) < 9.95 && Math.abs(percent - Math.round(percent)) > 0.049 ? 1 : 0, 0, 'metric');
  return text === DASH ? text : ltr(`${text}${FIXED_SPACE}%`);
}

/** For a field to type in: no groups, the language's decimal mark, a plain minus, no zeros at the end; '' where there is no number. */
export function formatPlain(value: number, unit: Unit, system: UnitSystem): string {
  if (!Number.isFinite(value)) return '';
  const there = shown(value, unit, system);
  const size = Math.abs(there);
  const { decimals } = display(unit, system);
  const text = String(Number(digitsOf(size, Math.max(decimals, 1), leastDigits(size, unit, decimals)))).replace('.', language().decimalMark);
  return there < 0 && text !== '0' ? `-${text}` : text;
}
