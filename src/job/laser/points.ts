import type { LaserPoints } from '#core/canopy/laser/types.ts';
import { rowProblem, type RowCode, type RowProblem } from '../csv/header.ts';
import { parseNumber } from '../csv/number.ts';
import { LONGEST_ROW } from '../csv/rows.ts';
import { textOf, type Chunks } from '../csv/table.ts';
import type { Parameters } from '../problem.ts';
import { COORDINATES, POINT_RANGES, type Coordinate } from './columns.ts';
import { Column } from './column.ts';
import { readPointHeader, type PointHeader } from './header.ts';

/** Points of one file; three numbers each are held at once. */
export const MOST_POINTS = 20_000_000;

/** The points of a table, and how many of its lines were refused; or what is wrong with its header. */
export type PointReading =
  | { readonly ok: true; readonly points: LaserPoints; readonly refused: number }
  | { readonly ok: false; readonly problems: readonly RowProblem[] };

const QUOTE = 34;

/**
 * Reads a table of laser points, one a line, from text or UTF-8 bytes in pieces of any size. A line that is refused is told and the next one
 * read; blank lines are passed over.
 * @param tell hears each refusal, in the order of the file
 */
export async function readPoints(chunks: Chunks, tell: (problem: RowProblem) => void, most = MOST_POINTS): Promise<PointReading> {
  let held = '';
  let line = 0;
  let rows: PointRows | null = null;
  let problems: readonly RowProblem[] = [];
  /** Takes one line; false once nothing more is wanted. */
  const take = (text: string): boolean => {
    line++;
    if (text.length > LONGEST_ROW) {
      const problem = rowProblem(line, '', '', 'line-too-long', { most: LONGEST_ROW });
      if (rows) rows.refuse(problem);
      else problems = [problem];
      return rows !== null;
    }
    const bare = text.endsWith('\r') ? text.slice(0, -1) : text;
    if (bare.trim() === '') return true;
    if (rows) return rows.take(bare, line);
    const header = readPointHeader(bare, line);
    if ('columns' in header) rows = new PointRows(header, tell, most);
    else problems = header;
    return 'columns' in header;
  };
  reading: for await (const piece of textOf(chunks)) {
    held += piece;
    let from = 0;
    for (let end = held.indexOf('\n'); end >= 0; end = held.indexOf('\n', from)) {
      if (!take(held.slice(from, end))) {
        held = '';
        break reading;
      }
      from = end + 1;
    }
    held = held.slice(from);
    // A line without an end is not gathered for ever: what is beyond the longest line is not needed to refuse it.
    if (held.length > LONGEST_ROW) held = held.slice(0, LONGEST_ROW + 1);
  }
  if (held !== '') take(held);
  // The compiler does not see that `take` sets it.
  const done = rows as PointRows | null;
  if (done) return { ok: true, points: done.points, refused: done.refused };
  return { ok: false, problems: problems.length > 0 ? problems : (readPointHeader('', 1) as readonly RowProblem[]) };
}

/** The lines after the header. */
class PointRows {
  refused = 0;
  private readonly kept: Readonly<Record<Coordinate, Column>> = { lateralM: new Column(), alongM: new Column(), heightM: new Column() };
  private readonly values: Record<Coordinate, number> = { lateralM: NaN, alongM: NaN, heightM: NaN };
  private readonly present: readonly Coordinate[];

  constructor(
    private readonly header: PointHeader,
    private readonly tell: (problem: RowProblem) => void,
    private readonly most: number
  ) {
    this.present = COORDINATES.filter((c) => header.columns.some((column) => column?.coordinate === c));
  }

  get points(): LaserPoints {
    const { lateralM, alongM, heightM } = this.kept;
    return { lateralM: lateralM.values, heightM: heightM.values, alongM: this.present.includes('alongM') ? alongM.values : null };
  }

  refuse(...problems: readonly RowProblem[]): void {
    this.refused++;
    for (const p of problems) this.tell(p);
  }

  /** Reads one line. False where no more are wanted. */
  take(text: string, line: number): boolean {
    if (this.kept.lateralM.length >= this.most) {
      this.refuse(rowProblem(line, '', '', 'too-many-lines', { most: this.most }));
      return false;
    }
    const { columns, names, delimiter } = this.header;
    const problems: RowProblem[] = [];
    let count = 0;
    for (let from = 0; from <= text.length; count++) {
      const at = text.indexOf(delimiter, from);
      const end = at < 0 ? text.length : at;
      const column = columns[count];
      if (column) {
        const problem = this.read(text, from, end, column, (code, value, parameters) => rowProblem(line, names[count]!, value, code, parameters));
        if (problem) problems.push(problem);
      }
      // A delimiter at the end of a line makes a field with nothing in it.
      else if (count >= columns.length && text.slice(from, end).trim() === '') count--;
      from = end + 1;
    }
    if (count !== columns.length) this.refuse(rowProblem(line, '', '', 'field-count', { found: count, wanted: columns.length }));
    else if (problems.length > 0) this.refuse(...problems);
    else for (const c of this.present) this.kept[c].push(this.values[c]);
    return true;
  }

  private read(
    text: string,
    from: number,
    to: number,
    { coordinate, factor, unit }: NonNullable<PointHeader['columns'][number]>,
    problem: (code: RowCode, value: string, parameters: Parameters) => RowProblem
  ): RowProblem | null {
    while (from < to && text.charCodeAt(from) === 32) from++;
    while (to > from && text.charCodeAt(to - 1) === 32) to--;
    if (to - from > 1 && text.charCodeAt(from) === QUOTE && text.charCodeAt(to - 1) === QUOTE) {
      from++;
      to--;
    }
    const { least, most } = POINT_RANGES[coordinate];
    const allowed = (): Parameters => ({ least: Number((least / factor).toPrecision(3)), most: Number((most / factor).toPrecision(3)), unit });
    if (from === to) return problem('absent', '', allowed());
    const value = parseNumber(text, from, to, this.header.delimiter !== ',') * factor;
    if (value >= least && value <= most) {
      this.values[coordinate] = value;
      return null;
    }
    return problem(Number.isNaN(value) ? 'not-a-number' : 'out-of-range', text.slice(from, to), allowed());
  }
}
