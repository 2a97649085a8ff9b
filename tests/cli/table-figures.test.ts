import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Canopy } from '#core/canopy/types.ts';
import { readHeader, type Header } from '#job/csv/header.ts';
import { RANGES, type Range } from '#job/limits.ts';
import { defined, document, num } from '../support/sample.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { HEADER } from '#core/dose/table/plan.ts';
import { figures } from '../support/table.ts';

const COLUMNS = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction';
const header = readHeader(COLUMNS, 1) as Header;

// Exact by definition: ft³/ac, ft²/ac and gal/ac from 0.3048 m, 4046.8564224 m² and 3.785411784 L.
const FT3_AC = 0.3048 ** 3 / 0.40468564224;
const FT2_AC = 0.3048 ** 2 / 0.40468564224;
const GAL_AC = 3.785411784 / 0.40468564224;

/** Column → the figure of the whole engine that it stands for. Columns of strategies are found by their id. */
function wanted(r: Result, column: string): number {
  const f = r.canopy.figures;
  const strategy = (id: string) => r.strategies.find((s) => s.strategy.id === id)!;
  const fixed: Record<string, () => number> = {
    trv_ground_m3_per_ha: () => num(f.TRVg),
    trv_ground_ft3_per_ac: () => num(f.TRVg) / FT3_AC,
    trv_crown_m3_per_ha: () => num(f.TRVc),
    lwa_m2_per_ha: () => num(f.LWA),
    lwa_ft2_per_ac: () => num(f.LWA) / FT2_AC,
    row_length_m_per_ha: () => num(f.RL),
    ucr_per_ha: () => num(f.UCR),
    us_trv_water_l_per_ha: () => num(strategy('us-row-volume').dilute ?? strategy('us-row-volume').water),
    us_trv_water_gal_per_ac: () => num(strategy('us-row-volume').dilute ?? strategy('us-row-volume').water) / GAL_AC,
    swiss_dose_percent: () => 100 * num(strategy('swiss-affine').index),
    swiss_water_l_per_ha: () => num(strategy('swiss-affine').water)
  };
  if (fixed[column]) return fixed[column]!();
  const [, name, kind] = /^(.+)_(water_l_per_ha|dose_index)$/.exec(column)!;
  const s = strategy(name!.replaceAll('_', '-'));
  return num(kind === 'dose_index' ? s.index : s.water);
}

const within = ({ least, most }: Range): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });
const maybe = (r: Range): fc.Arbitrary<number | undefined> => fc.option(within(r), { nil: undefined });
const { canopy: C, blocks: B } = RANGES;
const ROW = fc.record({
  R: within(B.rowSpacingM),
  H: within(C.heightM),
  skirtShare: fc.double({ min: 0, max: 0.95, noNaN: true }),
  W: within(C.widthM),
  k: maybe(C.usDensityGalPer1000Ft3),
  lad: maybe(C.ladM2PerM3),
  f: maybe(C.filledFraction)
});

/** Full precision: the text of a double in JavaScript reads back as the same double. */
const csv = (values: readonly (number | undefined)[]): string => values.map((v) => (v === undefined ? '' : String(v))).join(',');

it('every column is the figure that the whole evaluation of the same canopy gives', () => {
  const names = HEADER.split(',').slice(1);
  fc.assert(
    fc.property(ROW, ({ R, H, skirtShare, W, k, lad, f }) => {
      const skirt = Math.min(skirtShare * H, 15);
      const canopy: Canopy = defined({ heightM: H, skirtM: skirt, widthM: W, usDensityGalPer1000Ft3: k, ladM2PerM3: lad, filledFraction: f });
      const line = `x,${csv([R, H, skirt, W, k, lad, f])}\n`;
      const done = figures({ header, line: 2, bytes: new Uint8Array(Buffer.from(line)) });
      expect(done.problems).toEqual([]);
      const found = Buffer.from(done.bytes).toString().trimEnd().split(',').slice(1).map(Number);
      expect(found).toHaveLength(names.length);
      // No stage, no outline, no density class: a document that is silent on them.
      const silent = document({ block: { rowSpacingM: R } });
      const whole = { ...silent, blocks: [{ ...silent.blocks[0]!, rungs: [{ ...silent.blocks[0]!.rungs[0]!, canopy }] }] };
      const r = evaluate(whole, 'block', 'now');
      if ('kind' in r) throw new Error(r.code);
      names.forEach((name, i) => {
        const value = wanted(r, name);
        expect(Number.isFinite(value), name).toBe(true);
        expect(Math.abs(found[i]! - value), `${name}: ${found[i]} against ${value}`).toBeLessThanOrEqual(1e-12 * Math.abs(value) + Number.MIN_VALUE * 1e6);
      });
    }),
    { numRuns: 300 }
  );
});

it('figures stay finite at the ends of every range', () => {
  const ends = ({ least, most }: Range): number[] => [least, most];
  let lines = '';
  for (const R of ends(B.rowSpacingM))
    for (const H of ends(C.heightM))
      for (const s of [0, H * 0.999999 > 15 ? 15 : H * 0.999999])
        for (const W of ends(C.widthM))
          for (const k of [undefined, ...ends(C.usDensityGalPer1000Ft3)])
            for (const lad of ends(C.ladM2PerM3)) for (const f of ends(C.filledFraction)) lines += `x,${csv([R, H, s, W, k, lad, f])}\n`;
  const done = figures({ header, line: 2, bytes: new Uint8Array(Buffer.from(lines)) });
  expect(done.problems).toEqual([]);
  const values = Buffer.from(done.bytes).toString().trimEnd().split('\n').flatMap((l) => l.split(',').slice(1));
  expect(values.length).toBe((lines.split('\n').length - 1) * (HEADER.split(',').length - 1));
  for (const v of values) expect(Number.isFinite(Number(v)) && v !== '' && Number(v) >= 0, v).toBe(true);
});
