import { coverageInterval } from '#core/canopy/draws/coverage.ts';
import { drawCanopies, roomFor, type Drawn, type Means } from '#core/canopy/draws/draws.ts';
import { slopeStep, standardError } from '#core/canopy/draws/first-order.ts';
import type { CanopyErrors } from '#core/canopy/types.ts';
import { coverageFor } from '#core/canopy/uncertainty.ts';
import { doseRange, fixedDose } from '#core/dose/label-rules.ts';
import { figuresOf, type Canopies } from '#core/dose/table/columns.ts';
import { BATCH_ROWS, type Batch } from '#job/csv/batch.ts';
import { ERROR_QUANTITIES } from '#job/csv/columns.ts';
import { shortened } from '#job/problem.ts';
import { intervalCli as words } from '#words/en/interval-cli.ts';
import type { Figures } from './figure-columns.ts';
import type { IntervalWish } from './interval-wish.ts';
import type { Maker, Told } from './maker.ts';

const MEASURED = ['heightM', 'skirtM', 'widthM', 'rowSpacingM'] as const satisfies readonly (keyof Means)[];
const SYMBOL = { heightM: 'H', skirtM: 'Hs', widthM: 'W', rowSpacingM: 'R' } as const satisfies Record<keyof Means, string>;
const ERROR_OF = { heightM: 'heightSeM', skirtM: 'skirtSeM', widthM: 'widthSeM', rowSpacingM: 'rowSpacingSeM' } as const satisfies Record<keyof Means, keyof CanopyErrors>;

/** More digits than these would pretend: with a thousand draws an end is uncertain by some 4 % of the half interval. */
const DIGITS = 6;

const ANALYTIC = ['low', 'high'];
const DRAWN = ['mc_low', 'mc_high'];
export const intervalNames = ({ draws }: IntervalWish, { outputs }: Figures): readonly string[] =>
  [...outputs.flatMap(({ name }) => [...ANALYTIC, ...(draws ? DRAWN : [])].map((end) => `${name}_${end}`)), ...(draws ? ['draws_redrawn'] : [])];

/** The interval of every figure, from the errors that the rows state. Told are canopies whose draws were given up. */
export function intervalColumns(wish: IntervalWish, figures: Figures): Maker {
  const names = intervalNames(wish, figures);
  const columns = names.map(() => new Float64Array(BATCH_ROWS));
  const fill = canopyIntervals(wish, figures);
  const { label } = figures.options;
  const bounds = label && doseRange(label, fixedDose(label));
  const own = figuresOf(figures.outputs, figures.options);
  const cells = wish.draws ? ANALYTIC.length + DRAWN.length : ANALYTIC.length;
  return {
    names,
    mayLack: names.map(() => true),
    make(batch) {
      const told: Told[] = [];
      own.take(batch);
      for (let i = 0; i < batch.count; i++) {
        if (!fill(columns, batch, i)) told.push({ line: batch.line[i]!, text: words.givenUp(shortened(batch.block[i]!)) });
        own.columns.forEach((figure, o) => {
          const dosed = bounds && 'says' in figures.outputs[o]! && figures.outputs[o].says === 'dose';
          for (let c = 0; c < cells; c++) {
            const end = columns[o * cells + c]!;
            // What is refused has no interval, and that of a dose ends where the label's rules end it.
            if (Number.isNaN(figure[i])) end[i] = NaN;
            else if (dosed) end[i] = Math.min(Math.max(end[i]!, bounds[0]), bounds[1]);
          }
        });
      }
      return { columns, told };
    }
  };
}

