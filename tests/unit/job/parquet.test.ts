import { DuckDBInstance, type DuckDBConnection } from '@duckdb/node-api';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CanopyBatch } from '#job/csv/batch.ts';
import { QUANTITIES } from '#job/csv/columns.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { openCanopyTable } from '#job/csv/table.ts';
import { openParquetTable, type AsyncBuffer } from '#job/parquet/table.ts';
import { problemSentence } from '#words/en/problems.ts';

/** Files are written by DuckDB: a reader must read what others write. */
let duck: DuckDBConnection;
let scratch = '';
beforeAll(async () => {
  duck = await (await DuckDBInstance.create()).connect();
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
});
afterAll(() => rm(scratch, { recursive: true }));

let written = 0;
async function parquet(select: string, options = ''): Promise<Buffer<ArrayBuffer>> {
  const path = join(scratch, `${written++}.parquet`);
  await duck.run(`COPY (${select}) TO '${path}' (FORMAT parquet${options && `, ${options}`})`);
  return readFile(path) as Promise<Buffer<ArrayBuffer>>;
}
/** Bytes as a file; notes the most that was asked for at once. */
const fileOf = (bytes: Buffer<ArrayBuffer>): AsyncBuffer & { most: number } => ({
  byteLength: bytes.length,
  most: 0,
  slice(from, to = bytes.length) {
    this.most = Math.max(this.most, to - from);
    return bytes.buffer.slice(bytes.byteOffset + from, bytes.byteOffset + to);
  }
});

type Row = Record<string, unknown>;
const rowsOf = (batch: CanopyBatch): Row[] => Array.from({ length: batch.count }, (_, i) => ({ block: batch.block[i], line: batch.line[i], ...Object.fromEntries(QUANTITIES.map((q) => [q, batch[q][i]])) }));
async function read(file: AsyncBuffer, withErrors = false): Promise<{ rows: Row[]; problems: RowProblem[] }> {
  const table = await openParquetTable(file, withErrors);
  if (!table.ok) return { rows: [], problems: [...table.problems] };
  const rows: Row[] = [];
  const problems: RowProblem[] = [];
  for await (const batch of table.batches) {
    rows.push(...rowsOf(batch));
    problems.push(...batch.problems);
  }
  return { rows, problems };
}
async function readCsv(text: string): Promise<{ rows: Row[]; problems: RowProblem[] }> {
  const table = await openCanopyTable([text]);
  if (!table.ok) throw new Error('no header');
  const rows: Row[] = [];
  const problems: RowProblem[] = [];
  for await (const batch of table.batches) {
    rows.push(...rowsOf(batch));
    problems.push(...batch.problems);
  }
  return { rows, problems };
}
const sentences = (problems: readonly RowProblem[]): string[] => problems.map(problemSentence);

const HEAD = 'block,row_spacing_m,tree_height_ft,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction';
const NAMES = HEAD.split(',');

