import { figureColumns, USUAL } from './figure-columns.ts';
import type { Front } from './front.ts';
import type { IntervalWish } from './interval-wish.ts';
import { sideBySide, type Maker } from './maker.ts';

/** What a table is to hold beside the usual figures. Plain data, for threads and the manifest. */
export interface Wanted {
  readonly intervals: IntervalWish | null;
  /** Whose balance of the spray. */
  readonly spray: Front | null;
}
export const FIGURES_ALONE: Wanted = { intervals: null, spray: null };

/** Makes the columns that are wanted; the code for what is not is not loaded. */
export async function makerOf({ intervals, spray }: Wanted): Promise<Maker> {
  const makers = [figureColumns(USUAL)];
  if (intervals) makers.push((await import('./interval-columns.ts')).intervalColumns(intervals, USUAL));
  if (spray) makers.push((await import('./balance-columns.ts')).balanceColumns(spray));
  return sideBySide(makers);
}
