import Papa from 'papaparse';
import { delimiterOf, rowProblem, type Delimiter, type RowProblem } from './header.ts';

/**
 * Goes through the lines of a table that is whole in memory, its header among them: blank lines are passed over, and a line is counted
 * where it begins. Ends where `take` says false.
 * @returns what is wrong with the quotes of the line at which it had to end, or null
 */
export function eachLine(text: string, take: (cells: readonly string[], line: number, delimiter: Delimiter) => boolean): RowProblem | null {
  const body = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const start = body.search(/[^\n]/);
  if (start < 0) return null;
  const delimiter = delimiterOf(body.slice(start).split('\n', 1)[0]!);

  let wrong: RowProblem | null = null;
  let at = 0;
  let line = 1;
  Papa.parse<string[]>(body, {
    delimiter,
    newline: '\n',
    step({ data, errors, meta }, parser) {
      const began = line;
      for (let i = body.indexOf('\n', at); i >= 0 && i < meta.cursor; i = body.indexOf('\n', i + 1)) line++;
      at = meta.cursor;
      if (errors.some((e) => e.type === 'Quotes')) {
        // What follows may be inside the open quote: nothing in it can be trusted.
        wrong = rowProblem(began, '', data[0] ?? '', 'bad-quotes');
        return parser.abort();
      }
      if (data.some((cell) => cell.trim() !== '') && !take(data, began, delimiter)) parser.abort();
    }
  });
  return wrong;
}
