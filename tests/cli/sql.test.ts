import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance, type DuckDBConnection } from '@duckdb/node-api';
// The package's own door would load the grammars of all dialects.
import { SparkSQL } from 'dt-sql-parser/dist/parser/spark/index.js';
import { create, all } from 'mathjs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { dispatch } from '#cli/dispatch.ts';
import { literal, toSql } from '#cli/sql/expression.ts';
import { HEADER } from '#core/dose/table/plan.ts';
import { ROW_RANGES, type Quantity } from '#job/csv/columns.ts';
import { ROOT, rowtailor, type Ended } from '../support/command.ts';

let scratch = '';
let duckdb: DuckDBConnection;
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
  duckdb = await (await DuckDBInstance.create(':memory:')).connect();
});
afterAll(async () => {
  duckdb.closeSync();
  await rm(scratch, { recursive: true });
});

/** The command within this process: it neither reads nor waits for anything. */
async function sql(...args: string[]): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await dispatch(['sql', ...args], { stdin: (async function* () {})(), out: (text) => void (out += text), err: (text) => void (err += text) });
  return { code, out, err };
}
async function statement(dialect: string, ...args: string[]): Promise<string> {
  const { code, out, err } = await sql('--dialect', dialect, ...args);
  expect([code, err]).toEqual([0, '']);
  return out;
}
async function ask(text: string): Promise<{ names: string[]; rows: unknown[][] }> {
  const reader = await duckdb.runAndReadAll(text);
  return { names: reader.columnNames(), rows: reader.getRows() as unknown[][] };
}
const number = async (text: string): Promise<unknown> => (await ask(`SELECT ${text}`)).rows[0]![0];

