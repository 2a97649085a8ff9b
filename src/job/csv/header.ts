import Papa from 'papaparse';
import { nearest } from '../nearest.ts';
import { shortened, type Parameters } from '../problem.ts';
import { ALL_RANGES, BLOCK, COLUMNS, ERROR_QUANTITIES, NOTE, QUANTITIES, namesOf, type Column } from './columns.ts';

/** Why a table, or a line of it, is refused. Sentences are in `src/words`. */
export const ROW_CODES = [
  'no-header',
  'no-rows',
  'unknown-column',
  'duplicate-column',
  'two-units',
  'missing-column',
  'field-count',
  'absent',
  'not-a-number',
  'out-of-range',
  'skirt-not-below-top',
  'width-above-top',
  'unfit-characters',
  'name-too-long',
  'not-utf8',
  'bad-quotes',
  'line-too-long',
  'too-many-lines',
  'too-many',
  // files that are no text
  'not-parquet',
  'cut-off',
  'damaged',
  'column-type',
  // days and times of a weather file
  'not-a-date',
  'not-a-time',
  'unclear-dates',
  'unit-unsaid',
  'moment-again',
  'min-above-max'
] as const;
export type RowCode = (typeof ROW_CODES)[number];

export interface RowProblem {
  /** Line of the file, counted from one, where the row begins; or the row, where `counted` says so, 0 for the whole file. */
  readonly line: number;
  readonly counted?: 'rows';
  /** Name of the column; empty when the whole line is meant. */
  readonly column: string;
  /** What stands there, shortened to be printed. */
  readonly value: string;
  readonly code: RowCode;
  readonly parameters: Parameters;
}

export const rowProblem = (
  line: number,
  column: string,
  value: string,
  code: RowCode,
  parameters: Parameters = {}
): RowProblem => ({ line, column: shortened(column), value: shortened(value), code, parameters });

/** Columns of any table. The names of thousands would each be compared with all others. */
const MOST_COLUMNS = 500;
/** What is wrong with so many columns; null where there are no more than may be. */
export const tooWide = (names: readonly string[], line: number): RowProblem | null => (names.length > MOST_COLUMNS ? rowProblem(line, '', '', 'too-many', { length: names.length, bound: MOST_COLUMNS }) : null);

export type Delimiter = ',' | ';' | '\t';

export interface Header {
  readonly delimiter: Delimiter;
  readonly names: readonly string[];
  /** What stands in each column: numbers of a quantity, the block's name, or a note that is passed over. */
  readonly columns: readonly (Column | 'block' | 'note')[];
}

/** Reads the first line of a table. Columns may stand in any order; capitals and blanks around a name do not count. */
export function readHeader(text: string, line: number): Header | readonly RowProblem[] {
  const delimiter = delimiterOf(text);
  return headerOf(Papa.parse<string[]>(text, { delimiter, newline: '\n', preview: 1 }).data[0] ?? [], line, delimiter);
}

/** The same of names that were found otherwise. */
export function headerOf(written: readonly string[], line: number, delimiter: Delimiter = ','): Header | readonly RowProblem[] {
  const names = written.map((n) => n.trim().toLowerCase());
  // A delimiter at the end of every line makes a column with nothing in it.
  while (names.length > 0 && names.at(-1) === '') names.pop();
  if (names.length === 0) return [rowProblem(line, '', '', 'no-header')];
  const wide = tooWide(names, line);
  if (wide) return [wide];

  const problems: RowProblem[] = [];
  const columns = names.map((name, i): Column | 'block' | 'note' => {
    if (name.startsWith(NOTE)) return 'note';
    if (names.indexOf(name) < i) problems.push(rowProblem(line, name, name, 'duplicate-column'));
    if (name === BLOCK) return 'block';
    const column = COLUMNS.get(name);
    if (!column) {
      const known = [BLOCK, ...COLUMNS.keys()];
      problems.push(rowProblem(line, name, name, 'unknown-column', { known: known.join(', '), nearest: nearest(name, known) }));
    }
    return column ?? 'note';
  });
  if (!names.includes(BLOCK)) problems.push(rowProblem(line, BLOCK, '', 'missing-column', { columns: BLOCK }));
  for (const quantity of [...QUANTITIES, ...ERROR_QUANTITIES]) {
    const present = namesOf(quantity).filter((name) => names.includes(name));
    if (present.length > 1) problems.push(rowProblem(line, present[1]!, present[1]!, 'two-units', { columns: present.join(', ') }));
    // A column that came out unknown for a slip of the pen is told once, as unknown.
    const meant = problems.some((p) => p.code === 'unknown-column' && namesOf(quantity).includes(String(p.parameters['nearest'])));
    if (present.length === 0 && ALL_RANGES[quantity].absent === undefined && !meant)
      problems.push(rowProblem(line, namesOf(quantity)[0]!, '', 'missing-column', { columns: namesOf(quantity).join(', ') }));
  }
  return problems.length > 0 ? problems : { delimiter, names, columns };
}

/** The one of comma, semicolon and tab that stands most often in the header. */
export function delimiterOf(header: string): Delimiter {
  const bare = header.replace(/"[^"]*"/g, '');
  const count = (d: string): number => bare.split(d).length;
  return ([',', ';', '\t'] as const).reduce((best, d) => (count(d) > count(best) ? d : best));
}
