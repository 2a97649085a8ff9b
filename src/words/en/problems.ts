import { whyNoFormula } from '../strategies/formula.ts';

/** What a sentence is told: a problem of a document or of a row of a table, as the reader reports it. */
export interface ToldProblem {
  readonly code: string;
  /** JSON pointer of the field in a document. */
  readonly path?: string;
  /** Line and column of a table. */
  readonly line?: number;
  /** Rows are counted, not lines; 0 is the whole file. */
  readonly counted?: 'rows';
  readonly column?: string;
  readonly value: string;
  readonly parameters: Readonly<Record<string, number | string>>;
}

type P = Readonly<Record<string, number | string>>;
/** What is said of a field: after its name, `said` with the value that stands there. */
type Sentence = (p: P, value: string) => string;

const figure = (n: number | string | undefined): string => (typeof n === 'number' ? n.toLocaleString('en', { maximumSignificantDigits: 12 }) : String(n));
const UNITS: Readonly<Record<string, string>> = { '1': '', deg: '°', degC: '°C', 'm2/m3': 'm²/m³', 'm3/h': 'm³/h', 'gal/1000 ft3': 'US gal per 1000 ft³' };
const unitOf = (p: P): string => {
  const unit = UNITS[String(p['unit'])] ?? String(p['unit'] ?? '');
  return unit && ' ' + unit;
};
const span = (p: P): string => (p['least'] === undefined ? '' : `${figure(p['least'])} to ${figure(p['most'])}${unitOf(p)}`);
const meant = (p: P): string => (p['nearest'] ? `Did you mean "${p['nearest']}"?` : '');

/** Remedies by unit: most numbers out of range were written in another unit, or with a slipped decimal point. */
const CHECK_UNIT: Readonly<Record<string, string>> = {
  m: 'Check the decimal point, and that it is in metres: 1 ft is 0.3048 m.',
  ft: 'Check the decimal point, and that it is in feet: 1 m is 3.28 ft.',
  bar: 'Check the decimal point, and that it is in bar: 100 psi are 6.9 bar.',
  'km/h': 'Check the decimal point, and that it is in km/h: 1 mph is 1.61 km/h.',
  'L/ha': 'Check the decimal point, and that it is in litres per hectare: 1 US gal/acre is 9.35 L/ha.',
  L: 'Check the decimal point, and that it is in litres: 1 US gal is 3.79 L.',
  'L/min': 'Check the decimal point, and that it is in litres per minute: 1 US gal/min is 3.79 L/min.',
  'm3/h': 'Check the decimal point, and that it is in cubic metres per hour: 1 cfm is 1.70 m³/h.',
  degC: 'Check that it is in degrees Celsius: 77 °F are 25 °C.',
  'm/s': 'Check that it is in metres per second: 1 mph is 0.447 m/s.',
  ha: 'Check the decimal point, and that it is in hectares: 1 acre is 0.405 ha.',
  'm2/m3': 'Check the decimal point, and that it is one-sided leaf area per volume of canopy.',
  'gal/1000 ft3': 'Check the decimal point, and that it is in US gallons per 1000 cubic feet.'
};
const checkUnit = (p: P): string => CHECK_UNIT[String(p['unit'])] ?? 'Check the decimal point and correct it.';

const KINDS: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'text in quotes',
  boolean: 'true or false',
  object: 'an object { … }',
  array: 'a list [ … ]'
};
const wanted = (p: P): string => {
  if (p['choices']) return `one of: ${p['choices']}`;
  const kind = KINDS[String(p['wanted'])] ?? String(p['wanted']);
  return p['least'] === undefined ? kind : `${kind}, ${span(p)}`;
};

const REFERENCES: Readonly<Record<string, string>> = {
  machine: 'machine of this file',
  label: 'label of this file',
  gear: 'gear of the machine',
  position: 'nozzle position of the machine',
  table: 'nozzle table of this file',
  size: 'size of the nozzle table',
  assumption: 'assumption of this program',
  rung: 'rung of the block',
  record: 'record in the file or among those kept here'
};

