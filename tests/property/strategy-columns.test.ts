import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canopyState } from '#core/canopy/canopy.ts';
import { evaluateStrategy } from '#core/dose/evaluate.ts';
import { product } from '#core/dose/product.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import { columnSteps, strategyColumns, type Canopies } from '#core/dose/table/columns.ts';
import type { Label } from '#core/dose/types.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { PassPattern } from '#core/sprayer/types.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { Assumptions, type AssumptionValues } from '#core/working/assumption.ts';
import { RANGES, type Range } from '#job/limits.ts';
import { defined, document, num } from '../support/sample.ts';

interface Row {
  readonly R: number;
  readonly H: number;
  readonly skirt: number;
  readonly W: number;
  readonly k: number | undefined;
  readonly lad: number | undefined;
  readonly f: number;
}
const within = ({ least, most }: Range): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });
const { canopy: C, blocks: B } = RANGES;
const ROW: fc.Arbitrary<Row> = fc
  .record({ R: within(B.rowSpacingM), H: within(C.heightM), share: fc.double({ min: 0, max: 0.97, noNaN: true }), W: within(C.widthM), k: fc.option(within(C.usDensityGalPer1000Ft3), { nil: undefined }), lad: fc.option(within(C.ladM2PerM3), { nil: undefined }), f: within(C.filledFraction) })
  .map(({ share, ...r }) => ({ ...r, skirt: Math.min(share * r.H, C.skirtM.most) }));

const LABEL: fc.Arbitrary<Label> = fc
  .record({
    unit: fc.constantFrom('kg', 'L'),
    basis: fc.constantFrom('per-hectare', 'per-100-l-dilute', 'per-leaf-wall', 'per-crown-height', 'per-row-volume', 'percent-of-water'),
    rate: fc.double({ min: 0.01, max: 5, noNaN: true }),
    referenceWaterLPerHa: fc.option(fc.double({ min: 200, max: 2000, noNaN: true }), { nil: undefined }),
    maxPerHa: fc.option(fc.double({ min: 0.05, max: 8, noNaN: true }), { nil: undefined }),
    adaptation: fc.option(fc.constantFrom('none', 'downward', 'required'), { nil: undefined }),
    floor: fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { nil: undefined })
  })
  .map((l) => ({ id: 'l', name: 'Sample', ...defined(l) }) as Label);

function canopies(rows: readonly Row[]): Canopies {
  const column = (of: (r: Row) => number): Float64Array => Float64Array.from(rows, of);
  return {
    count: rows.length,
    block: rows.map((_, i) => `b${i}`),
    rowSpacingM: column((r) => r.R),
    treeHeightM: column((r) => r.H),
    skirtHeightM: column((r) => r.skirt),
    canopyWidthM: column((r) => r.W),
    usDensityGalPer1000Ft3: column((r) => r.k ?? NaN),
    ladM2PerM3: column((r) => r.lad ?? NaN),
    filledFraction: column((r) => r.f)
  };
}

/** One canopy as the engine takes it from a document that tells neither stage nor outline nor density class. */
const state = (r: Row, assumptions: Assumptions, faces = 2) =>
  canopyState(defined({ heightM: r.H, skirtM: r.skirt, widthM: r.W, usDensityGalPer1000Ft3: r.k, ladM2PerM3: r.lad, filledFraction: r.f }), { rowSpacingM: r.R, faces }, assumptions);

/** A refused answer is NaN in a column, or no column at all. */
function same(found: number | undefined, answer: Answer | null, what: string): void {
  if (!answer || isRefused(answer)) return expect(found ?? NaN, what).toBeNaN();
  expect(found, what).toBeDefined();
  expect(Math.abs(found! - answer.value), `${what}: ${found} against ${answer.value}`).toBeLessThanOrEqual(1e-12 * Math.abs(answer.value));
}

