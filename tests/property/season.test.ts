import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proposeByStage } from '#core/canopy/growth/propose.ts';
import { seasonOf, type Season } from '#core/season/season.ts';
import type { Document, Rung } from '#core/setting/document.ts';
import { DegreeDays, degreeDaysOf } from '#core/weather/degree-days.ts';
import { given, isRefused, valueOf } from '#core/working/answer.ts';
import { arcNozzles, document } from '../support/sample.ts';

/** Laws of a season over many made-up ones. */
const positions = arcNozzles().map((n) => n.id);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rungs = fc.array(
  fc.record({
    heightM: between(1, 5), skirtM: between(0, 0.8), widthM: between(0.3, 3), ladM2PerM3: between(0.1, 4), speedKmH: between(3, 8), pressureBar: between(4, 18),
    shut: fc.subarray(positions, { maxLength: 12 }), treatments: fc.integer({ min: 0, max: 12 })
  }),
  { minLength: 1, maxLength: 7 }
);
const labels = fc.record({
  basis: fc.constantFrom('per-hectare' as const, 'per-leaf-wall' as const, 'per-row-volume' as const, 'per-crown-height' as const),
  rate: between(0.1, 5),
  maxPerHa: between(0.2, 6),
  adaptation: fc.constantFrom('none' as const, 'downward' as const, 'required' as const),
  floor: between(0, 1)
});
type Made = typeof rungs extends fc.Arbitrary<infer T> ? T : never;

function made(list: Made, label: object): Document {
  const d = document({ label, block: { areaHa: 2.5 } });
  const block = d.blocks[0]!;
  return {
    ...d,
    blocks: [{
      ...block,
      rungs: list.map((r, i): Rung => ({
        ...block.rungs[0]!, id: `r${i}`, name: `R${i}`, treatments: r.treatments,
        canopy: { heightM: r.heightM, skirtM: r.skirtM, widthM: r.widthM, ladM2PerM3: r.ladM2PerM3, shape: 'box' },
        setting: { speedKmH: r.speedKmH, pressureBar: r.pressureBar, gear: 'high', ptoRpm: 540, nozzles: r.shut.map((position) => ({ position, open: false })) }
      }))
    }]
  };
}
const seasonFor = (d: Document): Season => seasonOf(d, d.blocks[0]!.id) as Season;
const RUNS = { numRuns: 60, seed: 7 };
const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(a), Math.abs(b)));

describe('seasons', () => {
  it('add up: each total is the treatments of each rung times that rung’s own, whatever their order', () =>
    fc.assert(
      fc.property(rungs, labels, (list, label) => {
        const s = seasonFor(made(list, label));
        const sum = (of: (r: Season['rungs'][number]) => number) => s.rungs.reduce((total, r) => total + (r.treatments.value === 0 ? 0 : r.treatments.value * of(r)), 0);
        const total = (kind: string) => s.totals.find((t) => t.kind === kind)!;
        near(valueOf(total('water').adapted)!, sum((r) => valueOf(r.volume)!));
        near(valueOf(total('water').fixed)!, s.treatments * valueOf(s.fixed.volume)!);
        near(valueOf(total('loads').adapted)!, sum((r) => Math.ceil((2.5 * valueOf(r.volume)!) / 1000 - 1e-9)));
        near(valueOf(total('dose-kg').adapted)!, sum((r) => valueOf(r.doses[0]!.adapted)!));
        const reversed = seasonFor(made([...list].reverse(), label));
        near(valueOf(reversed.totals[0]!.adapted)!, valueOf(total('water').adapted)!);
        for (const t of s.totals) near(valueOf(t.fixed)! - valueOf(t.adapted)!, valueOf(t.saving)!);
      }),
      RUNS
    ));

  it('never put on more than the label allows, a treatment or a season, adapted or fixed', () =>
    fc.assert(
      fc.property(rungs, labels, fc.option(between(0.5, 30), { nil: undefined }), (list, label, maxPerSeason) => {
        const s = seasonFor(made(list, { ...label, ...(maxPerSeason === undefined ? {} : { maxPerSeason }) }));
        for (const r of s.rungs)
          for (const d of r.doses) {
            expect(valueOf(d.adapted)!).toBeLessThanOrEqual(label.maxPerHa * (1 + 1e-9));
            expect(valueOf(d.fixed)!).toBeLessThanOrEqual(label.maxPerHa * (1 + 1e-9));
          }
        for (const t of s.totals.filter((each) => each.kind === 'dose-kg'))
          for (const a of [t.adapted, t.fixed]) {
            if (isRefused(a)) expect(a.code).toBe('season-above-label');
            else if (maxPerSeason !== undefined) expect(a.value).toBeLessThanOrEqual(maxPerSeason * (1 + 1e-9));
          }
      }),
      RUNS
    ));

  it('of rungs alike have no differences and save nothing', () =>
    fc.assert(
      fc.property(rungs.map((l) => l[0]!), fc.integer({ min: 2, max: 5 }), labels, (one, count, label) => {
        const s = seasonFor(made(Array.from({ length: count }, () => one), label));
        for (const c of s.changes) expect([c.lines, c.opened, c.shut]).toEqual([[], [], []]);
        for (const t of s.totals) expect(valueOf(t.saving)).toBe(0);
      }),
      RUNS
    ));
});

