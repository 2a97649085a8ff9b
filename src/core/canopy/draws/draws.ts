import type { CanopyErrors } from '../types.ts';
import { philox, unit, type Words } from './random.ts';

/** Means of what is measured of a canopy, m. */
export interface Means {
  readonly heightM: number;
  readonly skirtM: number;
  readonly widthM: number;
  readonly rowSpacingM: number;
}

/** Room for draws; as many are made as the lists are long. */
export type Drawn = Readonly<Record<keyof Means, Float64Array<ArrayBuffer>>>;
export const roomFor = (draws: number): Drawn => ({
  heightM: new Float64Array(draws),
  skirtM: new Float64Array(draws),
  widthM: new Float64Array(draws),
  rowSpacingM: new Float64Array(draws)
});

/** Which random numbers are used: a seed for all canopies, and the canopy's own number. Both whole, 0 … 2⁵³ − 1. */
export interface Stream {
  readonly seed: number;
  readonly of: number;
}

/** A draw that cannot be is drawn anew, at most so many times in all; then no interval is told. */
export const MOST_TRIES = 100;

const TWO_32 = 0x100000000;
/** Blocks of random words that one try may use: the first for the measurements, the others for the t distribution. */
const BLOCKS = 256;

const words: Words = { a: 0, b: 0, c: 0, d: 0 };

/**
 * Draws canopies from the standard errors of their means. Normal numbers by Box & Muller 1958, four from each block of random words;
 * height and width go together by their correlation (Cholesky factor of two). With the number of trees the draws are of Student's
 * t with trees − 1 degrees of freedom, one divisor √(χ²/ν) for all four, so that a sum of them is a t as well: the interval of a linear
 * figure is then the analytic one. Distributions as JCGM 101:2008 clause 6.4 gives them for a mean and its standard error (from memory).
 * A canopy that cannot be (width or spacing not above 0, skirt below the ground or not below the top) is drawn anew.
 * @param errors standard errors ≥ 0 in m, missing ones 0; correlation −1…1; trees ≥ 2
 * @returns how many draws were thrown away; null where one draw failed `MOST_TRIES` times, and `into` is then worth nothing
 */
export function drawCanopies(means: Means, errors: CanopyErrors, { seed, of }: Stream, into: Drawn): number | null {
  const { heightSeM = 0, skirtSeM = 0, widthSeM = 0, rowSpacingSeM = 0, heightWidthCorrelation: together = 0, trees } = errors;
  const apart = Math.sqrt(1 - together * together);
  const nu = trees === undefined ? Infinity : Math.floor(trees) - 1;
  const [key0, key1] = halves(seed);
  const [line0, line1] = halves(of);
  const count = into.heightM.length;
  let redrawn = 0;
  for (let i = 0; i < count; i++) {
    for (let attempt = 0; ; attempt++) {
      if (attempt === MOST_TRIES) return null;
      block(i, attempt * BLOCKS, line0, line1, key0, key1);
      const { a, b, c, d } = words;
      const r1 = radius(a);
      const r2 = radius(c);
      const angle1 = 2 * Math.PI * unit(b);
      const angle2 = 2 * Math.PI * unit(d);
      const first = r1 * Math.cos(angle1);
      const scale = nu === Infinity ? 1 : Math.sqrt(nu / chiSquare(nu, i, attempt * BLOCKS, line0, line1, key0, key1));
      const height = means.heightM + heightSeM * scale * first;
      const width = means.widthM + widthSeM * scale * (together * first + apart * r1 * Math.sin(angle1));
      const skirt = means.skirtM + skirtSeM * scale * r2 * Math.cos(angle2);
      const spacing = means.rowSpacingM + rowSpacingSeM * scale * r2 * Math.sin(angle2);
      if (width > 0 && spacing > 0 && skirt >= 0 && skirt < height) {
        into.heightM[i] = height;
        into.skirtM[i] = skirt;
        into.widthM[i] = width;
        into.rowSpacingM[i] = spacing;
        break;
      }
      redrawn++;
    }
  }
  return redrawn;
}

const halves = (whole: number): [number, number] => [whole % TWO_32, Math.floor(whole / TWO_32)];
const radius = (word: number): number => Math.sqrt(-2 * Math.log(unit(word)));

/** The random words of one block into `words`. */
function block(draw: number, number: number, line0: number, line1: number, key0: number, key1: number): void {
  words.a = draw;
  words.b = number;
  words.c = line0;
  words.d = line1;
  philox(words, key0, key1);
}

/** χ² with ν degrees of freedom: twice a gamma number of shape ν/2 by Marsaglia & Tsang 2000, a shape below 1 raised by their last remark. */
function chiSquare(nu: number, draw: number, before: number, line0: number, line1: number, key0: number, key1: number): number {
  const raised = nu < 2;
  const d = nu / 2 + (raised ? 1 : 0) - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  // About one block in twenty is refused at worst: the blocks of a try do not run out.
  for (let k = 1; ; k++) {
    block(draw, before + k, line0, line1, key0, key1);
    const x = radius(words.a) * Math.cos(2 * Math.PI * unit(words.b));
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(unit(words.c)) < 0.5 * x * x + d * (1 - v + Math.log(v))) return 2 * d * v * (raised ? unit(words.d) ** (2 / nu) : 1);
  }
}
