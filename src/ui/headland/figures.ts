import type { Measured } from '#core/check/state.ts';
import { display, shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import { valueOf, type Answer } from '#core/working/answer.ts';
import { ltr } from '#words/bidi.ts';
import { DASH, formatFigure, formatNumber, formatUnit } from '#words/format.ts';

/** A measured speed shows the hundredth that a watch can tell; elsewhere the unit's usual digits do. */
const FINE: Partial<Record<Unit, number>> = { 'km/h': 2 };

const write = (value: number, unit: Unit, system: UnitSystem): string => {
  const decimals = FINE[unit];
  return decimals === undefined ? formatFigure(value, unit, system) : formatNumber(shown(value, unit, system), decimals, system);
};

/** The figure alone; a dash where there is none. */
export const figure = (answer: Answer, system: UnitSystem): string => (answer.kind === 'refused' ? DASH : write(answer.value, answer.unit, system));
export const amountOf = (answer: Answer, system: UnitSystem): string =>
  answer.kind === 'refused' ? DASH : ltr(`${write(answer.value, answer.unit, system)}\u00a0${formatUnit(answer.unit, system).replaceAll(' ', '\u00a0')}`);

/** Half of the interval in the unit of the value, with its digits; '' where nothing tells it. */
export function plusMinus({ value, interval }: Measured, system: UnitSystem): string {
  if (!interval || value.kind === 'refused') return '';
  const half = (interval.high - interval.low) / 2;
  const { per, decimals } = display(value.unit, system);
  return ltr(`±\u00a0${formatNumber(half / per, FINE[value.unit] ?? decimals, system)}`);
}

/** Percent with its sign, one decimal below ten. */
export function signed(answer: Answer | null): string {
  const v = valueOf(answer);
  if (v === undefined) return DASH;
  const text = formatNumber(Math.abs(v), Math.abs(v) < 9.95 ? 1 : 0);
  return ltr(Number(text) === 0 ? '0\u00a0%' : `${v < 0 ? '−' : '+'}${text}\u00a0%`);
}
