import { coverageInterval } from '#core/canopy/draws/coverage.ts';
import { drawCanopies, roomFor, type Drawn, type Means } from '#core/canopy/draws/draws.ts';
import { slopeStep, standardError } from '#core/canopy/draws/first-order.ts';
import type { CanopyErrors } from '#core/canopy/types.ts';
import { coverageFor } from '#core/canopy/uncertainty.ts';
import type { CanopyBatch } from '#job/csv/batch.ts';
import { ERROR_QUANTITIES } from '#job/csv/columns.ts';
import { allFigures, FIGURE_NAMES, figuresAt, type Canopies } from './columns.ts';
import type { IntervalWish } from './interval-wish.ts';

const MEASURED = ['heightM', 'skirtM', 'widthM', 'rowSpacingM'] as const satisfies readonly (keyof Means)[];
const ERROR_OF = { heightM: 'heightSeM', skirtM: 'skirtSeM', widthM: 'widthSeM', rowSpacingM: 'rowSpacingSeM' } as const satisfies Record<keyof Means, keyof CanopyErrors>;

/** More digits than these would pretend: with a thousand draws an end is uncertain by some 4 % of the half interval. */
const DIGITS = 6;

const ANALYTIC = ['low', 'high'];
const DRAWN = ['mc_low', 'mc_high'];
export const intervalHeader = ({ draws }: IntervalWish): string =>
  [...FIGURE_NAMES.flatMap((name) => [...ANALYTIC, ...(draws ? DRAWN : [])].map((end) => `${name}_${end}`)), ...(draws ? ['draws_redrawn'] : [])].join(',');

/** The cells of one canopy, and whether its draws were given up. */
export interface IntervalCells {
  readonly text: string;
  readonly givenUp: boolean;
}

/** Works out the cells behind the figures of every canopy; its lists are used again and again. */
export function intervalCells({ draws, seed }: IntervalWish): (batch: CanopyBatch, i: number) => IntervalCells {
  const sides = canopiesOf(roomFor(1 + 2 * MEASURED.length));
  const atSides = listsFor(sides);
  const ends = draws ? endsOfDraws(draws, seed) : null;

  /** Figures of the canopy itself, and on both sides of each measurement. */
  function around(means: Means): void {
    MEASURED.forEach((m, k) => {
      sides.measured[m].fill(means[m]);
      const step = slopeStep(means[m]);
      sides.measured[m][1 + 2 * k]! += step;
      sides.measured[m][2 + 2 * k]! -= step;
    });
    allFigures(atSides, sides);
  }
  const slope = (figure: Float64Array, means: Means, k: number): number => (figure[1 + 2 * k]! - figure[2 + 2 * k]!) / (2 * slopeStep(means[MEASURED[k]!]));

  return (batch, i) => {
    const means: Means = { heightM: batch.treeHeightM[i]!, skirtM: batch.skirtHeightM[i]!, widthM: batch.canopyWidthM[i]!, rowSpacingM: batch.rowSpacingM[i]! };
    const errors = errorsAt(batch, i);
    const coverage = coverageFor(errors.trees);
    const rests = FIGURE_NAMES.map((_, o) => MEASURED.some((m, k) => errors[ERROR_OF[m]] !== undefined && RESTS_ON[o]![k]));
    asIn(sides, batch, i);
    around(means);

    const wanted = ends !== null && rests.includes(true);
    const drawn = wanted ? ends(means, errors, batch, i) : null;
    const cells: (number | '')[] = [];
    for (let o = 0; o < FIGURE_NAMES.length; o++) {
      if (!rests[o]) cells.push('', '');
      else {
        const figure = atSides[o]!;
        const half = coverage * standardError([slope(figure, means, 0), slope(figure, means, 1), slope(figure, means, 2), slope(figure, means, 3)], errors);
        cells.push(figure[0]! - half, figure[0]! + half);
      }
      if (ends) cells.push(...(rests[o] && drawn ? [rounded(drawn.low(o)), rounded(drawn.high(o))] : (['', ''] as const)));
    }
    if (ends) cells.push(drawn?.redrawn ?? '');
    return { text: cells.join(','), givenUp: wanted && drawn === null };
  };
}

/** Ends of the drawn interval of every figure, by its number. */
interface Ends {
  readonly low: (figure: number) => number;
  readonly high: (figure: number) => number;
  readonly redrawn: number;
}

/**
 * Draws a canopy and ranks its figures; null where the draws are given up. Figures that put all canopies in the same order have their ends
 * at the same draws: only one of each kind is worked out for every draw and ranked, the others for the two draws at its ends.
 */
