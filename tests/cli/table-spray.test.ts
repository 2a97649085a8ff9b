import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BALANCE_NAMES } from '#cli/table/balance-columns.ts';
import { cutRows, inSlices, ROW_BYTES } from '#cli/table/cut.ts';
import { HEADER } from '#core/dose/table/plan.ts';
import { balance } from '#core/spray/balance.ts';
import { sprayCase } from '#core/spray/case.ts';
import { transport } from '#core/spray/transport.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Canopy } from '#core/canopy/types.ts';
import { readHeader, type Header } from '#job/csv/header.ts';
import { LONGEST_ROW } from '#job/csv/rows.ts';
import { RANGES } from '#job/limits.ts';
import { records, rowtailor } from '../support/command.ts';
import { figures, withBalance } from '../support/table.ts';
import { defined, document, shut } from '../support/sample.ts';

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,lad_m2_per_m3,filled_fraction';
const header = readHeader(HEAD, 1) as Header;
const BALANCE_HEADER = BALANCE_NAMES.join(',');
const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(Buffer.from(text));
const cells = (bytes: Uint8Array): Record<string, string>[] => records(`${HEADER},${BALANCE_HEADER}\n${Buffer.from(bytes).toString()}`);

/** What the whole engine says of the same canopy in a document that is silent on stage and outline. */
function whole(canopy: Canopy, rowSpacingM: number, parts: Parameters<typeof document>[0] = {}) {
  const silent = document({ ...parts, block: { rowSpacingM } });
  const full = { ...silent, blocks: [{ ...silent.blocks[0]!, rungs: [{ ...silent.blocks[0]!.rungs[0]!, canopy }] }] };
  const result = evaluate(full, 'block', 'now');
  if ('kind' in result) throw new Error(result.code);
  const c = sprayCase(full, result);
  if ('kind' in c) throw new Error(c.code);
  return { c, b: balance(c, transport(c)) };
}

