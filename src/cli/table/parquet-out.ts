import { ByteWriter, ParquetWriter } from 'hyparquet-writer';
import type { SchemaElement } from 'hyparquet';
import type { Rectangle } from './piece.ts';
import type { Sink, Writer } from './sink.ts';

/** Rows of a row group: enough that a database reads them in one sweep, few enough that memory stays flat. */
export const GROUP_ROWS = 1 << 15;

/**
 * Writes a table as a Parquet file, row group by row group: names as text, figures as double precision, an empty cell as NULL. Numbers that
 * were worked out hardly shrink, so only the names are compressed.
 */
export function parquetWriter(names: readonly string[], mayLack: readonly boolean[], sink: Sink): Writer {
  const bytes = new ByteWriter(1 << 16);
  const file = new ParquetWriter({ writer: bytes, schema: schemaOf(names, mayLack), createdBy: 'rowtailor' });
  let block: string[] = [];
  const columns = names.map(() => new Float64Array(GROUP_ROWS));

  /** Hands on what has been encoded, which is written over afterwards; offsets count on. */
  async function flush(): Promise<void> {
    await sink.write(bytes.getBytes());
    bytes.index = 0;
  }
  async function group(): Promise<void> {
    const count = block.length;
    if (count === 0) return;
    // Room for all at once, instead of twice as much again and again.
    bytes.ensure(count * 8 * names.length + (1 << 20));
    file.write({
      rowGroupSize: count,
      columnData: [
        { name: 'block', data: block },
        ...names.map((name, k) => ({ name, data: cells(columns[k]!.subarray(0, count), mayLack[k]!), encoding: 'PLAIN' as const, codec: 'UNCOMPRESSED' as const }))
      ]
    });
    block = [];
    await flush();
  }
  async function add({ count, block: added, numbers }: Rectangle): Promise<void> {
    for (let from = 0; from < count; ) {
      const room = Math.min(count - from, GROUP_ROWS - block.length);
      columns.forEach((c, k) => c.set(numbers.subarray(k * count + from, k * count + from + room), block.length));
      for (let i = from; i < from + room; i++) block.push(added[i]!);
      from += room;
      if (block.length === GROUP_ROWS) await group();
    }
  }
  return {
    begin: flush,
    async add({ rectangles }) {
      for (const r of rectangles) await add(r);
    },
    async end() {
      await group();
      file.finish();
      await flush();
    }
  };
}

const schemaOf = (names: readonly string[], mayLack: readonly boolean[]): SchemaElement[] => [
  { name: 'table', num_children: 1 + names.length },
  { name: 'block', type: 'BYTE_ARRAY', converted_type: 'UTF8', repetition_type: 'REQUIRED' },
  ...names.map((name, k): SchemaElement => ({ name, type: 'DOUBLE', repetition_type: mayLack[k] ? 'OPTIONAL' : 'REQUIRED' }))
];

const cells = (column: Float64Array<ArrayBuffer>, mayLack: boolean): Float64Array<ArrayBuffer> | (number | null)[] =>
  mayLack && column.some(Number.isNaN) ? Array.from(column, (v) => (Number.isNaN(v) ? null : v)) : column;
