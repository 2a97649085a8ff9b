import Papa from 'papaparse';
import { CanopyBatch } from './batch.ts';
import { ALL_RANGES, ERROR_QUANTITIES, QUANTITIES, ROW_RANGES, type Column } from './columns.ts';
import { rowProblem, type Header, type RowCode } from './header.ts';
import { nameFault } from './name.ts';
import { parseNumber } from './number.ts';
import type { Parameters } from '../problem.ts';

/** Characters of one row; more than any real one, so that a quote left open cannot swallow a file. */
export const LONGEST_ROW = 16_384;
const QUOTE = 34;
const CARRIAGE_RETURN = 13;

const SLOTS = QUANTITIES.map((q) => ROW_RANGES[q]);
const ALL = [...QUANTITIES, ...ERROR_QUANTITIES];
const ALL_SLOTS = ALL.map((q) => ALL_RANGES[q]);
const HEIGHT = QUANTITIES.indexOf('treeHeightM');
const SKIRT = QUANTITIES.indexOf('skirtHeightM');

/** A column of numbers, as the rows need it. */
interface Cell extends Column {
  readonly at: number;
  readonly slot: number;
}

/**
 * Text of a table after its header → rows, whatever way the text is cut. A plain line is read where it stands, number by
 * number; a line with more than plain quotes goes to papaparse.
 */
export class Rows {
  private readonly batch: CanopyBatch;
  private readonly slots: typeof ALL_SLOTS;
  private readonly delimiter: string;
  private readonly delimiterCode: number;
  private readonly comma: boolean;
  private readonly fields: number;
  private readonly blockAt: number;
  private readonly cells: readonly Cell[];
  private readonly values: Float64Array;
  private readonly columns: readonly Float64Array[];
  /** Where the fields of the row begin and end in its text. */
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private text = '';
  /** Inside a line that is too long, up to its end. */
  private skipping = false;

  constructor(
    private readonly header: Header,
    /** Line of the file at which the next row begins, counted from one. */
    private line: number,
    /** Whether the columns of errors are read too; they are passed over otherwise. */
    withErrors = false
  ) {
    this.batch = new CanopyBatch(withErrors);
    this.slots = withErrors ? ALL_SLOTS : SLOTS;
    this.delimiter = header.delimiter;
    this.delimiterCode = header.delimiter.charCodeAt(0);
    this.comma = header.delimiter !== ',';
    this.fields = header.columns.length;
    this.blockAt = header.columns.indexOf('block');
    this.cells = header.columns.flatMap((c, at) =>
      typeof c === 'string' || ALL.indexOf(c.quantity) >= this.slots.length ? [] : [{ ...c, at, slot: ALL.indexOf(c.quantity) }]
    );
    this.values = new Float64Array(this.slots.length);
    this.columns = [...QUANTITIES.map((q) => this.batch[q]), ...(this.batch.errors ? ERROR_QUANTITIES.map((q) => this.batch.errors![q]) : [])];
    this.from = new Int32Array(this.fields);
    this.to = new Int32Array(this.fields);
  }

  /** Takes the next piece of text, the last when `final`, and hands on the rows in it, batch by batch. */
  *take(piece: string, final: boolean): Generator<CanopyBatch> {
    const text = this.text + piece;
    let at = 0;
    while (at < text.length) {
      const next = this.row(text, at, final);
      if (next === at) break;
      at = next;
      if (this.batch.full) yield* this.handOn();
    }
    this.text = text.slice(at);
    yield* this.handOn();
  }

  /** Judges one row by itself, whatever came before it. */
  *one(text: string, line: number): Generator<CanopyBatch> {
    this.line = line;
    yield* this.take(text, true);
  }

  private *handOn(): Generator<CanopyBatch> {
    if (this.batch.count > 0 || this.batch.problems.length > 0) yield this.batch;
    this.batch.clear();
  }

  /** Reads the row that begins at `at`. Where the next one begins; `at` itself when its end has not come yet. */
  private row(text: string, at: number, final: boolean): number {
    const end = text.indexOf('\n', at);
    if (this.skipping || (end < 0 ? text.length : end) - at > LONGEST_ROW) return this.skip(text, end);
    if (end < 0 && !final) return at;
    const stop = end < 0 ? text.length : end;
    const next = end < 0 ? text.length : end + 1;
    const last = text.charCodeAt(stop - 1) === CARRIAGE_RETURN && stop > at ? stop - 1 : stop;
    const count = this.split(text, at, last);
    if (count < 0) return this.quoted(text, at, next, final);
    this.judge(text, count);
    this.line++;
    return next;
  }

  private skip(text: string, end: number): number {
    if (!this.skipping) this.refuse('', '', 'line-too-long', { most: LONGEST_ROW });
    this.skipping = end < 0;
    if (this.skipping) return text.length;
    this.line++;
    return end + 1;
  }

  /** Finds the fields of a line. How many there are, or -1 when its quotes are more than a pair around a whole field. */
  private split(text: string, at: number, stop: number): number {
    const { from, to, fields, delimiterCode } = this;
    let count = 0;
    for (let i = at; ; i++) {
      let begin = i;
      let end: number;
      if (text.charCodeAt(i) === QUOTE) {
        end = text.indexOf('"', ++begin);
        if (end < 0 || end >= stop) return -1;
        i = end + 1;
        if (i < stop && text.charCodeAt(i) !== delimiterCode) return -1;
      } else {
        while (i < stop && text.charCodeAt(i) !== delimiterCode) i++;
        end = i;
        // blanks around a plain field do not count
        while (begin < end && text.charCodeAt(begin) === 32) begin++;
        while (end > begin && text.charCodeAt(end - 1) === 32) end--;
        if (begin < end && text.charCodeAt(begin) === QUOTE) return -1;
      }
      if (count < fields) {
        from[count] = begin;
        to[count] = end;
        count++;
      } else if (end > begin) count++;
      if (i >= stop) return count;
    }
  }

