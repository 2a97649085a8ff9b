import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sampleCorrelation, sampleStandardDeviation } from 'simple-statistics';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Document } from '#core/setting/document.ts';
import { records, rowtailor } from '../support/command.ts';
import { machineA, setting } from '../support/sample.ts';
import { bare, mean, READINGS, ROW_SPACING, STATIONS, TREES, type Species, type Station } from './stations.ts';

/** Literals in this file come from the data by numpy, and where a comment says so by hand; none from the engine. */

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,filled_fraction\n';
/** By scipy: the smallest n with t(0.975, n−1)·CV/√n ≤ 0.1. */
const NEEDED: Readonly<Record<Species, number>> = { apple: 154, cherry: 20 };
let scratch = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
});
afterAll(() => rm(scratch, { recursive: true }));

const relative = (found: unknown, wanted: number): number => Math.abs(Number(found) / wanted - 1);

describe('the readings', () => {
  it('are those of 18 apple and 15 cherry trees', () => {
    expect(READINGS).toHaveLength(694);
    expect(STATIONS).toHaveLength(169);
    expect([TREES.filter((t) => t.species === 'apple').length, TREES.filter((t) => t.species === 'cherry').length]).toEqual([18, 15]);
  });
  it('are in metres: the feet and inches in which many were first written say the same', () => {
    const both = READINGS.filter((r) => Number(r['ft']) > 0 || Number(r['in']) > 0);
    expect(both.length).toBeGreaterThan(300);
    for (const r of both) expect(Math.abs((Number(r['ft']) + Number(r['in']) / 12) * 0.3048 - Number(r['m'])), JSON.stringify(r)).toBeLessThan(0.0011);
  });
  it('give each tree one pair of half spreads at every station', () => {
    for (const t of TREES) {
      const sides = READINGS.filter((r) => `${r['species']}-${r['tree']}` === t.id).map((r) => r['position']!).filter((p) => /^[nsew]d$/.test(p));
      expect(['ed,wd', 'nd,sd']).toContain([...new Set(sides)].sort().join());
    }
  });
});

