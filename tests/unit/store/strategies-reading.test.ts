import { parquetWriteBuffer } from 'hyparquet-writer';
import { describe, expect, it } from 'vitest';
import { compileOwn } from '#core/dose/own/own.ts';
import { evaluateStrategy } from '#core/dose/evaluate.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import type { Strategy } from '#core/dose/strategy.ts';
import { canopyState } from '#core/canopy/canopy.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { tableSteps, transferred } from '#store/strategies/table.ts';
import type { Asked, Table } from '#store/strategies/messages.ts';
import { num } from '../../support/sample.ts';

async function read(asked: Asked['table'], seen: number[] = []): Promise<Table> {
  const steps = tableSteps(asked);
  for (;;) {
    const { done, value } = await steps.next();
    if (done) return value;
    seen.push(value);
  }
}
const HEADER = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,filled_fraction';
const line = (i: number) => `b${i},${4 + (i % 3) / 2},${2.5 + (i % 5) / 4},0.5,${1 + (i % 7) / 10},${1 - (i % 4) / 10}`;
const csv = (n: number) => [HEADER, ...Array.from({ length: n }, (_, i) => line(i))].join('\n');

describe('a table of canopies for the page', () => {
  const own = [{ id: 'mine', name: 'Mine', index: '0.4 + 0.6 * TRVc / 10000' }];
  it('every canopy has what the engine says of it in a document, by every strategy and the user’s own', async () => {
    const t = await read({ from: csv(40), own });
    expect([t.canopies.count, t.line[0], t.line[39], t.problems.length, t.more]).toEqual([40, 2, 41, 0, 0]);
    expect([...t.columns.keys()]).toEqual([...STRATEGIES.keys(), 'own.mine']);
    const all: Strategy[] = [...STRATEGIES.values(), compileOwn(own[0]!) as Strategy];
    for (const i of [0, 7, 23, 39]) {
      const c = t.canopies;
      expect(c.block[i]).toBe(`b${i}`);
      const assumptions = new Assumptions(ASSUMPTIONS);
      const state = canopyState({ heightM: c.treeHeightM[i]!, skirtM: c.skirtHeightM[i]!, widthM: c.canopyWidthM[i]!, filledFraction: c.filledFraction[i]! }, { rowSpacingM: c.rowSpacingM[i]!, faces: 2 }, assumptions);
      for (const s of all) {
        const says = evaluateStrategy(s, state, assumptions);
        expect(t.columns.get(s.id)!.index[i]! / num(says.index)).toBeCloseTo(1, 12);
        if (says.water) expect(t.columns.get(s.id)!.water![i]! / num(says.water)).toBeCloseTo(1, 12);
      }
    }
  });
  it('text, its bytes, a file of them and a Parquet file say the same', async () => {
    const n = 5000;
    const text = csv(n);
    const column = (at: number) => Array.from({ length: n }, (_, i) => Number(line(i).split(',')[at]));
    const parquet = new Uint8Array(parquetWriteBuffer({
      columnData: [
        { name: 'block', data: Array.from({ length: n }, (_, i) => `b${i}`), type: 'STRING' },
        ...HEADER.split(',').slice(1).map((name, k) => ({ name, data: column(k + 1), type: 'DOUBLE' as const }))
      ]
    }));
    const bytes = new TextEncoder().encode(text);
    const [a, b, c, d] = await Promise.all([read({ from: text }), read({ from: bytes }), read({ from: new Blob([bytes]) }), read({ from: new Blob([parquet]) })]);
    for (const other of [b, c, d]) {
      expect(other.canopies).toEqual(a.canopies);
      expect(other.columns).toEqual(a.columns);
    }
    expect(d.problems).toEqual([]);
  });
  it.each(['', '\n\n', 'height\n1', '{"format": 1}', 'PAR1', 'PAR1 and no more'])('%j is no table and says so', async (text) => {
    const t = await read({ from: new TextEncoder().encode(text) });
    expect(t.canopies.count).toBe(0);
    expect(t.problems.length).toBeGreaterThan(0);
  });
  it('progress rises to the end, and what is handed over is every list once', async () => {
    const seen: number[] = [];
    const t = await read({ from: csv(60_000) }, seen);
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect([seen[0]! < 0.7, seen.at(-1)]).toEqual([true, expect.closeTo(1, 2)]);
    const buffers = transferred(t);
    expect(new Set(buffers).size).toBe(buffers.length);
    expect(buffers).toContain(t.columns.get('leaf-area')!.water!.buffer);
  });
});
