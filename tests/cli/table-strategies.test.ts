import { DuckDBInstance } from '@duckdb/node-api';
import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { figureColumns, figuresFor, type StrategiesWish } from '#cli/table/figure-columns.ts';
import { intervalColumns } from '#cli/table/interval-columns.ts';
import { sideBySide } from '#cli/table/maker.ts';
import { workOff } from '#cli/table/piece.ts';
import { strategyRows, type StrategyRow } from '#core/dose/compare/rows.ts';
import { FILL } from '#core/dose/table/plan.ts';
import type { Label } from '#core/dose/types.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { isRefused, valueOf, type Answer } from '#core/working/answer.ts';
import { readHeader, type Header } from '#job/csv/header.ts';
import { readDocument } from '#job/read.ts';
import { records, ROOT, rowtailor } from '../support/command.ts';
import { defined, document } from '../support/sample.ts';
import strategyCases from '../published/strategies.json' with { type: 'json' };
import doseCases from '../published/dose.json' with { type: 'json' };

const SIXTY = 'demo-data/sixty-blocks.csv';
const WALL = ['--setting', 'demo-data/cherry-wall.json', '--block', 'east-wall', '--rung', 'green-fruit'];
let scratch = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
});
afterAll(() => rm(scratch, { recursive: true }));
const file = async (name: string, content: string): Promise<string> => {
  const path = join(scratch, name);
  await writeFile(path, content);
  return path;
};

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction,height_se_m,skirt_se_m,width_se_m,row_spacing_se_m,height_width_correlation,trees';
const header = readHeader(HEAD, 1) as Header;
function rowsOf(text: string, wish: StrategiesWish, intervals = false): Record<string, string>[] {
  const figures = figuresFor(wish);
  const maker = sideBySide([figureColumns(figures), ...(intervals ? [intervalColumns({ draws: null, seed: 1 }, figures)] : [])]);
  const done = workOff(maker, 'csv', intervals)({ header, line: 2, bytes: new Uint8Array(Buffer.from(text)) });
  expect(done.problems).toEqual([]);
  return records(`${['block', ...maker.names].join(',')}\n${Buffer.from(done.bytes).toString()}`);
}
const cell = (v: number | undefined): string => (v === undefined ? '' : String(v));

