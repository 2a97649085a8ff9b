import { finiteError, studentT } from '../survey.ts';
import { mean } from '../laser/statistics.ts';

/** How a measurement spreads over trees. What one tree alone cannot tell is null. */
export interface Spread {
  readonly trees: number;
  readonly mean: number;
  /** Of a single tree, with n − 1. */
  readonly standardDeviation: number | null;
  readonly cv: number | null;
  /** Of the mean; in a block of known size less by √(1 − n/N). */
  readonly standardError: number | null;
  /** 95 % interval of the mean, Student's t. */
  readonly low: number | null;
  readonly high: number | null;
}

/** The 95 % interval that goes with a mean, its standard error and its degrees of freedom. */
export function spreadFrom(trees: number, m: number, standardDeviation: number | null, standardError: number | null, nu: number): Spread {
  const half = standardError === null ? null : standardError === 0 ? 0 : studentT(0.95, nu) * standardError;
  return {
    trees,
    mean: m,
    standardDeviation,
    cv: standardDeviation === null ? null : standardDeviation / m,
    standardError,
    low: half === null ? null : m - half,
    high: half === null ? null : m + half
  };
}

/**
 * Spread of one measurement over n trees out of a block of N. SE = s/√n, in a finite block SE·√(1 − n/N) (canopy sampling, derived);
 * interval by Student's t with n − 1 (Student 1908, from memory).
 * @param values one or more, same unit as the result @param blockTrees not fewer than `values`
 */
export function spreadOf(values: readonly number[], blockTrees: number | null): Spread {
  const n = values.length;
  const m = mean(values);
  if (n < 2) return spreadFrom(n, m, null, blockTrees === n ? 0 : null, 0);
  const s = deviation(values);
  const se = s / Math.sqrt(n);
  return spreadFrom(n, m, s, blockTrees === null ? se : finiteError(se, n, blockTrees), n - 1);
}

const deviation = (values: readonly number[]): number => {
  const m = mean(values);
  // Values that are all the same differ from their mean by rounding alone.
  return values.every((v) => v === values[0]) ? 0 : Math.sqrt(values.reduce((s, v) => s + (v - m) ** 2, 0) / (values.length - 1));
};

/** Correlation of pairs (Pearson); null under three of them, or where one side does not vary. */
export function correlation(a: readonly number[], b: readonly number[]): number | null {
  const n = a.length;
  const [sa, sb] = [n < 3 ? 0 : deviation(a), n < 3 ? 0 : deviation(b)];
  if (!(sa > 0 && sb > 0)) return null;
  const [ma, mb] = [mean(a), mean(b)];
  const joint = a.reduce((s, v, i) => s + (v - ma) * (b[i]! - mb), 0) / (n - 1);
  return Math.min(Math.max(joint / (sa * sb), -1), 1);
}