/** Sentences about a document or a table, by code: what stands there, what is allowed, what to do. */
export const PROBLEM_SENTENCES = {
  'too-large': (p) => `has ${figure(p['length'])} characters; at most ${figure(p['most'])} are read. Split it into several files.`,
  empty: () => 'is empty; a document is expected. Choose another file.',
  'not-json': (p, v) =>
    v
      ? `is not JSON: ${v} cannot stand at line ${p['line']}, column ${p['column']}. Look for a missing comma, quote or bracket just before it.`
      : `is not JSON: it ends too early, at line ${p['line']}, column ${p['column']}. The file may have been cut off; save or send it again.`,
  'too-deep': (p) => `is nested more than ${p['most']} deep; a document never is. This is not a file of this program, or it was damaged.`,
  'too-many-values': (p) => `holds more than ${figure(p['most'])} values. Split it into several files.`,
  'duplicate-key': (p) => `stands twice in the same object, again at line ${p['line']}, column ${p['column']}; a key may stand once. Keep one of them.`,
  'forbidden-key': (p) => `must not be used as a key (line ${p['line']}, column ${p['column']}). Remove it.`,
  'other-format': (p, v) => `is ${v || 'not there'}; only "${p['wanted']}" is read. This file was made by or for another program.`,
  'not-a-version': (p, v) => `is ${v || 'not there'}; a whole number from 1 to ${p['newest']} is expected. Write 1 unless a later program made the file.`,
  'newer-version': (p, v) => `is ${v}; this program reads versions up to ${p['newest']}. The file was made by a newer program: update this one.`,

  missing: (p) => `is missing; ${wanted(p)} is needed. Add it.`,
  'wrong-type': (p, v) => `is ${v}; ${wanted(p)} is needed. ${p['wanted'] === 'number' ? 'Write the figure alone, without quotes.' : 'Write that instead.'}`,
  'not-finite': (p, v) => `is ${v}, too large to be a number; ${span(p)} is allowed. ${checkUnit(p)}`,
  'out-of-range': (p, v) => `is ${v}; ${span(p)} is allowed. ${checkUnit(p)}`,
  'not-whole': (p, v) => `is ${v}; a whole number, ${span(p)}, is needed. Round it.`,
  'too-short': (p, v) => `is ${v}; at least ${p['bound']} character is needed. Write something.`,
  'too-long': (p, v) => `is ${v}, ${figure(p['length'])} characters; at most ${p['bound']} are allowed. Shorten it.`,
  'too-few': (p) => `has ${p['length']} entries; at least ${p['bound']} must stand there. Add what is missing.`,
  'too-many': (p) => `has ${figure(p['length'])} entries; at most ${p['bound']} are allowed. Split it into several.`,
  'not-a-choice': (p, v) => `is ${v}; allowed are: ${p['choices']}. ${meant(p) || 'Choose one of these.'}`,
  'unknown-key': (p) => `is not a field here; known are: ${p['known']}. ${meant(p) || 'Correct or remove it.'}`,
  'not-an-id': (p, v) => `is ${v}, which cannot be an id: 1 to ${p['most']} letters, figures, dots, hyphens or underscores, a letter or a figure first. Rename it.`,
  'not-a-date': (_, v) => `is ${v}; a day of the calendar written as 2031-04-27 is needed. Write it that way.`,
  'not-a-time': (_, v) => `is ${v}; a time of the day written as 07:30 is needed. Write it that way.`,
  'not-a-moment': (_, v) => `is ${v || 'empty'}; a day and time written as 2031-04-27T07:30:00+02:00 is needed. Write it that way.`,
  'unfit-characters': (_, v) => `is ${v}, with tabs or other control characters, or with � for characters that were lost; plain text is needed. Remove them, or save the file again as UTF-8.`,
  'not-plain-text': (_, v) => `is ${v}, with line breaks or control characters; plain text on one line is needed. Remove them.`,

  'duplicate-id': (p, v) => `is ${v}, which entry ${p['first']} of the same list has already; each id stands once. Rename one of the two.`,
  'same-place': (p) =>
    `stands ${figure(p['heightM'])} m high and ${figure(p['offsetM'])} m from the middle, where entry ${p['first']} of the same list stands already; each place is taken once. Move one of the two, or remove it.`,
  'reserved-id': (p, v) => `is ${v}, the id of the built-in table; any other id is allowed. Rename it, or leave the table out and use the built-in one.`,
  'no-such-reference': (p, v) =>
    `is ${v}, but there is no such ${REFERENCES[String(p['kind'])] ?? p['kind']}${p['within'] ? ` "${p['within']}"` : ''}; ` +
    (p['choices'] ? `there are: ${p['choices']}. ${meant(p) || 'Choose one of these, or add it.'}` : 'there are none. Add it, or leave this field out.'),
  'not-rising': (p, v) => `is ${v}, not above the ${figure(p['before'])} of the entry before it; more than ${figure(p['before'])} is needed. Put the entries in rising order.`,
  'least-above-most': (p, v) => `is ${v}, above ${p['mostField']}, which is ${figure(p['most'])}; at most that is allowed. Swap or correct the two.`,

  'bad-formula': (p, v) => `is ${v}, which cannot be worked out. ${whyNoFormula(p)}`,

  'amends-itself': (_, v) => `is ${v}, its own id; a record amends an earlier one. Name the record that it stands for.`,
  'amends-in-circle': (_, v) => `is ${v}, which leads back to this record; amendments lead back to a first record that amends none. Correct one of them.`,
  'amends-other-kind': (p, v) => `is ${v}, a record of kind ${p['other']}; a ${p['kind']} record amends one of its own kind. Name another, or make a new record.`,
  'amendment-without-reason': () => 'is missing; an amendment says why it was made. Add the reason.',
  'reason-without-amendment': (_, v) => `is ${v}, but nothing is amended; a reason belongs to an amendment. Name the record that is amended, or remove the reason.`,
  'other-content': (_, v) => `is ${v}, a record that is here already and says something else; a record once made is never changed. Leave it out, or bring the change as an amendment with an id of its own.`,

  'no-header': (p) => `has no header line; the names of the columns must stand in the first line. Add them: ${p['columns'] ?? 'block, row_spacing_m, tree_height_m, canopy_width_m'}.`,
  'no-rows': () => 'has a header and no line under it. Choose a file with at least one day, or write one.',
  'unknown-column': (p, v) => `: "${v}" is not a column that is known; known are: ${p['known']}. ${meant(p) || 'Rename it, or let it begin with note_ to have it passed over.'}`,
  'duplicate-column': (_, v) => `: "${v}" stands twice; each column stands once. Remove or rename one of the two.`,
  'two-units': (p) => `: ${p['columns']} tell the same quantity in two units; one of them is allowed. Remove the other.`,
  'missing-column': (p) => `is missing; one of ${p['columns']} is needed. Add it to the header and to every line.`,
  'field-count': (p) => `has ${p['found']} fields, the header ${p['wanted']}; as many as in the header are needed. Look for a missing or an extra delimiter, or a decimal comma in a file delimited by commas.`,
  absent: (p) => `is empty; ${p['choices'] ? `one of ${p['choices']}` : p['least'] === undefined ? 'a name' : span(p)} is needed. Fill it in, or remove the line.`,
  'not-a-number': (p, v) => `is ${v}; a number, ${span(p)}, is needed. Write figures alone, without a unit.`,
  'skirt-not-below-top': (p, v) => `is ${v || '0'}, but ${p['heightColumn']} is ${p['height']}; the skirt must be lower than the top. Correct one of the two.`,
  'width-above-top': (p, v) => `is ${v}, but ${p['heightColumn']} is ${p['height']}; above its top a tree has no width. Empty the cell, or correct one of the two.`,
  'name-too-long': (p, v) => `is ${v}, ${figure(p['length'])} characters; at most ${p['most']} are allowed. Shorten it.`,
  'not-utf8': (_, v) => `is ${v}, with bytes that are not UTF-8 text; each � stands for a character that is lost. Save the file again as UTF-8.`,
  'bad-quotes': (_, v) => `(${v}) has a quote that is opened and not closed, or text after a closing quote; a quoted field ends at its second quote. Close it, and write a quote inside a field twice.`,
  'line-too-long': (p) => `is longer than ${figure(p['most'])} characters, the most that is allowed. Check that the file is a table with line breaks.`,
  'unclear-dates': (_, v) => `is ${v}, and no date of the file tells whether day or month comes first; a day of the calendar written as 2031-04-27 is clear. Write dates that way.`,
  'unit-unsaid': (_, v) => `: "${v}" does not say in which unit it is; a name that ends in _c or _f is needed. Rename it, as temperature_c or temperature_f.`,
  'moment-again': (_, v) => `is ${v}, which an earlier line has already; each moment is read once. Remove one of the two.`,
  'min-above-max': (p, v) => `is ${v}, above ${p['mostColumn']}, which is ${p['most']}; the lowest is at most the highest. Swap or correct the two.`,
  'not-parquet': () => 'is no Parquet file: it does not begin as one does. Where it is text, let its name end in .csv; else save it as Parquet again.',
  'cut-off': () => 'is a Parquet file without its end; it may have been cut off. Save or send it again.',
  damaged: (p) => `cannot be read${p['rows'] ? `, nor the ${figure(p['rows'])} rows from there on` : ''}: ${p['why']}. The file is damaged, or written in a way that is not known here; write it again.`,
  'column-type': (p, v) => `is of type ${v}; ${p['wanted'] === 'name' ? 'text, or whole numbers,' : 'numbers'} are needed. Write the column again as ${p['wanted'] === 'name' ? 'text' : 'DOUBLE'}.`,
  'too-many-lines': (p) => `and all after it are not read; at most ${figure(p['most'])} lines are. Thin them out, or split the file.`
} as const satisfies Record<string, Sentence>;

