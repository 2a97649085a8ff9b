import type { FittingProblem } from '#core/fitting/problem.ts';
import type { Fitting, StockItem } from '#core/fitting/types.ts';
import type { NozzleTable } from '#core/sprayer/types.ts';

/** One size that can be ticked. */
export interface Tickable {
  readonly table: NozzleTable;
  readonly size: NozzleTable['sizes'][number];
}

const is = (t: Tickable) => (item: StockItem): boolean => item.table === t.table.id && item.size === t.size.id;

export const itemOf = (stock: Fitting['stock'], t: Tickable): StockItem | undefined => stock?.find(is(t));
/** Without a list every size may be fitted. */
export const isTicked = (stock: Fitting['stock'], t: Tickable): boolean => !stock || stock.length === 0 || itemOf(stock, t) !== undefined;

/** The list after a tick; none again when it names every size and no count. The last tick stays: a list of nothing would mean everything. */
export function ticked(stock: Fitting['stock'], all: readonly Tickable[], t: Tickable, on: boolean): Fitting['stock'] {
  const now = all.filter((each) => (each === t ? on : isTicked(stock, each)));
  if (now.length === 0) return stock;
  return tidy(now.map((each) => itemOf(stock, each) ?? { table: each.table.id, size: each.size.id }), all);
}

/** The list after a count was typed or taken away. */
export function counted(stock: Fitting['stock'], all: readonly Tickable[], t: Tickable, count: number | undefined): Fitting['stock'] {
  const now = all.filter((each) => isTicked(stock, each)).map((each): StockItem => {
    const item = itemOf(stock, each) ?? { table: each.table.id, size: each.size.id };
    return each === t ? { table: item.table, size: item.size, ...(count === undefined ? {} : { count }) } : item;
  });
  return tidy(now, all);
}

const tidy = (stock: readonly StockItem[], all: readonly Tickable[]): Fitting['stock'] =>
  stock.length === all.length && stock.every((s) => s.count === undefined) ? undefined : stock;

/** Only sizes that are fitted now. */
export const fittedNow = (problem: FittingProblem): readonly StockItem[] =>
  [...new Set(problem.positions.map((p) => p.present))].map((s) => ({ table: problem.sizes[s]!.table.id, size: problem.sizes[s]!.size.id }));
