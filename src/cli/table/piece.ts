import type { Batch } from '#job/csv/batch.ts';
import type { Header, RowProblem } from '#job/csv/header.ts';
import { Rows } from '#job/csv/rows.ts';
import { Lines } from './lines.ts';
import type { Maker, Told } from './maker.ts';
import type { Form } from './wanted.ts';

/** A piece of a text that ends at the end of a row. */
export interface TextPiece {
  readonly header: Header;
  /** Line of the file at which it begins. */
  readonly line: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}
/** Rows that were read already, and what was wrong with others among them. */
export interface ReadPiece {
  readonly batch: Batch;
  readonly problems: readonly RowProblem[];
}
export type Piece = TextPiece | ReadPiece;

/** Rows of a table that is made, as columns: those of numbers one behind the other in one list, NaN an empty cell. */
export interface Rectangle {
  readonly count: number;
  readonly block: readonly string[];
  readonly numbers: Float64Array<ArrayBuffer>;
}

/** Lines of text, or rows as columns, and what is wrong with the others. */
export interface Done {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly rectangles: readonly Rectangle[];
  readonly problems: readonly Told[];
}

/** Works pieces off, on whatever thread. */
export function workOff(maker: Maker, form: Form, withErrors: boolean): (piece: Piece) => Done {
  const width = maker.names.length;
  // One buffer for all pieces of a thread: what is handed on is a copy.
  const lines = new Lines(width, form === 'csv' ? 1 << 20 : 0);
  return (piece) => {
    const problems: Told[] = [];
    const rectangles: Rectangle[] = [];
    for (const batch of batchesOf(piece, withErrors)) {
      const { columns, told } = maker.make(batch);
      if (form === 'csv') lines.add(batch.count, batch.block, columns);
      else if (batch.count > 0) {
        const numbers = new Float64Array(width * batch.count);
        columns.forEach((c, k) => numbers.set(c.subarray(0, batch.count), k * batch.count));
        rectangles.push({ count: batch.count, block: batch.block.slice(0, batch.count), numbers });
      }
      problems.push(...(told.length === 0 ? batch.problems : [...batch.problems, ...told].toSorted((a, b) => a.line - b.line)));
    }
    return { bytes: lines.take(), rectangles, problems };
  };
}

function* batchesOf(piece: Piece, withErrors: boolean): Generator<Batch & { readonly problems: readonly RowProblem[] }> {
  if ('batch' in piece) yield { ...piece.batch, problems: piece.problems };
  else yield* new Rows(piece.header, piece.line, withErrors).take(new TextDecoder().decode(piece.bytes), true);
}

/** What is handed over to another thread instead of being copied. */
export const handedOver = (of: Piece | Done): ArrayBuffer[] =>
  'rectangles' in of ? [of.bytes.buffer, ...of.rectangles.map((r) => r.numbers.buffer)] : 'batch' in of ? [of.batch.line.buffer as ArrayBuffer] : [of.bytes.buffer];
