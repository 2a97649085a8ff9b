import { describe, expect, test } from 'vitest';
import { isDormant, isEarly, unfoldedShare } from '#core/canopy/growth.ts';
import { DEFAULT_SHAPE, measuredProfile, outlineOf, sectionArea, stretchedTo, widthAt } from '#core/canopy/outline.ts';
import { intervalOf } from '#core/canopy/uncertainty.ts';
import { given, refused } from '#core/working/answer.ts';
import { canopy, num, refusal, result } from '../../support/sample.ts';

describe('growth', () => {
  test.each([
    [0, 0], [7, 0], [36, 0.05], [65, 0.1], [67, 0.165], [69, 0.23], [71, 0.515], [73, 0.8], [74, 0.9], [75, 1], [89, 1], [92, 1], [94, 2 / 3], [95, 0.5], [96, 0.25], [97, 0], [99, 0]
  ])('BBCH %s: %s of the leaf', (bbch, share) => expect(unfoldedShare(bbch)).toBeCloseTo(share, 12));
  test('early ends with bloom, dormant with green tip', () => {
    expect([0, 6, 7, 68, 69, 75, 96, 97].map(isEarly)).toEqual([true, true, true, true, false, false, false, true]);
    expect([0, 6, 7, 68, 96, 97, 99].map(isDormant)).toEqual([true, true, false, false, false, true, true]);
    expect(isEarly(undefined)).toBe(false);
    expect(isDormant(undefined)).toBe(false);
  });
});

