import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RowProblem } from '#job/csv/header.ts';
import { LONGEST_ROW } from '#job/csv/rows.ts';
import type { Chunks } from '#job/csv/table.ts';
import { readPoints } from '#job/laser/points.ts';
import { problemSentence } from '#words/en/problems.ts';
import { DATA } from '../../measured/stations.ts';

const HEAD = 'lateral_m,along_m,height_m\n';
async function read(chunks: Chunks, most?: number) {
  const told: RowProblem[] = [];
  const r = await readPoints(chunks, (p) => told.push(p), most);
  const points = r.ok ? Array.from(r.points.lateralM, (x, i) => [x, r.points.alongM?.[i] ?? null, r.points.heightM[i]!]) : null;
  return { points, refused: r.ok ? r.refused : null, problems: r.ok ? told : [...told, ...r.problems] };
}
const said = async (text: string): Promise<string[]> => (await read([text])).problems.map(problemSentence);

it('the frame is read as a general reader of tables reads it', async () => {
  const text = readFileSync(new URL('lidar-fuji-frame-every-4th.csv', DATA), 'utf8');
  const theirs = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
  const { points, problems } = await read([text]);
  expect(problems).toEqual([]);
  expect(points).toEqual(theirs.map((r) => [Number(r['lateral_m']), Number(r['along_m']), Number(r['height_m'])]));
});

describe('columns', () => {
  it('stand in any order, in metres or feet, with what scanners add', async () => {
    expect((await read(['note_x;HEIGHT_FT; along_m ;intensity;lateral_m\na;10;2,5;7;-1,5\n'])).points).toEqual([[-1.5, 2.5, 3.048]]);
    expect((await read(['"lateral_m","height_m"\r\n"1","2"\r\n'])).points).toEqual([[1, null, 2]]);
  });
  it('are named where they are wrong', async () => {
    expect(await said('lateral_m,heigth_m\n')).toEqual([
      'Line 1: "heigth_m" is not a column that is known; known are: lateral_m, lateral_ft, along_m, along_ft, height_m, height_ft, intensity, time, ring, return. Did you mean "height_m"?'
    ]);
    expect(await said('lateral_m,lateral_ft,height_m,height_m\n')).toEqual([
      'Line 1: "height_m" stands twice; each column stands once. Remove or rename one of the two.',
      'Line 1: lateral_m, lateral_ft tell the same quantity in two units; one of them is allowed. Remove the other.'
    ]);
    expect(await said('along_m\n')).toHaveLength(2);
    expect(await said('\n\n')).toEqual(['Line 1 has no header line; the names of the columns must stand in the first line. Add them: lateral_m, height_m.']);
  });
});

describe('a line that cannot be used is told, and the others are read', () => {
  const lines = ['1,2,3', 'x,2,3', '1,,3', '1,2', '1,2,3,4', '', '1,2,300', '101,2,x', '4,5,6,', '1,2,\uFFFD', '7,8,9'];
  it('by line, column, value and reason', async () => {
    const { points, refused, problems } = await read([HEAD + lines.join('\n')]);
    expect(points).toEqual([[1, 2, 3], [4, 5, 6], [7, 8, 9]]);
    expect(refused).toBe(7);
    expect(problems.map((p) => `${p.line} ${p.column} ${p.value} ${p.code}`)).toEqual([
      '3 lateral_m x not-a-number', '4 along_m  absent', '5   field-count', '6   field-count', '8 height_m 300 out-of-range',
      '9 lateral_m 101 out-of-range', '9 height_m x not-a-number', '11 height_m \uFFFD not-a-number'
    ]);
  });
  it('alike however the text is cut', async () => {
    const bytes = new TextEncoder().encode('\uFEFF' + HEAD + lines.join('\r\n') + '\r\n');
    const whole = await read([bytes]);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.nat(bytes.length), { maxLength: 8 }), async (cuts) => {
        const at = [0, ...cuts.toSorted((a, b) => a - b), bytes.length];
        expect(await read(at.slice(1).map((to, i) => bytes.subarray(at[i]!, to)))).toEqual(whole);
      })
    );
  });
  it('when it is longer than any row, without being held', async () => {
    const long = 'x'.repeat(LONGEST_ROW);
    const { points, problems } = await read([HEAD, long, long, long, '\n1,2,3\n']);
    expect(points).toEqual([[1, 2, 3]]);
    expect(problems.map((p) => `${p.line} ${p.code}`)).toEqual(['2 line-too-long']);
    expect((await read([long + 'x'])).problems.map((p) => p.code)).toEqual(['line-too-long']);
  });
  it('and reading ends at the most points, with a word', async () => {
    const { points, problems } = await read([HEAD + '1,2,3\n'.repeat(5)], 3);
    expect(points).toHaveLength(3);
    expect(problems.map(problemSentence)).toEqual(['Line 5 and all after it are not read; at most 3 lines are. Thin them out, or split the file.']);
  });
});

it('many points keep their order', async () => {
  const lines = Array.from({ length: 50_000 }, (_, i) => `${(i % 100) / 10},${i},1\n`);
  const { points } = await read([HEAD, ...lines]);
  expect(points).toHaveLength(50_000);
  expect(points!.every((p, i) => p[1] === i)).toBe(true);
});
