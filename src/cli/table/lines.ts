import { csvField } from '#job/csv/cell.ts';

/** Longest that a number is written, with its comma. */
const LONGEST_NUMBER = 26;
/** Longest name: as long as the reader lets it be, every character as many bytes as one may have, quoted. */
const LONGEST_NAME = 1024;
const NEWLINE = 10;
const COMMA = 44;

/** Lines of a CSV table as UTF-8, one per canopy, numbers in the shortest form that reads back the same, NaN as an empty cell. */
export class Lines {
  private length = 0;
  /** A plain list: the language writes one as JSON in three quarters of the time of joining it, every number in the same shortest form. */
  private readonly row: number[];
  private readonly longest: number;
  private bytes: Buffer<ArrayBuffer>;

  /**
   * @param width columns of numbers
   * @param room bytes to begin with
   */
  constructor(width: number, room: number) {
    this.row = Array.from({ length: width }, () => 0.5);
    this.longest = LONGEST_NAME + LONGEST_NUMBER * width;
    this.bytes = Buffer.allocUnsafe(Math.max(room, this.longest));
  }

  add(count: number, block: readonly string[], columns: readonly Float64Array[]): void {
    const { row } = this;
    for (let i = 0; i < count; i++) {
      let whole = true;
      for (let c = 0; c < row.length; c++) {
        const v = columns[c]![i]!;
        row[c] = v;
        if (v !== v) whole = false;
      }
      if (this.length + this.longest > this.bytes.length) this.grow();
      const figures = this.length + this.bytes.write(csvField(block[i]!), this.length);
      const text = JSON.stringify(row);
      this.length = figures + this.bytes.write(whole ? text : text.replaceAll('null', ''), figures, 'latin1');
      // The list's brackets stand where a comma and the line's end belong.
      this.bytes[figures] = COMMA;
      this.bytes[this.length - 1] = NEWLINE;
    }
  }

  /** What was written since the last time, as a copy of its own. */
  take(): Uint8Array<ArrayBuffer> {
    const taken = new Uint8Array(this.bytes.subarray(0, this.length));
    this.length = 0;
    return taken;
  }

  private grow(): void {
    const larger = Buffer.allocUnsafe(2 * this.bytes.length);
    this.bytes.copy(larger, 0, 0, this.length);
    this.bytes = larger;
  }
}
