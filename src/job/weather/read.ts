import { LEAST_SHARE, type DayKind, type Weather, type WeatherDay } from '#core/weather/days.ts';
import { rowProblem, tooWide, type RowCode, type RowProblem } from '../csv/header.ts';
import { eachLine } from '../csv/lines.ts';
import { parseNumber } from '../csv/number.ts';
import type { Parameters } from '../problem.ts';
import { WEATHER_NAMES, weatherColumn, type WeatherColumn } from './columns.ts';
import { isoDate, minutesOf, partsOf, writtenDate, type DateOrder, type WrittenDate } from './moment.ts';

/** Air outdoors anywhere. */
const RANGE = { C: { least: -70, most: 60 }, F: { least: -94, most: 140 } } as const;
/** Ten years of quarters of an hour. */
const MOST_LINES = 400_000;
/** Told one by one; the rest is counted. */
const MOST_PROBLEMS = 100;

/** The days of a weather file and the lines that were refused; without days where the file itself cannot be used. */
export interface WeatherReading {
  readonly weather: Weather | null;
  /** Lines that were used, and that were refused. */
  readonly used: number;
  readonly refused: number;
  /** The first of them by name, the rest counted in `more`. */
  readonly problems: readonly RowProblem[];
  readonly more: number;
}

interface Line {
  readonly line: number;
  readonly written: string;
  readonly date: WrittenDate;
  readonly minutes: number | null;
  readonly values: Readonly<Partial<Record<'temperature' | 'least' | 'most' | 'mean', number>>>;
}

/**
 * Reads a weather table: a date and a time, or both in one column, with a temperature; or one line a day with its lowest and highest, or its mean.
 * Names and units of the columns: see `columns.ts`; columns that nothing here needs are passed over, so that a typical year as it is published
 * can be read. Lines before the header (a station's name) are passed over too. A line that cannot be used is told and left out. Never throws.
 */
export function readWeather(text: string): WeatherReading {
  const told: RowProblem[] = [];
  let more = 0;
  const tell = (line: number, column: string, value: string, code: RowCode, parameters: Parameters = {}): void => {
    if (told.length < MOST_PROBLEMS) told.push(rowProblem(line, column, value, code, parameters));
    else more++;
  };
  const lines: Line[] = [];
  let refused = 0;
  let header: Header | null = null;
  let wide: RowProblem | null = null;
  let early: { readonly cells: readonly string[]; readonly line: number } | null = null;
  const wrong = eachLine(text, (cells, line, delimiter) => {
    if (header === null) {
      wide = tooWide(cells, line);
      if (wide) return false;
      header = headerOf(cells);
      early ??= { cells, line };
      // A typical year has its station in the first line; further down a table without a header is none.
      return header !== null || line <= MOST_TITLE_LINES;
    }
    if (lines.length === MOST_LINES) {
      tell(line, '', '', 'too-many-lines', { most: MOST_LINES });
      return false;
    }
    const read = lineOf(header, cells, line, delimiter !== ',', tell);
    if (read) lines.push(read);
    else refused++;
    return true;
  });
  const fail = (...problems: readonly RowProblem[]): WeatherReading => ({ weather: null, used: 0, refused, problems: problems.length > 0 ? problems : told, more });
  const wrongHead = wrong ?? wide;
  if (wrongHead) return fail(wrongHead, ...told);
  if (header === null) return fail(rowProblem(early === null ? 1 : (early as { line: number }).line, '', '', 'no-header', { columns: WEATHER_NAMES }));
  const found = header as Header;
  if (found.fault) return fail(rowProblem((early as unknown as { line: number }).line, found.fault.column, found.fault.column, found.fault.code, found.fault.parameters));

  // A file that was cut off after its header.
  if (lines.length === 0 && refused === 0) return fail(rowProblem((early as unknown as { line: number }).line, '', '', 'no-rows'));

  const order = orderOf(lines);
  if (order === null && lines.length > 0) return fail(rowProblem(lines[0]!.line, found.names[found.at.date ?? found.at.moment ?? 0]!, lines[0]!.written, 'unclear-dates'));
  const days = daysOf(lines, order ?? 'ymd', found, (line, column, value, code) => {
    refused++;
    tell(line, column, value, code);
  });
  const weather = days.size > 0 ? weatherOf(days, found.kind) : null;
  return { weather, used: [...days.values()].reduce((n, d) => n + d.count, 0), refused, problems: told, more };
}