describe('every strategy', () => {
  it('of the sixty demo blocks', async () => {
    const { code, out, err } = await rowtailor(['table', SIXTY, '--strategies']);
    expect(code).toBe(0);
    expect(err).toMatch(/^Strategies say different things of the same canopy, .*\n$/);
    await expect(out).toMatchFileSnapshot('golden/sixty-blocks-strategies.csv');
  });

  it('of the sixty demo blocks with the product and the setting of a document', async () => {
    const { code, out } = await rowtailor(['table', SIXTY, '--strategies', ...WALL]);
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot('golden/sixty-blocks-dose.csv');
  });

  const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const maybe = <T>(a: fc.Arbitrary<T>) => fc.option(a, { nil: undefined });
  const CANOPY = fc.record({ R: within(1.5, 9), H: within(0.8, 7), share: within(0, 0.9), W: within(0.3, 4), k: maybe(within(0.7, 1)), lad: maybe(within(0.2, 6)), f: within(0.3, 1) });
  const ERRORS = fc.record({ h: maybe(within(0.001, 0.3)), s: maybe(within(0.001, 0.1)), w: maybe(within(0.001, 0.3)), r: maybe(within(0.001, 0.2)), rho: maybe(within(-0.9, 0.9)), trees: maybe(fc.integer({ min: 3, max: 60 })) });
  const LABEL: fc.Arbitrary<Label> = fc
    .record({
      unit: fc.constantFrom('kg', 'L'),
      basis: fc.constantFrom('per-hectare', 'per-100-l-dilute', 'per-leaf-wall', 'per-crown-height', 'per-row-volume', 'percent-of-water'),
      rate: within(0.05, 3),
      referenceWaterLPerHa: maybe(fc.constantFrom(400, 1600)),
      maxPerHa: maybe(within(0.2, 6)),
      adaptation: maybe(fc.constantFrom('none', 'downward', 'required')),
      floor: maybe(within(0, 1))
    })
    .map((l) => ({ id: 'label', name: 'Sample', ...defined(l) }) as Label);
  const OWN = [{ id: 'mine', name: 'Mine', index: 'h * W / (2.8 * 1.25)', water: '0.08 * TRVc', waterKind: 'dilute' as const }, { id: 'Mine.2', name: 'Mine again', index: 'sqrt(LAI) - 1' }];

  const unitName = { kg: 'kg', L: 'l' } as const;
  function wanted(row: StrategyRow, label: Label): Record<string, [Answer | null, StrategyRow['intervals']['water'] | undefined]> {
    const id = row.id.replaceAll(/[^A-Za-z0-9]+/g, '_').toLowerCase();
    return {
      [`${id}_water_l_per_ha`]: [row.water, row.intervals.water],
      [`${id}_dilute_l_per_ha`]: [row.dilute, undefined],
      [`${id}_dose_index`]: [row.index, row.intervals.index],
      [`${id}_dose_${unitName[label.unit]}_per_ha`]: [row.dose, row.intervals.dose],
      [`${id}_concentration_factor`]: [row.concentration, undefined]
    };
  }

  it('says what the comparison of the same canopy in a document says: figures to 1e-12, intervals as those of the whole working', () => {
    let doses = 0;
    let ends = 0;
    fc.assert(
      fc.property(CANOPY, ERRORS, LABEL, ({ R, H, share, W, k, lad, f }, e, label) => {
        const canopy = defined({ heightM: H, skirtM: share * H, widthM: W, usDensityGalPer1000Ft3: k, ladM2PerM3: lad, filledFraction: f, errors: defined({ heightSeM: e.h, skirtSeM: e.s, widthSeM: e.w, rowSpacingSeM: e.r, heightWidthCorrelation: e.rho, trees: e.trees }) });
        const base = document({ block: { rowSpacingM: R, label: 'label' }, assumptions: { 'row-volume.water': 0.12 } });
        const whole: Document = { ...base, labels: [label], ownStrategies: OWN, blocks: [{ ...base.blocks[0]!, rungs: [{ ...base.blocks[0]!.rungs[0]!, canopy }] }] };
        const result = evaluate(whole, 'block', 'now');
        if ('kind' in result) throw new Error(result.code);
        const wish: StrategiesWish = { label, own: OWN, assumptions: whole.assumptions!, faces: result.pass.faces, applied: { flowLPerMin: valueOf(result.sprayer.flow)!, speedKmH: result.setting.speedKmH, pattern: result.pattern } };
        const [found] = rowsOf(`x,${[R, H, share * H, W, k, lad, f, e.h, e.s, e.w, e.r, e.rho, e.trees].map(cell).join(',')}\n`, wish, true);
        for (const row of strategyRows(whole, result))
          for (const [name, [answer, interval]] of Object.entries(wanted(row, label))) {
            if (!answer || isRefused(answer)) {
              expect(found![name] ?? '', name).toBe('');
              expect(found![`${name}_low`] ?? '', name).toBe('');
              continue;
            }
            expect(Math.abs(Number(found![name]) - answer.value), `${name}: ${found![name]} against ${answer.value}`).toBeLessThanOrEqual(1e-12 * Math.abs(answer.value));
            if (name.includes('_dose_') && !name.endsWith('_index')) doses++;
            if (!interval) continue;
            ends++;
            // Both are differences over a step of 1e-5: they part by rounding, more where a rule bends just there.
            const close = 1e-5 * Math.max(Math.abs(answer.value), interval.high - interval.low);
            expect(Math.abs(Number(found![`${name}_low`]) - interval.low), `${name} low`).toBeLessThanOrEqual(close);
            expect(Math.abs(Number(found![`${name}_high`]) - interval.high), `${name} high`).toBeLessThanOrEqual(close);
            if (label.maxPerHa !== undefined && name.includes('_dose_') && !name.endsWith('_index')) expect(Number(found![`${name}_high`])).toBeLessThanOrEqual(label.maxPerHa);
          }
      }),
      { numRuns: 150 }
    );
    expect(doses).toBeGreaterThan(500);
    expect(ends).toBeGreaterThan(1000);
  });

  it('says what is published of canopies', () => {
    type Case = { id: string; inputs: Record<string, unknown>; expected: Record<string, { value: number; tolerance: number; unit: string }> };
    const GAL_AC = 3.785411784 / 0.40468564224;
    const FT = 0.3048;
    // The published canopies fill their box; a table's a share of it, as a trimmed wall does.
    const byOutline = /^(?:lai|occupied-volume .*|stage-volume .*|leaf-area water)$/;
    let held = 0;
    const hold = (found: number, { value, tolerance, unit }: Case['expected'][string], what: string): void => {
      held++;
      expect(Math.abs(found / (unit === 'gal/ac' ? GAL_AC : 1) - value), what).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
    };
    for (const { id, inputs, expected } of [...strategyCases, ...doseCases] as unknown as Case[]) {
      const { height_m: h, width_m: w, row_spacing_m: r, height_ft: hf, width_ft: wf, row_spacing_ft: rf, skirt_m: skirt, lad_m2_per_m3: lad, us_density_gal_per_1000ft3: k, assumptions, strategy, ...others } = inputs as Record<string, number | undefined> & { assumptions?: Record<string, number>; strategy?: string };
      const [H, W, R] = [h ?? hf! * FT, w ?? wf! * FT, r ?? rf! * FT];
      // What a table does not tell (a stage, an outline, an applied volume …) is held elsewhere.
      if (![H, W, R].every((v) => v > 0) || Object.keys(others).length > 0) continue;
      const [row] = rowsOf(`x,${[R, H, skirt, W, k, lad].map(cell).join(',')},,,,,,,\n`, assumptions ? { assumptions } : {});
      const figure = (id: string, says: string): number => Number(row![`${id.replaceAll('-', '_')}_${says === 'index' ? 'dose_index' : `${says}_l_per_ha`}`] || NaN);
      for (const [what, one] of Object.entries(expected)) {
        const [, name = strategy, says] = /^(?:(\S+) )?(water|dilute|index)$/.exec(what) ?? [];
        if (says && name && Number.isFinite(figure(name, says))) hold(figure(name, says) / (byOutline.test(`${name} ${says}`) ? FILL : 1), one, `${id} ${what}`);
        else if (what in { trv: 0, lwa: 0, lai: 0, ucr: 0 }) hold(Number(row![{ trv: 'trv_crown_m3_per_ha', lwa: 'lwa_m2_per_ha', lai: 'lai', ucr: 'ucr_per_ha' }[what as 'trv']]) / (byOutline.test(what) ? FILL : 1), one, `${id} ${what}`);
      }
    }
    expect(held).toBeGreaterThan(50);
  });
});

