import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import { describe, expect, it } from 'vitest';
import type { Asked, Table } from '../../../src/store/strategies/messages.ts';
import { tableSteps, TOLD_PROBLEMS } from '../../../src/store/strategies/table.ts';
import { parquetOf } from '../../../src/store/parquet/write.ts';
import { madeUpCanopies } from '../../../src/workspace/made-up.ts';
import { checkDocument } from '../../../src/job/read.ts';

async function read(asked: Asked['table']): Promise<{ table: Table; progress: number[] }> {
  const progress: number[] = [];
  const steps = tableSteps(asked);
  for (;;) {
    const { done, value } = await steps.next();
    if (done) return { table: value, progress };
    progress.push(value);
  }
}
const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m\n';

describe('a table of canopies', () => {
  it('keeps the good rows, and tells each bad one with its line', async () => {
    const { table } = await read({ from: `${HEAD}A,4,3.5,0.5,1.5\nB,4,abc,0.5,1.5\nC,4,0.4,0.5,1.5\nD,3,4,0.6,2\n` });
    expect(table.canopies.block).toEqual(['A', 'D']);
    expect([...table.line]).toEqual([2, 5]);
    expect(table.problems.map((p) => [p.line, p.code])).toEqual([[3, 'not-a-number'], [4, 'skirt-not-below-top']]);
    expect(table.unread).toBe(false);
    // A: crown 3 m × 1.5 m in rows 4 m apart: 11 250 m³/ha, against 10 000 of the reference; leaf wall 15 000 against 16 000 m²/ha.
    expect(table.columns.get('row-volume')!.index[0]).toBeCloseTo(1.125, 12);
    expect(table.columns.get('row-volume')!.water![0]).toBeCloseTo(1125, 9);
    expect(table.columns.get('leaf-wall')!.index[0]).toBeCloseTo(15 / 16, 12);
    expect(table.columns.get('leaf-wall')!.water).toBeNull();
  });
  it('has a dose where a label is told, and a concentration where the water is', async () => {
    const from = `${HEAD}A,4,3.5,0.5,1.5\n`;
    const bare = (await read({ from })).table.columns.get('row-volume')!;
    expect([bare.dose, bare.concentration]).toEqual([null, null]);
    const label = { id: 'x', name: 'x', unit: 'kg' as const, basis: 'per-hectare' as const, rate: 2, adaptation: 'required' as const, maxPerHa: 2.1 };
    const told = (await read({ from, label, appliedLPerHa: 500 })).table.columns.get('row-volume')!;
    // 2 kg × 1.125 is above the most that the label allows.
    expect(told.dose![0]).toBeCloseTo(2.1, 12);
    expect(told.concentration![0]).toBeCloseTo(2.25, 12);
  });
  it('works out the user’s own strategies behind the others', async () => {
    const { table } = await read({ from: `${HEAD}A,4,3.5,0.5,1.5\n`, own: [{ id: 'mine', name: 'Mine', index: 'h / 2' }] });
    expect([...table.columns.keys()].at(-1)).toBe('own.mine');
    expect(table.columns.get('own.mine')!.index[0]).toBeCloseTo(1.5, 12);
  });
  it('that has no canopies says why', async () => {
    const { table } = await read({ from: 'name;height\nx;3\n' });
    expect(table.canopies.count).toBe(0);
    expect(table.problems.length).toBeGreaterThan(0);
    expect(table.unread).toBe(true);
  });
  it('tells so many problems one by one and counts the others', async () => {
    const { table } = await read({ from: HEAD + 'A,4,abc,0.5,1.5\n'.repeat(TOLD_PROBLEMS + 25) });
    expect(table.problems).toHaveLength(TOLD_PROBLEMS);
    expect(table.more).toBe(25);
  });
  it('of some MB tells how far it is, and has every row', async () => {
    const lines = 40_000;
    const { table, progress } = await read({ from: new Blob([madeUpCanopies(lines)]) });
    expect(table.canopies.count).toBe(lines);
    expect(table.canopies.block.at(-1)).toBe(`Made up ${lines}`);
    expect(table.problems).toEqual([]);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    expect(progress.length).toBeGreaterThan(5);
  });
  it('is read from Parquet as from text', async () => {
    const names = ['row_spacing_m', 'tree_height_m', 'skirt_height_m', 'canopy_width_m'];
    const rows = [[4, 3.5, 0.5, 1.5], [3, 4, 0.6, 2]];
    const bytes = await parquetOf(['A', 'D'], names.map((name, i) => ({ name, values: Float64Array.from(rows, (r) => r[i]!) })));
    const parquet = (await read({ from: new Uint8Array(bytes) })).table;
    const text = (await read({ from: `${HEAD}${rows.map((r, i) => `${'AD'[i]},${r.join(',')}`).join('\n')}\n` })).table;
    expect(parquet.canopies.block).toEqual(text.canopies.block);
    for (const [id, { index }] of text.columns) expect(parquet.columns.get(id)!.index, id).toEqual(index);
  });
});

describe('a table that goes out as Parquet', () => {
  it('is read back by a database, what is not there as null', async () => {
    const file = await parquetOf(['Élan', 'B'], [{ name: 'dose_index', values: Float64Array.of(0.1 + 0.2, NaN) }]);
    const path = join(mkdtempSync(join(tmpdir(), 'rowtailor-')), 'out.parquet');
    writeFileSync(path, new Uint8Array(file));
    const connection = await (await DuckDBInstance.create()).connect();
    const rows = (await connection.runAndReadAll(`SELECT * FROM read_parquet('${path}')`)).getRowObjects();
    expect(rows).toEqual([{ block: 'Élan', dose_index: 0.1 + 0.2 }, { block: 'B', dose_index: null }]);
  });
});

describe('canopies that are made up', () => {
  it('are the same whenever they are made, and such as may stand in an orchard', () => {
    const text = madeUpCanopies(50);
    expect(madeUpCanopies(50)).toBe(text);
    const demo = JSON.parse(readFileSync('demo-data/lower-bench.json', 'utf8')) as { blocks: { rungs: { canopy: object }[]; rowSpacingM: number }[] };
    for (const line of text.trim().split('\n').slice(1)) {
      const [, rowSpacingM, heightM, skirtM, widthM] = line.split(',').map(Number) as [number, number, number, number, number];
      expect(skirtM).toBeLessThan(heightM);
      expect(widthM).toBeLessThan(rowSpacingM);
      demo.blocks[0]!.rungs[0]!.canopy = { heightM, skirtM, widthM };
      demo.blocks[0]!.rowSpacingM = rowSpacingM;
      expect(checkDocument(demo).ok).toBe(true);
    }
  });
});
