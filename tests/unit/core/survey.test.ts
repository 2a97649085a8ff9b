import { describe, expect, it } from 'vitest';
import { sampleCorrelation, sampleStandardDeviation } from 'simple-statistics';
import jstat from 'jstat';
import { canopyOfSurvey } from '#core/canopy/survey/canopy.ts';
import { outlierScores } from '#core/canopy/survey/outliers.ts';
import { surveyOf, widthOf } from '#core/canopy/survey/survey.ts';
import type { Survey, SurveyOptions, SurveyTree } from '#core/canopy/survey/types.ts';
import { treesNeeded } from '#core/canopy/survey.ts';

const made = (trees: readonly SurveyTree[], options?: SurveyOptions): Survey => {
  const s = surveyOf(trees, options);
  if ('kind' in s) throw new Error(s.code);
  return s;
};
const code = (trees: readonly SurveyTree[], options?: SurveyOptions) => {
  const s = surveyOf(trees, options);
  return 'kind' in s ? [s.code, s.parameters] : null;
};
const tree = (heightM: number, widthM: number, more: Partial<SurveyTree> = {}): SurveyTree => ({ heightM, widthM, ...more });
/** Heights 3, 4, 5 and widths 1, 2, 2. */
const THREE = [tree(3, 1), tree(4, 2), tree(5, 2)];

describe('means, by hand', () => {
  it('three trees', () => {
    const s = made(THREE);
    expect([s.trees, s.leftOut, s.blockTrees, s.skirt, s.groups]).toEqual([3, 0, null, null, null]);
    expect(s.height).toMatchObject({ trees: 3, mean: 4, standardDeviation: 1, cv: 0.25 });
    // t(0.975, 2) of printed tables 4.302653; 1/√3.
    expect(s.height.standardError).toBeCloseTo(0.5773502692, 10);
    expect(s.height.high! - 4).toBeCloseTo(4.302653 * 0.5773502692, 5);
    expect(4 - s.height.low!).toBeCloseTo(4.302653 * 0.5773502692, 5);
    // Products 3, 8, 10: mean 7; means 4 · 5/3 = 20/3; 7/(20/3) = 1.05.
    expect(s.product.mean).toBeCloseTo(7, 12);
    expect(s.productOfMeans).toBeCloseTo(20 / 3, 12);
    expect(s.productExcess).toBeCloseTo(0.05, 12);
    expect(s.correlation).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(s.tallestTenth).toEqual({ trees: 1, meanM: 5 });
  });
  it('in a block of known size: √(1 − n/N) less, and nothing where every tree was measured', () => {
    expect(made(THREE, { blockTrees: 12 }).height.standardError).toBeCloseTo(0.5773502692 * Math.sqrt(0.75), 10);
    const all = made(THREE, { blockTrees: 3 });
    expect([all.height.standardError, all.height.low, all.height.high, all.needed]).toEqual([0, 4, 4, { wanted: 0.1, trees: 3, more: 0 }]);
  });
  it('as a library of statistics has them', () => {
    const trees = Array.from({ length: 40 }, (_, i) => tree(3 + Math.sin(i * 7.3), 2 + Math.cos(i * 3.1) / 2));
    const s = made(trees);
    const [h, w] = [trees.map((t) => t.heightM), trees.map((t) => t.widthM!)];
    expect(s.height.standardDeviation).toBeCloseTo(sampleStandardDeviation(h), 12);
    expect(s.correlation).toBeCloseTo(sampleCorrelation(h, w), 12);
    expect(s.width.high! - s.width.mean).toBeCloseTo((jstat.studentt.inv(0.975, 39) * sampleStandardDeviation(w)) / Math.sqrt(40), 8);
    expect(s.tallestTenth.trees).toBe(4);
    // mean(H·W) = H̄·W̄·(1 + ρ·CV_H·CV_W·(n−1)/n), exact with the sample's own moments.
    expect(s.productExcess).toBeCloseTo(s.correlation! * s.height.cv! * s.width.cv! * (39 / 40), 12);
  });
  it('one tree has a mean and no spread', () => {
    const s = made([tree(3, 1, { skirtM: 0.5 })]);
    expect(s.height).toEqual({ trees: 1, mean: 3, standardDeviation: null, cv: null, standardError: null, low: null, high: null });
    expect([s.needed, s.correlation, s.shares, s.outliers, s.skirt?.mean]).toEqual([null, null, [], [], 0.5]);
    expect(canopyOfSurvey(s, [tree(3, 1, { skirtM: 0.5 })])).toEqual({ heightM: 3, widthM: 1, skirtM: 0.5, tallestTenthM: 3 });
  });
  it('trees that are all alike have no spread, need two trees, and have no correlation', () => {
    const s = made(Array(6).fill(tree(3.1, 1.3)));
    expect([s.height.standardDeviation, s.needed, s.correlation, s.shares, s.outliers]).toEqual([0, { wanted: 0.1, trees: 2, more: 0 }, null, [], []]);
  });
  it('the width of a tree is the greatest that was measured', () => {
    expect(widthOf({ heightM: 3, profile: [{ heightM: 1, widthM: 1.4 }, { heightM: 2, widthM: 1.1 }] })).toBe(1.4);
    expect(widthOf({ heightM: 3, widthM: 1.2, profile: [{ heightM: 1, widthM: 1.4 }] })).toBe(1.4);
    expect(widthOf(tree(3, 2))).toBe(2);
  });
});

