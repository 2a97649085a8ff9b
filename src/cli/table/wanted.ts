import { figureColumns, figuresFor, type StrategiesWish } from './figure-columns.ts';
import type { Front } from './front.ts';
import type { IntervalWish } from './interval-wish.ts';
import { sideBySide, type Maker } from './maker.ts';

export const FORMS = ['csv', 'parquet'] as const;
export type Form = (typeof FORMS)[number];

/** What a table is to hold, and how it is written. Plain data, for threads and the manifest. */
export interface Wanted {
  /** Every strategy in the place of the usual figures. */
  readonly strategies: StrategiesWish | null;
  readonly intervals: IntervalWish | null;
  /** Whose balance of the spray. */
  readonly spray: Front | null;
  readonly form: Form;
}

/** Makes the columns that are wanted; the code for what is not is not loaded. */
export async function makerOf({ strategies, intervals, spray }: Wanted): Promise<Maker> {
  const figures = figuresFor(strategies);
  const makers = [figureColumns(figures)];
  if (intervals) makers.push((await import('./interval-columns.ts')).intervalColumns(intervals, figures));
  if (spray) makers.push((await import('./balance-columns.ts')).balanceColumns(spray));
  return sideBySide(makers);
}
