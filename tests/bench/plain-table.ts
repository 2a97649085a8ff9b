/**
 * The usual table as a plain script would make it, for `bench table` to be held against: the whole file in memory, row by row, the formulas
 * of docs/methods/dose.md typed off by hand. It checks nothing. Usage: plain-table.ts IN.csv OUT.csv
 */
import { readFileSync, writeFileSync } from 'node:fs';
import Papa from 'papaparse';

const [, , from, to] = process.argv;
const { data } = Papa.parse<Record<string, string>>(readFileSync(from!, 'utf8'), { header: true, skipEmptyLines: true });

const ACRE_M2 = 4046.8564224;
const FT = 0.3048;
const GALLON_L = 3.785411784;
const galPerAcre = (litresPerHa: number): number => (litresPerHa * (ACRE_M2 / 10000)) / GALLON_L;

const rows = data.map((row) => {
  const R = Number(row['row_spacing_m']);
  const H = Number(row['tree_height_m']);
  const h = H - Number(row['skirt_height_m'] || 0);
  const W = Number(row['canopy_width_m']);
  const k = (Number(row['density_gal_per_1000ft3'] || 0.7) * GALLON_L) / (1000 * FT ** 3);
  const lad = Number(row['lad_m2_per_m3'] || 2);
  const f = Number(row['filled_fraction'] || 1);
  const ground = (10000 * H * W * f) / R;
  const crown = (10000 * h * W * f) / R;
  // Share of its box that a trimmed wall fills.
  const outline = crown * 0.9212;
  const wall = (20000 * h * f) / R;
  const us = k * ground;
  return {
    block: row['block'],
    trv_ground_m3_per_ha: ground,
    trv_ground_ft3_per_ac: (ground * (ACRE_M2 / 10000)) / FT ** 3,
    trv_crown_m3_per_ha: crown,
    lwa_m2_per_ha: wall,
    lwa_ft2_per_ac: (wall * (ACRE_M2 / 10000)) / FT ** 2,
    row_length_m_per_ha: 10000 / R,
    ucr_per_ha: (100 * h * W * f) / R,
    us_trv_water_l_per_ha: us,
    us_trv_water_gal_per_ac: galPerAcre(us),
    swiss_dose_percent: 50 + crown / 200,
    swiss_water_l_per_ha: 0.02 * crown + 200,
    row_length_dose_index: 3.5 / R,
    crown_height_water_l_per_ha: 300 * h,
    leaf_wall_dose_index: wall / 16000,
    row_volume_water_l_per_ha: 0.1 * crown,
    metric_multiplier_water_l_per_ha: (0.85 * 3343 * ground) / 35676,
    unit_canopy_row_water_l_per_ha: crown / 10,
    row_distance_water_l_per_ha: (25 * h * f * 100) / R,
    stage_volume_water_l_per_ha: 0.125 * outline,
    occupied_volume_water_l_per_ha: 0.13 * outline,
    leaf_area_water_l_per_ha: (100 * ((lad * outline) / 10000) * 0.7) / 0.25
  };
});
writeFileSync(to!, `${Papa.unparse(rows, { newline: '\n' })}\n`);