describe('trees that stand out', () => {
  it('by hand: 1, 2, 3, 4, 100 have the median 3 and a deviation of 1', () => {
    const { median, scores } = outlierScores([1, 2, 3, 4, 100]);
    expect(median).toBe(3);
    expect(scores.map((x) => Number(x.toFixed(4)))).toEqual([-1.349, -0.6745, 0, 0.6745, 65.4255]);
  });
  it('where more than half are the same the mean deviation stands in', () => {
    // Median 3, deviations 0 0 0 0 0 27: mean 4.5; 27/(4.5·1.2533) = 4.787.
    expect(outlierScores([3, 3, 3, 3, 3, 30]).scores.at(-1)).toBeCloseTo(4.7873, 4);
    expect(outlierScores([3, 3, 3, 3, 3]).scores).toEqual([0, 0, 0, 0, 0]);
  });
  it('are named and still count; left out they do not', () => {
    const trees = [tree(3, 1.2), tree(3.1, 1.3), tree(2.9, 1.1), tree(3.05, 1.25), tree(31, 1.2, { tree: 'slip' })];
    const s = made(trees);
    expect(s.outliers).toMatchObject([{ index: 4, what: 'height', valueM: 31, medianM: 3.05 }]);
    expect(s.height.trees).toBe(5);
    const without = made(trees.map((t) => (t.tree === 'slip' ? { ...t, leftOut: true } : t)));
    expect([without.trees, without.leftOut, without.height.trees, without.outliers]).toEqual([4, 1, 4, []]);
  });
  it('are not told of four trees', () => expect(made([tree(3, 1), tree(3.1, 1), tree(3, 1.1), tree(19, 1)]).outliers).toEqual([]));
  it('are judged among their own group', () => {
    const early = [2, 2.1, 2.2, 2.05, 2.15, 2.1, 2.2].map((h) => tree(h, 1, { variety: 'Early' }));
    const late = [4, 4.1, 4.2, 4.05, 4.15].map((h) => tree(h, 1, { variety: 'Late' }));
    expect(made([...early, ...late]).outliers.map((o) => o.index)).toEqual([7, 8, 9, 10, 11]);
    expect(made([...early, ...late], { by: 'variety' }).outliers).toEqual([]);
  });
});

