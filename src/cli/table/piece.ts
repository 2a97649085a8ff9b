import type { Header } from '#job/csv/header.ts';
import { Rows } from '#job/csv/rows.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { linesOf } from './columns.ts';

/** A piece of a table that ends at the end of a row. */
export interface Piece {
  readonly header: Header;
  /** Line of the file at which it begins. */
  readonly line: number;
  readonly text: string;
}

export interface Done {
  readonly text: string;
  readonly problems: readonly RowProblem[];
}

/** Good rows as output lines, and what is wrong with the others. */
export function workOff({ header, line, text }: Piece): Done {
  let out = '';
  const problems: RowProblem[] = [];
  for (const batch of new Rows(header, line).take(text, true)) {
    out += linesOf(batch);
    problems.push(...batch.problems);
  }
  return { text: out, problems };
}
