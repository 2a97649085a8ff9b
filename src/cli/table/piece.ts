import type { Header, RowProblem } from '#job/csv/header.ts';
import { Rows } from '#job/csv/rows.ts';
import { Lines } from './columns.ts';

/** A piece of a table that ends at the end of a row. */
export interface Piece {
  readonly header: Header;
  /** Line of the file at which it begins. */
  readonly line: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** What is wrong with a row: a code of the reader, or a sentence of what else has looked at it. */
export type Told = RowProblem | { readonly line: number; readonly text: string };

export interface Done {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly problems: readonly Told[];
}

/** One buffer for all pieces of a thread: what is handed on is a copy. */
const lines = new Lines(1 << 21);

/** Good rows as output lines, and what is wrong with the others. */
export function workOff({ header, line, bytes }: Piece): Done {
  lines.clear();
  const problems: RowProblem[] = [];
  for (const batch of new Rows(header, line).take(new TextDecoder().decode(bytes), true)) {
    lines.add(batch);
    problems.push(...batch.problems);
  }
  return { bytes: lines.take(), problems };
}
