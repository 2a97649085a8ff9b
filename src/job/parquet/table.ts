import { parquetMetadataAsync, parquetScan, parquetSchema, type AsyncBuffer, type DecodedArray, type FileMetaData, type ParquetScan } from 'hyparquet';
import { compressors } from 'hyparquet-compressors';
import { CanopyBatch } from '../csv/batch.ts';
import { ALL_RANGES, ERROR_QUANTITIES, QUANTITIES } from '../csv/columns.ts';
import { headerOf, rowProblem, type Header, type RowCode, type RowProblem } from '../csv/header.ts';
import { nameFault } from '../csv/name.ts';
import { Rows } from '../csv/rows.ts';
import { shortened, type Parameters } from '../problem.ts';
import { checkPages } from './pages.ts';
import { exactly, holdsOf, type Holds } from './types.ts';

export type { AsyncBuffer };

/** Rows that are decoded at a time, where a row group holds more. */
const WINDOW = 1 << 17;
/** PAR1, as a Parquet file begins and ends. */
const MAGIC = 0x31524150;

/** A table whose columns were understood, with its rows yet to come; or what is wrong with it. */
export type ParquetTable =
  | { readonly ok: true; readonly header: Header; readonly rows: number; readonly batches: AsyncGenerator<CanopyBatch, void, void> }
  | { readonly ok: false; readonly problems: readonly RowProblem[] };

/** Whether bytes are the beginning of a Parquet file. */
export const looksLikeParquet = (bytes: Uint8Array): boolean => bytes.length >= 4 && new DataView(bytes.buffer, bytes.byteOffset, 4).getUint32(0, true) === MAGIC;

/**
 * Opens a table of canopies in a Parquet file: the columns, ranges and refusals of a CSV table, rows counted from one in the place of lines.
 * Columns that no table reads are not decoded. Holds one row group at a time, of a large one a window. A batch is only good until the next
 * is asked for; rows that cannot be decoded are told as one, and those behind them are still read.
 * @param file bytes that are asked for as they are needed; what its `slice` throws is thrown
 */
export async function openParquetTable(file: AsyncBuffer, withErrors = false): Promise<ParquetTable> {
  const refused = (...problems: RowProblem[]): ParquetTable => ({ ok: false, problems });
  const magic = async (from: number): Promise<boolean> => file.byteLength >= 12 && looksLikeParquet(new Uint8Array(await file.slice(from, from + 4)));
  if (!(await magic(0))) return refused(fault('not-parquet'));
  if (!(await magic(file.byteLength - 4))) return refused(fault('cut-off'));
  let metadata: FileMetaData;
  let children;
  try {
    metadata = await parquetMetadataAsync(file, { geoparquet: false });
    ({ children } = parquetSchema(metadata));
  } catch (error) {
    if (isSystem(error)) throw error;
    return refused(fault('damaged', '', '', { why: why(error) }));
  }
  const names = children.map((c) => c.element.name);
  const header = headerOf(names, 0);
  if (!('columns' in header)) return refused(...header.map((p) => ({ ...p, counted: 'rows' as const })));
  const wrong = children.flatMap((child, i) => wrongType(child.element.name, header.columns[i]!, holdsOf(child)));
  if (wrong.length > 0) return refused(...wrong);
  const reader = new Reader(file, metadata, names, children.map((c) => exactly(c.element)), header, withErrors);
  return { ok: true, header, rows: Number(metadata.num_rows), batches: reader.batches() };
}

function wrongType(name: string, column: Header['columns'][number], holds: Holds): RowProblem[] {
  if (column === 'note') return [];
  if (column === 'block' ? holds === 'text' || holds === 'whole' : holds === 'numbers' || holds === 'whole') return [];
  return [fault('column-type', name, typeof holds === 'string' ? (holds === 'text' ? 'text' : 'fractions') : holds.other, { wanted: column === 'block' ? 'name' : 'number' })];
}

const fault = (code: RowCode, column = '', value = '', parameters: Parameters = {}, row = 0): RowProblem => ({ ...rowProblem(row, column, value, code, parameters), counted: 'rows' });
const why = (error: unknown): string => shortened(String(error instanceof Error ? error.message : error)).replace(/\.$/, '');
/** Of the file's own reading, not of what it holds. */
const isSystem = (error: unknown): boolean => (error as NodeJS.ErrnoException | null)?.syscall !== undefined;

interface Cell {
  readonly at: number;
  readonly slot: number;
  readonly factor: number;
  readonly least: number;
  readonly most: number;
  readonly exact: ((v: number) => number) | null;
}

class Reader {
  private readonly batch: CanopyBatch;
  private readonly columns: readonly Float64Array[];
  private readonly cells: readonly Cell[];
  private readonly absent: readonly (number | undefined)[];
  private readonly blockAt: number;
  /** Tells what is wrong with a row, as it tells it of a line. */
  private readonly judge: Rows;

  constructor(
    private readonly file: AsyncBuffer,
    private readonly metadata: FileMetaData,
    private readonly names: readonly string[],
    exact: readonly (((v: number) => number) | null)[],
    header: Header,
    withErrors: boolean
  ) {
    const quantities = withErrors ? [...QUANTITIES, ...ERROR_QUANTITIES] : QUANTITIES;
    this.batch = new CanopyBatch(withErrors);
    this.columns = [...QUANTITIES.map((q) => this.batch[q]), ...(this.batch.errors ? ERROR_QUANTITIES.map((q) => this.batch.errors![q]) : [])];
    this.absent = quantities.map((q) => ALL_RANGES[q].absent);
    this.cells = header.columns.flatMap((c, at): Cell[] => {
      const slot = typeof c === 'string' ? -1 : (quantities as readonly string[]).indexOf(c.quantity);
      if (slot < 0 || typeof c === 'string') return [];
      const { least, most } = ALL_RANGES[c.quantity];
      return [{ at, slot, factor: c.factor, least, most, exact: exact[at]! }];
    });
    this.blockAt = header.columns.indexOf('block');
    const read = [this.blockAt, ...this.cells.map((c) => c.at)];
    this.judge = new Rows({ delimiter: ',', names: read.map((i) => header.names[i]!), columns: read.map((i) => header.columns[i]!) }, 0, withErrors);
  }

