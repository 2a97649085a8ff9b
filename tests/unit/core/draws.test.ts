import fc from 'fast-check';
import jstat from 'jstat';
import * as ss from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { coverageInterval, coverageRanks } from '#core/canopy/draws/coverage.ts';
import { drawCanopies, MOST_TRIES, roomFor, type Drawn, type Means } from '#core/canopy/draws/draws.ts';
import { standardError } from '#core/canopy/draws/first-order.ts';
import { philox, unit } from '#core/canopy/draws/random.ts';
import type { CanopyErrors } from '#core/canopy/types.ts';

const MEANS: Means = { heightM: 3, skirtM: 0.6, widthM: 1.5, rowSpacingM: 4 };
const FOUR = { heightSeM: 0.1, skirtSeM: 0.05, widthSeM: 0.08, rowSpacingSeM: 0.03 } satisfies CanopyErrors;

function draw(errors: CanopyErrors, draws: number, seed = 7, of = 2, means = MEANS): { drawn: Drawn; redrawn: number | null } {
  const drawn = roomFor(draws);
  return { drawn, redrawn: drawCanopies(means, errors, { seed, of }, drawn) };
}
const standardised = (values: Float64Array, mean: number, se: number): number[] => [...values].map((v) => (v - mean) / se);

describe('random words', () => {
  // The test vectors that the authors of the generator give with it: counter, key, result.
  it.each([
    [[0, 0, 0, 0], [0, 0], [0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8]],
    [[0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff], [0xffffffff, 0xffffffff], [0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd]],
    [[0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344], [0xa4093822, 0x299f31d0], [0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1]]
  ])('of %j', ([a, b, c, d], [k0, k1], wanted) => {
    const at = { a: a!, b: b!, c: c!, d: d! };
    philox(at, k0!, k1!);
    expect([at.a, at.b, at.c, at.d]).toEqual(wanted);
  });
  it('lie inside 0 … 1 as numbers', () => {
    for (const word of [0, 1, 2 ** 31, 2 ** 32 - 1]) expect(unit(word) > 0 && unit(word) < 1).toBe(true);
  });
});

