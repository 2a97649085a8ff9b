import Papa from 'papaparse';
import { NOTE } from '../csv/columns.ts';
import { delimiterOf, rowProblem, tooWide, type Delimiter, type RowProblem } from '../csv/header.ts';
import { nearest } from '../nearest.ts';
import { COORDINATES, PASSED_OVER, POINT_COLUMNS, POINT_RANGES, columnsOf, type PointColumn } from './columns.ts';

export interface PointHeader {
  readonly delimiter: Delimiter;
  readonly names: readonly string[];
  /** What stands in each column; null where it is passed over. */
  readonly columns: readonly (PointColumn | null)[];
}

/** Reads the first line of a table of points. Columns may stand in any order; capitals and blanks around a name do not count. */
export function readPointHeader(text: string, line: number): PointHeader | readonly RowProblem[] {
  const delimiter = delimiterOf(text);
  const names = (Papa.parse<string[]>(text, { delimiter, newline: '\n', preview: 1 }).data[0] ?? []).map((n) => n.trim().toLowerCase());
  while (names.length > 0 && names.at(-1) === '') names.pop();
  const needed = COORDINATES.filter((c) => POINT_RANGES[c].needed);
  if (names.length === 0) return [rowProblem(line, '', '', 'no-header', { columns: needed.map((c) => columnsOf(c)[0]).join(', ') })];
  const wide = tooWide(names, line);
  if (wide) return [wide];

  const problems: RowProblem[] = [];
  const columns = names.map((name, i): PointColumn | null => {
    if (name.startsWith(NOTE) || PASSED_OVER.has(name)) return null;
    if (names.indexOf(name) < i) problems.push(rowProblem(line, name, name, 'duplicate-column'));
    const column = POINT_COLUMNS.get(name);
    const known = [...POINT_COLUMNS.keys(), ...PASSED_OVER];
    if (!column) problems.push(rowProblem(line, name, name, 'unknown-column', { known: known.join(', '), nearest: nearest(name, known) }));
    return column ?? null;
  });
  for (const coordinate of COORDINATES) {
    const present = columnsOf(coordinate).filter((name) => names.includes(name));
    if (present.length > 1) problems.push(rowProblem(line, present[1]!, present[1]!, 'two-units', { columns: present.join(', ') }));
    const meant = problems.some((p) => p.code === 'unknown-column' && columnsOf(coordinate).includes(String(p.parameters['nearest'])));
    if (present.length === 0 && needed.includes(coordinate) && !meant) problems.push(rowProblem(line, columnsOf(coordinate)[0]!, '', 'missing-column', { columns: columnsOf(coordinate).join(', ') }));
  }
  return problems.length > 0 ? problems : { delimiter, names, columns };
}
