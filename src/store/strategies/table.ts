import { ownStrategies } from '#core/dose/own/own.ts';
import { columnSteps } from '#core/dose/table/columns.ts';
import type { CanopyBatch } from '#job/csv/batch.ts';
import { QUANTITIES, type Quantity } from '#job/csv/columns.ts';
import { rowProblem, type RowProblem } from '#job/csv/header.ts';
import { openCanopyTable } from '#job/csv/table.ts';
import { looksLikeParquet, openParquetTable } from '#job/parquet/table.ts';
import type { Asked, Table } from './messages.ts';

/** Canopies of one table; more would not find room in a page. */
export const MOST_CANOPIES = 1_000_000;
/** Problems that are told one by one. */
export const TOLD_PROBLEMS = 1000;
/** Bytes that are read at a time. */
const PIECE = 1 << 20;
/** Share of the work that reading takes. */
const READING = 0.7;

/**
 * Reads a table of canopies and works out what every strategy says of each. Yields progress, 0…1. Rows that are no canopy are told and left
 * out; a table of which nothing can be read has no canopies and says why.
 */
export async function* tableSteps(asked: Asked['table']): AsyncGenerator<number, Table> {
  const file = asked.from instanceof Blob ? asked.from : new Blob([asked.from]);
  const kept = new Kept();
  const opened = looksLikeParquet(new Uint8Array(await file.slice(0, 4).arrayBuffer())) ? await openParquet(file) : await openCsv(file);
  if (!opened.ok) kept.refuse(opened.problems);
  else
    for await (const batch of opened.batches) {
      if (!kept.take(batch)) break;
      yield READING * opened.done(kept.count);
    }
  yield READING;
  const steps = kept.steps(asked);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    yield READING + (1 - READING) * value;
  }
}

async function openCsv(file: Blob) {
  let read = 0;
  async function* pieces(): AsyncGenerator<Uint8Array> {
    for (let at = 0; at < file.size; at += PIECE) {
      yield new Uint8Array(await file.slice(at, at + PIECE).arrayBuffer());
      read = Math.min(at + PIECE, file.size);
    }
  }
  const table = await openCanopyTable(pieces());
  return table.ok ? { ...table, done: () => read / Math.max(file.size, 1) } : table;
}

async function openParquet(file: Blob) {
  const table = await openParquetTable({ byteLength: file.size, slice: (from, to) => file.slice(from, to).arrayBuffer() });
  return table.ok ? { ...table, done: (rows: number) => Math.min(rows / Math.max(table.rows, 1), 1) } : table;
}

/** Arrays that may go over to the page without being copied. */
export const transferred = ({ canopies, line, columns }: Table): ArrayBuffer[] => {
  const arrays = [line, ...QUANTITIES.map((q) => canopies[q]), ...[...columns.values()].flatMap((c) => [c.water, c.dilute, c.index, c.dose, c.concentration])];
  return [...new Set(arrays.flatMap((a) => (a ? [a.buffer as ArrayBuffer] : [])))];
};

/** Batches are used again by the reader: what is kept is copied, into room that grows. */
class Kept {
  count = 0;
  private readonly block: string[] = [];
  private lists: Readonly<Record<Quantity | 'line', Float64Array<ArrayBuffer>>> = room(4096);
  private readonly problems: RowProblem[] = [];
  private more = 0;
  private unread = false;

  /** False when there is no room for more. */
  take(batch: CanopyBatch): boolean {
    const count = Math.min(batch.count, MOST_CANOPIES - this.count);
    if (this.count + count > this.lists.line.length) {
      const larger = room(Math.min(2 * this.lists.line.length + count, MOST_CANOPIES));
      for (const name of [...QUANTITIES, 'line'] as const) larger[name].set(this.lists[name].subarray(0, this.count));
      this.lists = larger;
    }
    for (const name of [...QUANTITIES, 'line'] as const) this.lists[name].set(batch[name].subarray(0, count), this.count);
    for (let i = 0; i < count; i++) this.block.push(batch.block[i]!);
    this.count += count;
    this.tell(batch.problems);
    if (count === batch.count) return true;
    this.tell([rowProblem(batch.line[count]!, '', '', 'too-many-lines', { most: MOST_CANOPIES })]);
    return false;
  }
  refuse(problems: readonly RowProblem[]): void {
    this.unread = true;
    this.tell(problems);
  }
  tell(problems: readonly RowProblem[]): void {
    const room = Math.max(TOLD_PROBLEMS - this.problems.length, 0);
    this.problems.push(...problems.slice(0, room));
    this.more += Math.max(problems.length - room, 0);
  }
  /** Works the strategies out, in steps. Yields the share that is done. */
  *steps({ from: _, own, ...options }: Asked['table']): Generator<number, Table> {
    const list = (name: Quantity | 'line') => this.lists[name].slice(0, this.count);
    const canopies = { count: this.count, block: this.block, ...(Object.fromEntries(QUANTITIES.map((q) => [q, list(q)])) as Record<Quantity, Float64Array<ArrayBuffer>>) };
    const columns = yield* columnSteps(canopies, { ...options, own: ownStrategies(own) });
    return { canopies, line: list('line'), columns, problems: this.problems, more: this.more, unread: this.unread };
  }
}
const room = (length: number): Readonly<Record<Quantity | 'line', Float64Array<ArrayBuffer>>> =>
  Object.fromEntries([...QUANTITIES, 'line'].map((name) => [name, new Float64Array(length)])) as Record<Quantity | 'line', Float64Array<ArrayBuffer>>;
