import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { Cite } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import '@citation-js/plugin-csl';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { dispatch } from '#cli/dispatch.ts';
import { STRATEGY_IDS } from '#core/dose/types.ts';

const FILE = 'tests/cli/documents/strategies.json';

/** Runs the verb in this process. */
async function strategies(args: readonly string[], input = '') {
  let [out, err] = ['', ''];
  const code = await dispatch(['strategies', ...args], { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}
const changed = (change: (d: { blocks: { rungs: { canopy: Record<string, unknown> }[] }[]; ownStrategies: Record<string, unknown>[] }) => void): string => {
  const d = JSON.parse(readFileSync(FILE, 'utf8'));
  change(d);
  return JSON.stringify(d);
};

describe('rowtailor strategies', () => {
  it('prints the table, the user’s own formulas, reasons, draws and what moves a figure', async () => {
    const { code, out, err } = await strategies([FILE, '--draws', '2000', '--seed', '7', '--tornado', 'own.floor', '--of', 'water']);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/strategies.txt');
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
  });
  it('in US units', async () => {
    const { code, out } = await strategies([FILE, '--units', 'us', '--tornado', 'us-row-volume', '--of', 'dose']);
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot('golden/strategies-us.txt');
    expect(out).not.toMatch(/\d\u00a0(m|L\/ha|kg\/ha)\b/);
  });
  it('the methods text names what was used and cites it; its works come as BibTeX and CSL-JSON', async () => {
    const args = [FILE, '--draws', '500', '--assumptions'];
    const { code, out } = await strategies([...args, '--methods']);
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot('golden/strategies-methods.txt');
    const cited = new Set([...out.matchAll(/@([a-z0-9-]+)/g)].map((m) => m[1]!));
    for (const form of ['--bibtex', '--csl']) {
      const keys = new Cite((await strategies([...args, form])).out).data.map((x) => x.id);
      expect(keys.toSorted()).toEqual([...cited].toSorted());
    }
    expect(out).toContain('seed 1');
    expect(out).toContain('max(0.5, TRVc / 10000)');
  });
  it('as JSON, every figure with its working', async () => {
    const { code, out } = await strategies([FILE, '--json', '--draws', '200', '--tornado', 'row-volume']);
    expect(code).toBe(0);
    const told = JSON.parse(out);
    expect([told.format, told.version, told.results.length]).toEqual(['rowtailor-strategies', 1, 1]);
    const [{ rows, pairs, draws, tornado }] = told.results;
    expect(rows.map((r: { id: string }) => r.id)).toEqual([...STRATEGY_IDS, 'own.floor', 'own.root']);
    const volume = rows.find((r: { id: string }) => r.id === 'row-volume');
    // 2.7 m of crown, 1.6 m wide, rows 4 m apart.
    expect(volume.index.value).toBeCloseTo((10_000 * 2.7 * 1.6) / 4 / 10_000, 9);
    expect(volume.index.inputs.TRVc.inputs.W.value).toBe(1.6);
    expect(pairs.length).toBe((15 * 14) / 2);
    expect([draws.draws, draws.seed, draws.assumptions]).toEqual([200, 1, false]);
    expect(tornado.strategy).toBe('row-volume');
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
  });
  it('as CSV, one line a strategy', async () => {
    const { out } = await strategies([FILE, '--csv', '--draws', '200']);
    const { data, errors } = Papa.parse<Record<string, string>>(out.trimEnd(), { header: true });
    expect(errors).toEqual([]);
    expect(data.map((r) => r.strategy)).toEqual([...STRATEGY_IDS, 'own.floor', 'own.root']);
    const row = data.find((r) => r.strategy === 'own.floor')!;
    expect([row.name, row.dose_unit]).toEqual(['Row volume, half the dose at least', 'kg']);
    expect(Number(row.index)).toBeCloseTo(1.08, 9);
    expect(Number(row.water_l_per_ha)).toBeCloseTo(100 + 0.09 * 10_800, 6);
    expect(Number(row.index_low)).toBeLessThan(Number(row.index_mc_mean));
    expect(data.find((r) => r.strategy === 'ground-area')!.index_low).toBe('');
  });
  it('the manifest holds hash and options; the same run gives the same bytes', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'rowtailor-'));
    const run = async (name: string) => {
      const to = join(folder, name);
      const { out } = await strategies([FILE, '--csv', '--draws', '300', '--seed', '3', '--manifest', to]);
      return { out, manifest: readFileSync(to, 'utf8') };
    };
    const [a, b] = [await run('a.json'), await run('b.json')];
    expect(b).toEqual(a);
    const told = JSON.parse(a.manifest);
    const hash = (text: string | Buffer) => createHash('sha256').update(text).digest('hex');
    expect([told.input.sha256, told.output.sha256]).toEqual([hash(readFileSync(FILE)), hash(a.out)]);
    expect(told.options).toMatchObject({ verb: 'strategies', form: 'csv', draws: 300, seed: 3, assumptions: false, generator: 'philox-4x32-10' });
    expect(told.constants.find((c: { id: string }) => c.id === 'swiss-affine.least-share')).toEqual({ id: 'swiss-affine.least-share', value: 0.5, unit: '1', certainty: 'memory' });
    expect(a.manifest).not.toContain(folder);
  });
});