/** Fills the cells of one canopy, whose lists are used again and again. False where its draws were given up. */
function canopyIntervals({ draws, seed }: IntervalWish, figures: Figures): (columns: readonly Float64Array[], batch: Batch, i: number) => boolean {
  const sides = canopiesOf(roomFor(1 + 2 * MEASURED.length));
  const { columns: atSides, take, restsOn } = figuresOf(figures.outputs, { ...figures.options, ranges: false });
  const ends = draws ? endsOfDraws(draws, seed, figures) : null;

  /** Figures of the canopy itself, and on both sides of each measurement. */
  function around(means: Means): void {
    MEASURED.forEach((m, k) => {
      sides.measured[m].fill(means[m]);
      const step = slopeStep(means[m]);
      sides.measured[m][1 + 2 * k]! += step;
      sides.measured[m][2 + 2 * k]! -= step;
    });
    take(sides);
  }
  const slope = (figure: Float64Array, means: Means, k: number): number => (figure[1 + 2 * k]! - figure[2 + 2 * k]!) / (2 * slopeStep(means[MEASURED[k]!]));

  return (columns, batch, i) => {
    const means: Means = { heightM: batch.treeHeightM[i]!, skirtM: batch.skirtHeightM[i]!, widthM: batch.canopyWidthM[i]!, rowSpacingM: batch.rowSpacingM[i]! };
    const errors = errorsAt(batch, i);
    const coverage = coverageFor(errors.trees);
    const rests = restsOn.map((symbols) => MEASURED.some((m) => errors[ERROR_OF[m]] !== undefined && symbols.has(SYMBOL[m])));
    asIn(sides, batch, i);
    around(means);

    const wanted = ends !== null && rests.includes(true);
    const drawn = wanted ? ends(means, errors, batch, i) : null;
    let at = 0;
    const cell = (value: number): void => void (columns[at++]![i] = value);
    rests.forEach((has, o) => {
      const figure = atSides[o]!;
      const half = has ? coverage * standardError([slope(figure, means, 0), slope(figure, means, 1), slope(figure, means, 2), slope(figure, means, 3)], errors) : NaN;
      cell(figure[0]! - half);
      cell(figure[0]! + half);
      if (!ends) return;
      cell(has && drawn ? rounded(drawn.low(o)) : NaN);
      cell(has && drawn ? rounded(drawn.high(o)) : NaN);
    });
    if (ends) cell(drawn?.redrawn ?? NaN);
    return !wanted || drawn !== null;
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
function endsOfDraws(draws: number, seed: number, { outputs, options }: Figures): (means: Means, errors: CanopyErrors, batch: Batch, i: number) => Ends | null {
  const { leaders, kind } = kindsOf({ outputs, options });
  const drawn = canopiesOf(roomFor(draws));
  const leading = figuresOf(leaders.map((l) => outputs[l]!), options);
  const samples = leaders.map(() => new Float64Array(draws));
  const ranked = new Float64Array(draws);
  const two = new Float64Array(2);
  const bounds = canopiesOf(roomFor(2 * leaders.length));
  const atBounds = figuresOf(outputs, options);
  return (means, errors, batch, i) => {
    const redrawn = drawCanopies(means, errors, { seed, of: batch.line[i]! }, drawn.measured);
    if (redrawn === null) return null;
    asIn(drawn, batch, i);
    for (let from = 0; from < draws; ) {
      const count = leading.take(drawn, from);
      samples.forEach((sample, g) => sample.set(leading.columns[g]!.subarray(0, count), from));
      from += count;
    }
    samples.forEach((sample, g) => {
      ranked.set(sample);
      coverageInterval(ranked, two);
      two.forEach((end, side) => {
        const at = sample.indexOf(end);
        for (const m of MEASURED) bounds.measured[m][2 * g + side] = drawn.measured[m][at]!;
      });
    });
    asIn(bounds, batch, i);
    atBounds.take(bounds);
    return { low: (o) => atBounds.columns[o]![2 * kind[o]!]!, high: (o) => atBounds.columns[o]![2 * kind[o]! + 1]!, redrawn };
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
function asIn(canopies: Canopies, batch: Batch, i: number): void {
  for (const q of ['usDensityGalPer1000Ft3', 'ladM2PerM3', 'filledFraction'] as const) canopies[q].fill(batch[q][i]!);
}

function errorsAt(batch: Batch, i: number): CanopyErrors {
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

/** Figures by kind: those of a kind put canopies of all sorts in the same order. The first of a kind leads it. */
export function kindsOf({ outputs, options }: Figures): { readonly leaders: readonly number[]; readonly kind: readonly number[] } {
  const canopies = silent(roomFor(500));
  drawCanopies(ORDINARY, { heightSeM: 1, skirtSeM: 0.5, widthSeM: 0.7, rowSpacingSeM: 1 }, { seed: 0, of: 0 }, canopies.measured);
  const { columns, take } = figuresOf(outputs, options);
  take(canopies);
  const figures = columns.map((c) => c.subarray(0, canopies.count));
  const orders = figures.map((f) => Array.from(f.keys()).sort((a, b) => f[a]! - f[b]!));
  const leaders: number[] = [];
  // Two that differ by rounding alone may swap canopies that are as good as equal: what counts is that no figure falls along the other's order.
  const rises = (f: Float64Array, order: readonly number[]): boolean => order.every((at, n) => n === 0 || f[at]! >= f[order[n - 1]!]! * (1 - 1e-12));
  const kind = figures.map((f, o) => {
    const known = isOurs(outputs[o]!) ? leaders.findIndex((l) => isOurs(outputs[l]!) && rises(f, orders[l]!) && rises(figures[l]!, orders[o]!)) : -1;
    return known >= 0 ? known : leaders.push(o) - 1;
  });
  return { leaders, kind };
}

/** A formula of the user may bend where no canopy was tried: it leads itself. */
const isOurs = ({ strategy }: Figures['outputs'][number]): boolean => !strategy?.id.startsWith('own.');