describe('growth', () => {
  it('goes with the stage up to full leaf: never less leaf area, never a smaller row, and what is proposed lies in its range', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 74 }), fc.integer({ min: 0, max: 20 }), between(1, 5), between(0.4, 3), (bbch, later, heightM, widthM) => {
        const at = (stage: number) => {
          const d = document({ rung: { bbch: stage } });
          const block = d.blocks[0]!;
          const full: Rung = { ...block.rungs[0]!, id: 'full', bbch: 75, canopy: { heightM, widthM, skirtM: 0.4, shape: 'box', ladM2PerM3: 2 } };
          const p = proposeByStage(d, { ...block, rungs: [block.rungs[0]!, full] }, block.rungs[0]!, full);
          if ('kind' in p) throw new Error(p.code);
          return p;
        };
        const [a, b] = [at(bbch), at(Math.min(bbch + later, 75))];
        const v = (p: typeof a, i: number) => valueOf(p.figures[i]!.proposed)!;
        expect(v(b, 0)).toBeGreaterThanOrEqual(v(a, 0) - 1e-12);
        expect(v(b, 1)).toBeGreaterThanOrEqual(v(a, 1) - 1e-12);
        const leaf = (p: typeof a) => v(p, 3) * (v(p, 0) - 0.4) * v(p, 1);
        expect(leaf(b)).toBeGreaterThanOrEqual(leaf(a) - 1e-12);
        for (const f of a.figures) if (f.range) {
          const value = valueOf(f.proposed)!;
          expect(value).toBeGreaterThanOrEqual(f.range.low - 1e-9);
          expect(value).toBeLessThanOrEqual(f.range.high + 1e-9);
        }
      }),
      RUNS
    ));
});

describe('degree-days', () => {
  const temperatures = fc.array(between(-30, 45), { minLength: 1, maxLength: 24 });
  it('never fall as days go on, as it gets warmer, or as the base goes down; and are never below zero', () =>
    fc.assert(
      fc.property(fc.array(temperatures, { minLength: 2, maxLength: 40 }), between(-5, 15), between(0, 10), (list, base, warmer) => {
        const days = list.map((readings, i) => ({ date: new Date(Date.UTC(2031, 2, 1 + i)).toISOString().slice(0, 10), temperatures: { readings } }));
        const w = new DegreeDays({ kind: 'readings', readingsPerDay: 24, thin: [], days }, given(base, 'degC'));
        let before = 0;
        for (let n = 1; n < days.length; n++) {
          const span = w.span(days[0]!.date, days[n]!.date);
          if ('kind' in span) throw new Error(span.code);
          const now = valueOf(span.sum)!;
          expect(now).toBeGreaterThanOrEqual(before);
          before = now;
        }
        for (const readings of list) {
          expect(degreeDaysOf({ readings: readings.map((c) => c + warmer) }, base)).toBeGreaterThanOrEqual(degreeDaysOf({ readings }, base));
          expect(degreeDaysOf({ readings }, base - warmer)).toBeGreaterThanOrEqual(degreeDaysOf({ readings }, base));
          // Summed reading by reading it is at least what the mean of the day gives: the excess is convex.
          const mean = readings.reduce((a, b) => a + b, 0) / readings.length;
          expect(degreeDaysOf({ readings }, base)).toBeGreaterThanOrEqual(degreeDaysOf({ meanC: mean }, base) - 1e-9);
        }
      }),
      { ...RUNS, numRuns: 100 }
    ));
});