describe('what cannot be done', () => {
  it.each<[string[], string]>([
    [['--json', '--csv'], '--json and --csv do not go together; choose one.'],
    [['--seed', '3'], '--seed goes with --draws.'],
    [['--assumptions'], '--assumptions goes with --draws.'],
    [['--of', 'water'], '--of goes with --tornado.'],
    [['--tornado', 'leaf-wall', '--of', 'gold'], '--of is "gold"; it must be index, water or dose.'],
    [['--tornado', 'leafwall'], '--tornado names "leafwall"; there is no such strategy. There are: ground-area,'],
    [['--draws', '99'], '--draws is "99"; a whole number, 100 to 100,000, is needed.'],
    [['--draws', '100', '--seed', 'x'], '--seed is "x"; a whole number, 0 to 9,007,199,254,740,991, is needed.'],
    [['--units', 'feet'], '--units is "feet"; it must be metric, metric-psi, metric-mph, acres, imperial or us.'],
    [['--manifest', FILE], '--manifest is the file that is read; name another.'],
    [['another.json'], 'One document at a time, not 2.']
  ])('%j is refused by name', async (more, said) => {
    const { code, out, err } = await strategies([FILE, ...more]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
  });
  it('a formula that is none is told with its place, and nothing is printed', async () => {
    const { code, out, err } = await strategies(['-'], changed((d) => (d.ownStrategies[0]!.index = 'TRV / 10000')));
    expect([code, out]).toEqual([1, '']);
    expect(err).toBe('-: ownStrategies[0].index is "TRV / 10000", which cannot be worked out. TRV is not the name of a canopy figure. Did you mean TRVg, TRVc, TRVs? There are: H, Hs, h, W, R, f, n, s, A, TRVg, TRVc, TRVs, LWA, RL, UCR, LAD, LAI, k, m.\n');
  });
  it('two own strategies of one id are refused', async () => {
    const { code, err } = await strategies(['-'], changed((d) => (d.ownStrategies[1]!.id = 'floor')));
    expect(code).toBe(1);
    expect(err).toContain('ownStrategies[1].id is "floor", which entry 1 of the same list has already');
  });
  it('a formula without a number here says so in the table, and the rest stands', async () => {
    const { code, out } = await strategies(['-'], changed((d) => (d.ownStrategies[1]!.index = 'log(h - 10)')));
    expect(code).toBe(0);
    expect(out).toContain('The formula of Root of the volume gives no number here');
    expect(out).toMatch(/Root of the volume +–/);
  });
  it('draws without errors are refused, the table stands', async () => {
    const { code, out, err } = await strategies(['-', '--draws', '100'], changed((d) => delete d.blocks[0]!.rungs[0]!.canopy.errors));
    expect(code).toBe(1);
    expect(err).toContain('there is nothing to draw');
    expect(out).toContain('Tree-row volume');
    expect(out).not.toContain('Draws:');
  });
});