  async *batches(): AsyncGenerator<CanopyBatch, void, void> {
    const { file, metadata } = this;
    const columns = [this.blockAt, ...this.cells.map((c) => c.at)].map((i) => this.names[i]!);
    const scan = await parquetScan({ file, metadata, columns, compressors, geoparquet: false, useOffsetIndex: false });
    for (const { rowStart, rowEnd } of scan.ranges) {
      const unsound = await this.unsound(columns, rowStart, rowEnd);
      if (unsound) {
        this.batch.problems.push(unsound);
        yield* this.handOn();
        continue;
      }
      for (let from = rowStart; from < rowEnd; from += WINDOW) {
        const to = Math.min(from + WINDOW, rowEnd);
        const decoded = await this.decoded(scan, columns, from, to);
        if (!Array.isArray(decoded)) this.batch.problems.push(decoded as RowProblem);
        else
          for (let i = 0; i < to - from; i++) {
            this.row(decoded as DecodedArray[], i, from + i + 1);
            if (this.batch.full) yield* this.handOn();
          }
        yield* this.handOn();
      }
    }
  }

  /** Why the row group of these rows cannot hold them; null where it can. */
  private async unsound(columns: readonly string[], rowStart: number, rowEnd: number): Promise<RowProblem | null> {
    const { file, metadata } = this;
    const rows = rowEnd - rowStart;
    let at = 0;
    const group = metadata.row_groups.find((g) => (at += Number(g.num_rows)) === rowEnd && Number(g.num_rows) === rows);
    try {
      for (const name of columns) {
        const data = group?.columns.find((c) => c.meta_data?.path_in_schema[0] === name)?.meta_data;
        if (!data) throw new Error(`column ${name} is not there`);
        const from = Number(data.dictionary_page_offset || data.data_page_offset);
        const length = Number(data.total_compressed_size);
        if (!(from >= 0 && length > 0 && from + length <= file.byteLength)) throw new Error(`column ${name} lies outside the file`);
        checkPages(await file.slice(from, from + length), data, metadata.schema.find((s, i) => i > 0 && s.name === name)!, rows);
      }
      return null;
    } catch (error) {
      if (isSystem(error)) throw error;
      return fault('damaged', '', '', { why: why(error), rows: rows - 1 }, rowStart + 1);
    }
  }

  private *handOn(): Generator<CanopyBatch> {
    if (this.batch.count > 0 || this.batch.problems.length > 0) yield this.batch;
    this.batch.clear();
  }

  /** Columns of some rows, or why there are none. */
  private async decoded(scan: ParquetScan, columns: readonly string[], rowStart: number, rowEnd: number): Promise<DecodedArray[] | RowProblem> {
    try {
      const decoded: DecodedArray[] = [];
      for (const column of columns) {
        const values = await scan.readColumn({ column, rowStart, rowEnd });
        if (values.length !== rowEnd - rowStart) throw new Error(`column ${column} has ${values.length} values`);
        decoded.push(values);
      }
      return decoded;
    } catch (error) {
      if (isSystem(error)) throw error;
      return fault('damaged', '', '', { why: why(error), rows: rowEnd - rowStart - 1 }, rowStart + 1);
    }
  }

  private row(decoded: readonly DecodedArray[], i: number, row: number): void {
    const { batch, columns, cells, absent } = this;
    const n = batch.count;
    let sound = true;
    for (let s = 0; s < columns.length; s++) columns[s]![n] = absent[s] ?? NaN;
    for (let c = 0; c < cells.length; c++) {
      const { slot, factor, least, most, exact } = cells[c]!;
      const written: unknown = decoded[c + 1]![i];
      if (written === null || written === undefined) {
        if (absent[slot] === undefined) sound = false;
        continue;
      }
      const number = Number(written);
      const value = (exact ? exact(number) : number) * factor;
      if (value >= least && value <= most) columns[slot]![n] = value;
      else sound = false;
    }
    const raw: unknown = decoded[0]![i];
    const name = raw === null || raw === undefined ? '' : String(raw);
    if (sound && name.trim() !== '' && batch.skirtHeightM[n]! < batch.treeHeightM[n]! && nameFault(name) === null) {
      batch.block[n] = name;
      batch.line[n] = row;
      batch.count++;
    } else this.refuse(decoded, i, row, name);
  }

  /** What is wrong with a row: as a line of text it is refused in the same words. */
  private refuse(decoded: readonly DecodedArray[], i: number, row: number, name: string): void {
    const wrong: ReturnType<typeof nameFault> = name.trim() === '' ? ['absent', {}] : nameFault(name);
    if (wrong) this.batch.problems.push(fault(wrong[0], 'block', name, wrong[1], row));
    const cells = this.cells.map(({ exact }, c) => {
      const written: unknown = decoded[c + 1]![i];
      return written === null || written === undefined ? '' : String(exact ? exact(Number(written)) : written);
    });
    // The name is told of already, or sound: another stands for it, so that a row of nothing at all is no blank line.
    for (const { problems } of this.judge.one(['x', ...cells].join(','), row)) this.batch.problems.push(...problems.map((p) => ({ ...p, counted: 'rows' as const })));
  }
}
