import type { UnitSystem } from '#core/quantity/units.ts';
import type { Interval } from '#core/canopy/uncertainty.ts';
import type { Answer } from '#core/working/answer.ts';
import { ltr } from '#words/bidi.ts';
import { DASH, formatFigure, formatNumber, formatRange } from '#words/format.ts';
import { strategyWords } from '#words/naming.ts';
import type { StrategyRow } from '#workspace/strategies.svelte.ts';

/** What a strategy is called: by the words, or by its user. */
export const nameOf = (row: StrategyRow): string => row.strategy.name ?? strategyWords(row.id).name;

/** Decimals of a dose index. */
const INDEX_DECIMALS = 2;
export const indexText = (v: number, system: UnitSystem): string => formatNumber(v, INDEX_DECIMALS, system);
/** A difference, always with its sign. */
export function signedIndex(v: number, system: UnitSystem): string {
  const text = indexText(v, system);
  return v > 0 && /[1-9]/.test(text) ? ltr(`+${text}`) : text;
}
export const figureText = (a: Answer | null, system: UnitSystem): string => (a && a.kind !== 'refused' ? (a.unit === '1' ? indexText(a.value, system) : formatFigure(a.value, a.unit, system)) : DASH);
export const intervalText = (a: Answer | null, i: Interval | null, system: UnitSystem): string =>
  a && i && a.kind !== 'refused' ? (a.unit === '1' ? ltr(`${indexText(i.low, system)}–${indexText(i.high, system)}`) : formatRange(i.low, i.high, a.unit, system)) : '';
