/** A step of which every flow is a whole multiple, so that sums can be counted instead of measured. */
export interface Grid {
  /** In the unit of the values. */
  readonly step: number;
  /** The values lie on the grid as they are; otherwise they were rounded to it. */
  readonly exact: boolean;
}

/** Of the smallest value: what is left over by arithmetic in floating point, not by the table. */
const LEFT_OVER = 1e-6;
/** Steps up to the largest total that is searched: more would cost time and tell nothing that a jug could see. */
export const MOST_STEPS = 10_000;

/**
 * The grid of some positive values, where totals run up to `most`: their greatest common divisor, or, where they have none that leaves
 * few enough steps, a step of 1/10 000 of the largest total, to which they are rounded. With twenty nozzles that is within
 * 0.1 % of an average nozzle's flow, with fewer closer still: far finer than the 2 % of a jug and a watch.
 */
export function gridOf(values: readonly number[], most: number): Grid {
  const tolerance = Math.min(...values) * LEFT_OVER;
  let step = 0;
  for (const v of values) step = divisor(v, step, tolerance);
  const exact = most / step <= MOST_STEPS && values.every((v) => Math.abs(v - Math.round(v / step) * step) <= tolerance);
  return exact ? { step, exact } : { step: most / MOST_STEPS, exact };
}

/** Euclid's algorithm on lengths. */
function divisor(a: number, b: number, tolerance: number): number {
  while (b > tolerance) {
    const rest = a % b;
    [a, b] = [b, b - rest <= tolerance ? 0 : rest];
  }
  return a;
}