describe('columns of the balance', () => {
  const of = withBalance(document());

  it('are the figures that the whole evaluation of the same canopy gives', { timeout: 120_000 }, () => {
    const ROW = fc.record({
      R: fc.double({ min: 2, max: 8, noNaN: true }),
      H: fc.double({ min: 1, max: 6, noNaN: true }),
      skirt: fc.double({ min: 0, max: 0.9, noNaN: true }),
      W: fc.double({ min: 0.3, max: 1.9, noNaN: true }),
      lad: fc.option(fc.double({ min: RANGES.canopy.ladM2PerM3.least, max: 6, noNaN: true }), { nil: undefined }),
      f: fc.option(fc.double({ min: 0.3, max: 1, noNaN: true }), { nil: undefined })
    });
    fc.assert(
      fc.property(ROW, ({ R, H, skirt, W, lad, f }) => {
        const done = of({ header, line: 2, bytes: bytesOf(`x,${R},${H},${skirt},${W},${lad ?? ''},${f ?? ''}\n`) });
        expect(done.problems).toEqual([]);
        const [row] = cells(done.bytes);
        const { c, b } = whole(defined({ heightM: H, skirtM: skirt, widthM: W, ladM2PerM3: lad, filledFraction: f }) as Canopy, R);
        const wanted: Record<string, number> = {
          spray_volume_l_per_ha: c.volumeLPerHa,
          on_trees_percent: 100 * b.onTrees,
          near_percent: 100 * b.shares.near,
          far_percent: 100 * b.shares.far,
          other_rows_percent: 100 * b.shares.rows,
          ground_inside_percent: 100 * b.shares['ground-in'],
          ground_outside_percent: 100 * b.shares['ground-out'],
          over_top_percent: 100 * b.shares.over,
          through_percent: 100 * b.shares.through,
          dried_percent: 100 * b.shares.dried,
          lost_percent: 100 * b.lost,
          deposit_ul_per_cm2: b.depositUlPerCm2!,
          deposit_cv: b.cv!
        };
        expect(Object.keys(wanted)).toEqual(BALANCE_HEADER.split(','));
        for (const [name, value] of Object.entries(wanted)) {
          const tolerance = name.endsWith('_percent') ? 0.005001 : 5.001e-4 * Math.abs(value);
          expect(Math.abs(Number(row![name]) - value), `${name}: ${row![name]} against ${value}`).toBeLessThanOrEqual(tolerance);
        }
      }),
      { numRuns: 12 }
    );
  });

  it('make up all that is sprayed', () => {
    const [row] = cells(of({ header, line: 2, bytes: bytesOf('x,4,3,0.5,1.2,2,1\n') }).bytes);
    const sum = (...names: string[]): number => names.reduce((s, n) => s + Number(row![`${n}_percent`]), 0);
    expect(Math.abs(sum('near', 'far', 'other_rows', 'ground_inside', 'ground_outside', 'over_top', 'through', 'dried') - 100)).toBeLessThan(0.1);
    expect(Number(row!['on_trees_percent'])).toBeCloseTo(sum('near', 'far', 'other_rows'), 1);
    expect(Number(row!['lost_percent'])).toBeCloseTo(sum('ground_outside', 'over_top', 'through', 'dried'), 1);
  });

  it('stand behind figures that are those of the plain table, name for name', () => {
    const text = '"a, ""b""",4,3,0.5,1.2,2,1\n"two\nlines",3.5,2.5,0.4,1,,0.9\nlast,5,4,0,2,1,\n';
    const plain = Buffer.from(figures({ header, line: 2, bytes: bytesOf(text) }).bytes).toString();
    const with13 = Buffer.from(of({ header, line: 2, bytes: bytesOf(text) }).bytes).toString();
    expect(with13.replace(/((?:,[\d.e-]+){13})$/gm, '')).toBe(plain);
  });

  it('follow the leaf: more of it, more on the trees; and the setting: shut nozzles give less', () => {
    const at = (work: typeof of, lad: number): Record<string, string> => cells(work({ header, line: 2, bytes: bytesOf(`x,4,3,0.5,1.2,${lad},1\n`) }).bytes)[0]!;
    const trees = [0.2, 1, 2, 4].map((lad) => Number(at(of, lad)['on_trees_percent']));
    expect(trees).toEqual(trees.toSorted((a, b) => a - b));
    expect(trees[3]!).toBeGreaterThan(trees[0]! + 10);
    const fewer = withBalance(document({ setting: { nozzles: shut('L8', 'R8') } }));
    expect(Number(at(fewer, 2)['spray_volume_l_per_ha']) / Number(at(of, 2)['spray_volume_l_per_ha'])).toBeCloseTo(7 / 8, 3);
    expect(Number(at(fewer, 2)['over_top_percent'])).toBeLessThan(Number(at(of, 2)['over_top_percent']));
  });

  it('stay empty where the model refuses the canopy, with the line told among the bad ones, in the order of the file', () => {
    const text = 'a,4,3,0.5,1.2,2,1\nwide,4,3,0.5,4,2,1\nbad,4,3,0.5,broad,2,1\nb,4,3,0.5,1.2,2,1\n"mean\u001b[31m",2,3,0.5,2.5,2,1\n';
    const { bytes, problems } = of({ header, line: 2, bytes: bytesOf(text) });
    expect(problems.map((p) => p.line)).toEqual([3, 4, 6]);
    expect(problems[0]).toMatchObject({ text: expect.stringMatching(/^block wide: no balance, its columns are empty\. The canopy is as wide as the rows are apart/) });
    expect(problems[1]).toMatchObject({ code: 'not-a-number', column: 'canopy_width_m' });
    expect(JSON.stringify(problems[2])).not.toContain('\u001b');
    const lines = Buffer.from(bytes).toString().trimEnd().split('\n');
    expect(problems[2]).toMatchObject({ code: 'unfit-characters' });
    expect(lines.map((l) => l.split(',').length)).toEqual(Array.from({ length: 3 }, () => `${HEADER},${BALANCE_HEADER}`.split(',').length));
    expect(lines[1]).toMatch(/\d,{13}$/);
    expect(lines[2]!.replace(/^b/, 'a')).toBe(lines[0]);
  });

  it('stay numbers or empty at the ends of every range', { timeout: 120_000 }, () => {
    const { canopy: C, blocks: B } = RANGES;
    let lines = '';
    for (const R of [B.rowSpacingM.least, B.rowSpacingM.most])
      for (const H of [C.heightM.least, C.heightM.most])
        for (const s of [0, Math.min(0.999999 * H, C.skirtM.most)])
          for (const W of [C.widthM.least, C.widthM.most]) for (const lad of [C.ladM2PerM3.least, C.ladM2PerM3.most]) for (const f of [C.filledFraction.least, C.filledFraction.most]) lines += `x,${R},${H},${s},${W},${lad},${f}\n`;
    const rows = cells(of({ header, line: 2, bytes: bytesOf(lines) }).bytes);
    expect(rows).toHaveLength(64);
    for (const row of rows)
      for (const name of BALANCE_HEADER.split(',')) {
        const value = row[name]!;
        if (value === '') continue;
        expect(Number.isFinite(Number(value)) && Number(value) >= 0, `${name} ${value}`).toBe(true);
        if (name.endsWith('_percent')) expect(Number(value)).toBeLessThanOrEqual(100.01);
      }
  });
});

