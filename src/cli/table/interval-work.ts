import { Rows } from '#job/csv/rows.ts';
import { shortened } from '#job/problem.ts';
import { intervalCli as words } from '#words/en/interval-cli.ts';
import { alone } from './alone.ts';
import { HEADER, Lines } from './columns.ts';
import { intervalCells, intervalHeader } from './interval-columns.ts';
import type { IntervalWish } from './interval-wish.ts';
import type { Done, Piece, Told } from './piece.ts';
import type { Work } from './pool.ts';

/** Draws take most of a millisecond a canopy: small pieces, so that lines come out soon and all threads have work. */
const PIECE_BYTES = 1 << 16;
const DRAWN_PIECE_BYTES = 1 << 13;
const COMMA = 44;
const NEWLINE = '\n';

/** Any of these must stand in the header: without one there is nothing to make an interval of. */
const ERRORS: ReadonlySet<string> = new Set(['heightSeM', 'skirtSeM', 'widthSeM', 'rowSpacingSeM']);

/** The table with the interval of every figure behind the figures. */
export const intervalWork = (wish: IntervalWish): Work => ({
  header: `${HEADER},${intervalHeader(wish)}`,
  here: withIntervals(wish),
  task: { intervals: wish },
  pieceBytes: wish.draws ? DRAWN_PIECE_BYTES : PIECE_BYTES,
  note: words.note,
  lacks: ({ columns }) => (columns.some((c) => typeof c !== 'string' && ERRORS.has(c.quantity)) ? null : words.noErrors)
});

/** Works pieces off, on whatever thread. */
export function withIntervals(wish: IntervalWish): (piece: Piece) => Done {
  const lines = new Lines(0);
  const cells = intervalCells(wish);
  return ({ header, line, bytes }) => {
    const parts: Uint8Array[] = [];
    const problems: Told[] = [];
    for (const batch of new Rows(header, line, true).take(new TextDecoder().decode(bytes), true)) {
      const told: Told[] = [...batch.problems];
      for (let i = 0; i < batch.count; i++) {
        lines.clear();
        lines.add(alone(batch, i));
        const figures = lines.take();
        figures[figures.length - 1] = COMMA;
        const { text, givenUp } = cells(batch, i);
        parts.push(figures, Buffer.from(text + NEWLINE));
        if (givenUp) told.push({ line: batch.line[i]!, text: words.givenUp(batch.line[i]!, shortened(batch.block[i]!)) });
      }
      problems.push(...told.toSorted((a, b) => a.line - b.line));
    }
    return { bytes: new Uint8Array(Buffer.concat(parts)), problems };
  };
}
