import { describe, expect, it } from 'vitest';
import { lawOf } from '#core/dose/compare/law.ts';
import { pairs, turned, type Pair } from '#core/dose/compare/differences.ts';
import { curves, measuredOn, rangeOf, type Axis } from '#core/dose/compare/curves.ts';
import { FIXED_BASES } from '#core/dose/label-rules.ts';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { scenario } from '#core/dose/compare/scenario.ts';
import { compileOwn } from '#core/dose/own/own.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import { evaluateStrategy } from '#core/dose/evaluate.ts';
import { STRATEGY_IDS, type LabelBasis, type StrategyId } from '#core/dose/types.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { reasonSentence } from '#words/strategies/reasons.ts';
import { document, num, refusal, result, type Parts } from '../../../support/sample.ts';

const OWN = [{ id: 'floor', name: 'With a floor', index: 'max(0.5, TRVc / 10000)' }, { id: 'line', name: 'A line', index: '0.3 + 0.7 * TRVc / 10000', water: '0.1 * TRVc' }];
const of = (parts: Parts = {}) => {
  const d = { ...document(parts), ownStrategies: OWN };
  const r = result(parts);
  return { d, r, rows: strategyRows(d, r) };
};
const pairOf = (all: readonly Pair[], a: string, b: string): Pair => {
  const found = all.find((p) => p.a === a && p.b === b) ?? all.find((p) => p.a === b && p.b === a);
  return found!.a === a ? found! : turned(found!);
};
const factorsOf = (p: Pair): Record<string, number> => Object.fromEntries(p.reasons.map((r) => [r.code, Number(r.values.factor)]));

describe('rows', () => {
  it('are the strategies as they were worked out, the user’s own behind them', () => {
    const { r, rows } = of({ label: { adaptation: 'required' } });
    expect(rows.map((x) => x.id)).toEqual([...STRATEGY_IDS, 'own.floor', 'own.line']);
    for (const s of r.strategies) {
      const row = rows.find((x) => x.id === s.strategy.id)!;
      expect(num(row.index)).toBe(num(s.index));
      expect(row.water && num(row.water)).toEqual(s.water && num(s.water));
    }
    // The block's own strategy has the dose that the result tells.
    expect(num(rows.find((x) => x.id === r.block.strategy)!.dose)).toBe(num(r.product!.perHa));
    expect(num(rows.find((x) => x.id === 'own.line')!.index)).toBeCloseTo(0.3 + 0.7 * (num(r.canopy.figures.TRVc) / 10000), 12);
  });
  it('no label, no dose; no dilute water, no concentration', () => {
    const { rows } = of();
    expect(rows.every((x) => x.dose === null && x.acts.length === 0)).toBe(true);
    for (const x of rows) expect(x.concentration === null).toBe(x.dilute === null);
  });
  it('an interval of a dose ends where the label’s rules end it', () => {
    const errors = { heightSeM: 0.3, widthSeM: 0.3 };
    // Index 0.75: two standard errors reach above 1.
    const { rows } = of({ canopy: { heightM: 3, skirtM: 0.5, widthM: 1.2, errors }, label: { adaptation: 'downward', maxPerHa: 1.9, floor: 0.6 } });
    const row = rows.find((x) => x.id === 'row-volume')!;
    expect(row.intervals.index!.high).toBeGreaterThan(1);
    expect(row.intervals.index!.low).toBeLessThan(0.6);
    expect([row.intervals.dose!.low, row.intervals.dose!.high]).toEqual([1.2, 1.9]);
  });
  it('a canopy that cannot be is refused in every row that counts the crown', () => {
    const { rows } = of({ canopy: { heightM: 2, skirtM: 2 } });
    expect(refusal(rows.find((x) => x.id === 'row-volume')!.index)).toContain('skirt-above-top');
    expect(num(rows.find((x) => x.id === 'ground-area')!.index)).toBe(1);
  });
  it('which bases leave the canopy to the adaptation is as the product has it', () => {
    const bases: LabelBasis[] = ['per-hectare', 'per-100-l-dilute', 'per-leaf-wall', 'per-crown-height', 'per-row-volume', 'percent-of-water'];
    for (const basis of bases) {
      const dose = (adaptation: 'none' | 'required') => num(of({ label: { basis, rate: 1, referenceWaterLPerHa: 1000, adaptation } }).rows.find((x) => x.id === 'row-volume')!.dose);
      expect(dose('none') !== dose('required'), basis).toBe(FIXED_BASES.has(basis));
    }
  });
});