  /** A row with quotes inside quotes, or with line breaks inside them. */
  private quoted(text: string, at: number, nextLine: number, final: boolean): number {
    const piece = text.slice(at, at + LONGEST_ROW);
    const whole = final || piece.length === LONGEST_ROW;
    const { data, meta, errors } = Papa.parse<string[]>(piece, { delimiter: this.delimiter, newline: '\n', preview: 1 });
    const ended = errors.length === 0 && (piece[meta.cursor - 1] === '\n' || (final && at + meta.cursor === text.length));
    if (!ended) {
      if (!whole) return at;
      // Only this line is given up: the next may be sound.
      this.refuse('', text.slice(at, nextLine).trim(), 'bad-quotes');
      this.line++;
      return nextLine;
    }
    const fields = data[0]!.map((f) => f.trim());
    let joined = '';
    let count = 0;
    for (const field of fields) {
      if (count < this.fields) {
        this.from[count] = joined.length;
        this.to[count] = joined.length + field.length;
        count++;
      } else if (field !== '') count++;
      joined += field;
    }
    this.judge(joined, count);
    for (let i = text.indexOf('\n', at); i >= 0 && i < at + meta.cursor; i = text.indexOf('\n', i + 1)) this.line++;
    if (text.charCodeAt(at + meta.cursor - 1) !== 10) this.line++;
    return at + meta.cursor;
  }

  /** Turns the fields of a row into numbers and keeps it, or tells all that is wrong with it. */
  private judge(text: string, count: number): void {
    const { from, to, values, batch, slots } = this;
    if (count !== this.fields) {
      if (count > 1 || to[0]! > from[0]!) this.refuse('', '', 'field-count', { found: count, wanted: this.fields });
      return;
    }
    const before = batch.problems.length;
    for (let s = 0; s < slots.length; s++) values[s] = slots[s]!.absent ?? NaN;
    for (const cell of this.cells) {
      const a = from[cell.at]!;
      const b = to[cell.at]!;
      if (a === b) continue;
      const written = parseNumber(text, a, b, this.comma);
      const value = written * cell.factor;
      const { least, most } = slots[cell.slot]!;
      if (value >= least && value <= most) values[cell.slot] = value;
      else this.misread(text.slice(a, b), cell, value);
    }
    const nameFrom = from[this.blockAt]!;
    const nameTo = to[this.blockAt]!;
    if (nameFrom === nameTo || values[0] !== values[0] || values[1] !== values[1] || values[3] !== values[3]) {
      if (this.blank()) return;
      this.absent();
    }
    const name = text.slice(nameFrom, nameTo);
    const fault = nameFault(name);
    if (fault) this.refuse('block', name, ...fault);
    // NaN passes here: it has been told already
    if (values[HEIGHT]! <= values[SKIRT]!) this.skirt(text);
    if (batch.problems.length > before) return;

    const n = batch.count++;
    batch.block[n] = name;
    batch.line[n] = this.line;
    for (let s = 0; s < slots.length; s++) this.columns[s]![n] = values[s]!;
  }

  private blank(): boolean {
    for (let i = 0; i < this.fields; i++) if (this.to[i]! > this.from[i]!) return false;
    return true;
  }

  private absent(): void {
    if (this.from[this.blockAt] === this.to[this.blockAt]) this.refuse('block', '', 'absent', {});
    for (const { at, slot } of this.cells)
      if (this.slots[slot]!.absent === undefined && this.from[at] === this.to[at]) this.refuse(this.header.names[at]!, '', 'absent', this.range(at));
  }

  private misread(value: string, { at, slot }: Cell, number: number): void {
    // As statistics programs write what was not measured.
    if (value === 'NA') {
      if (this.slots[slot]!.absent === undefined) this.refuse(this.header.names[at]!, value, 'absent', this.range(at));
      return;
    }
    this.refuse(this.header.names[at]!, value, Number.isNaN(number) ? 'not-a-number' : 'out-of-range', this.range(at));
  }

  private skirt(text: string): void {
    const written = (slot: number): { name: string; value: string } => {
      const cell = this.cells.find((c) => c.slot === slot);
      return { name: cell ? this.header.names[cell.at]! : '', value: cell ? text.slice(this.from[cell.at], this.to[cell.at]) : '' };
    };
    const skirt = written(SKIRT);
    const height = written(HEIGHT);
    this.refuse(skirt.name, skirt.value, 'skirt-not-below-top', { height: height.value, heightColumn: height.name });
  }

  /** What a column may hold, in its own unit. */
  private range(at: number): Parameters {
    const column = this.header.columns[at] as Column;
    const { least, most } = ALL_RANGES[column.quantity];
    const shown = (v: number): number => Number((v / column.factor).toPrecision(3));
    return { least: shown(least), most: shown(most), unit: column.unit };
  }

  private refuse(column: string, value: string, code: RowCode, parameters: Parameters = {}): void {
    this.batch.problems.push(rowProblem(this.line, column, value, code, parameters));
  }
}
