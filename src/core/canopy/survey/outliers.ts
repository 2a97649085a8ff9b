import { mean, median } from '../laser/statistics.ts';

/** Scaled deviations from the median beyond which a tree stands out: Iglewicz & Hoaglin 1993, from memory. */
export const OUTLIER_BEYOND = 3.5;
/** Under so many trees nobody can be said to stand out. Our choice. */
export const OUTLIER_FEWEST = 5;
/** Standard deviations in one median absolute deviation, and in one mean absolute deviation, of a normal distribution (exact; the latter √(π/2)). */
const PER_MEDIAN = 1.482602218505602;
const PER_MEAN = Math.sqrt(Math.PI / 2);

/**
 * How far each value lies from the median, in scaled median absolute deviations: (x − median)/(1.4826·MAD). Where more than half of the
 * values are the same that deviation is 0, and the mean absolute deviation stands for it. Iglewicz & Hoaglin 1993, How to detect and
 * handle outliers; both from memory. Two huge values hide neither each other nor a third, as they would beside mean and deviation.
 * @returns 0 for all where there are fewer than five, or where all are the same
 */
export function outlierScores(values: readonly number[]): { readonly median: number; readonly scores: readonly number[] } {
  const middle = median(values);
  const away = values.map((v) => Math.abs(v - middle));
  const scale = PER_MEDIAN * median(away) || PER_MEAN * mean(away);
  return { median: middle, scores: values.map((v) => (values.length < OUTLIER_FEWEST || scale === 0 ? 0 : (v - middle) / scale)) };
}