describe('pairs', () => {
  const CASES: Parts[] = [
    {},
    { canopy: { heightM: 4.2, skirtM: 0.9, widthM: 2.2, shape: 'spindle' } },
    { canopy: { filledFraction: 0.8, missingFraction: 0.1, densityClass: 'dense', usDensityGalPer1000Ft3: 0.9, ladM2PerM3: 3 } },
    { rung: { bbch: 57 } },
    { rung: { bbch: 3 }, block: { rowSpacingM: 6, pattern: { kind: 'one-side-one-face', side: 'left' } } },
    { canopy: { heightM: 3, widthM: 1.4, skirtM: 0.4, profile: [{ heightM: 0.4, widthM: 0.5 }, { heightM: 1.5, widthM: 1.4 }, { heightM: 2.8, widthM: 0.3 }] } },
    { assumptions: { 'swiss-affine.least-share': 0.3, 'reference.width': 2, 'us-row-volume.standard': 3000 } }
  ];
  it.each(CASES.map((c, i) => [i, c] as const))('the factors of all reasons make the ratio, case %i', (_, parts) => {
    const { d, r, rows } = of(parts);
    const all = pairs(d, r, rows);
    expect(all.length).toBe((15 * 14) / 2);
    let told = 0;
    for (const p of all) {
      const [a, b] = [rows.find((x) => x.id === p.a)!, rows.find((x) => x.id === p.b)!];
      expect(p.difference).toBeCloseTo(num(a.index) - num(b.index), 12);
      told += p.reasons.length;
      // A bare tree has no leaf area: nothing is in proportion to nothing.
      if (num(a.index) === 0 || num(b.index) === 0) {
        expect(p.reasons.length).toBeGreaterThan(0);
        continue;
      }
      expect(p.ratio).toBeCloseTo(num(a.index) / num(b.index), 12);
      expect(p.reasons.reduce((product, x) => product * Number(x.values.factor), 1) / p.ratio!).toBeCloseTo(1, 9);
      if (Math.abs(p.ratio! - 1) > 1e-9) expect(p.reasons.length).toBeGreaterThan(0);
      for (const x of p.reasons) {
        const sentence = reasonSentence(x, a, b, 'metric');
        expect(sentence).not.toMatch(/undefined|NaN|\{|–(?!\d)|cannot be told/);
        expect(sentence.endsWith('.')).toBe(true);
      }
    }
    expect(told).toBeGreaterThan(50);
  });
  it('are antisymmetric: turned twice the same, turned once the other way round', () => {
    const { d, r, rows } = of(CASES[1]);
    for (const p of pairs(d, r, rows)) {
      const t = turned(p);
      expect([t.a, t.b, t.difference]).toEqual([p.b, p.a, -p.difference!]);
      expect(t.ratio! * p.ratio!).toBeCloseTo(1, 12);
      p.reasons.forEach((x, i) => {
        expect(Number(t.reasons[i]!.values.factor) * Number(x.values.factor)).toBeCloseTo(1, 12);
        expect([t.reasons[i]!.values.a, t.reasons[i]!.values.b]).toEqual([x.values.b, x.values.a]);
      });
    }
    // The same pair found from rows in the other order.
    const back = pairs(d, r, rows.toReversed());
    for (const p of pairs(d, r, rows)) {
      const q = pairOf(back, p.a, p.b);
      expect(q.difference).toBeCloseTo(p.difference!, 12);
      expect(Object.keys(factorsOf(q)).toSorted()).toEqual(Object.keys(factorsOf(p)).toSorted());
    }
  });
  it('height from the ground against from the skirt: H/h, by hand', () => {
    // 3.2 m tall, skirt 0.64 m: the ground takes a quarter more than the crown.
    const { d, r } = of({ canopy: { heightM: 3.2, skirtM: 0.64 } });
    const p = pairOf(pairs(d, r), 'us-row-volume', 'row-volume');
    expect(factorsOf(p).skirt).toBeCloseTo(1.25, 12);
    const sentence = reasonSentence(p.reasons.find((x) => x.code === 'skirt')!, ...rowsOf(d, r, 'us-row-volume', 'row-volume'), 'metric');
    expect(sentence).toBe('“US tree-row volume” takes the height from the ground, “Tree-row volume” does not count the 0.64\u00a0m under the skirt: 25\u00a0% more by “US tree-row volume”.');
  });
  it('the US standard orchard gives the reference canopy a quarter, the others the whole: 936 over 3742', () => {
    const { d, r } = of();
    const p = pairOf(pairs(d, r), 'us-row-volume', 'row-volume');
    // 10 000 m³/ha × 0.7 gal/1000 ft³ against 400 gal/acre, in L/ha: reference §6 and §9.1.
    expect(factorsOf(p).reference).toBeCloseTo(935.7639 / 3741.5824, 6);
  });
  it('the straight line against proportion: at half the reference volume 75 % against 50 %', () => {
    // 2.5 · 1.6 / 8 m: 5 000 m³/ha, table T14.
    const { d, r } = of({ canopy: { heightM: 2.5, skirtM: 0, widthM: 1.6 }, block: { rowSpacingM: 8 } });
    const p = pairOf(pairs(d, r), 'swiss-affine', 'row-volume');
    expect(p.reasons.map((x) => x.code)).toEqual(['law']);
    expect(factorsOf(p).law).toBeCloseTo(1.5, 12);
    expect(p.reasons[0]!.values.least).toBe(0.5);
  });
  it('what both count alike is no reason; width and spacing are where one is blind', () => {
    const { d, r } = of({ canopy: { heightM: 2.8, skirtM: 0, widthM: 2.5 }, block: { rowSpacingM: 5 } });
    const all = pairs(d, r);
    expect(factorsOf(pairOf(all, 'row-volume', 'unit-canopy-row'))).toEqual({});
    const wall = factorsOf(pairOf(all, 'row-volume', 'leaf-wall'));
    expect(Object.keys(wall)).toEqual(['width']);
    expect(wall.width).toBeCloseTo(2, 12);
    const height = factorsOf(pairOf(all, 'leaf-wall', 'crown-height'));
    expect(Object.keys(height)).toEqual(['spacing']);
    expect(height.spacing).toBeCloseTo(3.5 / 5, 12);
  });
  it('density, stage, outline, gaps and faces are found where one counts them', () => {
    const codes = (parts: Parts, a: string, b: string) => pairOf(pairs(of(parts).d, of(parts).r), a, b).reasons.map((x) => x.code);
    expect(codes({ canopy: { usDensityGalPer1000Ft3: 0.9 } }, 'us-row-volume', 'row-volume')).toContain('density');
    expect(codes({ canopy: { densityClass: 'dense' } }, 'metric-multiplier', 'us-row-volume')).toContain('density');
    expect(codes({ rung: { bbch: 57 } }, 'us-row-volume', 'row-volume')).toContain('stage');
    expect(codes({ rung: { bbch: 57 } }, 'leaf-area', 'row-volume')).toContain('stage');
    expect(codes({ canopy: { shape: 'spindle' } }, 'occupied-volume', 'row-volume')).toContain('outline');
    expect(codes({ canopy: { filledFraction: 0.8 } }, 'crown-height', 'leaf-wall')).toContain('gaps');
    expect(codes({ block: { pattern: { kind: 'one-side-one-face', side: 'left' } } }, 'leaf-wall', 'row-distance')).toEqual(['faces']);
  });
  it('of a row that is refused there is no difference, and no number where there is none', () => {
    const { d, r } = of({ canopy: { heightM: 2, skirtM: 2 } });
    const p = pairOf(pairs(d, r), 'row-volume', 'ground-area');
    expect([p.difference, p.ratio]).toEqual([null, null]);
    for (const x of p.reasons) for (const v of Object.values(x.values)) expect(Number.isFinite(v)).toBe(true);
  });
});

const rowsOf = (d: ReturnType<typeof document>, r: ReturnType<typeof result>, a: string, b: string) => {
  const rows = strategyRows(d, r);
  return [rows.find((x) => x.id === a)!, rows.find((x) => x.id === b)!] as const;
};

describe('the law of an index is read off its formula', () => {
  const { r } = of();
  const law = (id: StrategyId) => {
    const s = STRATEGIES.get(id)!;
    return lawOf(s, r.canopy, evaluateStrategy(s, r.canopy, new Assumptions(ASSUMPTIONS)).index);
  };
  it('of every published one', () => {
    expect(law('ground-area').kind).toBe('constant');
    expect(law('swiss-affine')).toEqual({ kind: 'affine', least: 0.5 });
    for (const id of STRATEGY_IDS) if (id !== 'ground-area' && id !== 'swiss-affine') expect(law(id).kind, id).toBe('proportional');
  });
  it.each<[string, string]>([['max(0.5, TRVc / 10000)', 'other'], ['0.2 + TRVc / 20000', 'affine'], ['TRVc ^ 2 / 100000000', 'other'], ['0.2 + TRVc / 20000 + LWA / 40000', 'other'], ['0.8', 'constant']])('of %s it is %s', (text, kind) => {
    const s = compileOwn({ id: 't', name: 'T', index: text });
    if ('kind' in s) throw new Error(s.code);
    expect(lawOf(s, r.canopy, evaluateStrategy(s, r.canopy, new Assumptions(ASSUMPTIONS)).index).kind).toBe(kind);
  });
});

describe('scenarios and curves', () => {
  it('a scenario says what the document would, were it changed', () => {
    const { d, r } = of();
    const change = { heightM: 3.7, widthM: 1.9, skirtM: 0.7, rowSpacingM: 4.5, filledFraction: 0.9, ladM2PerM3: 2.5, usDensityGalPer1000Ft3: 0.8, densityClass: 'dense', bbch: 61 } as const;
    const { rowSpacingM, bbch, ...canopy } = change;
    const after = of({ canopy, block: { rowSpacingM }, rung: { bbch } });
    const before = JSON.stringify(d);
    expect(scenario(d, r, change).map((x) => num(x.index))).toEqual(after.rows.map((x) => num(x.index)));
    expect(scenario(d, r, {}).map((x) => num(x.index))).toEqual(of().rows.map((x) => num(x.index)));
    expect(JSON.stringify(d)).toBe(before);
  });
  it('a measured profile goes along and keeps the share of its box', () => {
    const profile = [{ heightM: 0.5, widthM: 0.6 }, { heightM: 1.5, widthM: 1.2 }, { heightM: 2.9, widthM: 0.3 }];
    const { d, r } = of({ canopy: { heightM: 3, skirtM: 0.5, widthM: 1.2, profile } });
    const at = (change: object, id: string) => num(scenario(d, r, change).find((x) => x.id === id)!.index);
    for (const change of [{ widthM: 2.4 }, { heightM: 4 }, { skirtM: 1 }]) expect(at(change, 'occupied-volume') / at({}, 'occupied-volume')).toBeCloseTo(at(change, 'row-volume') / at({}, 'row-volume'), 9);
  });
  it.each<Axis>(['height', 'width', 'spacing', 'density', 'skirt', 'us-density'])('curves of the %s go through the block as it is', (axis) => {
    const { d, r, rows } = of();
    const x = measuredOn(r, axis);
    const [low, high] = rangeOf(r, axis);
    expect(low <= x && x <= high).toBe(true);
    for (const c of curves(d, r, axis, 2, [low, 2 * x - low])) {
      const row = rows.find((each) => each.id === c.id)!;
      expect(c.points.map((p) => p.x)).toEqual([low, (low + (2 * x - low)) / 2, 2 * x - low].map((v) => expect.closeTo(v, 9)));
      expect(c.points[1]!.index).toBeCloseTo(num(row.index), 9);
      if (row.water) expect(c.points[1]!.water).toBeCloseTo(num(row.water), 6);
      expect(c.points[1]!.trv).toBeCloseTo(num(r.canopy.figures.TRVc), 6);
    }
  });
  it('a point that cannot be has no index where the crown is counted', () => {
    const { d, r } = of();
    const points = curves(d, r, 'skirt', 1, [0, 3]).find((c) => c.id === 'row-volume')!.points;
    expect(points[0]!.index).not.toBeNull();
    expect(points[1]!.index).toBeNull();
    expect(points[1]!.trv).toBeNaN();
  });
});
