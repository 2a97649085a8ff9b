import { createReadStream } from 'node:fs';
import { open, type FileHandle } from 'node:fs/promises';
import type { Batch, CanopyBatch } from '#job/csv/batch.ts';
import { ERROR_QUANTITIES, QUANTITIES } from '#job/csv/columns.ts';
import type { Header, RowProblem } from '#job/csv/header.ts';
import { cutRows, inSlices } from './cut.ts';
import { readHead } from './head.ts';
import type { Piece } from './piece.ts';

type Chunks = AsyncIterable<Uint8Array>;

/** A table that is read: its columns, and its rows in pieces; or why it is refused. */
export type Source =
  | { readonly header: Header; readonly counted: 'lines' | 'rows'; pieces(size: Size): AsyncGenerator<Piece>; close(): Promise<void> }
  | { readonly refused: readonly RowProblem[] }
  | { readonly refused: 'encoding' | 'parquet-from-input' };

/** About how large a piece is to be. */
export interface Size {
  readonly bytes: number;
  readonly rows: number;
}

/** A table in text, from wherever its bytes come. */
export async function textSource(chunks: Chunks): Promise<Source> {
  const head = await readHead(chunks);
  if (typeof head === 'string' || !('header' in head)) return { refused: head } as Source;
  const { header, rows } = head;
  return {
    header,
    counted: 'lines',
    async *pieces({ bytes: size }) {
      let { line } = head;
      for await (const { bytes, lines } of cutRows(inSlices(rows, size), header.delimiter, size)) {
        yield { header, line, bytes };
        line += lines;
      }
    },
    async close() {
      // What is read from is let go.
      for await (const _ of rows) break;
    }
  };
}

/** A table in a Parquet file, which is read from its end: only what is needed of it. */
export async function parquetSource(path: string, withErrors: boolean): Promise<Source> {
  const file = await open(path);
  try {
    const [{ openParquetTable }, { size }] = await Promise.all([import('#job/parquet/table.ts'), file.stat()]);
    const table = await openParquetTable({ byteLength: size, slice: (from, to = size) => slice(file, from, to) }, withErrors);
    if (!table.ok) {
      await file.close();
      return { refused: table.problems };
    }
    return {
      header: table.header,
      counted: 'rows',
      async *pieces({ rows }) {
        for await (const batch of table.batches) {
          let problems: readonly RowProblem[] = [...batch.problems];
          for (let from = 0; from < batch.count || problems.length > 0; from += rows) {
            const upTo = from + rows >= batch.count ? Infinity : batch.line[from + rows]!;
            yield { batch: part(batch, from, Math.min(from + rows, batch.count)), problems: problems.filter((p) => p.line < upTo) };
            problems = problems.filter((p) => p.line >= upTo);
          }
        }
        await file.close();
      },
      close: () => file.close()
    };
  } catch (error) {
    await file.close();
    throw error;
  }
}

async function slice(file: FileHandle, from: number, to: number): Promise<ArrayBuffer> {
  const bytes = new Uint8Array(Math.max(to - from, 0));
  for (let done = 0; done < bytes.length; ) {
    const { bytesRead } = await file.read(bytes, done, bytes.length - done, from + done);
    // The file has become shorter since it was opened: what is missing stays 0 and is told as damage.
    if (bytesRead === 0) break;
    done += bytesRead;
  }
  return bytes.buffer;
}

/** Some rows of a batch, in one piece of memory. */
function part(batch: CanopyBatch, from: number, to: number): Batch {
  const count = to - from;
  const errors = batch.errors;
  const all = new Float64Array(count * (1 + QUANTITIES.length + (errors ? ERROR_QUANTITIES.length : 0)));
  let at = 0;
  const copy = (of: Float64Array): Float64Array<ArrayBuffer> => {
    const to = all.subarray(at, (at += count));
    to.set(of.subarray(from, from + count));
    return to;
  };
  return {
    count,
    block: batch.block.slice(from, to),
    line: copy(batch.line),
    ...(Object.fromEntries(QUANTITIES.map((q) => [q, copy(batch[q])])) as Record<(typeof QUANTITIES)[number], Float64Array<ArrayBuffer>>),
    errors: errors && (Object.fromEntries(ERROR_QUANTITIES.map((q) => [q, copy(errors[q])])) as NonNullable<Batch['errors']>)
  };
}

const MAGIC_BYTES = 4;
/** Whether a file is a Parquet file by its name or its beginning. What cannot be opened is told where it is read. */
export async function isParquet(path: string): Promise<boolean> {
  if (/\.parquet$/i.test(path)) return true;
  if (path === '-') return false;
  const file = await open(path).catch(() => null);
  if (!file) return false;
  try {
    // A pipe is read once, from its beginning.
    if (!(await file.stat()).isFile()) return false;
    const { bytesRead, buffer } = await file.read(new Uint8Array(MAGIC_BYTES), 0, MAGIC_BYTES, 0);
    return bytesRead === MAGIC_BYTES && Buffer.from(buffer).toString('latin1') === 'PAR1';
  } finally {
    await file.close();
  }
}

/** The bytes of a file from its beginning, or of standard input. */
export const chunksOf = (file: string, stdin: Chunks): Chunks => (file === '-' ? stdin : createReadStream(file, { highWaterMark: 1 << 18 }));
