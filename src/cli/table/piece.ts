import type { Header } from '#job/csv/header.ts';
import { Rows } from '#job/csv/rows.ts';
import { Lines } from './lines.ts';
import type { Maker, Told } from './maker.ts';

/** A piece of a table that ends at the end of a row. */
export interface Piece {
  readonly header: Header;
  /** Line of the file at which it begins. */
  readonly line: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export interface Done {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly problems: readonly Told[];
}

/** Works pieces off, on whatever thread: good rows as output lines, and what is wrong with the others. */
export function workOff(maker: Maker, withErrors = false): (piece: Piece) => Done {
  // One buffer for all pieces of a thread: what is handed on is a copy.
  const lines = new Lines(maker.names.length, 1 << 20);
  return ({ header, line, bytes }) => {
    const problems: Told[] = [];
    for (const batch of new Rows(header, line, withErrors).take(new TextDecoder().decode(bytes), true)) {
      const { columns, told } = maker.make(batch);
      lines.add(batch.count, batch.block, columns);
      problems.push(...(told.length === 0 ? batch.problems : [...batch.problems, ...told].toSorted((a, b) => a.line - b.line)));
    }
    return { bytes: lines.take(), problems };
  };
}
