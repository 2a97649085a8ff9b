import type { NozzleCell, Season, SeasonRung } from '#core/season/season.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { seasonScreen as words } from '#words/en/season/screen.ts';
import { DASH, formatAmount, formatNumber } from '#words/format.ts';

/** An answer on one line; a dash where there is none. */
export const amountOf = (a: Answer | null | undefined, system: UnitSystem): string => (!a || isRefused(a) ? DASH : a.unit === '1' && Number.isInteger(a.value) ? formatNumber(a.value, 0, system) : formatAmount(a.value, a.unit, system));

/** One figure over the rungs. */
export interface FigureLine {
  readonly id: string;
  readonly name: string;
  /** In the order of the rungs. */
  readonly values: readonly string[];
}

/** The table of figures: one line each, one value a rung. */
export function figureLines({ rungs }: Season, system: UnitSystem): readonly FigureLine[] {
  const line = (id: string, name: string, of: (r: SeasonRung) => string): FigureLine => ({ id, name, values: rungs.map(of) });
  const labels = new Map(rungs.flatMap((r) => r.doses.map((d) => [d.label.id, d.label.name] as const)));
  const w = words.row;
  return [
    line('volume', w.volume, (r) => amountOf(r.result.canopy.figures.TRVc, system)),
    line('leaf', w.leaf, (r) => amountOf(r.result.canopy.figures.LAI, system)),
    line('wanted', w.wanted, (r) => amountOf(r.wanted, system)),
    line('water', w.water, (r) => amountOf(r.volume, system)),
    ...[...labels].map(([id, name]) => line(`dose-${id}`, name, (r) => amountOf(r.doses.find((d) => d.label.id === id)?.adapted, system))),
    line('speed', w.speed, (r) => amountOf(r.result.sprayer.speed, system)),
    line('pressure', w.pressure, (r) => amountOf(r.result.sprayer.pressure, system)),
    line('air-needed', w.airNeeded, (r) => amountOf(r.result.air.needed, system)),
    line('air', w.air, (r) => amountOf(r.result.air.given, system)),
    line('loads', w.loads, (r) => amountOf(r.loads, system))
  ];
}

export type CellState = 'open' | 'lost' | 'shut';
export const cellState = (c: NozzleCell): CellState => (!c.open ? 'shut' : c.would === 'in-leaf' ? 'open' : 'lost');

/** What a nozzle does at a rung, in words. */
export function cellWords(c: NozzleCell): string {
  const w = words.cell;
  const meets = { 'in-leaf': w.inLeaf, 'over-top': w.overTop, 'under-skirt': w.underSkirt, unknown: w.unknown }[c.would];
  if (c.open) return c.would === 'in-leaf' ? w.open : `${w.open}, ${meets}`;
  return c.would === 'in-leaf' ? `${w.shut}, ${meets}` : w.shut;
}
