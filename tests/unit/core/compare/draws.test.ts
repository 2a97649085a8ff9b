import jstat from 'jstat';
import * as stats from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { BELIEFS } from '#core/dose/compare/beliefs.ts';
import { drawSteps, type Drawn, type DrawWish } from '#core/dose/compare/draws.ts';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { tornado, type Tornado } from '#core/dose/compare/tornado.ts';
import type { Quantities } from '#core/dose/compare/vary.ts';
import { STRATEGY_IDS } from '#core/dose/types.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import type { Document } from '#core/setting/document.ts';
import { document, num, refusal, result, type Parts } from '../../../support/sample.ts';

function drawn(d: Document, wish: Partial<DrawWish> = {}, seen: number[] = []) {
  const steps = drawSteps(d, 'block', 'now', { draws: 20_000, seed: 1, ...wish });
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    seen.push(value);
  }
}
function figures(d: Document, wish: Partial<DrawWish> = {}): readonly Drawn[] {
  const answer = drawn(d, wish);
  if ('kind' in answer) throw new Error(answer.code);
  return answer;
}
const of = (all: readonly Drawn[], id: string, quantity: Quantities): Drawn => {
  const found = all.find((x) => x.id === id && x.quantity === quantity);
  if (!found) throw new Error(`nothing drawn of ${id} ${quantity}`);
  return found;
};

const SURE: Parts = { canopy: { heightM: 3.2, skirtM: 0.6, widthM: 1.4, errors: { heightSeM: 0.08, skirtSeM: 0.04, widthSeM: 0.06, rowSpacingSeM: 0.01, heightWidthCorrelation: 0.5, trees: 20 } } };

