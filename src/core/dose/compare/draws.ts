import { coverageInterval, LEAST_DRAWS } from '../../canopy/draws/coverage.ts';
import { drawCanopies, MOST_TRIES, roomFor } from '../../canopy/draws/draws.ts';
import { philox, unit, type Words } from '../../canopy/draws/random.ts';
import type { Interval } from '../../canopy/uncertainty.ts';
import { evaluate } from '../../setting/evaluate.ts';
import type { Document } from '../../setting/document.ts';
import { refused, type Refused } from '../../working/answer.ts';
import { BELIEFS, type Belief } from './beliefs.ts';
import { rowsOn } from './rows.ts';
import { sceneOf } from './scene.ts';
import { Variable, variedOf, type Quantities } from './vary.ts';

/** One figure of one strategy over all draws. */
export interface Drawn {
  /** Of the row. */
  readonly id: string;
  readonly quantity: Quantities;
  readonly mean: number;
  /** Standard deviation of the draws, over n − 1. */
  readonly sd: number;
  /** Ends of the probabilistically symmetric 95 % interval. */
  readonly low: number;
  readonly high: number;
  /** By first-order propagation of the measurements' errors alone. */
  readonly analytic: Interval | null;
  readonly bins: { readonly from: number; readonly width: number; readonly counts: readonly number[] };
  /** Draws in which the formula gave no figure, left out of all above; only formulas of the user's own have such. */
  readonly lost: number;
  /** Canopies that could not be and were drawn anew. */
  readonly redrawn: number;
}

export interface DrawWish {
  /** How many: `LEAST_DRAWS` to `MOST_DRAWS`. */
  readonly draws: number;
  /** Whole, 0 … 2⁵³ − 1: the same seed draws the same. */
  readonly seed: number;
  /** Draw the assumptions that have a range of belief as well, evenly over it. The draws are then wider than the analytic interval. */
  readonly assumptions?: boolean;
}

export const MOST_DRAWS = 100_000;
/** Between two words of progress. */
const AT_ONCE = 2000;
const MOST_BINS = 60;

/**
 * Draws the measurements of a block from their standard errors (`drawCanopies`), works every strategy out on each and tells how its figures
 * spread: the Monte Carlo beside first-order propagation, JCGM 101:2008 (from memory). The outline keeps the share of its box, as for the analytic
 * interval. Figures that rest on nothing uncertain are left out. Yields progress, 0…1.
 * Refuses by name what `evaluate` refuses, a number of draws or a seed that is none, and a block of which no error was told.
 */
export function* drawSteps(document: Document, blockId: string, rungId: string, { draws, seed, assumptions = false }: DrawWish): Generator<number, readonly Drawn[] | Refused> {
  const result = evaluate(document, blockId, rungId);
  if ('kind' in result) return result;
  if (!(Number.isInteger(draws) && draws >= LEAST_DRAWS && draws <= MOST_DRAWS)) return refused('draws-out-of-range', 'draws', { value: draws, least: LEAST_DRAWS, most: MOST_DRAWS });
  if (!(Number.isSafeInteger(seed) && seed >= 0)) return refused('seed-not-whole', 'seed', { value: seed });

  const scene = sceneOf(document, result);
  const rows = rowsOn(scene, result.canopy);
  const variable = new Variable(result.canopy.errors, assumptions);
  const figures = variedOf(variable, rows, scene, result.canopy);
  if (figures.length === 0) return refused('nothing-uncertain', 'canopy.errors');

  const { H, Hs, W, R } = result.canopy.figures;
  const canopies = roomFor(draws);
  const redrawn = drawCanopies({ heightM: H.value, skirtM: Hs.value, widthM: W.value, rowSpacingM: R.value }, result.rung.canopy.errors ?? {}, { seed, of: 0 }, canopies);
  if (redrawn === null) return refused('draws-given-up', 'canopy.errors', { tries: MOST_TRIES });
  const listOf = new Map<unknown, Float64Array>([[H, canopies.heightM], [Hs, canopies.skirtM], [W, canopies.widthM], [R, canopies.rowSpacingM]]);
  const streams = [...BELIEFS.keys()];
  const leaves = variable.leaves.map((leaf) => ({
    leaf,
    values: leaf.kind === 'measured' ? listOf.get(leaf.given)! : evenly(leaf.belief, 1 + streams.indexOf(leaf.id), seed, draws)
  }));

  const samples = figures.map(() => new Float64Array(draws));
  for (let i = 0; i < draws; i++) {
    for (const { leaf, values } of leaves) variable.set(leaf, values[i]!);
    variable.run();
    for (let f = 0; f < figures.length; f++) samples[f]![i] = figures[f]!.value();
    if ((i + 1) % AT_ONCE === 0) yield (i + 1) / draws;
  }
  return figures.flatMap(({ row, quantity }, f): Drawn[] => {
    const known = samples[f]!.filter(Number.isFinite);
    return known.length < LEAST_DRAWS ? [] : [{ id: row.id, quantity, analytic: row.intervals[quantity], lost: draws - known.length, redrawn, ...spread(known) }];
  });
}

const words: Words = { a: 0, b: 0, c: 0, d: 0 };
const TWO_32 = 0x100000000;
/** Draws spread evenly over a range, from a stream of their own: the canopies are stream 0. */
const evenly = ({ low, high }: Belief, stream: number, seed: number, draws: number): Float64Array =>
  Float64Array.from({ length: draws }, (_, draw) => {
    Object.assign(words, { a: draw, b: 0, c: stream, d: 0 });
    philox(words, seed % TWO_32, Math.floor(seed / TWO_32));
    return low + (high - low) * unit(words.a);
  });

/** Mean, deviation, interval and bins of draws; their order is lost. */
function spread(v: Float64Array<ArrayBuffer>): Pick<Drawn, 'mean' | 'sd' | 'low' | 'high' | 'bins'> {
  const n = v.length;
  const mean = v.reduce((sum, x) => sum + x, 0) / n;
  const sd = Math.sqrt(v.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1));
  const bins = binned(v);
  const ends = new Float64Array(2);
  coverageInterval(v, ends);
  return { mean, sd, low: ends[0]!, high: ends[1]!, bins };
}

/** Even bins from the least to the most, as wide as Freedman & Diaconis 1981 take them, 2·IQR·n^(−1/3), no more than `MOST_BINS`. */
function binned(v: Float64Array<ArrayBuffer>): Drawn['bins'] {
  const sorted = v.toSorted();
  const n = sorted.length;
  const [least, most] = [sorted[0]!, sorted[n - 1]!];
  const quartile = (q: number) => sorted[Math.round(q * (n - 1))]!;
  const wished = (2 * (quartile(0.75) - quartile(0.25))) / Math.cbrt(n);
  const count = most > least ? Math.max(1, Math.min(MOST_BINS, wished > 0 ? Math.ceil((most - least) / wished) : MOST_BINS)) : 1;
  const width = most > least ? (most - least) / count : 1;
  const counts = Array.from({ length: count }, () => 0);
  for (const x of sorted) counts[Math.min(count - 1, Math.floor((x - least) / width))]!++;
  return { from: least, width, counts };
}