describe('how many more', () => {
  it('the smallest number that is enough, in a block of any size', () => {
    for (const N of [5, 20, 137, 4000, Infinity])
      for (const cv of [0.05, 0.2, 0.63]) {
        const half = (n: number) => jstat.studentt.inv(0.975, n - 1) * cv * Math.sqrt(Math.max(0, 1 / n - 1 / N));
        let n = 2;
        while (half(n) > 0.1) n++;
        expect(treesNeeded(cv, 0.1, N), `${cv} of ${N}`).toBe(n);
      }
    expect(treesNeeded(0.2, 0.1, 1)).toBe(1);
    expect([treesNeeded(0, 0.1), treesNeeded(0.1, 0), treesNeeded(0.2, 0.1, 0)]).toEqual([NaN, NaN, NaN]);
  });
  it('of a survey: from the spread of its products, less those measured', () => {
    const trees = Array.from({ length: 8 }, (_, i) => tree(3 + (i % 4) / 3, 2 + (i % 3) / 4));
    const s = made(trees);
    expect(s.needed).toEqual({ wanted: 0.1, trees: treesNeeded(s.product.cv!, 0.1), more: treesNeeded(s.product.cv!, 0.1) - 8 });
    expect(s.needed!.more).toBeGreaterThan(0);
    expect(made(trees, { blockTrees: 9 }).needed!.trees).toBeLessThan(s.needed!.trees);
    expect(made(trees, { wanted: 0.5 }).needed).toMatchObject({ more: 0 });
  });
});

describe('what spreads', () => {
  it('by hand: CVs of 0.25 and 0.3464 go as their squares, the row spacing beside them', () => {
    const s = made(THREE);
    // Widths 1, 2, 2: SD 0.57735, mean 1.6667; squares 0.0625 and 0.12.
    expect(s.shares.map((p) => [p.what, Number(p.share.toFixed(4))])).toEqual([['width', 0.6575], ['height', 0.3425]]);
    expect(s.covariance).toBeCloseTo((2 * (Math.sqrt(3) / 2) * 0.25 * Math.sqrt(0.12)) / 0.1825, 10);
    // SE of height/4 and of 4 m spacing are the same where the spacing's error is that of the height.
    const r = made(THREE, { rowSpacing: { meanM: 4, errorM: s.height.standardError! } });
    expect(r.shares.map((p) => [p.what, Number(p.share.toFixed(4))])).toEqual([['width', 0.4898], ['height', 0.2551], ['rowSpacing', 0.2551]]);
  });
});

describe('groups', () => {
  const trees = [tree(2, 1, { row: '1' }), tree(3, 1, { row: '1' }), tree(5, 2, { row: '2' }), tree(7, 2, { row: '2' }), tree(6, 2, { row: '2' })];
  it('have means of their own; without numbers of trees the whole is the plain mean', () => {
    const s = made(trees, { by: 'row' });
    expect(s.groups).toMatchObject({ by: 'row', weighted: false, of: [{ name: '1', trees: 2, weight: 0.4, blockTrees: null, height: { mean: 2.5 } }, { name: '2', trees: 3, height: { mean: 6 } }] });
    expect(s.height).toEqual(made(trees).height);
  });
  it('weighted by hand: 300 and 100 trees', () => {
    const s = made(trees, { by: 'row', groupTrees: { 1: 300, 2: 100 } });
    expect(s.blockTrees).toBe(400);
    expect(s.height.mean).toBeCloseTo(0.75 * 2.5 + 0.25 * 6, 12);
    const [a, b] = [(0.75 ** 2 * 0.5) / 2 * (1 - 2 / 300), (0.25 ** 2 * 1) / 3 * (1 - 3 / 100)];
    expect(s.height.standardError).toBeCloseTo(Math.sqrt(a + b), 12);
    // (a + b)²/(a²/1 + b²/2) = 1.3: one degree of freedom, t = 12.7062.
    expect(Math.floor((a + b) ** 2 / (a ** 2 + b ** 2 / 2))).toBe(1);
    expect(s.height.high! - s.height.mean).toBeCloseTo(12.7062 * Math.sqrt(a + b), 3);
    expect(s.product.mean).toBeCloseTo(0.75 * 2.5 + 0.25 * 12, 12);
    expect(canopyOfSurvey(s, trees).heightM).toBe(3.375);
  });
  it('weighted: height and width go together as they do within the groups, not between them', () => {
    const list = [[2, 1], [3, 1.4], [2.6, 1.1], [5, 2.4], [7, 2], [6, 2.3]].map(([h, w], i) => tree(h!, w!, { row: i < 3 ? '1' : '2' }));
    const cov = (k: 'heightM' | 'widthM', l: 'heightM' | 'widthM') =>
      ([['1', 0.75, 300], ['2', 0.25, 100]] as const).reduce((sum, [row, weight, N]) => {
        const own = list.filter((t) => t.row === row);
        const m = (x: 'heightM' | 'widthM') => own.reduce((s, t) => s + t[x]!, 0) / 3;
        return sum + (weight ** 2 * (1 - 3 / N) * own.reduce((s, t) => s + (t[k]! - m(k)) * (t[l]! - m(l)), 0)) / 2 / 3;
      }, 0);
    const s = made(list, { by: 'row', groupTrees: { 1: 300, 2: 100 } });
    expect(s.correlation).toBeCloseTo(cov('heightM', 'widthM') / Math.sqrt(cov('heightM', 'heightM') * cov('widthM', 'widthM')), 9);
    expect(s.correlation).not.toBeCloseTo(made(list, { by: 'row' }).correlation!, 1);
  });
  it('of one tree tell no error unless that tree is all', () => {
    const lone = [tree(4, 1, { row: '3' }), ...trees];
    expect(made(lone, { by: 'row', groupTrees: { 1: 9, 2: 9, 3: 9 } }).height.standardError).toBeNull();
    expect(made(lone, { by: 'row', groupTrees: { 1: 9, 2: 9, 3: 1 } }).height.standardError).toBeGreaterThan(0);
  });
  it('not named are a group', () => expect(made([...trees, tree(3, 1)], { by: 'row' }).groups!.of.map((g) => g.name)).toEqual(['', '1', '2']));
});