describe('what DuckDB writes', () => {
  it.each([['DOUBLE', 'zstd'], ['DOUBLE', 'snappy'], ['DOUBLE', 'gzip'], ['DOUBLE', 'brotli'], ['DOUBLE', 'lz4_raw'], ['DOUBLE', 'uncompressed'], ['DECIMAL(9,4)', 'zstd'], ['DECIMAL(30,4)', 'snappy']])('%s, %s, is read as the same table in CSV, what is missing included', async (type, codec) => {
    const values = Array.from({ length: 300 }, (_, i) => [
      `b ${i}, "x"`,
      (3 + (i % 31) / 10).toFixed(1),
      (7 + (i % 17) / 4).toFixed(2),
      i % 3 ? ((i % 7) / 10).toFixed(1) : '',
      (1 + (i % 11) / 10).toFixed(1),
      i % 2 ? '0.85' : '',
      i % 5 ? (0.5 + (i % 9) / 4).toFixed(2) : '',
      i % 4 ? '0.9' : ''
    ]);
    const csv = values.map(([name, ...rest]) => [`"${name!.replaceAll('"', '""')}"`, ...rest].join(',')).join('\n');
    const select = `SELECT column0 AS block, ${NAMES.slice(1).map((n, i) => `CAST(column${i + 1} AS ${type}) AS ${n}`).join(', ')} FROM (VALUES ${values.map(([name, ...rest]) => `('${name}', ${rest.map((r) => r || 'NULL').join(', ')})`).join(', ')}) t(${NAMES.map((_, i) => `column${i}`).join(', ')})`;
    const found = await read(fileOf(await parquet(select, `COMPRESSION ${codec}`)));
    expect(found.problems).toEqual([]);
    const wanted = await readCsv(`${HEAD}\n${csv}\n`);
    expect(wanted.problems).toEqual([]);
    // A line of a text stands one below its row.
    expect(found.rows).toEqual(wanted.rows.map((r) => ({ ...r, line: (r['line'] as number) - 1 })));
  });

  it('whole numbers as names and figures, floats, columns in any order, notes of any type', async () => {
    const bytes = await parquet(`SELECT DATE '2031-04-27' AS note_day, [1, 2] AS note_list, 2::TINYINT AS "Canopy_Width_M ", 17::BIGINT AS block, 3.5::FLOAT AS tree_height_m, 4::UINTEGER AS row_spacing_m, {'a': 1} AS note_s`);
    const { rows, problems } = await read(fileOf(bytes));
    expect(problems).toEqual([]);
    expect(rows).toMatchObject([{ block: '17', line: 1, canopyWidthM: 2, treeHeightM: 3.5, rowSpacingM: 4, skirtHeightM: 0, filledFraction: 1, usDensityGalPer1000Ft3: NaN }]);
  });

  it('in many row groups, or one that is larger than a window, row after row; errors only where they are asked for', async () => {
    const select = `SELECT 'b' || i AS block, 3 + (i % 100) / 50.0::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1.5::DOUBLE AS canopy_width_m, 0.1::DOUBLE AS height_se_m, repeat('n', 50) || i AS note_long FROM range(300000) t(i)`;
    for (const size of [20_000, 1_000_000]) {
      const bytes = await parquet(select, `ROW_GROUP_SIZE ${size}`);
      const file = fileOf(bytes);
      const table = await openParquetTable(file, true);
      if (!table.ok) throw new Error('refused');
      expect(table.rows).toBe(300_000);
      let row = 0;
      for await (const batch of table.batches)
        for (let i = 0; i < batch.count; i++) {
          row++;
          if (batch.line[i] !== row || batch.block[i] !== `b${row - 1}` || Math.abs(batch.rowSpacingM[i]! - (3 + ((row - 1) % 100) / 50)) > 1e-12 || batch.errors!.heightSeM[i] !== 0.1) throw new Error(`row ${row}`);
        }
      expect(row).toBe(300_000);
      // The long notes are never asked for, and of small groups never much at once.
      if (size === 20_000) expect(file.most).toBeLessThan(bytes.length / 4);
    }
  });
});