describe('draws', () => {
  it('are the same for ever for a seed and a line', () => {
    // From a script in another language that works with whole numbers of any size.
    const { drawn } = draw({ ...FOUR, heightWidthCorrelation: 0.5 }, 3);
    expect(Object.fromEntries(Object.entries(drawn).map(([k, v]) => [k, [...v].map((x) => Number(x.toFixed(9)))]))).toEqual({
      heightM: [3.020494272, 3.006581545, 2.98905685],
      skirtM: [0.610042918, 0.586112858, 0.558639726],
      widthM: [1.488898219, 1.528653081, 1.42848382],
      rowSpacingM: [4.040397857, 3.991596733, 3.980660033]
    });
    const { drawn: t } = draw({ ...FOUR, trees: 6 }, 3);
    expect([...t.heightM].map((x) => Number(x.toFixed(9)))).toEqual([3.025433462, 3.008009199, 2.985424521]);
  });
  it('do not depend on how many are made, nor on what was made before; on seed and line they do', () => {
    const long = draw(FOUR, 1000).drawn;
    expect(draw(FOUR, 10).drawn.widthM).toEqual(long.widthM.subarray(0, 10));
    for (const [seed, of] of [[8, 2], [7, 3], [7 + 2 ** 32, 2], [7, 2 + 2 ** 32]] as const) expect(draw(FOUR, 10, seed, of).drawn.widthM).not.toEqual(long.widthM.subarray(0, 10));
  });
  it('are normal with the errors given, and height and width go together as told', () => {
    const n = 20_000;
    const { drawn } = draw({ ...FOUR, heightWidthCorrelation: -0.7 }, n);
    const z = { h: standardised(drawn.heightM, 3, 0.1), s: standardised(drawn.skirtM, 0.6, 0.05), w: standardised(drawn.widthM, 1.5, 0.08), r: standardised(drawn.rowSpacingM, 4, 0.03) };
    for (const list of Object.values(z)) {
      expect(Math.abs(ss.mean(list))).toBeLessThan(5 / Math.sqrt(n));
      expect(Math.abs(ss.standardDeviation(list) - 1)).toBeLessThan(5 / Math.sqrt(2 * n));
      const sorted = list.toSorted((a, b) => a - b);
      // Kolmogorov's distance from the normal distribution of another library; 1.95 / √n is passed once in a thousand.
      const distance = Math.max(...sorted.map((v, i) => Math.abs((i + 0.5) / n - jstat.normal.cdf(v, 0, 1))));
      expect(distance).toBeLessThan(1.95 / Math.sqrt(n));
    }
    const pairs = [[z.h, z.w, -0.7], [z.h, z.s, 0], [z.h, z.r, 0], [z.s, z.r, 0], [z.w, z.s, 0], [z.w, z.r, 0]] as const;
    for (const [a, b, wanted] of pairs) expect(Math.abs(ss.sampleCorrelation(a, b) - wanted)).toBeLessThan(5 / Math.sqrt(n));
  });
  it.each([2, 3, 4, 10, 200])('are of Student’s t where %i trees were measured, and so is their sum', (trees) => {
    const n = 20_000;
    // Small errors: nothing is cut off that matters, even where t has no variance.
    const small: CanopyErrors = { heightSeM: 1e-6, skirtSeM: 1e-6, widthSeM: 1e-6, trees };
    const { drawn } = draw(small, n);
    const sum = Float64Array.from(drawn.heightM, (h, i) => h - drawn.skirtM[i]!);
    for (const [values, mean, se] of [[drawn.heightM, 3, 1e-6], [drawn.widthM, 1.5, 1e-6], [sum, 2.4, Math.SQRT2 * 1e-6]] as const) {
      const sorted = standardised(values, mean, se).toSorted((a, b) => a - b);
      const distance = Math.max(...sorted.map((v, i) => Math.abs((i + 0.5) / n - jstat.studentt.cdf(v, trees - 1))));
      expect(distance).toBeLessThan(1.95 / Math.sqrt(n));
    }
  });
  it('that cannot be are drawn anew and counted', () => {
    const { drawn, redrawn } = draw({ skirtSeM: 0.1 }, 4000, 7, 2, { ...MEANS, skirtM: 0 });
    // Half of all fall below the ground: as many are thrown away as are kept, ± √(2·4000) for one standard deviation.
    expect(Math.abs(redrawn! - 4000)).toBeLessThan(5 * Math.sqrt(2 * 4000));
    expect(Math.min(...drawn.skirtM)).toBeGreaterThanOrEqual(0);
    // The mean of the upper half of a normal distribution: √(2/π).
    expect(Math.abs(ss.mean([...drawn.skirtM]) - 0.1 * Math.sqrt(2 / Math.PI))).toBeLessThan(0.005);
    expect(draw({ skirtSeM: 0.01 }, 1000).redrawn).toBe(0);
  });
  it('all can be, whatever the errors', () => {
    const length = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(length(0.5, 6), length(0, 0.9), length(0.3, 4), length(1, 8), length(0, 1), length(0, 1), fc.option(fc.integer({ min: 2, max: 50 }), { nil: undefined }), (H, share, W, R, se, rho, trees) => {
        const { drawn, redrawn } = draw({ heightSeM: se, skirtSeM: se, widthSeM: se, rowSpacingSeM: se, heightWidthCorrelation: rho, ...(trees === undefined ? {} : { trees }) }, 100, 1, 5, { heightM: H, skirtM: share * H, widthM: W, rowSpacingM: R });
        if (redrawn === null) return;
        for (let i = 0; i < 100; i++) expect(drawn.skirtM[i]! >= 0 && drawn.skirtM[i]! < drawn.heightM[i]! && drawn.widthM[i]! > 0 && drawn.rowSpacingM[i]! > 0).toBe(true);
      })
    );
  });
  it(`that fail ${MOST_TRIES} times are given up`, () => {
    expect(draw({ skirtSeM: 5, widthSeM: 5, rowSpacingSeM: 5 }, 1000, 1, 2, { heightM: 1, skirtM: 0.9, widthM: 0.1, rowSpacingM: 0.5 }).redrawn).toBeNull();
  });
  it('without errors are the canopy itself', () => {
    const { drawn } = draw({ heightSeM: 0, widthSeM: 0, trees: 5 }, 100);
    for (const m of ['heightM', 'skirtM', 'widthM', 'rowSpacingM'] as const) expect(new Set(drawn[m])).toEqual(new Set([MEANS[m]]));
  });
});

describe('the interval of draws', () => {
  it('takes the 25th and the 975th of a thousand', () => {
    expect(coverageRanks(1000)).toEqual([25, 975]);
    expect(coverageRanks(100)).toEqual([3, 98]);
  });
  it('is bounded by the draws of those ranks, whatever their order, and encloses what another library calls the same', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer({ min: 0, max: 3 })), { minLength: 100, maxLength: 400 }), (list) => {
        const ends = new Float64Array(2);
        coverageInterval(Float64Array.from(list), ends);
        const sorted = Float64Array.from(list).toSorted();
        const [low, high] = coverageRanks(list.length);
        expect([...ends].map((v) => v + 0)).toEqual([sorted[low - 1]! + 0, sorted[high - 1]! + 0]);
        expect(ends[0]).toBeLessThanOrEqual(ss.quantile(list, 0.025 + 1 / list.length));
        expect(ends[1]).toBeGreaterThanOrEqual(ss.quantile(list, 0.975 - 1 / list.length));
      })
    );
  });
});

it('first-order error: a product by hand, with and without correlation', () => {
  // H·W = 3 · 1.5 with errors 0.1 and 0.08: slopes 1.5 and 3; √(0.15² + 0.24²) = 0.283019…
  expect(standardError([1.5, 0, 3, 0], { heightSeM: 0.1, widthSeM: 0.08 })).toBeCloseTo(Math.sqrt(0.0801), 12);
  expect(standardError([1.5, 0, 3, 0], { heightSeM: 0.1, widthSeM: 0.08, heightWidthCorrelation: 1 })).toBeCloseTo(0.39, 12);
  expect(standardError([1.5, 0, 3, 0], { heightSeM: 0.2, widthSeM: 0.1, heightWidthCorrelation: -1 })).toBe(0);
});