describe('draws of the strategies', () => {
  const d = document(SURE);
  const all = figures(d);
  const rows = strategyRows(d, result(SURE));

  it('there is one for every figure that rests on a measurement with an error, and none for the others', () => {
    for (const row of rows)
      for (const quantity of ['water', 'index'] as const) expect(all.some((x) => x.id === row.id && x.quantity === quantity), `${row.id} ${quantity}`).toBe(row.intervals[quantity] !== null);
    expect(all.some((x) => x.quantity === 'dose')).toBe(false);
    expect(all.length).toBeGreaterThan(20);
  });
  it('agree with the analytic interval where the figure is linear', () => {
    // h = H − Hs is linear in what is drawn. A thousand more draws move an end by some 1 % of the half interval.
    for (const quantity of ['water', 'index'] as const) {
      const x = of(all, 'crown-height', quantity);
      const half = (x.analytic!.high - x.analytic!.low) / 2;
      expect(Math.abs(x.low - x.analytic!.low)).toBeLessThan(0.04 * half);
      expect(Math.abs(x.high - x.analytic!.high)).toBeLessThan(0.04 * half);
      // Student's t with 19 degrees of freedom is wider than its scale by √(ν/(ν − 2)).
      expect(x.sd / (x.analytic!.standardError * Math.sqrt(19 / 17))).toBeCloseTo(1, 1);
    }
  });
  it('stand above it where the figure is a product: the mean by ρ·SE·SE, by hand', () => {
    const big: Parts = { canopy: { heightM: 3, skirtM: 0, widthM: 1.4, errors: { heightSeM: 0.3, widthSeM: 0.2, heightWidthCorrelation: 0.8 } } };
    const x = of(figures(document(big), { draws: 100_000 }), 'row-volume', 'index');
    // mean(H·W) = H̄·W̄·(1 + ρ·CV_H·CV_W): reference §2.9.
    const base = num(strategyRows(document(big), result(big)).find((r) => r.id === 'row-volume')!.index);
    expect(x.mean / base).toBeCloseTo(1 + 0.8 * (0.3 / 3) * (0.2 / 1.4), 3);
    // The upper end lies further off than the lower one, which first order cannot tell.
    expect(x.high - base).toBeGreaterThan(1.05 * (base - x.low));
    expect(x.analytic!.high - base).toBeCloseTo(base - x.analytic!.low, 9);
  });
  it('stop at the label’s rules, where first order goes on or sees nothing', () => {
    const capped: Parts = { ...SURE, canopy: { ...SURE.canopy, heightM: 3.9, widthM: 1.21 }, label: { adaptation: 'required', maxPerHa: 2 } };
    const row = strategyRows(document(capped), result(capped)).find((r) => r.id === 'row-volume')!;
    const x = of(figures(document(capped)), 'row-volume', 'dose');
    const at = num(row.index);
    expect(at > 0.97 && at < 1.03).toBe(true);
    expect(x.high).toBe(2);
    expect(x.mean).toBeLessThan(2 * Math.min(at, 1));
    expect(x.low).toBeGreaterThan(1);
    // Draws with a share at the maximum: about half of them.
    const atMost = x.bins.counts.at(-1)! / 20_000;
    expect(atMost).toBeGreaterThan(0.3);
  });
  it('are those of an independent generator: quantiles of the product against normal numbers of jstat', () => {
    const parts: Parts = { canopy: { heightM: 3, skirtM: 0.5, widthM: 1.4, errors: { heightSeM: 0.2, widthSeM: 0.15 } } };
    const x = of(figures(document(parts), { draws: 50_000 }), 'row-volume', 'index');
    let state = 12345;
    jstat.setRandom(() => (state = (state * 48271) % 2147483647) / 2147483647);
    const other = Array.from({ length: 50_000 }, () => ((jstat.normal.sample(3, 0.2) - 0.5) * jstat.normal.sample(1.4, 0.15)) / 4);
    jstat.setRandom(Math.random);
    expect(x.mean / stats.mean(other)).toBeCloseTo(1, 2);
    expect(x.sd / stats.sampleStandardDeviation(other)).toBeCloseTo(1, 1);
    expect(x.low / stats.quantile(other, 0.025)).toBeCloseTo(1, 2);
    expect(x.high / stats.quantile(other, 0.975)).toBeCloseTo(1, 2);
  });
  it('the same seed draws the same, another draws others; bins hold all draws', () => {
    expect(figures(d)).toEqual(all);
    const other = figures(d, { seed: 2 });
    expect(of(other, 'row-volume', 'index').mean).not.toBe(of(all, 'row-volume', 'index').mean);
    expect(of(other, 'row-volume', 'index').mean / of(all, 'row-volume', 'index').mean).toBeCloseTo(1, 2);
    for (const x of all) {
      expect(x.bins.counts.reduce((s, c) => s + c, 0)).toBe(20_000);
      expect(x.bins.from).toBeLessThanOrEqual(x.low);
      expect(x.bins.from + x.bins.width * x.bins.counts.length).toBeGreaterThanOrEqual(x.high);
      expect([x.lost, x.redrawn]).toEqual([0, 0]);
    }
  });
  it('progress rises to the end', () => {
    const seen: number[] = [];
    drawn(d, {}, seen);
    expect(seen.length).toBeGreaterThan(5);
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect(seen.at(-1)).toBe(1);
  });
  it('assumptions with a range are drawn only where that is asked for, over their range', () => {
    const bare = document({});
    expect(refusal(drawn(bare) as never)).toBe('nothing-uncertain @ canopy.errors');
    const x = of(figures(bare, { assumptions: true, draws: 50_000 }), 'crown-height', 'water');
    // 100 to 500 L/ha per metre, evenly, on 2.5 m of crown: mean 750, deviation 400·2.5/√12, 95 % of it inside.
    expect(x.mean / 750).toBeCloseTo(1, 2);
    expect(x.sd / ((400 * 2.5) / Math.sqrt(12))).toBeCloseTo(1, 2);
    expect([x.low / (250 + 0.025 * 1000), x.high / (250 + 0.975 * 1000)]).toEqual([expect.closeTo(1, 2), expect.closeTo(1, 2)]);
    expect(x.analytic).toBeNull();
    // A value of the user's own stands.
    const own = document({ assumptions: { 'crown-height.water': 200 } });
    expect(figures(own, { assumptions: true }).some((f) => f.id === 'crown-height')).toBe(false);
  });
  it('two figures rest on the same draws: an own formula of a published one has the same ends', () => {
    const own = { ...d, ownStrategies: [{ id: 'same', name: 'Same', index: 'TRVc / 10000' }] };
    const both = figures(own);
    expect(of(both, 'own.same', 'index').high / of(both, 'row-volume', 'index').high).toBeCloseTo(1, 12);
  });
  it('draws without a figure are counted and left out', () => {
    // The crown is 2.6 m with a standard error of about 0.09: 4 + log(h − 2.5) is none below h = 2.518 m.
    const own = { ...d, ownStrategies: [{ id: 'log', name: 'Log', index: '4 + log(h - 2.5)' }] };
    const x = of(figures(own), 'own.log', 'index');
    expect(x.lost).toBeGreaterThan(2000);
    expect(x.lost).toBeLessThan(18_000);
    expect(x.bins.counts.reduce((s, c) => s + c, 0)).toBe(20_000 - x.lost);
    expect(x.low).toBeGreaterThanOrEqual(0);
  });
  it.each<[Partial<DrawWish>, string]>([[{ draws: 99 }, 'draws-out-of-range'], [{ draws: 100_001 }, 'draws-out-of-range'], [{ draws: 500.5 }, 'draws-out-of-range'], [{ draws: NaN }, 'draws-out-of-range'], [{ seed: -1 }, 'seed-not-whole'], [{ seed: 1.5 }, 'seed-not-whole'], [{ seed: 2 ** 53 }, 'seed-not-whole']])('%j is refused', (wish, code) => {
    expect(refusal(drawn(d, wish) as never).split(' ')[0]).toBe(code);
  });
  it('a block that is not there is refused, and errors too great for any canopy', () => {
    const steps = drawSteps(d, 'no', 'now', { draws: 100, seed: 1 });
    expect(refusal(steps.next().value as never)).toContain('unknown-block');
    expect(refusal(drawn(document({ canopy: { heightM: 3, skirtM: 0, widthM: 0.1, errors: { skirtSeM: 5, widthSeM: 5, heightSeM: 5 } } }), { draws: 100_000 }) as never)).toContain('draws-given-up');
  });
});

