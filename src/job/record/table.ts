import { NOTE } from '../csv/columns.ts';
import { rowProblem, tooWide, type RowProblem } from '../csv/header.ts';
import { eachLine } from '../csv/lines.ts';
import { parseNumber } from '../csv/number.ts';
import { nearest } from '../nearest.ts';
import { FIELD_COLUMNS, FRAME, isFree, NEEDED, RECORD_COLUMNS } from './columns.ts';
import { unguarded } from '../csv/formulas.ts';

/** A line of the table as a raw record, not yet judged. */
export interface Line {
  readonly line: number;
  readonly raw: Readonly<Record<string, unknown>>;
}

export interface Table {
  readonly lines: readonly Line[];
  readonly problems: readonly RowProblem[];
}

/**
 * Text of a table → raw records with the lines on which they stand, and all that is wrong with the table itself. Columns may stand in any
 * order, delimited by comma, semicolon or tab; with the latter two a decimal comma is read. An empty cell says nothing.
 */
export function readTable(text: string): Table {
  const lines: Line[] = [];
  const problems: RowProblem[] = [];
  let columns: readonly string[] | null = null;
  const wrong = eachLine(text, (cells, line, delimiter) => {
    if (columns === null) {
      columns = header(cells, line, problems);
      return problems.length === 0;
    }
    const raw = record(columns, cells, line, delimiter !== ',', problems);
    if (raw) lines.push({ line, raw });
    return true;
  });
  if (wrong) problems.push(wrong);
  else if (columns === null) problems.push(rowProblem(1, '', '', 'no-header', { columns: NEEDED.join(', ') }));
  return { lines, problems };
}

function header(cells: readonly string[], line: number, problems: RowProblem[]): readonly string[] {
  const names = cells.map((n) => n.trim().toLowerCase());
  while (names.at(-1) === '') names.pop();
  const wide = tooWide(names, line);
  if (wide) return problems.push(wide), names;
  names.forEach((name, i) => {
    if (name.startsWith(NOTE)) return;
    if (!RECORD_COLUMNS.includes(name)) problems.push(rowProblem(line, name, name, 'unknown-column', { known: RECORD_COLUMNS.join(', '), nearest: nearest(name, RECORD_COLUMNS) }));
    else if (names.indexOf(name) < i) problems.push(rowProblem(line, name, name, 'duplicate-column'));
  });
  for (const name of NEEDED) if (!names.includes(name)) problems.push(rowProblem(line, name, '', 'missing-column', { columns: name }));
  return names;
}

function record(columns: readonly string[], cells: readonly string[], line: number, comma: boolean, problems: RowProblem[]): Readonly<Record<string, unknown>> | null {
  const extra = cells.slice(columns.length).some((c) => c.trim() !== '');
  if (cells.length < columns.length || extra) {
    problems.push(rowProblem(line, '', '', 'field-count', { found: cells.length, wanted: columns.length }));
    return null;
  }
  const raw: Record<string, unknown> = {};
  const fields: Record<string, unknown> = {};
  columns.forEach((column, i) => {
    // What people wrote is kept to the last space.
    const cell = isFree(column) ? unguarded(cells[i]!) : cells[i]!.trim();
    if (cell === '' || column.startsWith(NOTE)) return;
    if ((FRAME as readonly string[]).includes(column)) {
      raw[column] = cell;
      return;
    }
    const { field, shape } = FIELD_COLUMNS.get(column)!;
    if (shape.kind !== 'number') {
      fields[field] = cell;
      return;
    }
    const value = parseNumber(cell, 0, cell.length, comma);
    if (Number.isNaN(value)) problems.push(rowProblem(line, column, cell, 'not-a-number', { least: shape.least, most: shape.most, unit: shape.unit }));
    else fields[field] = value;
  });
  return { ...raw, fields };
}
