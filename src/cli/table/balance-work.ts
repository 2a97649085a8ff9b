import { Rows } from '#job/csv/rows.ts';
import { shortened } from '#job/problem.ts';
import { sprayCli as words } from '#words/en/spray/cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/spray/join.ts';
import { alone } from './alone.ts';
import { BALANCE_HEADER, balanceCells, NO_BALANCE } from './balance-columns.ts';
import { HEADER, Lines } from './columns.ts';
import type { Front } from './front.ts';
import type { Done, Piece, Told } from './piece.ts';
import type { Work } from './pool.ts';

/** Small, since a canopy takes milliseconds: lines come out soon, and all threads have work. */
const PIECE_BYTES = 1 << 13;
const COMMA = 44;
const NEWLINE = '\n';

/** The table with the balance of the spray behind the figures of every canopy. */
export const balanceWork = (front: Front): Work => ({ header: `${HEADER},${BALANCE_HEADER}`, here: withBalance(front), task: { spray: front }, pieceBytes: PIECE_BYTES, note: words.table.note });

/** Works pieces off, on whatever thread. */
export function withBalance(front: Front): (piece: Piece) => Done {
  const lines = new Lines(0);
  return ({ header, line, bytes }) => {
    const parts: Uint8Array[] = [];
    const problems: Told[] = [];
    for (const batch of new Rows(header, line).take(new TextDecoder().decode(bytes), true)) {
      const told: Told[] = [...batch.problems];
      for (let i = 0; i < batch.count; i++) {
        lines.clear();
        lines.add(alone(batch, i));
        const figures = lines.take();
        figures[figures.length - 1] = COMMA;
        const cells = balanceCells(front, batch, i);
        const refused = typeof cells !== 'string';
        parts.push(figures, Buffer.from((refused ? NO_BALANCE : cells) + NEWLINE));
        if (refused) told.push({ line: batch.line[i]!, text: words.table.line(batch.line[i]!, shortened(batch.block[i]!), refusalSentence(cells, 'metric')) });
      }
      problems.push(...told.toSorted((a, b) => a.line - b.line));
    }
    return { bytes: new Uint8Array(Buffer.concat(parts)), problems };
  };
}
