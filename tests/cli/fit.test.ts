import { readFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { dispatch } from '#cli/dispatch.ts';
import { describe, expect, it } from 'vitest';

const DEMO = fileURLToPath(new URL('../../demo-data/lower-bench.json', import.meta.url));

/** Runs a verb in this process. */
async function rowtailor(args: readonly string[], input = '') {
  let [out, err] = ['', ''];
  const code = await dispatch(args, { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}
/** The demo document with wishes at its first rung. */
async function wishing(fitting: unknown): Promise<string> {
  const document = JSON.parse(await readFile(DEMO, 'utf8'));
  document.blocks[0].rungs[0].fitting = fitting;
  return JSON.stringify(document);
}
const ONE = ['--block', 'lower-bench', '--rung', 'mouse-ear'];

describe('fit', () => {
  it('prints the short list of a rung', async () => {
    const { code, out, err } = await rowtailor(['fit', DEMO, ...ONE]);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/fit-mouse-ear.txt');
  });
  it('prints it in US units, with what lies in the drawer', async () => {
    const stock = [{ table: 'iso-10625', size: '01', count: 2 }, { table: 'iso-10625', size: '0125' }, { table: 'iso-10625', size: '015', count: 0 }];
    const { code, out, err } = await rowtailor(['fit', '-', ...ONE, '--units', 'us'], await wishing({ stock, weighting: 'uniform' }));
    expect([code, err]).toEqual([0, '']);
    expect(out).not.toMatch(/\bbar\b|km\/h|L\/ha|L\/min/);
    await expect(out).toMatchFileSnapshot('golden/fit-mouse-ear-us.txt');
  });
  it('prints every rung', async () => {
    const { code, out } = await rowtailor(['fit', DEMO]);
    expect(code).toBe(0);
    expect(out.match(/^To be reached$/gm)).toHaveLength(5);
  });
  it('gives JSON whose rows are those of the text, with their working', async () => {
    const { code, out, err } = await rowtailor(['fit', DEMO, ...ONE, '--json']);
    expect([code, err]).toEqual([0, '']);
    const { format, version, fittings } = JSON.parse(out);
    expect([format, version, fittings.length]).toEqual(['rowtailor-fitting', 1, 1]);
    const [{ list, problem, rung }] = fittings;
    expect(rung.id).toBe('mouse-ear');
    expect(problem.positions.reduce((s: number, p: { weight: number }) => s + p.weight, 0)).toBeCloseTo(1, 12);
    const { out: text } = await rowtailor(['fit', DEMO, ...ONE]);
    for (const row of list.rows) {
      expect(text).toContain(`${(row.match * 100).toFixed(1)} %`);
      expect(row.figures.pressure).toMatchObject({ formula: 'pressure-for-flow', unit: 'bar' });
      expect(row.figures.pressure.value).toBeCloseTo(row.pressureBar, 6);
      expect(row.figures.volume.value).toBeCloseTo(problem.targetLPerHa, 6);
      expect(row.figures.match.value).toBeCloseTo(row.match, 9);
    }
    expect(JSON.stringify(fittings)).not.toMatch(/null,"unit":"L\/min"/);
  });
  it('says by name that nothing fits, and still prints the others', async () => {
    const { code, out, err } = await rowtailor(['fit', '-', '--block', 'lower-bench'], await wishing({ targetLPerHa: 2000, stock: [{ table: 'iso-10625', size: '01' }] }));
    expect(code).toBe(1);
    expect(err.replace(/[\s\u00a0\u202f]/g, ' ')).toMatch(/^Lower bench, Mouse-ear: .*The largest sizes at the highest pressure and the lowest speed give [\d ]+ L\/ha; wanted are 2 ?000 L\/ha\. Add larger sizes/);
    expect(out.match(/^To be reached$/gm)).toHaveLength(2);
  });
  it('gives the refusal as JSON too', async () => {
    const { code, out } = await rowtailor(['fit', '-', ...ONE, '--json'], await wishing({ weighting: 'own', weights: [] }));
    expect(code).toBe(1);
    expect(JSON.parse(out).fittings[0].list).toMatchObject({ refused: 'no-own-weight', path: 'fitting.weights' });
  });
  it.each([
    [{ stock: [{ table: 'iso-10625', size: '99' }] }, /fitting\.stock\[0\]\.size/],
    [{ pressureMinBar: 12, pressureMaxBar: 6 }, /fitting\.pressure/],
    [{ weights: [{ position: 'L9', weight: 1 }] }, /fitting\.weights\[0\]\.position/],
    [{ targetLPerHa: -5 }, /fitting\.targetLPerHa/],
    [{ weighting: 'best' }, /fitting\.weighting/]
  ])('refuses a wish that cannot be: %j', async (fitting, where) => {
    const { code, out, err } = await rowtailor(['fit', '-', ...ONE], await wishing(fitting));
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(where);
  });
  it.each([
    [['fit'], 'Name one document'],
    [['fit', DEMO, '--units', 'furlongs'], '--units is "furlongs"'],
    [['fit', DEMO, '--block', 'nowhere'], 'no block "nowhere"'],
    [['fit', DEMO, '--fast'], '--fast']
  ])('wrong usage: %j', async (args, message) => {
    const { code, err } = await rowtailor(args);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
  it('helps', async () => {
    const { code, out } = await rowtailor(['fit', '--help']);
    expect(code).toBe(0);
    expect(out).toContain('rowtailor fit FILE');
  });
});