describe('refused', () => {
  const trees = [tree(2, 1, { row: 'a' }), tree(3, 1, { row: 'b' })];
  it.each<[readonly SurveyTree[], SurveyOptions, unknown]>([
    [[], {}, ['survey-no-trees', { leftOut: 0 }]],
    [[tree(2, 1, { leftOut: true })], {}, ['survey-no-trees', { leftOut: 1 }]],
    [trees, { blockTrees: 1 }, ['survey-block-smaller', { trees: 2, block: 1 }]],
    [trees, { by: 'row', groupTrees: { a: 3, b: 3, c: 3 } }, ['survey-group-unmeasured', { group: 'c' }]],
    [trees, { by: 'row', groupTrees: { a: 3 } }, ['survey-group-unsized', { group: 'b' }]],
    [[...trees, trees[0]!], { by: 'row', groupTrees: { a: 1, b: 9 } }, ['survey-group-smaller', { group: 'a', trees: 2, block: 1 }]]
  ])('%j %j', (list, options, told) => expect(code(list, options)).toEqual(told));
});

describe('the canopy', () => {
  it('has means, the tallest tenth and the errors in the document’s fields', () => {
    const trees = THREE.map((t, i) => ({ ...t, skirtM: 0.5 + i / 10 }));
    expect(canopyOfSurvey(made(trees), trees)).toEqual({
      heightM: 4, widthM: 1.6667, skirtM: 0.6, tallestTenthM: 5,
      errors: { heightSeM: 0.5774, skirtSeM: 0.0577, widthSeM: 0.3333, heightWidthCorrelation: 0.866, trees: 3 }
    });
  });
  it('has mean widths at the heights at which every tree that counts has one', () => {
    const trees: SurveyTree[] = [
      { heightM: 3, profile: [{ heightM: 1, widthM: 1 }, { heightM: 2, widthM: 0.8 }, { heightM: 2.5, widthM: 0.3 }] },
      { heightM: 2.4, profile: [{ heightM: 1, widthM: 2 }, { heightM: 2, widthM: 0.4 }] },
      { heightM: 9, widthM: 9, leftOut: true }
    ];
    expect(canopyOfSurvey(made(trees), trees).profile).toEqual([{ heightM: 1, widthM: 1.5 }, { heightM: 2, widthM: 0.6 }]);
    expect(canopyOfSurvey(made(THREE), THREE).profile).toBeUndefined();
  });
});