function endsOfDraws(draws: number, seed: number): (means: Means, errors: CanopyErrors, batch: CanopyBatch, i: number) => Ends | null {
  const drawn = canopiesOf(roomFor(draws));
  const samples = LEADERS.map(() => new Float64Array(draws));
  const ranked = new Float64Array(draws);
  const two = new Float64Array(2);
  const bounds = canopiesOf(roomFor(2 * LEADERS.length));
  const atBounds = listsFor(bounds);
  return (means, errors, batch, i) => {
    const redrawn = drawCanopies(means, errors, { seed, of: batch.line[i]! }, drawn.measured);
    if (redrawn === null) return null;
    asIn(drawn, batch, i);
    leading(samples, drawn);
    samples.forEach((sample, g) => {
      ranked.set(sample);
      coverageInterval(ranked, two);
      two.forEach((end, side) => {
        const at = sample.indexOf(end);
        for (const m of MEASURED) bounds.measured[m][2 * g + side] = drawn.measured[m][at]!;
      });
    });
    asIn(bounds, batch, i);
    allFigures(atBounds, bounds);
    return { low: (o) => atBounds[o]![2 * KIND[o]!]!, high: (o) => atBounds[o]![2 * KIND[o]! + 1]!, redrawn };
  };
}

const rounded = (value: number): number => Number(value.toPrecision(DIGITS));

/** Lists of measurements as a batch of canopies. */
function canopiesOf(measured: Drawn) {
  const count = measured.heightM.length;
  return {
    count,
    measured,
    block: [],
    treeHeightM: measured.heightM,
    skirtHeightM: measured.skirtM,
    canopyWidthM: measured.widthM,
    rowSpacingM: measured.rowSpacingM,
    usDensityGalPer1000Ft3: new Float64Array(count),
    ladM2PerM3: new Float64Array(count),
    filledFraction: new Float64Array(count)
  } satisfies Canopies & { measured: Drawn };
}

/** What has no error is that of canopy `i`, for all. */
function asIn(canopies: Canopies, batch: CanopyBatch, i: number): void {
  for (const q of ['usDensityGalPer1000Ft3', 'ladM2PerM3', 'filledFraction'] as const) canopies[q].fill(batch[q][i]!);
}

const listsFor = ({ count }: Pick<Canopies, 'count'>): readonly Float64Array<ArrayBuffer>[] => FIGURE_NAMES.map(() => new Float64Array(count));

function errorsAt(batch: CanopyBatch, i: number): CanopyErrors {
  const errors: Record<string, number> = {};
  for (const q of ERROR_QUANTITIES) {
    const value = batch.errors![q][i]!;
    if (!Number.isNaN(value)) errors[q] = value;
  }
  return errors;
}

const ORDINARY: Means = { heightM: 3, skirtM: 0.5, widthM: 1.5, rowSpacingM: 4 };

/** Canopies with nothing told but their measurements. */
function silent(measured: Drawn) {
  const canopies = canopiesOf(measured);
  canopies.usDensityGalPer1000Ft3.fill(NaN);
  canopies.ladM2PerM3.fill(NaN);
  canopies.filledFraction.fill(1);
  return canopies;
}

/** Which measurements each figure rests on: those whose change moves it, in front of an ordinary canopy. */
const RESTS_ON: readonly (readonly boolean[])[] = (() => {
  const canopies = silent(roomFor(1 + MEASURED.length));
  MEASURED.forEach((m, k) => {
    canopies.measured[m].fill(ORDINARY[m]);
    canopies.measured[m][1 + k]! *= 1.1;
  });
  const figures = listsFor(canopies);
  allFigures(figures, canopies);
  return figures.map((f) => MEASURED.map((_, k) => f[1 + k] !== f[0]));
})();

/** Figures by kind: those of a kind put canopies of all sorts in the same order. The first of a kind leads it. */
const { LEADERS, KIND } = (() => {
  const canopies = silent(roomFor(500));
  drawCanopies(ORDINARY, { heightSeM: 1, skirtSeM: 0.5, widthSeM: 0.7, rowSpacingSeM: 1 }, { seed: 0, of: 0 }, canopies.measured);
  const figures = listsFor(canopies);
  allFigures(figures, canopies);
  const orders = figures.map((f) => Array.from(f.keys()).sort((a, b) => f[a]! - f[b]!));
  const leaders: number[] = [];
  // Two that differ by rounding alone may swap canopies that are as good as equal: what counts is that no figure falls along the other's order.
  const rises = (f: Float64Array, order: readonly number[]): boolean => order.every((at, n) => n === 0 || f[at]! >= f[order[n - 1]!]! * (1 - 1e-12));
  const kind = figures.map((f, o) => {
    const known = leaders.findIndex((l) => rises(f, orders[l]!) && rises(figures[l]!, orders[o]!));
    return known >= 0 ? known : leaders.push(o) - 1;
  });
  return { LEADERS: leaders, KIND: kind };
})();
export const KINDS: readonly number[] = KIND;
const leading = figuresAt(LEADERS);