/** Chance with a seed (mulberry32), so that a failure comes back. */
function chance(seed: number): () => number {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The table that the command makes of a file against what the statement makes of the same file in DuckDB: the same rows, the same figures. */
async function agree(csv: string, options: readonly string[], reading: string): Promise<number> {
  const path = join(scratch, 'canopies.csv');
  await writeFile(path, csv);
  await duckdb.run(`CREATE OR REPLACE VIEW canopies AS SELECT * FROM read_csv('${path}', header = true, nullstr = ['', 'NA']${reading})`);
  const [{ out }, text] = await Promise.all([rowtailor(['table', path]), statement('duckdb', ...options)]);
  const { names, rows } = await ask(text);
  const [head, ...lines] = out.trimEnd().split('\n');
  expect(names.join(',')).toBe(head);
  expect(rows.length).toBe(lines.length);
  const wanted = new Map(lines.map((line) => [line.slice(0, line.indexOf(',')), line]));
  let worst = 0;
  for (const [block, ...found] of rows) {
    const line = wanted.get(block as string);
    if (line === undefined) throw new Error(`${String(block)} is in one of the two alone`);
    const cells = line.split(',');
    for (let i = 0; i < found.length; i++) {
      const value = Number(cells[i + 1]);
      const off = Math.abs((found[i] as number) - value) / Math.max(Math.abs(value), 1e-300);
      // NaN too
      if (!(off <= 1e-9)) throw new Error(`${String(block)}, ${names[i + 1]}: ${String(found[i])} against ${value}`);
      worst = Math.max(worst, off);
    }
    wanted.delete(block as string);
  }
  expect([...wanted.keys()]).toEqual([]);
  expect(worst).toBeLessThanOrEqual(1e-9);
  return rows.length;
}

describe('in DuckDB', () => {
  const random = (rows: number, seed: number): string => {
    const dice = chance(seed);
    const within = (q: Quantity): number => ROW_RANGES[q].least + dice() * (ROW_RANGES[q].most - ROW_RANGES[q].least);
    const maybe = (q: Quantity): number | string => (dice() < 0.3 ? '' : within(q));
    let csv = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction\n';
    for (let i = 0; i < rows; i++) {
      const height = within('treeHeightM');
      const skirt = dice() < 0.2 ? '' : Math.min(dice() * 0.95 * height, 15);
      csv += `b${i},${within('rowSpacingM')},${height},${skirt},${within('canopyWidthM')},${maybe('usDensityGalPer1000Ft3')},${maybe('ladM2PerM3')},${maybe('filledFraction')}\n`;
    }
    return csv;
  };

  it('100 000 random canopies have the figures of the command', async () => {
    expect(await agree(random(100_000, 5), [], '')).toBe(100_000);
  }, 60_000);

  it('a table in feet, a part of the columns, other columns among them, has the figures of the command', async () => {
    const dice = chance(6);
    const foot = (from: number, to: number): string => (from + dice() * (to - from)).toFixed(1);
    let csv = 'note_by,tree_height_ft,block,canopy_width_ft,row_spacing_ft,filled_fraction\n';
    for (let i = 0; i < 2000; i++) csv += `"me, here",${foot(1, 60)},${i},${foot(1, 39)},${foot(2, 65)},${dice() < 0.5 ? '' : dice().toFixed(2)}\n`;
    // The names are whole numbers there: the database reads them as such.
    expect(await agree(csv, ['--columns', 'block, Row_Spacing_ft, tree_height_ft, canopy_width_ft, filled_fraction'], '')).toBe(2000);
  });

  it('rows that the command refuses are left out, those at the ends of the ranges are not', async () => {
    const head = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction\n';
    const good = ['low,0.5,0.2,0,0.1,0.1,0.05,0', 'high,20,20,15,12,3,15,1', 'silent,4,3,,2,,,', 'not-measured,4,3,NA,2,NA,NA,NA', 'power,4e0,3,0.5,.2e1,,,', '007,4,3,,2,,,'];
    const bad = [
      'narrow,0.49,3,0,2,,,', 'wide,20.01,3,0,2,,,', 'flat,4,0.19,0,0.1,,,', 'tall,4,20.1,0,2,,,', 'sunk,4,3,-0.1,2,,,', 'hung,4,18,15.1,2,,,', 'even,4,3,3,2,,,', 'upside,4,3,3.5,2,,,', 'thin,4,3,0,0.09,,,', 'thick,4,3,0,12.1,,,',
      'dry,4,3,0,2,0.09,,', 'wet,4,3,0,2,3.1,,', 'bare,4,3,0,2,,0.04,', 'leafy,4,3,0,2,,15.1,', 'hole,4,3,0,2,,,-0.01', 'full,4,3,0,2,,,1.01', 'no-spacing,,3,0,2,,,', 'no-height,4,,0,2,,,', 'no-width,4,3,0,,,,', ',4,3,0,2,,,',
      'word,four,3,0,2,,,', 'word-skirt,4,3,low,2,,,', 'word-lad,4,3,0,2,,dense,', 'nan,4,3,0,2,NaN,,', 'inf,4,3,0,2,,,Infinity', `${'n'.repeat(201)},4,3,0,2,,,`
    ];
    const csv = head + [...good, ...bad].map((l) => `${l}\n`).join('');
    const path = join(scratch, 'bad.csv');
    await writeFile(path, csv);
    const { code, err } = await rowtailor(['table', path]);
    expect([code, err.trimEnd().split('\n').length]).toEqual([1, bad.length]);
    // All columns as text, as where no type can be told from the file.
    expect(await agree(csv, [], ', all_varchar = true')).toBe(good.length);
  });

  it('a relation may have any name, part by part, and nothing that stands in it is obeyed', async () => {
    const name = `odd "name"; DROP TABLE kept; --`;
    await duckdb.run('CREATE TABLE kept (x INTEGER); CREATE SCHEMA "my survey"');
    await duckdb.run(`CREATE TABLE "my survey"."${name.replaceAll('"', '""')}" AS SELECT 'a' AS block, 3.5 AS row_spacing_m, 3 AS tree_height_m, 1.2 AS canopy_width_m`);
    const { rows } = await ask(await statement('duckdb', '--from', `my survey.${name}`, '--columns', 'block,row_spacing_m,tree_height_m,canopy_width_m'));
    // 10 000 · 3 · 1.2 / 3.5
    expect(rows[0]!.slice(0, 2)).toEqual(['a', expect.closeTo(10285.714285714286, 8)]);
    expect((await ask('SELECT count(*) FROM kept')).rows).toEqual([[0n]]);
  });

  it('constants are lines that can be changed', async () => {
    await duckdb.run(`CREATE OR REPLACE VIEW canopies AS SELECT 'a' AS block, 4.0 AS row_spacing_m, 2.5 AS tree_height_m, 1.6 AS canopy_width_m`);
    const text = await statement('duckdb', '--columns', 'block,row_spacing_m,tree_height_m,canopy_width_m');
    const water = async (t: string) => {
      const { names, rows } = await ask(t);
      return rows[0]![names.indexOf('row_volume_water_l_per_ha')];
    };
    // 10 000 m³/ha at 0.1 and at 0.07 L/m³
    expect(await water(text)).toBeCloseTo(1000, 9);
    expect(await water(text.replace('0.1e0 AS row_volume_water,', '0.07e0 AS row_volume_water,'))).toBeCloseTo(700, 9);
  });

  it('the way through a file that the page of methods shows works', async () => {
    const page = await readFile(join(ROOT, 'docs/methods/sql.md'), 'utf8');
    const view = /```sql\n(CREATE VIEW [^`]+)```/.exec(page)![1]!.replace('CREATE VIEW', 'CREATE OR REPLACE VIEW').replace("'canopies.csv'", `'${join(ROOT, 'demo-data/sixty-blocks.csv')}'`);
    await duckdb.run(view);
    const { rows } = await ask(await statement('duckdb'));
    expect(rows).toHaveLength(60);
  });
});

describe('arithmetic', () => {
  const math = create(all!);
  it.each(['-2^2', '2^3^2', '2^-1', '(1 + 2) * 3 - 4 / 5 / 2', '7 - 2 - 1', '2 * -3', '4 - -1', 'min(3, 1 + 1, 5) ^ 2', 'max(1, 2) / 4', 'log(10)', 'exp(0.5) * sqrt(2)', 'asin(0.5)', '1e-3 + 2.5E2', 'a * b2 / (a - 10000)', '(a)^(1 / b2)'])(
    '%s is the same in DuckDB as in another parser',
    async (expression) => {
      const values: Record<string, number> = { a: 0.1, b2: 3 };
      const found = (await number(toSql(expression, (s) => literal(values[s]!)))) as number;
      const wanted = math.evaluate(expression, { ...values }) as number;
      expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-14 * Math.abs(wanted));
    }
  );
  it.each([0, 1, -1.5, 0.1, 1 / 3, 1e21, 1.5e-7, 5e-324, 1.7976931348623157e308, 35676, 0.13368055555555552])('%s keeps every digit, as a double', async (value) => {
    expect(await number(literal(value))).toBe(value);
    expect(await number(`typeof(${literal(Math.abs(value))})`)).toBe('DOUBLE');
  });
  it.each(['', '1 +', 'a b', '(1', '1)', 'sum of inputs', 'erf(1)', 'a = b', '1 % 2', 'min()'])('"%s" is refused', (expression) => {
    expect(() => toSql(expression, (s) => s)).toThrow(/no SQL for/);
  });
});

describe('the statement', () => {
  const spark = new SparkSQL();

  it.each(['duckdb', 'spark'])('for %s', async (dialect) => {
    const { code, out, err } = await rowtailor(['sql', '--dialect', dialect]);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot(`golden/table-${dialect}.sql`);
  });

  it('is Spark SQL to its grammar, with every option', async () => {
    for (const options of [[], ['--from', 'lake.my survey.it`s "odd"'], ['--columns', 'block,row_spacing_ft,tree_height_ft,canopy_width_ft']])
      expect(spark.validate(await statement('spark', ...options))).toEqual([]);
  });
  it.each([[' AS (', ' AS '], ['TRY_CAST(c.`row_spacing_m` AS DOUBLE) AS', 'TRY_CAST(c.`row_spacing_m` DOUBLE) AS'], ['BETWEEN 0.5e0 AND 20e0', 'BETWEEN 0.5e0 20e0'], ['  block,\n', '  block,,\n'], ['FROM `canopies` AS c', 'FROM `canopies AS c'], ['FROM `canopies`', 'FROM [canopies]']])(
    'the grammar refuses it with "%s" spoiled to "%s"',
    async (good, spoiled) => {
      const text = await statement('spark');
      expect(text).toContain(good);
      // The parser says there what it would have liked to read.
      const said = vi.spyOn(console, 'error').mockImplementation(() => {});
      expect(spark.validate(text.replace(good, spoiled)).length).toBeGreaterThan(0);
      said.mockRestore();
    }
  );

  it('is the same in both dialects but for the quotes of names', async () => {
    const [a, b] = [await statement('duckdb'), await statement('spark')];
    expect(a).not.toBe(b);
    expect(b.replaceAll('`', '"')).toBe(a);
  });

  it('has the columns of the table in their order', async () => {
    const text = await statement('spark');
    const last = text.slice(text.lastIndexOf('\nSELECT\n') + 8, text.lastIndexOf('\nFROM'));
    expect(last.split('\n').map((line) => /^ {2}(?:.* AS )?(\w+),?(?: -- .*)?$/.exec(line)?.[1]).join(',')).toBe(HEADER);
  });
});