describe('outline', () => {
  const top = 3, skirt = 1;
  const at = (profile: [number, number][]) => outlineOf(canopy({ heightM: top, skirtM: skirt, widthM: 2, profile: profile.map(([heightM, widthM]) => ({ heightM, widthM })) })).map((p) => [p.heightM, p.widthM]);
  test('a box is as wide at the top as at the skirt', () => expect(outlineOf(canopy({ heightM: 3, skirtM: 1, widthM: 2, shape: 'box' }))).toEqual([{ heightM: 1, widthM: 2 }, { heightM: 3, widthM: 2 }]));
  test('no skirt means from the ground', () => expect(outlineOf({ heightM: 3, widthM: 2, shape: 'box' })[0]).toEqual({ heightM: 0, widthM: 2 }));
  test('a wall unless said otherwise', () => {
    expect(DEFAULT_SHAPE).toBe('wall');
    expect(outlineOf({ heightM: 3, widthM: 2 })).toEqual(outlineOf({ heightM: 3, widthM: 2, shape: 'wall' }));
  });
  test.each(['box', 'wall', 'spindle', 'ellipse'] as const)('%s rises and reaches its greatest width', (shape) => {
    const o = outlineOf(canopy({ heightM: 4, skirtM: 1, widthM: 2, shape }));
    expect(o[0]!.heightM).toBe(1);
    expect(o.at(-1)!.heightM).toBe(4);
    for (let i = 1; i < o.length; i++) expect(o[i]!.heightM).toBeGreaterThan(o[i - 1]!.heightM);
    expect(Math.max(...o.map((p) => p.widthM))).toBeCloseTo(2, 12);
    expect(Math.min(...o.map((p) => p.widthM))).toBeGreaterThanOrEqual(0);
  });
  test('a spindle is narrow at the top, a wall is not, a globe at both ends', () => {
    const w = (shape: 'wall' | 'spindle' | 'ellipse', z: number) => widthAt(outlineOf({ heightM: 1, widthM: 1, shape }), z);
    expect(w('spindle', 0.96)).toBeCloseTo(0.15, 12);
    expect(w('wall', 0.82)).toBeCloseTo(0.94, 12);
    expect(w('ellipse', 0.5)).toBeCloseTo(1, 12);
    expect(w('ellipse', 0.02)).toBeLessThan(0.3);
    expect(w('ellipse', 0.98)).toBeLessThan(0.3);
  });
  test('shares of the box that shapes fill, as drawn', () => {
    const s = (shape: 'wall' | 'spindle' | 'ellipse') => sectionArea(outlineOf({ heightM: 1, widthM: 1, shape }));
    // By hand, trapezia between the drawn stations.
    expect(s('wall')).toBeCloseTo(0.06 * 0.825 + 0.1 * 0.965 + 0.66 * 0.97 + 0.12 * 0.84 + 0.06 * 0.57, 12);
    expect(s('spindle')).toBeCloseTo(0.05 * 0.48 + 0.08 * 0.745 + 0.11 * 0.93 + 0.06 * 0.995 + 0.12 * 0.975 + 0.16 * 0.865 + 0.16 * 0.665 + 0.14 * 0.43 + 0.08 * 0.23 + 0.04 * 0.095, 12);
    expect(s('ellipse')).toBeGreaterThan(0.78);
    expect(s('ellipse')).toBeLessThan(Math.PI / 4);
  });
  test('a measured profile keeps its lowest width down to the skirt and runs to nothing at the top', () =>
    expect(at([[1.5, 1], [2, 2]])).toEqual([[1, 1], [1.5, 1], [2, 2], [3, 0]]));
  test('a profile beyond the ends is read at skirt and top', () => {
    expect(at([[0, 0], [2, 2], [4, 0]])).toEqual([[1, 1], [2, 2], [3, 1]]);
    expect(at([[1, 2], [3, 1]])).toEqual([[1, 2], [3, 1]]);
    expect(at([[0, 2], [4, 1]])).toEqual([[1, 1.75], [3, 1.25]]);
    expect(at([[1, 1], [2, 2], [3, 0.5]])).toEqual([[1, 1], [2, 2], [3, 0.5]]);
  });
  test('one station makes a profile', () => expect(at([[2, 1.5]])).toEqual([[1, 1.5], [2, 1.5], [3, 0]]));
  test('leaf density of the stations changes no width, no figure and no aim', () => {
    const widths = [{ heightM: 0.8, widthM: 1 }, { heightM: 1.6, widthM: 1.4 }, { heightM: 2.6, widthM: 0.6 }];
    const dense = widths.map((p, i) => ({ ...p, relativeDensity: [0, 2.5, 0.5][i]! }));
    expect(outlineOf(canopy({ profile: dense }))).toEqual(outlineOf(canopy({ profile: widths })));
    const [plain, told] = [result({ canopy: { profile: widths } }), result({ canopy: { profile: dense } })];
    expect(told.canopy).toEqual(plain.canopy);
    expect(told.sprayer).toEqual(plain.sprayer);
    expect(told.findings).toEqual(plain.findings);
  });
  test('a profile that lies wholly outside the crown says nothing', () => {
    const beside = (profile: [number, number][]) => measuredProfile(canopy({ heightM: 3, skirtM: 1, profile: profile.map(([heightM, widthM]) => ({ heightM, widthM })) }));
    expect(beside([[0.2, 1], [0.8, 1]])).toBeNull();
    expect(beside([[0.2, 1], [1, 1]])).toBeNull();
    expect(beside([[3, 1], [4, 1]])).toBeNull();
    expect(beside([[3.5, 1], [4, 1]])).toBeNull();
    expect(beside([])).toBeNull();
    expect(beside([[0.2, 1], [1.01, 1]])).not.toBeNull();
    expect(beside([[2.99, 1], [4, 1]])).not.toBeNull();
    expect(measuredProfile({ heightM: 3, widthM: 1 })).toBeNull();
    // Then the shape stands in, and is called assumed.
    const { s } = result({ canopy: { heightM: 3, skirtM: 1, profile: [{ heightM: 4, widthM: 1 }, { heightM: 5, widthM: 1 }] } }).canopy.figures;
    expect(s).toMatchObject({ value: 1, certainty: 'assumed', path: 'canopy.shape' });
  });
  test('a skirt at or above the top has no outline', () => {
    expect(outlineOf(canopy({ heightM: 2, skirtM: 2 }))).toEqual([]);
    expect(outlineOf(canopy({ heightM: 2, skirtM: 3 }))).toEqual([]);
    expect(outlineOf(canopy({ heightM: NaN }))).toEqual([]);
  });
  test('width between stations is straight, outside it is nothing', () => {
    const o = [{ heightM: 1, widthM: 1 }, { heightM: 2, widthM: 3 }, { heightM: 4, widthM: 0 }];
    expect([0.99, 1, 1.5, 2, 3, 4, 4.01].map((z) => widthAt(o, z))).toEqual([0, 1, 2, 3, 1.5, 0, 0]);
    expect(widthAt([], 1)).toBe(0);
    expect(widthAt([{ heightM: 1, widthM: 2 }, { heightM: 1, widthM: 3 }], 1)).toBe(3);
  });
  test('area in a band is the part of the stack in it', () => {
    const o = [{ heightM: 1, widthM: 1 }, { heightM: 2, widthM: 3 }, { heightM: 4, widthM: 0 }];
    expect(sectionArea(o)).toBe(5);
    expect(sectionArea(o, 1.5, 2)).toBe(1.25);
    expect(sectionArea(o, 0, 2)).toBe(2);
    expect(sectionArea(o, 3, 9)).toBe(0.75);
    expect(sectionArea(o, 2.5, 2.5)).toBe(0);
    expect(sectionArea(o, 3, 2)).toBe(0);
    expect(sectionArea([])).toBe(0);
  });
  test('stretching moves the top, keeps skirt and widths', () => {
    const o = [{ heightM: 1, widthM: 1 }, { heightM: 2, widthM: 3 }, { heightM: 3, widthM: 0 }];
    expect(stretchedTo(o, 5)).toEqual([{ heightM: 1, widthM: 1 }, { heightM: 3, widthM: 3 }, { heightM: 5, widthM: 0 }]);
    expect(stretchedTo([], 5)).toEqual([]);
    const flat = [{ heightM: 1, widthM: 1 }, { heightM: 1, widthM: 2 }];
    expect(stretchedTo(flat, 5)).toBe(flat);
  });
});