describe('ranges of belief', () => {
  it('are of assumptions of the engine, within what may be set, about the default', () => {
    expect(BELIEFS.size).toBeGreaterThan(5);
    for (const [id, { low, high, sources }] of BELIEFS) {
      const a = ASSUMPTIONS.get(id)!;
      expect(a, id).toBeDefined();
      expect([low < high, low >= a.least, high <= a.most, a.value >= low - 1e-12, a.value <= high + 1e-12], id).toEqual([true, true, true, true, true]);
      expect(sources.length).toBeGreaterThan(0);
    }
  });
});

describe('what moves a figure', () => {
  const told = (answer: Tornado | { readonly kind: 'refused'; readonly code: string }): Tornado => {
    if ('kind' in answer) throw new Error(answer.code);
    return answer;
  };
  it.each(STRATEGY_IDS)('of %s: every bar holds the base, the longest stands first, each is the figure with that input alone', (id) => {
    const parts: Parts = { ...SURE, label: { adaptation: 'required' } };
    const [d, r] = [document(parts), result(parts)];
    for (const quantity of ['index', 'water', 'dose'] as const) {
      const row = strategyRows(d, r).find((x) => x.id === id)!;
      if (!row[quantity]) continue;
      const { base, bars } = told(tornado(d, r, id, quantity));
      expect(base).toBe(num(row[quantity]));
      expect(bars.map((b) => b.high - b.low)).toEqual(bars.map((b) => b.high - b.low).toSorted((a, b) => b - a));
      for (const b of bars) {
        expect(b.low <= base * (1 + 1e-12) && b.high >= base * (1 - 1e-12), b.id).toBe(true);
        // The same, by a document that says so.
        const moved: Parts = b.kind === 'assumed'
          ? { ...parts, assumptions: { [b.id]: b.to } }
          : b.id === 'rowSpacingM' ? { ...parts, block: { rowSpacingM: b.to } } : { ...parts, canopy: { ...parts.canopy, [b.id.slice('canopy.'.length)]: b.to } };
        const there = strategyRows(document(moved), result(moved)).find((x) => x.id === id)!;
        expect(b.atTo / num(there[quantity])).toBeCloseTo(1, 9);
      }
    }
  });
  it('a measurement goes over its 95 % interval: Student’s t with 19 degrees of freedom', () => {
    const bar = told(tornado(document(SURE), result(SURE), 'crown-height', 'index')).bars.find((b) => b.id === 'canopy.heightM')!;
    const half = jstat.studentt.inv(0.975, 19) * 0.08;
    expect([bar.from, bar.to]).toEqual([expect.closeTo(3.2 - half, 6), expect.closeTo(3.2 + half, 6)]);
    // (H − 0.6) / 2.8, by hand.
    expect([bar.low, bar.high]).toEqual([expect.closeTo((2.6 - half) / 2.8, 6), expect.closeTo((2.6 + half) / 2.8, 6)]);
  });
  it('a measurement goes no further than a canopy can', () => {
    const parts: Parts = { canopy: { heightM: 3, skirtM: 0.1, widthM: 0.5, errors: { skirtSeM: 1, widthSeM: 1, heightSeM: 3 } } };
    for (const b of told(tornado(document(parts), result(parts), 'row-volume', 'index')).bars) expect([b.from >= 0, b.low >= 0]).toEqual([true, true]);
  });
  it('the label’s maximum acts on both ends', () => {
    const parts: Parts = { ...SURE, canopy: { ...SURE.canopy, heightM: 4.5, widthM: 1.6 }, label: { adaptation: 'required', maxPerHa: 2 } };
    expect(told(tornado(document(parts), result(parts), 'row-volume', 'dose'))).toEqual({ base: 2, bars: [] });
  });
  it('without errors there are bars of assumptions alone; what cannot be asked is refused', () => {
    const [d, r] = [document(), result()];
    expect(told(tornado(d, r, 'leaf-area', 'water')).bars.map((b) => b.id).toSorted()).toEqual(['canopy.full-leaf-density', 'leaf-area.deposit', 'leaf-area.recovery']);
    expect(told(tornado(d, r, 'ground-area', 'index'))).toEqual({ base: 1, bars: [] });
    expect(refusal(tornado(d, r, 'no-such', 'index') as never)).toBe('unknown-strategy @ strategy');
    expect(refusal(tornado(d, r, 'leaf-wall', 'water') as never)).toContain('strategy-without-water');
    expect(refusal(tornado(d, r, 'leaf-wall', 'dose') as never)).toContain('no-label-dose');
    expect(refusal(tornado(document({ canopy: { heightM: 2, skirtM: 2 } }), result({ canopy: { heightM: 2, skirtM: 2 } }), 'leaf-wall', 'index') as never)).toContain('skirt-above-top');
  });
});