describe('every strategy as columns', () => {
  it('is what the engine says of each canopy alone, with any label, and with assumptions of the user', () => {
    const own: AssumptionValues[] = [{}, { 'row-volume.water': 0.2, 'reference.width': 2, 'swiss-affine.water-slope': 0, 'canopy.us-density': 0.12, 'canopy.multiplier-medium': 1.1, 'canopy.full-leaf-density': 3, 'leaf-area.recovery': 7 }];
    let dosed = 0;
    fc.assert(
      fc.property(fc.array(ROW, { minLength: 1, maxLength: 6 }), LABEL, fc.constantFrom(...own), fc.constantFrom(1, 2), fc.double({ min: 20, max: 4000, noNaN: true }), (rows, label, values, faces, applied) => {
        const columns = strategyColumns(canopies(rows), { label, appliedLPerHa: applied, assumptions: values, faces });
        expect([...columns.keys()]).toEqual([...STRATEGIES.keys()]);
        rows.forEach((r, i) => {
          const assumptions = new Assumptions(ASSUMPTIONS, values);
          const canopy = state(r, assumptions, faces);
          for (const [id, c] of columns) {
            const answer = evaluateStrategy(STRATEGIES.get(id as never)!, canopy, assumptions);
            same(c.water?.[i], answer.water, `${id} water`);
            same(c.dilute?.[i], answer.dilute, `${id} dilute`);
            same(c.index[i], answer.index, `${id} index`);
            const dose = product(label, canopy, answer).perHa;
            same(c.dose?.[i], dose, `${id} dose`);
            if (!isRefused(dose)) {
              dosed++;
              if (label.maxPerHa !== undefined) expect(c.dose![i]).toBeLessThanOrEqual(label.maxPerHa);
            }
            if (answer.dilute && !isRefused(answer.dilute)) expect(c.concentration![i]! * applied).toBeCloseTo(answer.dilute.value, 6);
            else expect(c.concentration).toBeNull();
          }
        });
      }),
      { numRuns: 300 }
    );
    expect(dosed).toBeGreaterThan(1000);
  });

  it('takes the water of a setting from the row spacing of each canopy, whatever way is driven', () => {
    const patterns: PassPattern[] = [{ kind: 'every-alley' }, { kind: 'one-side-both-faces', side: 'left' }, { kind: 'one-side-one-face', side: 'right' }, { kind: 'alternate-alleys' }, { kind: 'whole-rows', rows: 3 }, { kind: 'swath', widthM: 11 }];
    const rows: Row[] = [3, 4, 6.5].map((R) => ({ R, H: 3, skirt: 0.5, W: 1.2, k: undefined, lad: undefined, f: 1 }));
    for (const pattern of patterns)
      rows.forEach((r) => {
        const doc = document({ canopy: { heightM: r.H, skirtM: r.skirt, widthM: r.W }, block: { rowSpacingM: r.R, pattern, strategy: 'us-row-volume' }, label: {} });
        const whole = evaluate(doc, 'block', 'now');
        if ('kind' in whole) throw new Error(whole.code);
        const { sprayer } = whole;
        const c = strategyColumns(canopies([r]), { appliedLPerHa: { flowLPerMin: num(sprayer.flow), speedKmH: whole.setting.speedKmH, pattern } });
        expect(c.get('us-row-volume')!.concentration![0]! / num(whole.product!.concentration), `${pattern.kind} ${r.R}`).toBeCloseTo(1, 12);
      });
  });

  it('refuses with NaN what the engine refuses: a skirt at the top, figures that cannot be', () => {
    const good: Row = { R: 4, H: 3, skirt: 0.5, W: 1.2, k: undefined, lad: undefined, f: 1 };
    const rows: Row[] = [good, { ...good, skirt: 3 }, { ...good, skirt: 4 }, { ...good, W: -1 }, { ...good, R: 0 }, { ...good, f: 1.5 }, { ...good, lad: -1 }, { ...good, H: Infinity }, { ...good, R: NaN }, good];
    const label: Label = { id: 'l', name: 'l', unit: 'kg', basis: 'per-crown-height', rate: 0.2 };
    const columns = strategyColumns(canopies(rows), { label });
    const assumptions = new Assumptions(ASSUMPTIONS, {});
    let refused = 0;
    rows.forEach((r, i) => {
      // An outline needs a canopy that can be; what is told here does not rest on it.
      if (!(r.W > 0) || !Number.isFinite(r.H) || r.skirt >= r.H) return;
      const canopy = state(r, assumptions);
      for (const [id, c] of columns) {
        const answer = evaluateStrategy(STRATEGIES.get(id as never)!, canopy, assumptions);
        same(c.index[i], answer.index, `${id} ${i}`);
        same(c.water?.[i], answer.water, `${id} ${i}`);
        if (isRefused(answer.index)) refused++;
      }
    });
    expect(refused).toBeGreaterThan(5);
    for (const i of [1, 2]) {
      for (const id of ['crown-height', 'leaf-wall', 'row-volume', 'unit-canopy-row', 'occupied-volume', 'leaf-area']) expect(columns.get(id)!.index[i], id).toBeNaN();
      // Height from the ground and row length do not know of the skirt.
      for (const id of ['us-row-volume', 'row-length', 'ground-area']) expect(columns.get(id)!.index[i], id).not.toBeNaN();
      expect(columns.get('row-length')!.dose![i]).toBeNaN();
    }
    expect(columns.get('row-volume')!.index[9]).toBe(columns.get('row-volume')!.index[0]);
  });

  it('works out tables longer than a sheet, and tells how far it is', () => {
    const one: Row = { R: 4, H: 3, skirt: 0.5, W: 1.2, k: undefined, lad: undefined, f: 1 };
    const rows = Array.from({ length: 5001 }, (_, i) => ({ ...one, W: 1 + i / 5001 }));
    const told: number[] = [...columnSteps(canopies(rows))];
    const columns = strategyColumns(canopies(rows));
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBe(1);
    expect(told.length).toBeGreaterThan(2);
    // 10 000 · 2.5 · W / 4 m³ against 10 000 m³ of the reference.
    rows.forEach((r, i) => expect(columns.get('row-volume')!.index[i]).toBeCloseTo((2.5 * r.W) / 4, 12));
    expect(columns.get('us-row-volume')!.dilute).toBe(columns.get('us-row-volume')!.water);
    expect(columns.get('ground-area')!.index.every((v) => v === 1)).toBe(true);
    expect(strategyColumns(canopies([]), {}).get('row-volume')!.index).toHaveLength(0);
  });
});
