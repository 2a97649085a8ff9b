import { isRefused, type Answer, type Given, type Quantity } from '../working/answer.ts';
import { studentT } from './survey.ts';

/** Measured values with their standard errors, and the correlation of one pair of them. */
export interface Errors {
  readonly of: ReadonlyMap<Given, number>;
  readonly pair?: { readonly a: Given; readonly b: Given; readonly correlation: number };
  /** Factor from standard error to half interval: 1.96, or Student's t where the number of trees is known. */
  readonly coverage: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
  /** Share of the variance that each measured value brings, by its path in the document; without the covariance. */
  readonly shares: ReadonlyMap<string, number>;
}

export const coverageFor = (trees: number | undefined): number =>
  trees !== undefined && trees >= 2 ? studentT(0.95, Math.floor(trees) - 1) : 1.959963984540054;

/**
 * 95 % interval of a figure, by first-order propagation through its own working: the partial derivative of each formula, chained
 * from the figure down to the measured values, with the covariance of the pair. GUM 2008 clause 5.2 (from memory).
 * `null` where nothing that the figure rests on has an error.
 */
export function intervalOf(answer: Answer, errors: Errors): Interval | null {
  if (isRefused(answer) || errors.of.size === 0) return null;
  const gradient = slopes(answer, errors.of, new Map());
  let variance = 0;
  const parts = new Map<string, number>();
  for (const [leaf, slope] of gradient) {
    const part = (slope * (errors.of.get(leaf) ?? 0)) ** 2;
    if (part > 0) parts.set(leaf.path ?? '', part);
    variance += part;
  }
  if (errors.pair) {
    const { a, b, correlation } = errors.pair;
    variance += 2 * correlation * (gradient.get(a) ?? 0) * (gradient.get(b) ?? 0) * (errors.of.get(a) ?? 0) * (errors.of.get(b) ?? 0);
  }
  if (!(variance > 0)) return null;
  const standardError = Math.sqrt(variance);
  const half = errors.coverage * standardError;
  const total = [...parts.values()].reduce((s, p) => s + p, 0);
  return {
    low: answer.value - half,
    high: answer.value + half,
    standardError,
    shares: new Map([...parts].map(([path, p]) => [path, p / total]))
  };
}

type Slopes = ReadonlyMap<Given, number>;

/** Derivative of a quantity by each measured leaf under it. */
function slopes(q: Quantity, leaves: ReadonlyMap<Given, number>, known: Map<Quantity, Slopes>): Slopes {
  const before = known.get(q);
  if (before) return before;
  const result = new Map<Given, number>();
  if (q.kind === 'given') {
    if (leaves.has(q)) result.set(q, 1);
  } else {
    const values: Record<string, number> = {};
    for (const symbol in q.inputs) values[symbol] = q.inputs[symbol]!.value;
    for (const symbol in q.inputs) {
      const below = slopes(q.inputs[symbol]!, leaves, known);
      if (below.size === 0) continue;
      const x = values[symbol]!;
      const step = Math.max(Math.abs(x), 1e-3) * 1e-5;
      const rise = q.formula.compute({ ...values, [symbol]: x + step }) - q.formula.compute({ ...values, [symbol]: x - step });
      for (const [leaf, slope] of below) result.set(leaf, (result.get(leaf) ?? 0) + (slope * rise) / (2 * step));
    }
  }
  known.set(q, result);
  return result;
}