describe('table', () => {
  it('works out every tree', async () => {
    const path = join(scratch, 'trees.csv');
    await writeFile(path, HEAD + TREES.map((t) => [t.id, ROW_SPACING[t.species], t.height, t.skirt, t.width, t.filled].join(',') + '\n').join(''));
    const { code, out, err } = await rowtailor(['table', path]);
    expect([code, err]).toEqual([0, '']);
    const rows = new Map(records(out).map((r) => [r['block']!, r]));
    expect([...rows.keys()]).toEqual(TREES.map((t) => t.id));

    // By hand. Apple 14: H 3.646, W 3.24, skirt 0.79, full: 10000·3.646·3.24/6 and 20000·2.856/6.
    expect(relative(rows.get('apple-14')!['trv_ground_m3_per_ha'], 19688.4)).toBeLessThan(1e-12);
    expect(relative(rows.get('apple-14')!['lwa_m2_per_ha'], 9520)).toBeLessThan(1e-12);
    // Cherry 9: H 5.4254, W 6.7544, skirt 1.6156: 10000·5.4254·6.7544/8; 10000·3.8098·6.7544/8; 20000·3.8098/8.
    expect(relative(rows.get('cherry-9')!['trv_ground_m3_per_ha'], 45806.6522)).toBeLessThan(1e-9);
    expect(relative(rows.get('cherry-9')!['trv_crown_m3_per_ha'], 32166.1414)).toBeLessThan(1e-9);
    expect(relative(rows.get('cherry-9')!['lwa_m2_per_ha'], 9524.5)).toBeLessThan(1e-12);
    // Cherry 15, seven of nine stations in leaf.
    expect(relative(rows.get('cherry-15')!['trv_ground_m3_per_ha'], 24479.30295634921)).toBeLessThan(1e-12);
    expect(relative(rows.get('cherry-15')!['lwa_m2_per_ha'], 6639.722222222222)).toBeLessThan(1e-12);
    // 0.7 gal per 1000 ft³ where nothing is stated: 24479.303 m³/ha · 0.7·3.785411784/28.316846592 L/m³.
    expect(relative(rows.get('cherry-15')!['us_trv_water_l_per_ha'], 2290.6847731722605)).toBeLessThan(1e-9);

    for (const [id, row] of rows) {
      const [species] = id.split('-') as [Species];
      const trv = Number(row['trv_ground_m3_per_ha']);
      // Young bushes to old vases; the standard orchard of the US method has 40 059 m³/ha.
      expect(trv, id).toBeGreaterThan(species === 'apple' ? 1200 : 18_000);
      expect(trv, id).toBeLessThan(species === 'apple' ? 20_000 : 46_000);
      expect(Number(row['trv_crown_m3_per_ha']), id).toBeLessThan(trv);
      expect(Number(row['lwa_m2_per_ha']), id).toBeGreaterThan(1400);
      expect(Number(row['lwa_m2_per_ha']), id).toBeLessThan(10_000);
      for (const [column, value] of Object.entries(row)) if (column !== 'block') expect(Number(value), `${id} ${column}`).toBeGreaterThan(0);
    }
  });

  it('works out every station that holds foliage, and refuses the others for what they lack', async () => {
    const line = (s: Station): string => `${s.tree} at ${s.location},${ROW_SPACING[s.tree.split('-')[0] as Species]},${s.height},${s.skirt},${s.width.toFixed(3)},1\n`;
    const { code, out, err } = await rowtailor(['table', '-'], HEAD + STATIONS.map(line).join(''));
    expect(code).toBe(1);
    expect(records(out)).toHaveLength(141);
    const told = err.trimEnd().split('\n');
    const count = (part: string): number => told.filter((l) => l.includes(part)).length;
    expect(told).toHaveLength(51);
    // Nothing there: 21 stations. No spread to either side: 7 more. Highest foliage as low as the lowest: 2.
    expect(count('tree_height_m is 0; 0.2 to 20 m is allowed')).toBe(21);
    expect(count('canopy_width_m is 0.000; 0.1 to 12 m is allowed')).toBe(28);
    expect(count('the skirt must be lower than the top')).toBe(2);
    expect(new Set(told.map((l) => /^Line (\d+)/.exec(l)![1])).size).toBe(169 - 141);
  });

  it('shows that the mean of H·W is not mean H times mean W', async () => {
    const of = (species: Species) => TREES.filter((t) => t.species === species);
    const one = (species: Species): string => {
      const trees = of(species);
      return `${species}-mean,${ROW_SPACING[species]},${mean(trees.map((t) => t.height))},0,${mean(trees.map((t) => t.width))},\n`;
    };
    const each = TREES.map((t) => `${t.id},${ROW_SPACING[t.species]},${t.height},0,${t.width},\n`).join('');
    const { code, out } = await rowtailor(['table', '-'], HEAD + each + one('apple') + one('cherry'));
    expect(code).toBe(0);
    const trv = new Map(records(out).map((r) => [r['block']!, Number(r['trv_ground_m3_per_ha'])]));
    const ratio = (species: Species): number => mean(of(species).map((t) => trv.get(t.id)!)) / trv.get(`${species}-mean`)!;
    // Apple: tall trees are wide, correlation 0.76; cherry: 0.16.
    expect(ratio('apple')).toBeCloseTo(1.0924745027, 9);
    expect(ratio('cherry')).toBeCloseTo(1.0024943845, 9);
  });
});