describe('canopy figures', () => {
  const c = (more: Parameters<typeof canopy>[0] = {}, rung = {}) => result({ canopy: more, rung }).canopy;
  test('a skirt at or above the top refuses everything of the crown, not the ground volume', () => {
    for (const skirtM of [3, 3.5]) {
      const { figures } = c({ heightM: 3, skirtM });
      expect(refusal(figures.h)).toBe('skirt-above-top @ canopy.skirtM');
      expect(figures.h).toMatchObject({ parameters: { skirt: skirtM, height: 3 } });
      for (const k of ['TRVc', 'LWA', 'UCR', 'A', 'TRVs', 'LAI'] as const) expect(figures[k].kind).toBe('refused');
      expect(num(figures.TRVg)).toBeCloseTo(9000, 9);
      expect(num(figures.RL)).toBe(2500);
    }
  });
  test('no width has no section', () => {
    const { figures } = c({ widthM: 0 });
    expect(refusal(figures.s)).toBe('no-section @ canopy.widthM');
    expect(num(figures.TRVc)).toBe(0);
    expect(num(figures.LWA)).toBe(12500);
  });
  test('where each value comes from', () => {
    const { figures } = result().canopy;
    expect(figures.H).toMatchObject({ value: 3, certainty: 'measured', path: 'canopy.heightM' });
    expect(figures.Hs).toMatchObject({ value: 0.5, certainty: 'measured', path: 'canopy.skirtM' });
    expect(figures.W).toMatchObject({ value: 1.2, certainty: 'measured', path: 'canopy.widthM' });
    expect(figures.R).toMatchObject({ value: 4, certainty: 'measured', path: 'rowSpacingM' });
    expect(figures.n).toMatchObject({ value: 2, certainty: 'stated' });
    expect(figures.s).toMatchObject({ certainty: 'assumed', path: 'canopy.shape' });
    expect(c({ profile: [{ heightM: 1, widthM: 1 }, { heightM: 2, widthM: 1 }] }).figures.s).toMatchObject({ certainty: 'measured', path: 'canopy.profile' });
    expect(figures.LAD).toMatchObject({ kind: 'figure', value: 2, certainty: 'assumed' });
    expect(c({ ladM2PerM3: 1.5 }).figures.LAD).toMatchObject({ kind: 'given', value: 1.5, certainty: 'measured', path: 'canopy.ladM2PerM3' });
    expect(figures.k).toMatchObject({ certainty: 'published', assumption: 'canopy.us-density' });
    expect(c({ usDensityGalPer1000Ft3: 0.85 }).figures.k).toMatchObject({ certainty: 'stated', path: 'canopy.usDensityGalPer1000Ft3' });
    const f = figures.f;
    if (f.kind !== 'figure') throw new Error('no figure');
    expect(f.inputs.f0).toMatchObject({ value: 1, certainty: 'assumed', path: 'canopy.filledFraction' });
    expect(f.inputs.m).toMatchObject({ value: 0, certainty: 'assumed', path: 'canopy.missingFraction' });
    const g = c({ filledFraction: 0.9, missingFraction: 0.1 }).figures.f;
    if (g.kind !== 'figure') throw new Error('no figure');
    expect(g.value).toBeCloseTo(0.81, 12);
    expect(g.inputs.f0).toMatchObject({ value: 0.9, certainty: 'measured' });
    expect(g.inputs.m).toMatchObject({ value: 0.1, certainty: 'measured' });
    // Whoever spoke of gaps at all has measured both.
    const one = c({ filledFraction: 0.9 }).figures.f;
    expect(one).toMatchObject({ inputs: { f0: { value: 0.9, certainty: 'measured' }, m: { value: 0, certainty: 'measured' } } });
  });
  test('a skirt that nobody measured is taken as none', () => {
    const { figures } = result({ rung: { canopy: { heightM: 3, widthM: 1, shape: 'box' } } }).canopy;
    expect(figures.Hs).toMatchObject({ value: 0, certainty: 'assumed' });
    expect(num(figures.h)).toBe(3);
  });
  test('leaf density follows the stage', () => {
    expect(num(c({}, { bbch: 65 }).figures.LAD)).toBeCloseTo(0.2, 12);
    expect(num(c({}, { bbch: 75 }).figures.LAD)).toBe(2);
    expect(num(c({ ladM2PerM3: 1 }, { bbch: 65 }).figures.LAD)).toBe(1);
  });
  test('multipliers of the metric scale by density class; medium where nobody said', () => {
    expect(c({ densityClass: 'open' }).figures.m.value).toBe(0.75);
    expect(c({ densityClass: 'medium' }).figures.m.value).toBe(0.85);
    expect(c({ densityClass: 'dense' }).figures.m.value).toBe(1);
    expect(c().figures.m.value).toBe(0.85);
    expect([c().densityStated, c().densityClass]).toEqual([false, 'medium']);
    expect([c({ densityClass: 'dense' }).densityStated, c({ densityClass: 'dense' }).densityClass]).toEqual([true, 'dense']);
  });
  test('nozzles are aimed at the tallest tenth, never below the mean', () => {
    expect(c({ tallestTenthM: 3.6 }).aimTopM).toBe(3.6);
    expect(c({ tallestTenthM: 2.6 }).aimTopM).toBe(3);
    expect(c().aimTopM).toBe(3);
  });
});

