import fc from 'fast-check';
import { expect, test } from 'vitest';
import { portions } from '#core/mix/portions.ts';
import { loadsState } from '#core/mix/loads.ts';
import { LABEL_MAXIMUM_HAIR, manyDocuments } from './loads-sample.ts';

/** Laws of the loads, over thousands of blocks, tanks and labels. Sums are done in whole steps, so that nothing hides in binary arithmetic. */

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('portions: the sum is dose × area to the gram or millilitre, and each load is within one step of its share', () => {
  fc.assert(
    fc.property(size(0.001, 50), fc.array(size(0.01, 20), { minLength: 1, maxLength: 40 }), (perHa, areas) => {
      const p = portions(perHa, areas);
      const whole = (v: number) => Math.round(v / p.step);
      expect(p.loads.reduce((a, v) => a + whole(v), 0)).toBe(whole(p.total));
      expect(Math.abs(p.total - perHa * areas.reduce((a, b) => a + b, 0))).toBeLessThanOrEqual(p.step / 2 + 1e-9);
      p.loads.forEach((v, i) => expect(Math.abs(v - perHa * areas[i]!)).toBeLessThanOrEqual((areas.length / 2 + 1) * p.step));
    }),
    { seed: 31, numRuns: 3000 }
  );
});

test('portions under a maximum: no load and no sum passes it on its land, and less than a step a load is missing', () => {
  fc.assert(
    fc.property(size(0.001, 50), size(0.5, 1.5), fc.array(size(0.01, 20), { minLength: 1, maxLength: 40 }), (most, ratio, areas) => {
      const perHa = Math.min(most * ratio, most);
      const p = portions(perHa, areas, most);
      const ha = areas.reduce((a, b) => a + b, 0);
      p.loads.forEach((v, i) => expect(v).toBeLessThanOrEqual(most * areas[i]! + LABEL_MAXIMUM_HAIR));
      expect(p.total).toBeLessThanOrEqual(most * ha + LABEL_MAXIMUM_HAIR);
      expect(perHa * ha - p.total).toBeLessThan(areas.length * p.step + 1e-9);
    }),
    { seed: 32, numRuns: 3000 }
  );
});

test('loads: mix, land and product of all loads are those of the area; no load is more than the tank; doses are the label’s', () => {
  fc.assert(
    fc.property(manyDocuments, ({ document, result }) => {
      const s = loadsState(document, result);
      if (s.count.kind === 'refused') return;
      const value = (a: (typeof s.loads)[number]['mix']) => (a.kind === 'refused' ? NaN : a.value);
      const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
      const [V, A] = [value(s.volume), value(s.area)];
      expect(s.loads).toHaveLength(s.count.value);
      expect(sum(s.loads.map((l) => value(l.mix)))).toBeCloseTo(A * V, 4);
      expect(sum(s.loads.map((l) => value(l.area)))).toBeCloseTo(A, 8);
      expect(sum(s.loads.map((l) => value(l.fill)))).toBeCloseTo(value(s.prepared), 4);
      for (const l of s.loads) expect(value(l.mix) + s.residual.value).toBeLessThanOrEqual(s.tank.value * (1 + 1e-9));
      s.partners.forEach((p, i) => {
        const steps = sum(s.loads.map((l) => Math.round(l.products[i]!.amount / p.step)));
        expect(steps).toBe(Math.round(p.forArea / p.step));
        expect(sum(s.loads.map((l) => Math.round(l.products[i]!.total / p.step)))).toBe(Math.round(p.total / p.step));
        if (p.perHa.kind === 'refused') return;
        const most = p.label.maxPerHa ?? Infinity;
        // The label's own words, by hand: the two bases of the sample.
        const printed = p.label.basis === 'per-hectare' ? p.label.rate : (p.label.rate * value(result.strategy.dilute!)) / 100;
        const dose = Math.min(printed, most);
        const short = most === Infinity ? p.step / 2 : s.loads.length * p.step;
        expect(dose * A - p.forArea).toBeLessThanOrEqual(short + 1e-9);
        expect(p.forArea - dose * A).toBeLessThanOrEqual(p.step / 2 + 1e-9);
        for (const l of s.loads) expect(l.products[i]!.amount).toBeLessThanOrEqual(most * value(l.area) + LABEL_MAXIMUM_HAIR);
      });
    }),
    { seed: 33, numRuns: 2000 }
  );
});