/** `/blocks/0/canopy/heightM` as it is read aloud: blocks[0].canopy.heightM */
function fieldName(path: string): string {
  const steps = path.split('/').slice(1).map((s) => s.replaceAll('~1', '/').replaceAll('~0', '~'));
  return steps.map((s) => (/^\d+$/.test(s) ? `[${s}]` : `.${printable(s)}`)).join('').replace(/^\./, '');
}

/** A key of a foreign file, with what a terminal would obey made visible. */
const printable = (key: string): string =>
  (key.length > 60 ? key.slice(0, 59) + '…' : key).replace(/\p{C}/gu, (c) => '\\u' + (c.codePointAt(0) ?? 0).toString(16).padStart(4, '0'));

/** Where something stands in a table. */
export const placeInTable = (line: number, counted?: 'rows'): string => (line === 0 ? 'The file' : `${counted ? 'Row' : 'Line'} ${line}`);

/** One problem as a sentence or two that name the place, what stands there, what is allowed, and a remedy. */
export const problemSentence = ({ code, path, line, counted, column, value, parameters }: ToldProblem): string => {
  const sentence = (PROBLEM_SENTENCES as Record<string, Sentence>)[code];
  const said = sentence ? sentence(parameters, value) : `is refused (${code}).`;
  const place =
    line === undefined ? fieldName(path ?? '') || 'The file' : placeInTable(line, counted) + (column && !said.startsWith(':') ? `, ${column}` : '');
  return said.startsWith(':') ? place + said : `${place} ${said}`;
};

/** What follows a list of problems that was cut. */
export const moreProblems = (more: number): string => (more > 0 ? `And ${figure(more)} more problem${more === 1 ? '' : 's'}.` : '');