describe('survey', () => {
  it('tells of the measured trees what numpy tells', async () => {
    const path = join(scratch, 'survey.csv');
    await writeFile(path, 'tree,variety,height_m,skirt_m,width_m\n' + TREES.map((t) => [t.id, t.species, t.height, t.skirt, t.width].join(',') + '\n').join(''));
    for (const species of ['apple', 'cherry'] as const) {
      const others = TREES.filter((t) => t.species !== species).map((t) => t.id);
      const { code, out, err } = await rowtailor(['survey', path, '--json', '--leave-out', others.join(',')]);
      expect([code, err]).toEqual([0, '']);
      const { survey, canopy } = JSON.parse(out) as { survey: { trees: number; leftOut: number; productExcess: number; correlation: number; needed: { trees: number } } & Record<'height' | 'width' | 'product', { cv: number }>; canopy: Document['blocks'][number]['rungs'][number]['canopy'] };
      const trees = TREES.filter((t) => t.species === species);
      expect([survey.trees, survey.leftOut]).toEqual([trees.length, others.length]);
      const percent = (x: number): string => (100 * x).toFixed(1);
      expect([percent(survey.height.cv), percent(survey.width.cv), percent(survey.product.cv), survey.correlation.toFixed(2)]).toEqual(species === 'apple' ? ['35.9', '36.0', '62.7', '0.76'] : ['10.8', '15.9', '20.8', '0.16']);
      expect(1 + survey.productExcess).toBeCloseTo(species === 'apple' ? 1.0924745027 : 1.0024943845, 9);
      expect(survey.needed.trees).toBe(NEEDED[species]);
      const wanted = documentOf().blocks.find((b) => b.id === species)!.rungs[0]!.canopy;
      for (const field of ['heightM', 'widthM', 'skirtM', 'tallestTenthM'] as const) expect(Math.abs(canopy[field]! - wanted[field]!), field).toBeLessThan(5.1e-5);
      for (const field of ['heightSeM', 'skirtSeM', 'widthSeM', 'heightWidthCorrelation', 'trees'] as const) expect(Math.abs(canopy.errors![field]! - wanted.errors![field]!), field).toBeLessThan(5.1e-5);
    }
  });
  it('and by species, both in one', async () => {
    const input = 'tree,variety,height_m,width_m\n' + TREES.map((t) => [t.id, t.species, t.height, t.width].join(',') + '\n').join('');
    const { code, out } = await rowtailor(['survey', '-', '--json', '--by', 'variety'], input);
    expect(code).toBe(0);
    const { survey } = JSON.parse(out) as { survey: { groups: { of: { name: string; trees: number; height: { mean: number } }[] } } };
    expect(survey.groups.of.map((g) => [g.name, g.trees])).toEqual([['apple', 18], ['cherry', 15]]);
    for (const g of survey.groups.of) expect(g.height.mean).toBeCloseTo(mean(TREES.filter((t) => t.species === g.name).map((t) => t.height)), 12);
  });
});

/** Mean width across the row at a height, over the stations in leaf: a station is as wide from its lowest to its highest foliage. An upper bound. */
const widthAt = (stations: readonly Station[], z: number): number => mean(stations.map((s) => (s.skirt <= z && z <= s.height ? s.width : 0)));

function documentOf(): Document {
  const block = (species: Species): Document['blocks'][number] => {
    const trees = TREES.filter((t) => t.species === species);
    const stations = STATIONS.filter((s) => s.tree.startsWith(species) && !bare(s));
    const [height, skirt, width] = (['height', 'skirt', 'width'] as const).map((k) => trees.map((t) => t[k])) as [number[], number[], number[]];
    const error = (x: number[]): number => sampleStandardDeviation(x) / Math.sqrt(x.length);
    const tallest = height.toSorted((a, b) => b - a).slice(0, Math.round(height.length / 10));
    const canopy = {
      heightM: mean(height),
      widthM: mean(width),
      skirtM: mean(skirt),
      filledFraction: mean(trees.map((t) => t.filled)),
      tallestTenthM: mean(tallest),
      errors: {
        heightSeM: error(height),
        skirtSeM: error(skirt),
        widthSeM: error(width),
        heightWidthCorrelation: sampleCorrelation(height, width),
        trees: trees.length
      }
    };
    const profile = Array.from({ length: 28 }, (_, i) => ({ heightM: i / 4, widthM: widthAt(stations, i / 4) })).filter((p) => p.widthM > 0);
    return {
      id: species,
      name: `${species}, Kaysville 2013`,
      crop: species,
      rowSpacingM: ROW_SPACING[species],
      machine: 'A',
      strategy: species === 'apple' ? 'row-volume' : 'us-row-volume',
      label: 'label',
      rungs: [
        { id: 'box', name: 'Height and width alone', canopy, setting: setting() },
        { id: 'profile', name: 'With the stations’ profile', canopy: { ...canopy, profile }, setting: setting({ speedKmH: 4, pressureBar: 15 }) }
      ]
    };
  };
  return {
    format: 'rowtailor',
    version: 1,
    name: 'Measured trees',
    blocks: [block('apple'), block('cherry')],
    machines: [machineA()],
    nozzleTables: [],
    labels: [{ id: 'label', name: 'Sample', unit: 'kg', basis: 'per-hectare', rate: 2 }]
  };
}

