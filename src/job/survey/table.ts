import type { Measured, SurveyTree } from '#core/canopy/survey/types.ts';
import type { WidthAt } from '#core/canopy/types.ts';
import { NOTE } from '../csv/columns.ts';
import { rowProblem, tooWide, type RowCode, type RowProblem } from '../csv/header.ts';
import { eachLine } from '../csv/lines.ts';
import { parseNumber } from '../csv/number.ts';
import { LENGTHS, NAME_LENGTH, RANGES, type Range } from '../limits.ts';
import { nearest } from '../nearest.ts';
import type { Parameters } from '../problem.ts';
import { FACTOR, lengthColumn, TREE_COLUMNS, TREE_RANGES, TREE_TEXTS, WIDTHS_AT, type TreeColumn, type TreeText } from './columns.ts';

/** The trees of a table and the lines that were refused, or what is wrong with the table itself: then there are no trees. */
export interface SurveyReading {
  readonly trees: readonly SurveyTree[];
  /** Lines that were refused. */
  readonly refused: number;
  readonly problems: readonly RowProblem[];
}

const NEEDED = 'height_m, width_m';
const PLAIN_LINE = /^[^\p{Cc}\p{Cs}\uFFFD]*$/u;

/**
 * Reads a table of measured trees, one a line: `height_m`, `width_m` (or `_ft`; or several widths by height, `width_m_at_1.5`), and where
 * known `skirt_m`, `tree`, `row`, `variety`. Columns stand in any order, delimited by comma, semicolon or tab; with the latter two a decimal
 * comma is read. A line that cannot be used is told and left out; the others are still read. Never throws.
 */
export function readSurvey(text: string): SurveyReading {
  const trees: SurveyTree[] = [];
  const problems: RowProblem[] = [];
  let columns: readonly Column[] | null = null;
  let refused = 0;
  const most = LENGTHS.trees[1];
  const wrong = eachLine(text, (cells, line, delimiter) => {
    if (columns === null) {
      columns = header(cells, line, problems);
      return problems.length === 0;
    }
    if (trees.length === most) {
      problems.push(rowProblem(line, '', '', 'too-many-lines', { most }));
      refused++;
      return false;
    }
    const tree = treeOf(columns, cells, line, delimiter !== ',', problems);
    if (tree) trees.push(tree);
    else refused++;
    return true;
  });
  if (wrong) {
    problems.push(wrong);
    refused++;
  } else if (columns === null) problems.push(rowProblem(1, '', '', 'no-header', { columns: NEEDED }));
  return { trees, refused, problems };
}

type Column = TreeColumn | TreeText | null;

function header(cells: readonly string[], line: number, problems: RowProblem[]): readonly Column[] {
  const names = cells.map((n) => n.trim().toLowerCase());
  while (names.at(-1) === '') names.pop();
  const wide = tooWide(names, line);
  if (wide) return problems.push(wide), [];
  const known = [...TREE_COLUMNS, ...WIDTHS_AT];
  const refuse = (name: string, code: RowCode, parameters: Parameters = {}): number => problems.push(rowProblem(line, name, name, code, parameters));
  const columns = names.map((name, i): Column => {
    if (name.startsWith(NOTE)) return null;
    if (names.indexOf(name) < i) refuse(name, 'duplicate-column');
    if ((TREE_TEXTS as readonly string[]).includes(name)) return name as TreeText;
    const column = lengthColumn(name);
    if (!column) refuse(name, 'unknown-column', { known: known.join(', '), nearest: nearest(name, known) });
    return column;
  });
  const lengths = columns.filter((c) => c !== null && typeof c === 'object');
  for (const what of ['height', 'skirt', 'width'] as const) {
    const present = lengths.filter((c) => c.what === what && c.atM === undefined).map((c) => c.name);
    if (new Set(present).size > 1) refuse(present[1]!, 'two-units', { columns: present.join(', ') });
    const meant = problems.some((p) => p.code === 'unknown-column' && String(p.parameters['nearest']).startsWith(what));
    if (what !== 'skirt' && !meant && !lengths.some((c) => c.what === what)) problems.push(rowProblem(line, `${what}_m`, '', 'missing-column', { columns: choices(what) }));
  }
  const heights = lengths.flatMap((c) => (c.atM === undefined ? [] : [c]));
  heights.forEach((c, i) => {
    const earlier = heights.slice(0, i).find((o) => o.atM === c.atM && o.name !== c.name);
    if (earlier) refuse(c.name, 'two-units', { columns: `${earlier.name}, ${c.name}` });
    if (c.atM! > RANGES.profile.heightM.most) refuse(c.name, 'out-of-range', written(RANGES.profile.heightM, c.unit));
  });
  if (heights.length > LENGTHS.profile[1]) refuse(heights[LENGTHS.profile[1]]!.name, 'too-many', { length: heights.length, bound: LENGTHS.profile[1] });
  return columns;
}