describe('what is refused', () => {
  it.each([
    [[], 'Name the database with --dialect: duckdb or spark.'],
    [['--dialect', 'oracle'], '--dialect is "oracle"; it must be duckdb or spark.'],
    [['--dialect', 'spark', '--from', ''], '--from is ""; a name of 1 to 128 printable characters is needed, or up to 3 of them with points between, as survey.canopies.'],
    [['--dialect', 'spark', '--from', 'a..b'], '--from is "a..b"'],
    [['--dialect', 'spark', '--from', 'a.b.c.d'], '--from is "a.b.c.d"'],
    [['--dialect', 'spark', '--from', 'a\nb'], '--from is "a\\u000ab"'],
    [['--dialect', 'duckdb', '--from', 'Rowtailor_measured'], "the statement's own steps begin with rowtailor_"],
    [['--dialect', 'duckdb', '--columns', 'block,row_spacing_m,tree_hight_m,canopy_width_m'], 'Line 1: "tree_hight_m" is not a column that is known'],
    [['--dialect', 'duckdb', '--columns', 'block,row_spacing_m,tree_height_m'], 'Line 1, canopy_width_m is missing; one of canopy_width_m, canopy_width_ft is needed.'],
    [['--dialect', 'duckdb', '--columns', 'block,row_spacing_m,row_spacing_ft,tree_height_m,canopy_width_m'], 'tell the same quantity in two units'],
    [['--dialect', 'duckdb', '--columns', ''], '--columns is no header that a table can have.'],
    [['--dialect', 'duckdb', 'canopies.csv'], 'sql reads no file, but was given "canopies.csv"; name the relation with --from.'],
    [['--dialect', 'duckdb', '--out', 'x'], "Unknown option '--out'"]
  ] as const)('%j', async (args, said) => {
    const { code, out, err } = await sql(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
    expect(err).toContain('See: rowtailor sql --help');
  });

  it('nothing with help', async () => {
    const { code, out, err } = await sql('--help');
    expect([code, err]).toEqual([0, '']);
    for (const option of ['--dialect', '--from', '--columns']) expect(out).toContain(option);
    expect((await rowtailor(['--help'])).out).toContain('\n  sql ');
  });
});
