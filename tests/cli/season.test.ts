import { readFileSync } from 'node:fs';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { dispatch } from '#cli/dispatch.ts';

const FILE = 'demo-data/lower-bench.json';
const WEATHER = 'tests/measured/data/weather-tmy3-greensboro-spring.csv';
const LOWER = ['season', FILE, '--block', 'lower-bench'];

/** Runs a verb in this process. */
async function rowtailor(args: readonly string[], input = '') {
  let [out, err] = ['', ''];
  const code = await dispatch(args, { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}
const plainText = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const changed = (change: (d: any) => void): string => {
  const d = JSON.parse(readFileSync(FILE, 'utf8'));
  change(d);
  return JSON.stringify(d);
};

describe('season', () => {
  it('prints the season of a block with growth by stage and by the degree-days of a typical year', async () => {
    const { code, out, err } = await rowtailor([...LOWER, '--weather', WEATHER]);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/season.txt');
  });
  it('prints it in US units', async () => {
    const { code, out } = await rowtailor(['season', 'demo-data/citrus-globes.json', '--units', 'us']);
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot('golden/season-us.txt');
    expect(plainText(out)).not.toMatch(/\d (L|L\/ha|kg|m³\/ha)\b/);
  });
  it('names the rung whose setting stands for all, and takes another', async () => {
    expect((await rowtailor(LOWER)).out).toContain('that of Full leaf.');
    expect((await rowtailor([...LOWER, '--fixed', 'mouse-ear'])).out).toContain('that of Mouse-ear.');
  });
  it('counts treatments, and says where one is assumed', async () => {
    const text = changed((d) => (d.blocks[0].rungs[1].treatments = 4));
    const out = plainText((await rowtailor(['season', '-', '--block', 'lower-bench'], text)).out);
    expect(out).toMatch(/Petal fall +69 +2031-05-16 +4 /);
    expect(out).toMatch(/Full leaf +75 +2031-06-20 +1\* /);
    expect(out).toContain('One treatment is assumed where none was entered.');
  });
  it('prints everything with its working as JSON', async () => {
    const { code, out } = await rowtailor([...LOWER, '--weather', WEATHER, '--json']);
    expect(code).toBe(0);
    const { format, version, results } = JSON.parse(out);
    expect([format, version, results.length]).toEqual(['rowtailor-season', 1, 1]);
    const [s] = results;
    expect(s).toMatchObject({ fixed: 'full-leaf', treatments: 3 });
    expect(s.rungs.map((r: { id: string }) => r.id)).toEqual(['mouse-ear', 'petal-fall', 'full-leaf']);
    expect(s.totals[0]).toMatchObject({ kind: 'water', adapted: { formula: 'season-water', inputs: { 'full-leaf': { formula: 'treatments-water' } } } });
    expect(s.growth[1].degreeDays).toMatchObject({ from: 'mouse-ear', to: 'full-leaf', by: 'degree-days', canopy: { proposed: { from: 'mouse-ear', to: 'full-leaf' } } });
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
  });
  it('a product above its label’s season maximum: no total, and why', async () => {
    const text = changed((d) => (d.labels[0].maxPerSeason = 4));
    const { code, out } = await rowtailor(['season', '-', '--block', 'lower-bench'], text);
    expect(code).toBe(0);
    expect(plainText(out).replace(/\s+/g, ' ')).toContain('the treatments planned come to 4.50 kg/ha in the season; its label allows 4.00 kg/ha. Plan fewer.');
    expect(plainText(out)).toMatch(/Protective fungicide \(invented\), by area +– +– +–/);
  });
  it('a rung that cannot be worked out is told, exit code 1, and no total is made over the rest', async () => {
    const text = changed((d) => (d.blocks[0].rungs[0].canopy.skirtM = 5, d.blocks[0].rungs[0].setting.nozzles = d.machines[0].nozzles.map((n: { id: string }) => ({ position: n.id, open: false }))));
    const { code, out, err } = await rowtailor(['season', '-', '--block', 'lower-bench'], text);
    expect(code).toBe(1);
    expect(err).toContain('Lower bench, Mouse-ear');
    expect(plainText(out)).toContain('Mouse-ear cannot be worked out: No nozzle is open. Correct it, or set its treatments to 0.');
  });
  it('lines of the weather file that cannot be used are told on standard error', async () => {
    const { code, err, out } = await rowtailor([...LOWER, '--weather', '-'], 'x');
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('temperature_c');
  });

  describe('refuses', () => {
    it('wrong usage: exit code 2', async () => {
      expect((await rowtailor(['season'])).code).toBe(2);
      expect((await rowtailor([...LOWER, '--fixed', 'none'])).code).toBe(2);
      expect((await rowtailor(['season', FILE, '--block', 'none'])).code).toBe(2);
      expect((await rowtailor([...LOWER, '--units', 'furlongs'])).code).toBe(2);
      expect((await rowtailor([...LOWER, '--wether', WEATHER])).code).toBe(2);
    });
    it('what cannot be read: exit code 3', async () => {
      expect((await rowtailor(['season', 'no-such.json'])).code).toBe(3);
      expect((await rowtailor([...LOWER, '--weather', 'no-such.csv'])).code).toBe(3);
    });
  });
  it('tells of itself', async () => expect((await rowtailor(['season', '--help'])).out).toContain('rowtailor season FILE'));
});