describe('advise', () => {
  interface Json { value: number; inputs: Record<string, Json> }
  interface Told { block: { id: string }; rung: { id: string }; canopy: { figures: Record<string, Json>; intervals: Record<string, { low: number; high: number; standardError: number }> }; water: { wanted: Json; interval: { low: number; high: number } | null }; findings: { code: string }[] }
  let results: Map<string, Told>;
  let text = '';
  beforeAll(async () => {
    const path = join(scratch, 'trees.json');
    await writeFile(path, JSON.stringify(documentOf()));
    const json = await rowtailor(['advise', path, '--json']);
    expect([json.code, json.err]).toEqual([0, '']);
    results = new Map((JSON.parse(json.out) as { results: Told[] }).results.map((r) => [`${r.block.id} ${r.rung.id}`, r]));
    const plain = await rowtailor(['advise', path, '--units', 'us']);
    expect([plain.code, plain.err]).toEqual([0, '']);
    text = plain.out;
  });

  it('works out both blocks at both rungs', () => {
    expect([...results.keys()]).toEqual(['apple box', 'apple profile', 'cherry box', 'cherry profile']);
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
    expect(text).toContain('95 %:');
  });

  it.each([
    // TRV = 10⁴·H̄·W̄·f/R; relative SE² = cH² + cW² + 2ρ·cH·cW of the means; Student's t of printed tables, 2.109816 (17) and 2.144787 (14).
    ['apple', 'TRVg', 6615.984013605968, 4398.5068061854645, 8833.461221026471],
    ['cherry', 'TRVg', 30743.99494395839, 27241.465601762073, 34246.52428615471],
    ['apple', 'TRVc', 4683.640164193087, 2762.7381985891475, 6604.542129797026],
    ['cherry', 'TRVc', 21484.5082859598, 18594.322471715623, 24374.69410020398]
  ])('%s: %s and its interval from the spread over the trees', (species, symbol, value, low, high) => {
    const { figures, intervals } = results.get(`${species} box`)!.canopy;
    expect(relative(figures[symbol]!.value, value)).toBeLessThan(1e-12);
    expect(relative(intervals[symbol]!.low, low)).toBeLessThan(1e-6);
    expect(relative(intervals[symbol]!.high, high)).toBeLessThan(1e-6);
  });

  it('gives the wanted water an interval as well', () => {
    for (const r of results.values()) {
      expect(r.water.interval!.low).toBeLessThan(r.water.wanted.value);
      expect(r.water.interval!.high).toBeGreaterThan(r.water.wanted.value);
    }
  });

  it.each([
    // Trapezia of the profile between mean skirt and mean height.
    ['apple', 2.9568437942853283, 2.9568437942853283 / (1.9796851851851852 * 1.7993796296296298)],
    ['cherry', 15.004410840146415, 15.004410840146415 / (3.3101942857142856 * 5.270405714285715)]
  ])('%s: the stations’ profile gives the section and its share of the box', (species, area, share) => {
    const { figures } = results.get(`${species} profile`)!.canopy;
    expect(relative(figures['A']!.value, area)).toBeLessThan(1e-9);
    expect(relative(figures['s']!.value, share)).toBeLessThan(1e-9);
    // Drawn sections of globular cherry crowns fill 0.81 ± 0.08 of their box; a station is taken as a box of its own, so this is not below.
    if (species === 'cherry') expect(figures['s']!.value).toBeGreaterThan(0.73);
    expect(figures['s']!.value).toBeLessThan(1);
  });

  it('the spread of the trees is what the README of the data says', () => {
    const cv = (x: number[]): number => (100 * sampleStandardDeviation(x)) / mean(x);
    const said = (['cherry', 'apple'] as const).map((species) => {
      const trees = TREES.filter((t) => t.species === species);
      const [h, w] = [trees.map((t) => t.height), trees.map((t) => t.width)];
      return [cv(h).toFixed(1), cv(w).toFixed(1), cv(trees.map((t) => t.height * t.width)).toFixed(1), sampleCorrelation(h, w).toFixed(2)];
    });
    expect(said).toEqual([['10.8', '15.9', '20.8', '0.16'], ['35.9', '36.0', '62.7', '0.76']]);
  });
});