describe('the command', () => {
  it('takes the product by id, by name, or from the block; and tells the products where there is none of that name', async () => {
    const dose = (out: string) => records(out)[0]!['row_volume_dose_l_per_ha'];
    const reading = readDocument(await readFile(join(ROOT, 'demo-data/cherry-wall.json'), 'utf8'));
    if (!reading.ok) throw new Error('demo');
    const { labels } = reading.document;
    const own = await rowtailor(['table', SIXTY, '--strategies', ...WALL]);
    const byId = await rowtailor(['table', SIXTY, '--strategies', ...WALL, '--label', 'fly-wall']);
    const byName = await rowtailor(['table', SIXTY, '--strategies', ...WALL, '--label', labels.find((l) => l.id === 'fly-wall')!.name]);
    expect(dose(own.out)).not.toBe('');
    expect([byId.out === own.out, byName.out === own.out]).toEqual([true, true]);
    const none = await rowtailor(['table', SIXTY, '--strategies', ...WALL, '--label', 'nobody']);
    expect(none.code).toBe(2);
    expect(none.err).toContain(`There is no product "nobody" in the document. Products: ${labels.map((l) => l.id).join(', ')}.`);
  });

  it.each<[string, string[], string]>([
    ['a product without a document', ['--strategies', '--label', 'x'], '--label needs --setting FILE'],
    ['a product without strategies', ['--label', 'x', ...WALL], '--label goes with --strategies'],
    ['a document without use', WALL, '--setting goes with --spray or --strategies'],
    ['a document of several settings', ['--strategies', '--setting', 'demo-data/cherry-wall.json'], 'The document has 3 settings'],
    ['a format that is none', ['--format', 'xlsx'], '--format is "xlsx"; it must be csv or parquet.'],
    ['threads that are none', ['--threads', '0'], '--threads is "0"; a whole number, 1 to 64, is needed.']
  ])('refuses %s', async (_, args, message) => {
    const { code, out, err } = await rowtailor(['table', SIXTY, ...args]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });

  it('stands beside the balance of the spray, and with intervals and draws', async () => {
    const text = `${HEAD}\na,4,3,0.5,1.5,,,,0.1,0.02,0.1,0.03,0.3,12\n`;
    const spray = await rowtailor(['table', '-', '--strategies', '--spray', ...WALL], text);
    expect(spray.code).toBe(0);
    expect(Object.keys(records(spray.out)[0]!)).toEqual(expect.arrayContaining(['row_volume_concentration_factor', 'on_trees_percent']));
    const drawn = await rowtailor(['table', '-', '--strategies', ...WALL, '--intervals', '--draws', '200'], text);
    expect(drawn.code).toBe(0);
    const [row] = records(drawn.out);
    for (const name of ['row_volume_dilute_l_per_ha', 'swiss_affine_dose_index', 'leaf_wall_dose_l_per_ha', 'row_volume_concentration_factor']) {
      const [at, low, high, l, h] = ['', '_low', '_high', '_mc_low', '_mc_high'].map((end) => Number(row![`${name}${end}`]));
      expect(low! < at! && at! < high! && l! < at! && at! < h!, name).toBe(true);
      expect(Math.abs(h! - l! - (high! - low!)) / (high! - low!), name).toBeLessThan(0.35);
    }
    expect(row!['ground_area_dose_index_low']).toBe('');
  });
});

describe('the manifest', () => {
  const sha256 = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');
  const LINES = Array.from({ length: 3000 }, (_, i) => `block-${i},${3 + (i % 30) / 10},${2 + (i % 20) / 10},0.5,${1 + (i % 9) / 10},,,,0.1,0.02,0.05,0.02,0.4,${i % 3 ? '' : 5 + (i % 9)}\n`).join('');
  const cases: [string, string[]][] = [
    ['the usual figures', []],
    ['every strategy', ['--strategies', ...WALL]],
    ['every strategy, as Parquet', ['--strategies', ...WALL, '--format', 'parquet']],
    ['intervals with draws', ['--strategies', '--intervals', '--draws', '100', '--seed', '5']],
    ['the balance', ['--spray', ...WALL]]
  ];
  it.each(cases)('of %s is the same again, and so is every byte, with one thread or three', { timeout: 120_000 }, async (_, args) => {
    const lines = args.includes('--spray') ? LINES.split('\n').slice(0, 290).filter((_, i) => i % 3 === 0).join('\n') : args.includes('--draws') ? LINES.split('\n').slice(0, 400).join('\n') : LINES;
    const input = await file('in.csv', `${HEAD}\n${lines}\n`);
    const made: [string, string][] = [];
    for (const threads of ['1', '3', '3']) {
      const [out, manifest] = [join(scratch, `out-${made.length}`), join(scratch, `manifest-${made.length}.json`)];
      const { code } = await rowtailor(['table', input, ...args, '--threads', threads, '--out', out, '--manifest', manifest]);
      expect(code).toBe(0);
      made.push([sha256(await readFile(out)), await readFile(manifest, 'utf8')]);
    }
    expect(made[1]).toEqual(made[0]);
    expect(made[2]).toEqual(made[0]);
    const told = JSON.parse(made[0]![1]);
    expect(told.output.sha256).toBe(made[0]![0]);
    expect(told.input).toEqual({ format: 'csv', sha256: sha256(await readFile(input)), bytes: (await stat(input)).size });
    expect(told.versions.node).toBe(process.versions.node);
    if (args.includes('--setting')) expect(told.setting).toEqual({ sha256: sha256(await readFile(join(ROOT, 'demo-data/cherry-wall.json'))), bytes: (await stat(join(ROOT, 'demo-data/cherry-wall.json'))).size, block: 'east-wall', rung: 'green-fruit' });
    if (args.includes('--strategies') && args.includes('--setting')) expect(told).toMatchObject({ label: { id: 'fly-wall' }, options: { label: 'fly-wall', strategies: true } });
    expect(made[0]![1]).not.toContain(scratch);
  });

  it('is not written over the document', async () => {
    const { code, err } = await rowtailor(['table', SIXTY, '--strategies', '--setting', await file('doc.json', await readFile(join(ROOT, 'demo-data/cherry-wall.json'), 'utf8')), '--block', 'east-wall', '--rung', 'green-fruit', '--manifest', join(scratch, 'doc.json')]);
    expect(code).toBe(2);
    expect(err).toContain('--manifest is a file that is read or written already');
  });
});

describe('Parquet', () => {
  async function query(sql: string): Promise<Record<string, unknown>[]> {
    const duck = await (await DuckDBInstance.create()).connect();
    return (await duck.runAndReadAll(sql)).getRowObjects() as Record<string, unknown>[];
  }
  const TEXT = `${HEAD}\n${Array.from({ length: 70_000 }, (_, i) => `"b ${i}, höhe",${(3 + (i % 30) / 10).toFixed(1)},${(2 + (i % 20) / 10).toFixed(1)},0.5,${(1 + (i % 9) / 10).toFixed(1)},,${i % 2 ? 1.5 : ''},0.9,${i % 3 ? '' : 0.1},,,,,\n`).join('')}`;

  it('holds what the text holds: DuckDB reads it, in more than one row group', { timeout: 120_000 }, async () => {
    const input = await file('big.csv', TEXT);
    const [csv, parquet] = [join(scratch, 'big.out.csv'), join(scratch, 'big.out.parquet')];
    expect(await rowtailor(['table', input, '--out', csv])).toMatchObject({ code: 0 });
    expect(await rowtailor(['table', input, '--out', parquet])).toMatchObject({ code: 0, out: '' });
    const [{ differing } = {}] = await query(`SELECT count(*) AS differing FROM (SELECT * FROM '${parquet}' EXCEPT SELECT * FROM read_csv('${csv}', header = true, types = {'block': 'VARCHAR'}))`);
    expect(Number(differing)).toBe(0);
    const [{ n, groups } = {}] = await query(`SELECT count(*) AS n, (SELECT count(DISTINCT row_group_id) FROM parquet_metadata('${parquet}')) AS groups FROM '${parquet}'`);
    expect([Number(n), Number(groups)]).toEqual([70_000, 3]);
    // Row for row in the order of the file.
    const rows = await query(`SELECT block FROM '${parquet}'`);
    expect(rows.every((r, i) => r['block'] === `b ${i}, höhe`)).toBe(true);
    // Ranges of every column are told, so that a reader may pass row groups over.
    const stats = await query(`SELECT path_in_schema AS c, min(stats_min_value::DOUBLE) AS low, max(stats_max_value::DOUBLE) AS high FROM parquet_metadata('${parquet}') WHERE path_in_schema = 'row_length_m_per_ha' GROUP BY 1`);
    expect([stats[0]!['low'], stats[0]!['high']]).toEqual([10000 / 5.9, 10000 / 3]);
  });

  it('is read as the text is, by its name or by its first bytes, and refused in the same words', { timeout: 120_000 }, async () => {
    const input = await file('in2.csv', `${HEAD}\n${TEXT.split('\n').slice(1, 5000).join('\n')}\n`);
    const [named, unnamed] = [join(scratch, 'in2.parquet'), join(scratch, 'in2.bin')];
    await query(`COPY (SELECT * FROM read_csv('${input}', header = true, types = {'block': 'VARCHAR', 'skirt_se_m': 'DOUBLE', 'width_se_m': 'DOUBLE', 'row_spacing_se_m': 'DOUBLE', 'height_width_correlation': 'DOUBLE', 'trees': 'INTEGER', 'density_gal_per_1000ft3': 'DOUBLE'})) TO '${named}' (FORMAT parquet, ROW_GROUP_SIZE 2048)`);
    await writeFile(unnamed, await readFile(named));
    const csv = await rowtailor(['table', input, '--intervals', '--strategies']);
    expect(csv.code).toBe(0);
    for (const path of [named, unnamed]) {
      const found = await rowtailor(['table', path, '--intervals', '--strategies']);
      expect([found.code, found.err]).toEqual([0, csv.err]);
      expect(found.out === csv.out).toBe(true);
    }
    const bad = join(scratch, 'bad.parquet');
    await query(`COPY (SELECT CASE WHEN i = 3000 THEN 'turn' || chr(8238) ELSE 'b' || i END AS block, CASE WHEN i % 1000 = 7 THEN 40.0 ELSE 4.0 END::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1.0::DOUBLE AS canopy_width_m FROM range(5000) t(i)) TO '${bad}' (FORMAT parquet)`);
    const { code, out, err } = await rowtailor(['table', bad]);
    expect(code).toBe(1);
    expect(records(out)).toHaveLength(4994);
    expect(err.trimEnd().split('\n').map((l) => l.slice(0, 40))).toEqual([8, 1008, 2008, 3001, 3008, 4008].map((r) => (r === 3001 ? 'Row 3001, block is turn\\u202e, with tabs ' : `Row ${r}, row_spacing_m is 40; 0.5 to 20 m is allowed.`).slice(0, 40)));
  });

  it('keeps empty cells as NULL, and writes a table of no canopies', async () => {
    const none = join(scratch, 'none.parquet');
    expect((await rowtailor(['table', '-', '--out', none], `${HEAD}\n`)).code).toBe(0);
    expect(await query(`SELECT count(*)::INTEGER AS n, count(trv_crown_m3_per_ha)::INTEGER AS m FROM '${none}'`)).toEqual([{ n: 0, m: 0 }]);
    const some = join(scratch, 'some.parquet');
    expect((await rowtailor(['table', '-', '--intervals', '--format', 'parquet', '--out', some], `${HEAD}\na,4,3,0.5,1.5,,,,0.1,,,,,\nb,4,3,0.5,1.5,,,,,,,,,\n`)).code).toBe(0);
    expect(await query(`SELECT block, trv_crown_m3_per_ha_low IS NULL AS gone FROM '${some}' ORDER BY block`)).toEqual([{ block: 'a', gone: false }, { block: 'b', gone: true }]);
  });

  it('that is none, is cut off, or comes from a pipe is refused, and what stands is left alone', async () => {
    const good = join(scratch, 'whole.parquet');
    await query(`COPY (SELECT 'a' AS block, 4.0::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1.0::DOUBLE AS canopy_width_m FROM range(1000)) TO '${good}' (FORMAT parquet)`);
    const bytes = await readFile(good);
    const kept = await file('kept.csv', 'yesterday\n');
    const cases: [string, number, string][] = [
      [await file('text.parquet', 'block,row_spacing_m\na,4\n'), 1, 'The file is no Parquet file: it does not begin as one does.'],
      [join(scratch, 'cut.parquet'), 1, 'The file is a Parquet file without its end; it may have been cut off.'],
      [join(scratch, 'absent.parquet'), 3, 'there is no such file.']
    ];
    await writeFile(cases[1]![0], bytes.subarray(0, bytes.length - 300));
    for (const [path, exit, message] of cases) {
      const { code, err } = await rowtailor(['table', path, '--out', kept]);
      expect([path, code]).toEqual([path, exit]);
      expect(err).toContain(message);
    }
    const piped = await rowtailor(['table', '-', '--out', kept], bytes);
    expect(piped.code).toBe(2);
    expect(piped.err).toContain('cannot come from standard input: name the file');
    expect(await readFile(kept, 'utf8')).toBe('yesterday\n');
  });

  it('has a manifest with the hash of what was read', async () => {
    const good = join(scratch, 'hashed.parquet');
    await query(`COPY (SELECT 'a' AS block, 4.0::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1.0::DOUBLE AS canopy_width_m) TO '${good}' (FORMAT parquet)`);
    const [out, manifest] = [join(scratch, 'hashed.out.parquet'), join(scratch, 'hashed.json')];
    expect((await rowtailor(['table', good, '--out', out, '--manifest', manifest])).code).toBe(0);
    const sha256 = async (path: string): Promise<string> => createHash('sha256').update(await readFile(path)).digest('hex');
    expect(JSON.parse(await readFile(manifest, 'utf8'))).toMatchObject({ input: { format: 'parquet', sha256: await sha256(good) }, output: { format: 'parquet', sha256: await sha256(out) } });
  });
});
