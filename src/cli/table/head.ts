import { readHeader, rowProblem, type Header, type RowProblem } from '#job/csv/header.ts';
import { LONGEST_ROW } from '#job/csv/rows.ts';
import { ROW_BYTES } from './cut.ts';

const NEWLINE = 10;
/** What a decoder puts where bytes are no UTF-8. */
const REPLACEMENT = '\uFFFD';

/** A table whose header was understood, its rows still to come. */
export interface Head {
  readonly header: Header;
  /** Line of the file at which the rows begin. */
  readonly line: number;
  readonly rows: AsyncIterable<Uint8Array>;
}

/** Reads the first line that is not blank. What is wrong with it where it is no header; `encoding` where it is no UTF-8 text, `parquet-from-input` where it is a Parquet file. */
export async function readHead(chunks: AsyncIterable<Uint8Array>): Promise<Head | readonly RowProblem[] | 'encoding' | 'parquet-from-input'> {
  const source = chunks[Symbol.asyncIterator]();
  const head = await headOf(source);
  if (typeof head === 'string' || !('header' in head)) await source.return?.();
  return head;
}

async function headOf(source: AsyncIterator<Uint8Array>): Promise<Head | readonly RowProblem[] | 'encoding' | 'parquet-from-input'> {
  let held: Uint8Array = new Uint8Array();
  for (let line = 1; ; ) {
    const end = held.indexOf(NEWLINE);
    if (end < 0 && held.length <= ROW_BYTES) {
      const next = await source.next();
      if (!next.done) {
        held = Buffer.concat([held, next.value]);
        continue;
      }
    }
    if (line === 1 && held.length >= 4 && held[0] === 0x50 && Buffer.from(held.subarray(0, 4)).toString('latin1') === 'PAR1') return 'parquet-from-input';
    const text = new TextDecoder().decode(end < 0 ? held : held.subarray(0, end)).replace(/\r$/, '');
    if (text.length > LONGEST_ROW) return [rowProblem(line, '', '', 'line-too-long', { most: LONGEST_ROW })];
    held = end < 0 ? new Uint8Array() : held.subarray(end + 1);
    if (text.trim() === '' && end >= 0) {
      line++;
      continue;
    }
    if (text.includes(REPLACEMENT)) return 'encoding';
    const header = readHeader(text, line);
    return 'columns' in header ? { header, line: line + 1, rows: following(held, source) } : header;
  }
}

async function* following(first: Uint8Array, source: AsyncIterator<Uint8Array>): AsyncGenerator<Uint8Array> {
  try {
    if (first.length > 0) yield first;
    for (let next = await source.next(); !next.done; next = await source.next()) yield next.value;
  } finally {
    await source.return?.();
  }
}