describe('intervals', () => {
  test('none without errors', () => {
    expect(result().intervals.size).toBe(0);
    expect(result().water.interval).toBeNull();
    expect(result({ canopy: { errors: { heightSeM: 0, trees: 8 } } }).intervals.size).toBe(0);
  });
  test('of a measured value itself, by Student with the trees known', () => {
    const i = result({ canopy: { errors: { heightSeM: 0.1, trees: 10 } } }).intervals.get('H')!;
    expect(i.standardError).toBeCloseTo(0.1, 12);
    expect(i.low).toBeCloseTo(3 - 0.2262157, 6);
    expect(i.high).toBeCloseTo(3 + 0.2262157, 6);
    expect([...i.shares]).toEqual([['canopy.heightM', 1]]);
  });
  test('reaches only what rests on it', () => {
    const { intervals } = result({ canopy: { errors: { widthSeM: 0.1 } } });
    expect([...intervals.keys()].sort()).toEqual(['A', 'LAI', 'TRVc', 'TRVg', 'TRVs', 'UCR', 'W']);
    const skirt = result({ canopy: { errors: { skirtSeM: 0.05 } } }).intervals;
    expect([...skirt.keys()].sort()).toEqual(['A', 'Hs', 'LAI', 'LWA', 'TRVc', 'TRVs', 'UCR', 'h']);
    const rows = result({ canopy: { errors: { rowSpacingSeM: 0.05 } } }).intervals;
    expect([...rows.keys()].sort()).toEqual(['LAI', 'LWA', 'R', 'RL', 'TRVc', 'TRVg', 'TRVs', 'UCR']);
    expect(rows.get('RL')!.standardError).toBeCloseTo((2500 * 0.05) / 4, 4);
  });
  test('shares of the variance by measurement', () => {
    // h = 2.5 ± 0.1 is 4 %, W = 1.2 ± 0.036 is 3 %: 16 to 9.
    const { shares } = result({ canopy: { errors: { heightSeM: 0.1, widthSeM: 0.036 } } }).water.interval!;
    expect(shares.get('canopy.heightM')).toBeCloseTo(16 / 25, 6);
    expect(shares.get('canopy.widthM')).toBeCloseTo(9 / 25, 6);
  });
  test('correlation widens or narrows it', () => {
    const at = (heightWidthCorrelation: number) => result({ canopy: { errors: { heightSeM: 0.1, widthSeM: 0.036, heightWidthCorrelation } } }).water.interval!.standardError / 750;
    expect(at(0)).toBeCloseTo(0.05, 6);
    expect(at(1)).toBeCloseTo(0.07, 6);
    expect(at(-1)).toBeCloseTo(0.01, 6);
  });
  test('no interval where the label water rules, or of a refusal', () => {
    expect(result({ canopy: { errors: { heightSeM: 0.1 } }, label: { minWaterLPerHa: 2000 } }).water.interval).toBeNull();
    expect(result({ canopy: { heightM: 1, skirtM: 1, errors: { heightSeM: 0.1 } } }).intervals.has('TRVc')).toBe(false);
    expect(intervalOf(refused('x', 'y'), { of: new Map([[given(1, 'm'), 1]]), coverage: 2 })).toBeNull();
    expect(intervalOf(given(1, 'm'), { of: new Map(), coverage: 2 })).toBeNull();
  });
});
