import type { Delimiter } from '#job/csv/header.ts';
import { LONGEST_ROW } from '#job/csv/rows.ts';

const NEWLINE = 10;
const QUOTE = 34;

/** Bytes of one piece of work: large enough that handing it over costs little, small enough that memory stays flat. */
export const PIECE_BYTES = 1 << 18;
/** Bytes in which the longest row has room: no character of a text takes more than three for each that is counted. */
export const ROW_BYTES = 3 * LONGEST_ROW;

export interface Cut {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly lines: number;
}

/**
 * Cuts the rows of a table, header left out, into pieces that end where a row ends, so that each can be read alone. Where a row ends is
 * decided as the rows' reader decides it: a line break in a quoted field belongs to the row; a row whose quotes are wrong, or that is too
 * long, ends with its line. The pieces in a row are the bytes that came in, save that of a line longer than a whole piece only the
 * beginning is handed on, which is enough for it to be refused.
 * @param pieceBytes about the size of a piece; larger where a single row, or a chunk that comes in, is
 */
export async function* cutRows(chunks: AsyncIterable<Uint8Array>, delimiter: Delimiter, pieceBytes = PIECE_BYTES): AsyncGenerator<Cut> {
  const code = delimiter.charCodeAt(0);
  let held: Uint8Array[] = [];
  let size = 0;
  let skipping = false;
  for await (const chunk of chunks) {
    const from = skipping ? chunk.indexOf(NEWLINE) : 0;
    if (from < 0) continue;
    skipping = false;
    held.push(chunk.subarray(from));
    size += chunk.length - from;
    if (size < pieceBytes) continue;
    const all = Buffer.concat(held);
    const end = lastRowEnd(all, code);
    if (end > 0) yield cut(all, end);
    // Not one row ends: all is one line, and once there is no room for a row in it, too long.
    skipping = end === 0 && all.length > ROW_BYTES;
    held = [skipping ? all.subarray(0, ROW_BYTES + 1) : all.subarray(end)];
    size = held[0]!.length;
  }
  if (size > 0) yield cut(Buffer.concat(held), size);
}

/** The same bytes in slices of at most so many, for pieces smaller than the chunks that come in. */
export async function* inSlices(chunks: AsyncIterable<Uint8Array>, most: number): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) for (let from = 0; from < chunk.length; from += most) yield chunk.subarray(from, from + most);
}

const cut = (all: Buffer, end: number): Cut => ({ bytes: new Uint8Array(all.subarray(0, end)), lines: countLines(all, end) });

/** Just behind the last row that ends in these bytes; 0 where none does. They begin with a row. */
function lastRowEnd(all: Buffer, delimiter: number): number {
  for (let row = 0; ; ) {
    const quote = all.indexOf(QUOTE, row);
    if (quote < 0) return Math.max(row, all.lastIndexOf(NEWLINE) + 1);
    row = Math.max(row, all.lastIndexOf(NEWLINE, quote) + 1);
    const end = rowEnd(all, row, delimiter);
    if (end === 0) return row;
    row = end;
  }
}

/** Just behind the row that begins at `row`; 0 where that cannot be told from these bytes. */
function rowEnd(all: Buffer, row: number, delimiter: number): number {
  const lineEnd = (): number => all.indexOf(NEWLINE, row) + 1;
  const stop = Math.min(all.length, row + ROW_BYTES);
  const outOfBytes = (): number => (stop < all.length ? lineEnd() : 0);
  let fieldBegins = true;
  for (let i = row; i < stop; i++) {
    const c = all[i]!;
    if (c === NEWLINE) return fits(all, row, i + 1) ? i + 1 : lineEnd();
    if (c === QUOTE && fieldBegins) {
      const close = closing(all, i, stop);
      let next = close + 1;
      while (next < stop && isBlank(all[next]!) && all[next] !== delimiter) next++;
      if (close < 0 || next >= stop) return outOfBytes();
      if (all[next] !== delimiter && all[next] !== NEWLINE) return lineEnd();
      i = next - 1;
    }
    fieldBegins = c === delimiter;
  }
  return outOfBytes();
}

/** Where a quoted field closes; a quote written twice stands for one. -1 where it does not before `stop`. */
function closing(all: Buffer, open: number, stop: number): number {
  for (let i = open + 1; i < stop; i++) {
    if (all[i] !== QUOTE) continue;
    if (all[i + 1] !== QUOTE) return i;
    i++;
  }
  return -1;
}

const isBlank = (c: number): boolean => c === 32 || (c >= 9 && c <= 13 && c !== NEWLINE);

/** The reader counts characters, not bytes. */
const fits = (all: Buffer, from: number, to: number): boolean => to - from <= LONGEST_ROW || all.toString('utf8', from, to).length <= LONGEST_ROW;

function countLines(all: Buffer, end: number): number {
  let lines = 0;
  for (let i = all.indexOf(NEWLINE); i !== -1 && i < end; i = all.indexOf(NEWLINE, i + 1)) lines++;
  return lines;
}