const MOST_TITLE_LINES = 3;

type Field = 'moment' | 'date' | 'time' | 'temperature' | 'least' | 'most' | 'mean';
interface Header {
  readonly names: readonly string[];
  readonly columns: readonly (WeatherColumn | null)[];
  /** Place of each column that is read. */
  readonly at: Readonly<Partial<Record<Field, number>>>;
  readonly kind: DayKind;
  readonly fault: { readonly column: string; readonly code: RowCode; readonly parameters: Parameters } | null;
}

/** The header, or null where this line is none: it must name a day or a temperature. */
function headerOf(cells: readonly string[]): Header | null {
  const names = cells.map((c) => c.trim());
  while (names.at(-1) === '') names.pop();
  const columns = names.map(weatherColumn);
  const at: Partial<Record<Field, number>> = {};
  let twice: string | null = null;
  columns.forEach((column, i) => {
    if (!column) return;
    // `time` alone holds the whole moment in many files.
    if (at[column.what] === undefined) at[column.what] = i;
    else twice ??= names[i]!;
  });
  if (at.date === undefined && at.moment === undefined && at.time !== undefined) {
    at.moment = at.time;
    delete at.time;
  }
  if (at.moment === undefined && at.date === undefined && at.temperature === undefined && at.least === undefined && at.mean === undefined) return null;
  // One heading alone may be the word of a title.
  if (names.length < 2) return null;
  const temperature = (['temperature', 'least', 'most', 'mean'] as const).filter((f) => at[f] !== undefined);
  const kind: DayKind = at.temperature !== undefined ? 'readings' : at.least !== undefined && at.most !== undefined ? 'extremes' : 'mean';
  const unsaid = temperature.find((f) => columns[at[f]!]!.unit === undefined);
  const fault =
    twice !== null ? { column: twice, code: 'duplicate-column' as const, parameters: {} }
    : at.date === undefined && at.moment === undefined ? { column: 'date', code: 'missing-column' as const, parameters: { columns: 'date, datetime' } }
    : temperature.length === 0 || (kind === 'mean' && at.mean === undefined) ? { column: 'temperature_c', code: 'missing-column' as const, parameters: { columns: WEATHER_NAMES } }
    : unsaid !== undefined ? { column: names[at[unsaid]!]!, code: 'unit-unsaid' as const, parameters: {} }
    : null;
  return { names, columns, at, kind, fault };
}