describe('small pieces', () => {
  async function* chunked(text: string, size: number): AsyncGenerator<Uint8Array> {
    const all = Buffer.from(text);
    for (let at = 0; at < all.length; at += size) yield all.subarray(at, at + size);
  }
  it.each([100, 5000, 70_000])('are cut from chunks of %i bytes as the rows end, long rows whole', async (size) => {
    const long = `a,4,3,1,"${'line\n'.repeat(3000)}"\n`;
    expect(long.length).toBeGreaterThan(8192);
    expect(long.length).toBeLessThan(LONGEST_ROW);
    const text = `x,4,3,1,y\n`.repeat(900) + long + `z,4,3,1,"q\nr"\n`.repeat(900) + long + long;
    const pieces: Uint8Array[] = [];
    for await (const { bytes } of cutRows(inSlices(chunked(text, size), 8192), ',', 8192)) pieces.push(bytes);
    expect(Buffer.concat(pieces).toString()).toBe(text);
    expect(pieces.length).toBeGreaterThan(4);
    for (const p of pieces) expect(figures({ header: readHeader('block,row_spacing_m,tree_height_m,canopy_width_m,note_x', 1) as Header, line: 2, bytes: new Uint8Array(p) }).problems).toEqual([]);
    expect(Math.max(...pieces.map((p) => p.length))).toBeLessThan(2 * 8192 + long.length);
  });
  it('of a line without end hold no more of it than shows that it is too long', async () => {
    let held = 0;
    for await (const { bytes } of cutRows(inSlices(chunked(`a,4,3,1,\n${'x'.repeat(4_000_000)}\nb,4,3,1,\n`, 65_536), 8192), ',', 8192)) held += bytes.length;
    expect(held).toBeLessThan(ROW_BYTES + 3 * 8192);
  });
});

