/** Columns and paragraphs for a terminal; every character counts one place. */

const GAP = '  ';
export const INDENT = '  ';
const PARAGRAPH = 100;

type Align = 'left' | 'right';

/** Rows in columns, each as wide as its widest cell; no blanks at the end of a line. */
export function columns(rows: readonly (readonly string[])[], align: readonly Align[] = []): string[] {
  const widths: number[] = [];
  for (const row of rows) row.forEach((cell, i) => (widths[i] = Math.max(widths[i] ?? 0, [...cell].length)));
  return rows.map((row) =>
    row
      .map((cell, i) => {
        const blank = ' '.repeat(widths[i]! - [...cell].length);
        return align[i] === 'right' ? blank + cell : cell + blank;
      })
      .join(GAP)
      .trimEnd()
  );
}

/** A paragraph broken at blanks, its further lines hung under the first. */
export function paragraph(text: string, hang = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > PARAGRAPH) {
      lines.push(line);
      line = hang + word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** A heading with its lines under it; nothing where there are none. */
export const section = (heading: string, lines: readonly string[]): string[] => (lines.length === 0 ? [] : ['', heading, ...lines.map((l) => INDENT + l)]);