function lineOf(header: Header, cells: readonly string[], line: number, comma: boolean, tell: (line: number, column: string, value: string, code: RowCode, parameters?: Parameters) => void): Line | null {
  const { at, names, columns, kind } = header;
  if (header.fault) return null;
  if (cells.length < names.length) {
    tell(line, '', '', 'field-count', { found: cells.length, wanted: names.length });
    return null;
  }
  const cell = (field: Field): string => (at[field] === undefined ? '' : cells[at[field]]!.trim());
  const name = (field: Field): string => names[at[field] ?? 0]!;
  const [dateText, timeText] = at.moment === undefined ? [cell('date'), cell('time')] : partsOf(cell('moment'));
  const dateField = at.moment === undefined ? 'date' : 'moment';
  // A date column may carry a midnight that says nothing.
  const date = writtenDate(at.moment === undefined ? partsOf(dateText)[0] : dateText);
  if (!date) {
    tell(line, name(dateField), cell(dateField), 'not-a-date');
    return null;
  }
  const minutes = timeText === '' ? null : minutesOf(timeText);
  if (timeText !== '' && minutes === null) {
    tell(line, name(at.time === undefined ? 'moment' : 'time'), timeText, 'not-a-time');
    return null;
  }
  const wanted = kind === 'readings' ? (['temperature'] as const) : kind === 'extremes' ? (['least', 'most'] as const) : (['mean'] as const);
  const values: Partial<Record<'temperature' | 'least' | 'most' | 'mean', number>> = {};
  for (const field of wanted) {
    const unit = columns[at[field]!]!.unit!;
    const range = RANGE[unit];
    const text = cell(field);
    const value = parseNumber(text, 0, text.length, comma);
    const parameters = { ...range, unit: unit === 'C' ? 'degC' : '°F' };
    if (text === '' || text === 'NA') tell(line, name(field), text, 'absent', parameters);
    else if (Number.isNaN(value)) tell(line, name(field), text, 'not-a-number', parameters);
    else if (value < range.least || value > range.most) tell(line, name(field), text, 'out-of-range', parameters);
    else values[field] = unit === 'C' ? value : (value - 32) / 1.8;
    if (values[field] === undefined) return null;
  }
  if (values.least !== undefined && values.least > values.most!) {
    tell(line, name('least'), cell('least'), 'min-above-max', { most: cell('most'), mostColumn: name('most') });
    return null;
  }
  return { line, written: cell(dateField), date, minutes, values };
}

/** The order of day and month in the whole file; null where no date tells it. */
function orderOf(lines: readonly Line[]): DateOrder | null {
  let unclear = false;
  for (const { date } of lines) {
    if (date.order === 'mdy' || date.order === 'dmy') return date.order;
    if (date.order === null) unclear = true;
  }
  return unclear ? null : 'ymd';
}

interface Gathered {
  count: number;
  readonly readings: number[];
  readonly moments: Set<number>;
  extremes?: { readonly leastC: number; readonly mostC: number };
  meanC?: number;
}

function daysOf(lines: readonly Line[], order: DateOrder, header: Header, refuse: (line: number, column: string, value: string, code: RowCode) => void): Map<string, Gathered> {
  const days = new Map<string, Gathered>();
  const dateName = header.names[header.at.date ?? header.at.moment ?? 0]!;
  for (const { line, written, date, minutes, values } of lines) {
    const iso = isoDate(date, order);
    if (iso === null) {
      refuse(line, dateName, written, 'not-a-date');
      continue;
    }
    const day = days.get(iso) ?? { count: 0, readings: [], moments: new Set<number>() };
    // One line a day has no time of its own; the second of the same moment is not read.
    if (day.moments.has(minutes ?? -1)) {
      refuse(line, dateName, written, 'moment-again');
      continue;
    }
    days.set(iso, day);
    day.moments.add(minutes ?? -1);
    day.count++;
    if (values.temperature !== undefined) day.readings.push(values.temperature);
    else if (values.mean !== undefined) day.meanC = values.mean;
    else day.extremes = { leastC: values.least!, mostC: values.most! };
  }
  return days;
}

function weatherOf(days: ReadonlyMap<string, Gathered>, kind: DayKind): Weather {
  const sorted = [...days].sort(([a], [b]) => (a < b ? -1 : 1));
  // What most days have is a full day.
  const counts = new Map<number, number>();
  for (const [, d] of sorted) counts.set(d.readings.length, (counts.get(d.readings.length) ?? 0) + 1);
  const usual = kind === 'readings' ? [...counts].reduce((best, c) => (c[1] > best[1] ? c : best))[0] : 1;
  return {
    kind: kind === 'readings' && usual === 1 ? 'mean' : kind,
    readingsPerDay: usual,
    thin: kind === 'readings' ? sorted.filter(([, d]) => d.readings.length < LEAST_SHARE * usual).map(([iso]) => iso) : [],
    days: sorted.map(([date, d]): WeatherDay => ({
      date,
      temperatures: d.extremes ?? (d.meanC !== undefined ? { meanC: d.meanC } : usual === 1 ? { meanC: d.readings[0]! } : { readings: d.readings })
    }))
  };
}
