import { expect, it } from 'vitest';
import { LONGEST_ROW } from '#job/csv/rows.ts';
import { records, rowtailor } from '../support/command.ts';

const LINES = 6000;
/** One line in a hundred is bad. */
const EVERY = 100;
const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,filled_fraction\n';

/** Each kind of bad line, what is told of its place and value, and the remedy. */
const KINDS: readonly (readonly [line: (name: string) => string, place: string, value: string, remedy: string])[] = [
  [(n) => `${n},4,tall,0.5,1.2,1`, ', tree_height_m ', 'is tall; a number, 0.2 to 20 m, is needed.', 'Write figures alone, without a unit.'],
  [(n) => `${n},4,,0.5,1.2,1`, ', tree_height_m ', 'is empty; 0.2 to 20 m is needed.', 'Fill it in, or remove the line.'],
  [(n) => `${n},4,3,0.5,120,1`, ', canopy_width_m ', 'is 120; 0.1 to 12 m is allowed.', 'Check the decimal point, and that it is in metres'],
  [(n) => `${n},4,3,3.5,1.2,1`, ', skirt_height_m ', 'is 3.5, but tree_height_m is 3; the skirt must be lower than the top.', 'Correct one of the two.'],
  [(n) => `${n},NaN,3,0.5,1.2,1`, ', row_spacing_m ', 'is NaN; a number, 0.5 to 20 m, is needed.', 'Write figures alone'],
  [(n) => `${n},4,3,0.5,Infinity,1`, ', canopy_width_m ', 'is Infinity; a number, 0.1 to 12 m, is needed.', 'Write figures alone'],
  [(n) => `${n},4,3,0.5,"1,2",1`, ', canopy_width_m ', 'is 1,2; a number, 0.1 to 12 m, is needed.', 'Write figures alone'],
  [(n) => `${n},4,3,0.5,1.2,1,7,8`, ' ', 'has 8 fields, the header 6; as many as in the header are needed.', 'Look for a missing or an extra delimiter, or a decimal comma'],
  [(n) => `${n},4,3`, ' ', 'has 3 fields, the header 6; as many as in the header are needed.', 'Look for a missing or an extra delimiter'],
  [(n) => `"${n},4,3,0.5,1.2,1`, ' ', 'has a quote that is opened and not closed', 'Close it, and write a quote inside a field twice.'],
  [(n) => `${n},4,3,0.5,1.2,1${'9'.repeat(LONGEST_ROW)}`, ' ', 'is longer than 16,384 characters, the most that is allowed.', 'Check that the file is a table with line breaks.'],
  [(n) => `${n}\u0007,4,3,0.5,1.2,1`, ', block ', '\\u0007, with tabs or other control characters', 'Remove them, or save the file again as UTF-8.'],
  [(n) => `${n}\u202E,4,3,0.5,1.2,1`, ', block ', '\\u202e, with tabs or other control characters', 'Remove them, or save the file again as UTF-8.'],
  [(n) => `${n}\u0000,4,3,0.5,1.2,1`, ', block ', '\\u0000, with tabs or other control characters', 'Remove them'],
  [() => `,4,3,0.5,1.2,1`, ', block ', 'is empty; a name is needed.', 'Fill it in, or remove the line.']
];

it(`${LINES} lines, one in a hundred bad in one of ${KINDS.length} ways: each is told with line, column and remedy, and all the others are there and right`, async () => {
  const good = (i: number): string => `b${i},${(3 + (i % 31) / 10).toFixed(1)},${(2 + (i % 23) / 10).toFixed(1)},0.5,${(1 + (i % 11) / 10).toFixed(1)},${(0.8 + (i % 20) / 100).toFixed(2)}`;
  const bad = (i: number): boolean => i % EVERY === 41;
  const kind = (i: number) => KINDS[((i - 41) / EVERY) % KINDS.length]!;
  let text = HEAD;
  for (let i = 0; i < LINES; i++) text += `${bad(i) ? kind(i)[0](`bad${i}`) : good(i)}\n`;
  const { code, out, err } = await rowtailor(['table', '-', '--threads', '2'], text);
  expect(code).toBe(1);

  const told = err.trimEnd().split('\n');
  const wrong = Array.from({ length: LINES }, (_, i) => i).filter(bad);
  expect(wrong.length).toBeGreaterThanOrEqual(4 * KINDS.length);
  expect(told).toHaveLength(wrong.length);
  wrong.forEach((i, n) => {
    const [, place, value, remedy] = kind(i);
    expect(told[n]!.startsWith(`Line ${i + 2}${place}`), told[n]).toBe(true);
    expect(told[n]).toContain(value);
    expect(told[n]).toContain(remedy);
    // Nothing that a terminal would obey comes through.
    expect(told[n]).not.toMatch(/[\u0000-\u001f\u202a-\u202e]/);
  });

  const rows = records(out);
  const right = Array.from({ length: LINES }, (_, i) => i).filter((i) => !bad(i));
  expect(rows.map((r) => r['block'])).toEqual(right.map((i) => `b${i}`));
  rows.forEach((row, n) => {
    const [, R, H, , W, f] = good(right[n]!).split(',').map(Number);
    // By hand: 10 000 · H · W · f / R.
    expect(Math.abs(Number(row['trv_ground_m3_per_ha']) / ((10000 * H! * W! * f!) / R!) - 1)).toBeLessThan(1e-12);
    expect(Math.abs(Number(row['row_length_m_per_ha']) * R! - 10000)).toBeLessThan(1e-8);
  });
});
