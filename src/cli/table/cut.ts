const NEWLINE = 10;
const QUOTE = 34;

/** Bytes of one piece of work: large enough that handing it over costs little, small enough that memory stays flat. */
export const PIECE_BYTES = 1 << 18;

/**
 * Cuts a stream of bytes into pieces that end where a row ends: at a line feed outside quotes. A row longer than a piece makes a
 * longer piece, up to `MOST`; from there on it is cut anyway, and the rows' reader refuses what it finds.
 */
export async function* cutRows(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<{ bytes: Uint8Array<ArrayBuffer>; lines: number }> {
  let held: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of chunks) {
    held.push(chunk);
    size += chunk.length;
    if (size < PIECE_BYTES) continue;
    const all = Buffer.concat(held);
    const end = size >= MOST ? all.length : lastRowEnd(all);
    if (end === 0) {
      held = [all];
      continue;
    }
    yield { bytes: new Uint8Array(all.subarray(0, end)), lines: countLines(all, end) };
    held = end < all.length ? [all.subarray(end)] : [];
    size = all.length - end;
  }
  if (size > 0) {
    const all = Buffer.concat(held);
    yield { bytes: new Uint8Array(all), lines: countLines(all, all.length) };
  }
}
const MOST = 256 * PIECE_BYTES;

/** Just behind the last line feed that stands outside quotes; 0 where there is none. Pieces begin outside quotes. */
function lastRowEnd(all: Buffer): number {
  if (all.indexOf(QUOTE) === -1) return all.lastIndexOf(NEWLINE) + 1;
  let end = 0;
  let inside = false;
  for (let i = 0; i < all.length; i++) {
    if (all[i] === QUOTE) inside = !inside;
    else if (all[i] === NEWLINE && !inside) end = i + 1;
  }
  return end;
}

function countLines(all: Buffer, end: number): number {
  let lines = 0;
  for (let i = all.indexOf(NEWLINE); i !== -1 && i < end; i = all.indexOf(NEWLINE, i + 1)) lines++;
  return lines;
}