const choices = (what: Measured): string => [`${what}_m`, `${what}_ft`, ...(what === 'width' ? WIDTHS_AT : [])].join(', ');

/** A range in the unit of a column. */
function written({ least, most }: Range, unit: 'm' | 'ft'): Parameters {
  const there = (v: number): number => Number((v / FACTOR[unit]).toPrecision(4));
  return { least: there(least), most: there(most), unit };
}

function treeOf(columns: readonly Column[], cells: readonly string[], line: number, comma: boolean, problems: RowProblem[]): SurveyTree | null {
  const before = problems.length;
  const refuse = (column: string, value: string, code: RowCode, parameters: Parameters = {}): number => problems.push(rowProblem(line, column, value, code, parameters));
  if (cells.length < columns.length || cells.slice(columns.length).some((c) => c.trim() !== '')) {
    refuse('', '', 'field-count', { found: cells.length, wanted: columns.length });
    return null;
  }
  const texts: { [K in TreeText]?: string } = {};
  const told: Partial<Record<Measured, { readonly column: TreeColumn; readonly cell: string; readonly m: number }>> = {};
  const profile: WidthAt[] = [];
  const above: { readonly column: TreeColumn; readonly cell: string }[] = [];
  /** A cell with something in it, were it but a number that is refused. */
  const seen = new Set<Measured>();
  columns.forEach((column, i) => {
    const cell = cells[i]!.trim();
    if (column === null || cell === '') return;
    if (typeof column === 'string') {
      if (cell.length > NAME_LENGTH) refuse(column, cell, 'name-too-long', { length: cell.length, most: NAME_LENGTH });
      else if (!PLAIN_LINE.test(cell)) refuse(column, cell, 'unfit-characters');
      else texts[column] = cell;
      return;
    }
    seen.add(column.what);
    // Of several widths, one may be nothing: there the tree has none.
    const range = column.atM === undefined ? TREE_RANGES[column.what] : RANGES.profile.widthM;
    const value = parseNumber(cell, 0, cell.length, comma);
    const m = value * FACTOR[column.unit];
    if (Number.isNaN(value)) refuse(column.name, cell, 'not-a-number', written(range, column.unit));
    else if (m < range.least || m > range.most) refuse(column.name, cell, 'out-of-range', written(range, column.unit));
    else if (column.atM === undefined) told[column.what] = { column, cell, m };
    else {
      profile.push({ heightM: column.atM, widthM: m });
      if (m > 0) above.push({ column, cell });
    }
  });
  for (const what of ['height', 'width'] as const)
    if (!seen.has(what)) refuse(nameOf(columns, what), '', 'absent', what === 'height' ? written(TREE_RANGES.height, 'm') : { choices: choices(what) });
  const { height, skirt, width } = told;
  if (height) {
    const at = { height: height.cell, heightColumn: height.column.name };
    if (skirt && skirt.m >= height.m) refuse(skirt.column.name, skirt.cell, 'skirt-not-below-top', at);
    for (const { column, cell } of above) if (column.atM! > height.m) refuse(column.name, cell, 'width-above-top', at);
  }
  const widest = Math.max(width?.m ?? 0, ...profile.map((p) => p.widthM));
  if (problems.length === before && widest < RANGES.trees.widthM.least) refuse(nameOf(columns, 'width'), '0', 'out-of-range', written(RANGES.trees.widthM, 'm'));
  if (problems.length > before || !height) return null;
  return {
    ...texts,
    heightM: height.m,
    ...(skirt ? { skirtM: skirt.m } : {}),
    ...(width ? { widthM: width.m } : {}),
    ...(profile.length > 0 ? { profile: profile.sort((a, b) => a.heightM - b.heightM) } : {})
  };
}

/** The first column that tells this. */
const nameOf = (columns: readonly Column[], what: Measured): string => columns.find((c): c is TreeColumn => c !== null && typeof c === 'object' && c.what === what)!.name;