describe('table --spray', () => {
  const APPLE = ['--setting', 'demo-data/lower-bench.json', '--block', 'lower-bench', '--rung', 'full-leaf'];
  const GOOD = `${HEAD}\na,3.8,3,0.5,1.2,2,1\nb,4,2.5,0.4,1,,\n`;
  let scratch = '';
  beforeAll(async () => {
    scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
  });
  afterAll(() => rm(scratch, { recursive: true }));

  it('adds the balance and says beside it what it is', { timeout: 120_000 }, async () => {
    const { code, out, err } = await rowtailor(['table', '-', '--spray', ...APPLE], GOOD);
    expect(code).toBe(0);
    expect(out.split('\n')[0]).toBe(`${HEADER},${BALANCE_HEADER}`);
    expect(records(out).map((r) => r['block'])).toEqual(['a', 'b']);
    expect(err).toMatch(/^The balance ranks .* neither residues nor legal drift, is not validated, .* ±15 points .*\n$/);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('takes the only setting of a document without being told which, and the document from standard input', { timeout: 120_000 }, async () => {
    const file = join(scratch, 'two.csv');
    await writeFile(file, GOOD);
    const named = await rowtailor(['table', file, '--spray', ...APPLE]);
    const apple = JSON.parse(await readFile('demo-data/lower-bench.json', 'utf8'));
    const one = JSON.stringify({ ...apple, blocks: [{ ...apple.blocks[0], rungs: apple.blocks[0].rungs.filter((r: { id: string }) => r.id === 'full-leaf') }] });
    expect(await rowtailor(['table', file, '--spray', '--setting', '-'], one)).toEqual(named);
  });

  it('keeps the order of its lines over several threads, and gives what one gives', { timeout: 180_000 }, async () => {
    // Long names, so that few lines make several pieces.
    const long = 'n'.repeat(80);
    const line = (i: number): string => (i % 50 === 7 ? `wide-${long}-${i},4,3,0.5,4.5,2,1\n` : i % 50 === 20 ? `bad-${long}-${i},4,3,0.5,,2,1\n` : `plain-${long}-${i},${(3 + (i % 20) / 10).toFixed(1)},${(2 + (i % 13) / 10).toFixed(1)},0.5,1.1,${1 + (i % 3)},1\n`);
    const count = 300;
    const rows = Array.from({ length: count }, (_, i) => line(i)).join('');
    expect(rows.length).toBeGreaterThan(3 * 8192);
    const { code, out, err } = await rowtailor(['table', '-', '--spray', ...APPLE], `${HEAD}\n${rows}`);
    expect(code).toBe(1);
    expect(records(out).map((r) => r['block'])).toEqual(rows.split('\n').flatMap((l) => (l === '' || l.startsWith('bad-') ? [] : [l.split(',')[0]])));
    const told = [...err.matchAll(/^Line (\d+)/gm)].map((m) => Number(m[1]));
    expect(told).toEqual(Array.from({ length: count }, (_, i) => i).flatMap((i) => ([7, 20].includes(i % 50) ? [i + 2] : [])));
    // The same canopy gives the same figures on whatever thread it was.
    const figures = new Map<string, string>();
    rows.split('\n').filter((l) => l.startsWith('plain-')).forEach((l) => {
      const key = l.slice(l.indexOf(','));
      const written = out.split('\n').find((o) => o.startsWith(`${l.split(',')[0]},`))!;
      const found = written.slice(written.indexOf(','));
      expect(figures.get(key) ?? found).toBe(found);
      figures.set(key, found);
    });
  });

  it.each<[string, readonly string[], string]>([
    ['--spray without a setting', ['--spray'], '--spray needs --setting FILE'],
    ['a setting without --spray', ['--setting', 'demo-data/lower-bench.json'], '--setting goes with --spray or --strategies'],
    ['a rung without --spray', ['--rung', 'full-leaf'], '--rung goes with --spray or --strategies'],
    ['several settings', ['--spray', '--setting', 'demo-data/lower-bench.json', '--block', 'lower-bench'], 'The document has 3 settings; name one with --block and --rung: lower-bench mouse-ear'],
    ['a rung that is not there', ['--spray', '--setting', 'demo-data/lower-bench.json', '--rung', 'harvest'], 'no rung "harvest"'],
    ['both from standard input', ['--spray', '--setting', '-'], 'cannot both come from standard input']
  ])('2 for %s', async (_, args, message) => {
    const { code, out, err } = await rowtailor(['table', '-', ...args], GOOD);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it('1 for a setting in which nothing sprays, before a line is read', async () => {
    const file = join(scratch, 'shut.json');
    await writeFile(file, JSON.stringify(document({ setting: { nozzles: shut(...['L', 'R'].flatMap((s) => Array.from({ length: 8 }, (_, i) => `${s}${i + 1}`))) } })));
    expect(await rowtailor(['table', '-', '--spray', '--setting', file], GOOD)).toEqual({ code: 1, out: '', err: 'Block, Now: nothing can be worked out with this setting. No nozzle is open.\n' });
  });
  it('1 for a document that is refused, 3 for one that is not there', async () => {
    expect((await rowtailor(['table', '-', '--spray', '--setting', 'demo-data/bad.json'], GOOD)).code).toBe(1);
    expect(await rowtailor(['table', '-', '--spray', '--setting', 'absent.json'], GOOD)).toEqual({ code: 3, out: '', err: 'absent.json cannot be read: there is no such file.\n' });
  });
  it('never writes over the document of the setting', async () => {
    const file = join(scratch, 'setting.json');
    await writeFile(file, JSON.stringify(document()));
    const { code, err } = await rowtailor(['table', '-', '--spray', '--setting', file, '--out', file], GOOD);
    expect(code).toBe(2);
    expect(err).toContain('--out is the file of the setting');
    expect(JSON.parse(await readFile(file, 'utf8')).name).toBe('Sample');
  });
});