describe('refusals', () => {
  it('name the row, column, value, range and remedy, as those of a CSV table do; the other rows are there', async () => {
    const bad: [string, ...string[]][] = [
      ["('far', 40, 3, 0.5, 1)", 'Row 2, row_spacing_m is 40; 0.5 to 20 m is allowed. Check the decimal point'],
      ["('nan', 4, 'NaN', 0.5, 1)", 'Row 4, tree_height_m is NaN; a number, 0.2 to 20 m, is needed.'],
      ["('inf', 4, 'Infinity', 0.5, 1)", 'Row 6, tree_height_m is Infinity; a number, 0.2 to 20 m, is needed.'],
      ["('negative', 4, 3, -0.5, 1)", 'Row 8, skirt_height_m is -0.5; 0 to 15 m is allowed.'],
      ["('skirted', 4, 3, 3, 1)", 'Row 10, skirt_height_m is 3, but tree_height_m is 3; the skirt must be lower than the top.'],
      ["('nothing', 4, NULL, 0.5, 1)", 'Row 12, tree_height_m is empty; 0.2 to 20 m is needed.'],
      ["(NULL, 4, 3, 0.5, 1)", 'Row 14, block is empty; a name is needed.'],
      ["('  ', 4, 3, 0.5, 1)", 'Row 16, block is empty; a name is needed.'],
      [`('${'n'.repeat(500)}', 4, 3, 0.5, 1)`, `Row 18, block is ${'n'.repeat(39)}…, 500 characters; at most 200 are allowed.`],
      ["('red' || chr(27), 4, 3, 0.5, 1)", 'Row 20, block is red\\u001b, with tabs or other control characters'],
      ["('turn' || chr(8238), 4, 3, 0.5, 1)", 'Row 22, block is turn\\u202e, with tabs or other control characters'],
      ["(NULL, NULL, NULL, NULL, NULL)", 'Row 24, block is empty', 'Row 24, row_spacing_m is empty', 'Row 24, tree_height_m is empty', 'Row 24, canopy_width_m is empty'],
      ["('two', 40, 30, 0.5, 1)", 'Row 26, row_spacing_m is 40', 'Row 26, tree_height_m is 30']
    ];
    const values = bad.flatMap(([row], i) => [`('good-${i}', 4, 3, 0.5, 1)`, row]);
    const found = await read(fileOf(await parquet(`SELECT block, r::DOUBLE AS row_spacing_m, h::DOUBLE AS tree_height_m, s::DOUBLE AS skirt_height_m, w::DOUBLE AS canopy_width_m FROM (VALUES ${values.join(', ')}) t(block, r, h, s, w)`.replaceAll(', 4, 3, 0.5, 1)', ", 4, '3', 0.5, 1)").replaceAll(', 3, ', ", '3', ").replaceAll(', 30, ', ", '30', "))));
    expect(found.rows.map((r) => r['block'])).toEqual(bad.map((_, i) => `good-${i}`));
    const told = sentences(found.problems);
    const wanted = bad.flatMap(([, ...messages]) => messages);
    expect(told).toHaveLength(wanted.length);
    wanted.forEach((message, i) => expect(told[i]!.startsWith(message), `${told[i]} should begin ${message}`).toBe(true));
  });

  const GOOD = "SELECT 'a' AS block, 4.0::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1.0::DOUBLE AS canopy_width_m";
  it.each<[string, string, string]>([
    ['text where numbers belong', GOOD.replace('3.0::DOUBLE', "'3'"), 'The file, tree_height_m is of type text; numbers are needed. Write the column again as DOUBLE.'],
    ['true and false', GOOD.replace('3.0::DOUBLE', 'true'), 'The file, tree_height_m is of type BOOLEAN; numbers are needed.'],
    ['a day', GOOD.replace('3.0::DOUBLE', "DATE '2031-01-01'"), 'The file, tree_height_m is of type DATE; numbers are needed.'],
    ['a moment', GOOD.replace('3.0::DOUBLE', "TIMESTAMP '2031-01-01 07:00:00'"), 'numbers are needed'],
    ['a list', GOOD.replace('3.0::DOUBLE', '[3.0]'), 'The file, tree_height_m is of type LIST; numbers are needed.'],
    ['a structure as a name', GOOD.replace("'a'", "{'x': 'a'}"), 'The file, block is of type a group of columns; text, or whole numbers, are needed.'],
    ['fractions as a name', GOOD.replace("'a'", '1.5::DOUBLE'), 'The file, block is of type fractions; text, or whole numbers, are needed.'],
    ['a column that is missing', GOOD.replace(/, 1.0::DOUBLE AS canopy_width_m/, ''), 'The file, canopy_width_m is missing; one of canopy_width_m, canopy_width_ft is needed.'],
    ['a column that is not known', GOOD.replace('tree_height_m', 'tree_heigth_m'), 'The file: "tree_heigth_m" is not a column that is known']
  ])('of the whole file: %s', async (_, select, message) => {
    const { rows, problems } = await read(fileOf(await parquet(select)));
    expect(rows).toEqual([]);
    expect(sentences(problems).join('\n')).toContain(message);
  });

  it('of what is no Parquet file, is cut off, or damaged, wherever: told, never thrown, and no row is invented', async () => {
    for (const text of ['', 'PAR1', 'block,row_spacing_m\na,4\n', 'PARE'.padEnd(40, 'x'), '\0'.repeat(64)])
      expect(sentences((await read(fileOf(Buffer.from(text)))).problems).join(), text).toMatch(/^The file is no Parquet file: it does not begin as one does\. /);
    const bytes = await parquet(`SELECT 'b' || i AS block, 4 + i / 1000.0::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1 + i / 1000.0::DOUBLE AS canopy_width_m FROM range(6000) t(i)`, 'ROW_GROUP_SIZE 2048, COMPRESSION snappy');
    for (const share of [0.02, 0.3, 0.7, 0.99, 0.9999]) {
      const { rows, problems } = await read(fileOf(bytes.subarray(0, Math.floor(share * bytes.length)) as Buffer<ArrayBuffer>));
      expect(rows).toEqual([]);
      expect(sentences(problems)).toEqual(['The file is a Parquet file without its end; it may have been cut off. Save or send it again.']);
    }
    // Cut in the middle, with an end put behind it.
    const joined = Buffer.concat([bytes.subarray(0, bytes.length / 2), bytes.subarray(bytes.length - 3000)]) as Buffer<ArrayBuffer>;
    const cut = await read(fileOf(joined));
    expect(cut.problems.length).toBeGreaterThan(0);
    for (const s of sentences(cut.problems)) expect(s).toMatch(/^(Row \d+|The file)/);
    // A byte changed here and there.
    let told = 0;
    for (let at = 4; at < bytes.length - 8; at += 997) {
      const changed = Buffer.from(bytes) as Buffer<ArrayBuffer>;
      changed[at]! ^= 0xff;
      const { rows, problems } = await read(fileOf(changed));
      expect(rows.length).toBeLessThanOrEqual(6000);
      if (problems.length > 0) told++;
    }
    expect(told).toBeGreaterThan(3);
  });

  it('of a row group that cannot be read: the others are read', async () => {
    const bytes = await parquet(`SELECT 'b' || i AS block, 4 + i / 1000.0::DOUBLE AS row_spacing_m, 3.0::DOUBLE AS tree_height_m, 1 + i / 1000.0::DOUBLE AS canopy_width_m FROM range(6144) t(i)`, 'ROW_GROUP_SIZE 2048, COMPRESSION snappy');
    // The first page of the second group begins somewhere in the second third; from there on all is overwritten.
    const third = Math.floor((bytes.length - 2000) / 3);
    bytes.fill(0xff, third + 1000, 2 * third - 1000);
    const { rows, problems } = await read(fileOf(bytes));
    expect(sentences(problems)[0]).toMatch(/^Row 2049 cannot be read, nor the 2,047 rows from there on: .+\. The file is damaged, /);
    const names = new Set(rows.map((r) => r['block']));
    for (const i of [0, 2047, 4096, 6143]) expect(names.has(`b${i}`), String(i)).toBe(true);
    expect(names.has('b3000')).toBe(false);
  });

  it('of the system are thrown, not told of the file', async () => {
    const bytes = await parquet(GOOD);
    const failing = { ...fileOf(bytes), slice: () => Promise.reject(Object.assign(new Error('EIO'), { syscall: 'read' })) };
    await expect(openParquetTable(failing)).rejects.toThrow('EIO');
  });
});
