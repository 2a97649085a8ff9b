import type { Column } from '../../working/column.ts';
import { STRATEGIES } from '../strategies.ts';
import type { Strategy } from '../strategy.ts';
import { saysOf, type Output, type SaidOutput, type Says } from './plan.ts';
import { Sheet, SHEET_ROWS, type Canopies, type SheetOptions } from './sheet.ts';

export type { Applied, Canopies, SheetOptions } from './sheet.ts';

/** What one strategy says of every canopy; null where it says nothing of the kind, NaN where it refuses a canopy. */
export interface StrategyColumns {
  /** L/ha. */
  readonly water: Float64Array<ArrayBuffer> | null;
  /** To the point of run-off, L/ha; the same array as `water` where that is dilute. */
  readonly dilute: Float64Array<ArrayBuffer> | null;
  /** Dose against the label's, before any cap or floor. */
  readonly index: Float64Array<ArrayBuffer>;
  /** Product per hectare by the label, after adaptation, floor and cap, in the label's unit. */
  readonly dose: Float64Array<ArrayBuffer> | null;
  /** Dilute water over the water applied. */
  readonly concentration: Float64Array<ArrayBuffer> | null;
}

export interface ColumnOptions extends SheetOptions {
  /** The user's own strategies, worked out behind the others. */
  readonly own?: readonly Strategy[];
}

/**
 * Every strategy for every canopy, by its id: the figures of `evaluateStrategy` and `product` for a document that tells neither stage nor
 * outline nor density class, without their working. A million canopies take a second or two.
 */
export function strategyColumns(canopies: Canopies, options: ColumnOptions = {}): Map<string, StrategyColumns> {
  const steps = columnSteps(canopies, options);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same in steps of a few milliseconds, for a worker that must hear of a cancel. Yields the share that is done, 0…1. */
export function* columnSteps(canopies: Canopies, options: ColumnOptions = {}): Generator<number, Map<string, StrategyColumns>, void> {
  const sheet = new Sheet(options);
  const copies: { readonly of: Float64Array; readonly to: Float64Array }[] = [];
  const made = new Map<Column, Float64Array<ArrayBuffer>>();
  const whole = (column: Column): Float64Array<ArrayBuffer> => {
    // One value for all is written out.
    if (typeof column === 'number') return new Float64Array(canopies.count).fill(column);
    let to = made.get(column);
    if (!to) {
      to = new Float64Array(canopies.count);
      made.set(column, to);
      copies.push({ of: column, to });
    }
    return to;
  };
  const columns = new Map(
    [...STRATEGIES.values(), ...(options.own ?? [])].map((strategy): [string, StrategyColumns] => {
      const says = saysOf(strategy, options);
      const asked = (what: Says): Float64Array<ArrayBuffer> | null => (says.includes(what) ? whole(sheet.says(strategy, what)) : null);
      return [strategy.id, { water: asked('water'), dilute: asked('dilute'), index: whole(sheet.says(strategy, 'index')), dose: asked('dose'), concentration: asked('concentration') }];
    })
  );
  for (let from = 0; from < canopies.count; from += SHEET_ROWS) {
    const count = sheet.take(canopies, from);
    for (const { of, to } of copies) to.set(of.subarray(0, count), from);
    yield (from + count) / canopies.count;
  }
  return columns;
}

/** Works out some columns of a table, chunk by chunk: `take` fills `columns` for the canopies from `from` on and tells how many there were. */
export interface Figures {
  readonly columns: readonly Float64Array<ArrayBuffer>[];
  /** Symbols of the measurements that each column rests on: H, Hs, W, R, f, k, LAD. */
  readonly restsOn: readonly ReadonlySet<string>[];
  take(canopies: Canopies, from?: number): number;
}

/** @param outputs what is wanted, in its order */
export function figuresOf(outputs: readonly (Output | SaidOutput)[], options: SheetOptions = {}): Figures {
  const sheet = new Sheet(options);
  const made = outputs.map((o) => sheet.column(o));
  const columns = made.map((c) => (typeof c === 'number' ? new Float64Array(SHEET_ROWS).fill(c) : c));
  return { columns, restsOn: made.map((c) => sheet.restsOn(c)), take: (canopies, from) => sheet.take(canopies, from) };
}
