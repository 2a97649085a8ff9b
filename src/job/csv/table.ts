import type { CanopyBatch } from './batch.ts';
import { readHeader, rowProblem, type Header, type RowProblem } from './header.ts';
import { LONGEST_ROW, Rows } from './rows.ts';

export type Chunks = AsyncIterable<string | Uint8Array> | Iterable<string | Uint8Array>;

/** A table whose header was understood, with its rows yet to come; or what is wrong with the header. */
export type CanopyTable =
  | { readonly ok: true; readonly header: Header; readonly batches: AsyncGenerator<CanopyBatch, void, void> }
  | { readonly ok: false; readonly problems: readonly RowProblem[] };

/**
 * Opens a table of canopies, one per line, from text or UTF-8 bytes in pieces of any size. Holds one piece and one batch at
 * a time. A batch is only good until the next is asked for.
 */
export async function openCanopyTable(chunks: Chunks): Promise<CanopyTable> {
  const pieces = textOf(chunks);
  let text = '';
  let line = 1;
  let done = false;
  for (;;) {
    const end = text.indexOf('\n');
    if (end < 0 && !done && text.length <= LONGEST_ROW) {
      const piece = await pieces.next();
      done = piece.done === true;
      if (!piece.done) text += piece.value;
      continue;
    }
    const first = end < 0 ? text : text.slice(0, end);
    const rest = end < 0 ? '' : text.slice(end + 1);
    if (first.length > LONGEST_ROW) return { ok: false, problems: [rowProblem(line, '', '', 'line-too-long', { most: LONGEST_ROW })] };
    if (first.trim() === '' && end >= 0) {
      text = rest;
      line++;
      continue;
    }
    const header = readHeader(first.replace(/\r$/, ''), line);
    if (!('columns' in header)) return { ok: false, problems: header };
    return { ok: true, header, batches: batches(new Rows(header, line + 1), rest, pieces) };
  }
}

async function* batches(rows: Rows, rest: string, pieces: AsyncGenerator<string, void, void>): AsyncGenerator<CanopyBatch, void, void> {
  yield* rows.take(rest, false);
  for await (const piece of pieces) yield* rows.take(piece, false);
  yield* rows.take('', true);
}

/** Pieces as text, without the byte order mark, a character cut in two made whole again. */
export async function* textOf(chunks: Chunks): AsyncGenerator<string, void, void> {
  const decoder = new TextDecoder();
  let first = true;
  for await (const chunk of chunks) {
    const text = typeof chunk === 'string' ? chunk : decoder.decode(chunk, { stream: true });
    if (text === '') continue;
    yield first && text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
    first = false;
  }
  const text = decoder.decode();
  if (text !== '') yield text;
}
