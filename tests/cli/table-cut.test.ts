import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutRows, PIECE_BYTES, ROW_BYTES } from '#cli/table/cut.ts';
import { readHeader, type Header } from '#job/csv/header.ts';
import { LONGEST_ROW } from '#job/csv/rows.ts';
import { figures as workOff } from '../support/table.ts';

const HEAD = 'block,row_spacing_m,tree_height_m,canopy_width_m,note_x';
const header = readHeader(HEAD, 1) as Header;

async function* chunked(bytes: Uint8Array, sizes: readonly number[]): AsyncGenerator<Uint8Array> {
  for (let at = 0, i = 0; at < bytes.length; i++) {
    const size = sizes[i % sizes.length]!;
    yield bytes.subarray(at, at + size);
    at += size;
  }
}

async function cuts(text: string | Uint8Array, sizes: readonly number[], delimiter: ',' | ';' | '\t' = ',') {
  const out: { bytes: Uint8Array<ArrayBuffer>; lines: number }[] = [];
  for await (const c of cutRows(chunked(typeof text === 'string' ? Buffer.from(text) : text, sizes), delimiter)) out.push(c);
  return out;
}
const joined = (pieces: readonly { bytes: Uint8Array }[]): Buffer => Buffer.concat(pieces.map((p) => p.bytes));

/** What all pieces give, line numbers counted on as the command does. */
function figures(pieces: readonly { bytes: Uint8Array<ArrayBuffer>; lines: number }[]): { text: string; problems: unknown[] } {
  let line = 2;
  let text = '';
  const problems: unknown[] = [];
  for (const { bytes, lines } of pieces) {
    const done = workOff({ header, line, bytes });
    text += Buffer.from(done.bytes).toString();
    problems.push(...done.problems);
    line += lines;
  }
  return { text, problems };
}

/** Fields that are plain, quoted, quoted over lines, with stray quotes, never closed. */
const NAMES = fc.constantFrom('plain', '"quoted, name"', '"two\nlines"', '"two\r\nlines, ""x"""', '5" stake', 'x"y"', '"open', '"late"r', '" "', '"a" ', ' "b,c"', '""', '"ends\n\n"', 'höhe', '"上\n上"', '"""');
const ROW = fc.tuple(NAMES, NAMES, fc.constantFrom('\n', '\r\n')).map(([a, b, end]) => `${a},4,3,1.5,${b}${end}`);
/** A unit of text that is repeated until it fills pieces; a filler keeps it from coming out even. */
const LONG_TEXT = fc
  .tuple(fc.array(fc.oneof(ROW, fc.string({ unit: fc.constantFrom('"', ',', '\n', 'a', ' ', '\r', '4'), maxLength: 40 })), { minLength: 1, maxLength: 12 }), fc.integer({ min: 0, max: 3 * LONGEST_ROW }), fc.boolean())
  .map(([rows, filler, closed]) => {
    // Rows of no characters and no filler would fill nothing, however often.
    const unit = rows.join('') + (filler > 0 ? `${'n'.repeat(Math.min(filler, 150))},4,3,1,${'z'.repeat(filler)}\n` : '') || '\n';
    return unit.repeat(Math.ceil((2.2 * PIECE_BYTES) / Buffer.byteLength(unit))) + (closed ? '' : 'last,4,3,1,"');
  })
  .filter((t) => t.length < 5 * PIECE_BYTES);
const SIZES = fc.array(fc.integer({ min: 1000, max: 200_000 }), { minLength: 1, maxLength: 5 });

describe('pieces of a table', () => {
  it('joined are what came in, whatever the chunks, and all lines are counted', async () => {
    await fc.assert(
      fc.asyncProperty(LONG_TEXT, SIZES, async (text, sizes) => {
        const pieces = await cuts(text, sizes);
        // No line is longer than a piece here, so nothing is left out.
        expect(joined(pieces).equals(Buffer.from(text))).toBe(true);
        expect(pieces.reduce((n, p) => n + p.lines, 0)).toBe(text.split('\n').length - 1);
        for (const p of pieces.slice(0, -1)) expect(p.bytes.at(-1)).toBe(10);
      }),
      { numRuns: 25 }
    );
  });

  it('give one by one what they give read as one, in figures and in complaints', async () => {
    await fc.assert(
      fc.asyncProperty(LONG_TEXT, SIZES, async (text, sizes) => {
        const apart = figures(await cuts(text, sizes));
        const whole = figures([{ bytes: new Uint8Array(Buffer.from(text)), lines: 0 }]);
        expect(apart.text === whole.text).toBe(true);
        expect(apart.problems).toEqual(whole.problems);
      }),
      { numRuns: 25 }
    );
  });

  it('of short text are the text', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string(), fc.integer({ min: 1, max: 9 }), async (text, size) => {
        expect(joined(await cuts(text, [size])).toString()).toBe(Buffer.from(text).toString());
      })
    );
    expect(await cuts('', [1])).toEqual([]);
  });

  it('take the delimiter of the table: what follows another mark is no quoted field', async () => {
    // With a semicolon the quote after the comma is inside a field; with a comma it would open one over the lines.
    const row = 'a,"b;4;3;1;\n';
    const pieces = await cuts(row.repeat((2 * PIECE_BYTES) / row.length), [65_536], ';');
    expect(pieces.length).toBeGreaterThan(1);
    for (const p of pieces) expect(p.bytes.length % row.length).toBe(0);
  });

  it('do not end inside a quoted field, though it be as long as a row may be', async () => {
    const row = `a,4,3,1,"${'line\n'.repeat(3000)}"\n`;
    expect(row.length).toBeLessThan(LONGEST_ROW);
    const pieces = await cuts(row.repeat(60), [10_000]);
    expect(pieces.length).toBeGreaterThan(2);
    for (const p of pieces) expect(p.bytes.length % row.length).toBe(0);
    expect(figures(pieces).problems).toEqual([]);
  });

  it('are not misled by a quote inside a plain field', async () => {
    const row = 'a",4,3,1,"q\nr"\n';
    for (const p of await cuts(row.repeat((2.5 * PIECE_BYTES) / row.length), [60_000])) expect(p.bytes.length % row.length).toBe(0);
  });

  it('give up a row that is too long where the reader does: after its first line', async () => {
    // The line of a quote that closes the long row then opens one, which the next row closes.
    const rows = `a,4,3,1,"${'line\n'.repeat(4000)}"\nb",4,3,1,${'z'.repeat(15_000)}\n`.repeat(30);
    const whole = figures([{ bytes: new Uint8Array(Buffer.from(rows)), lines: 0 }]);
    for (const size of [65_536, 31_000, 47_000, 90_000]) expect(figures(await cuts(rows, [size]))).toEqual(whole);
  });

  it('of a line without end hold its beginning alone, and the next row whole', async () => {
    const endless = 'x'.repeat(40 * PIECE_BYTES);
    const pieces = await cuts(`a,4,3,1,\n${endless}\nb,4,3,1,\n`, [65_536]);
    expect(joined(pieces).length).toBeLessThan(ROW_BYTES + 2 * PIECE_BYTES);
    const { text, problems } = figures(pieces);
    expect(text.split('\n').map((l) => l.split(',')[0])).toEqual(['a', 'b', '']);
    expect(problems).toMatchObject([{ line: 3, code: 'line-too-long' }]);
  });
});
