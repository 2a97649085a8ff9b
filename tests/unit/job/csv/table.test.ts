import { createReadStream, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RowProblem } from '#job/csv/header.ts';
import { openCanopyTable, type Chunks } from '#job/csv/table.ts';
import { problemSentence } from '#words/en/problems.ts';

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m\n';

interface Row {
  line: number;
  block: string;
  row: number;
  height: number;
  skirt: number;
  width: number;
  density: number;
  lad: number;
  filled: number;
}

async function read(chunks: Chunks): Promise<{ rows: Row[]; problems: RowProblem[] }> {
  const table = await openCanopyTable(chunks);
  if (!table.ok) return { rows: [], problems: [...table.problems] };
  const rows: Row[] = [];
  const problems: RowProblem[] = [];
  for await (const b of table.batches) {
    for (let i = 0; i < b.count; i++)
      rows.push({
        line: b.line[i]!,
        block: b.block[i]!,
        row: b.rowSpacingM[i]!,
        height: b.treeHeightM[i]!,
        skirt: b.skirtHeightM[i]!,
        width: b.canopyWidthM[i]!,
        density: b.usDensityGalPer1000Ft3[i]!,
        lad: b.ladM2PerM3[i]!,
        filled: b.filledFraction[i]!
      });
    problems.push(...b.problems);
  }
  return { rows, problems };
}
const short = ({ line, column, code }: RowProblem): string => `${line} ${column} ${code}`;

describe('rows', () => {
  it('are read with their defaults', async () => {
    const { rows, problems } = await read(['block,canopy_width_m,row_spacing_m,tree_height_m\na,1.5,4,3.25\n']);
    expect(problems).toEqual([]);
    expect(rows).toEqual([{ line: 2, block: 'a', row: 4, height: 3.25, skirt: 0, width: 1.5, density: NaN, lad: NaN, filled: 1 }]);
  });
  it('are read in feet, column by column', async () => {
    const { rows } = await read(['block,row_spacing_ft,tree_height_m,canopy_width_ft,density_gal_per_1000ft3,filled_fraction,lad_m2_per_m3\na,20,4,10,0.85,.9,2\n']);
    // international foot, exact by definition: 20 ft = 6.096 m, 10 ft = 3.048 m
    expect(rows[0]).toMatchObject({ row: 6.096, height: 4, width: 3.048, density: 0.85, filled: 0.9, lad: 2 });
  });
  it.each<[string, string]>([
    ['CRLF', (HEAD + 'a,4,3,0.5,1.5\nb,4,3,0,2\n').replaceAll('\n', '\r\n')],
    ['no line break at the end', HEAD + 'a,4,3,0.5,1.5\nb,4,3,,2'],
    ['a byte order mark', '\uFEFF' + HEAD + 'a,4,3,0.5,1.5\nb,4,3,0,2\n'],
    ['semicolons and decimal commas', (HEAD + 'a|4|3|0,5|1,5\nb|4|3|0|2\n').replace(HEAD, HEAD.replaceAll(',', '|')).replaceAll('|', ';')],
    ['semicolons and decimal points', (HEAD + 'a,4,3,0.5,1.5\nb,4,3,0,2\n').replaceAll(',', ';')],
    ['tabs', (HEAD + 'a,4,3,0.5,1.5\nb,4,3,0,2\n').replaceAll(',', '\t')],
    ['everything quoted', '"block","row_spacing_m","tree_height_m","skirt_height_m","canopy_width_m"\n"a","4","3","0.5","1.5"\n"b","4","3","0","2"\n'],
    ['blanks', ' Block , Row_Spacing_M,tree_height_m,skirt_height_m,canopy_width_m\n a , 4,3 ,0.5, 1.5 \nb,4,3,0,2\n'],
    ['a delimiter at the end of each line', 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,\na,4,3,0.5,1.5,\nb,4,3,0,2,\n'],
    ['NA for what was not measured', HEAD + 'a,4,3,0.5,1.5\nb,4,3,NA,2\n']
  ])('are the same with %s', async (_, text) => {
    const { rows, problems } = await read([text]);
    expect(problems).toEqual([]);
    expect(rows.map((r) => [r.line, r.block, r.row, r.height, r.skirt, r.width])).toEqual([
      [2, 'a', 4, 3, 0.5, 1.5],
      [3, 'b', 4, 3, 0, 2]
    ]);
  });
  it('pass over notes, empty lines and lines of delimiters', async () => {
    const { rows, problems } = await read(['\n\n' + HEAD.replace('\n', ',note_by\n') + 'a,4,3,0.5,1.5,me\n\n,,,,,\n  \nb,4,3,0,2,"you, too"\n']);
    expect(problems).toEqual([]);
    expect(rows.map((r) => [r.line, r.block])).toEqual([
      [4, 'a'],
      [8, 'b']
    ]);
  });
  it('have names with delimiters, quotes and line breaks in quotes, and lines counted through them', async () => {
    const { rows, problems } = await read([HEAD + '"a, b",4,3,0,1\n"c ""d""",4,3,0,1\n"e\nf\r\ng",4,3,0,1\nh 5" i,4,3,0,1\nj,4,3,0,1\n']);
    expect(problems).toEqual([]);
    expect(rows.map((r) => [r.line, r.block])).toEqual([
      [2, 'a, b'],
      [3, 'c "d"'],
      [4, 'e\nf\r\ng'],
      [7, 'h 5" i'],
      [8, 'j']
    ]);
  });
});

describe('bad lines', () => {
  it.each<[string, string, string[], string]>([
    ['a value that is absent', 'a,,3,0,1', ['2 row_spacing_m absent'], ''],
    ['NA where a number must be', 'a,NA,3,0,1', ['2 row_spacing_m absent'], 'NA'],
    ['a name that is absent', ',4,3,0,1', ['2 block absent'], ''],
    ['no number', 'a,4,3,0,wide', ['2 canopy_width_m not-a-number'], 'wide'],
    ['a unit behind the number', 'a,4 m,3,0,1', ['2 row_spacing_m not-a-number'], '4 m'],
    ['too large', 'a,40,3,0,1', ['2 row_spacing_m out-of-range'], '40'],
    ['below nothing', 'a,4,3,-0.1,1', ['2 skirt_height_m out-of-range'], '-0.1'],
    ['an overflow', 'a,4,3,0,1e999', ['2 canopy_width_m out-of-range'], '1e999'],
    ['a skirt as high as the top', 'a,4,3,3.0,1', ['2 skirt_height_m skirt-not-below-top'], '3.0'],
    ['too few fields', 'a,4,3', ['2  field-count'], ''],
    ['too many fields', 'a,4,3,0,1,5', ['2  field-count'], ''],
    ['a decimal comma in a file of commas', 'a,4,3,0,1,5,2', ['2  field-count'], ''],
    ['a very long name', 'n'.repeat(201) + ',4,3,0,1', ['2 block name-too-long'], 'n'.repeat(39) + '…'],
    ['text after a closing quote', '"a"b,4,3,0,1', ['2  bad-quotes'], '"a"b,4,3,0,1'],
    ['a quote left open', '"a,4,3,0,1', ['2  bad-quotes'], '"a,4,3,0,1'],
    ['several at once', 'a,x,300,,', ['2 row_spacing_m not-a-number', '2 tree_height_m out-of-range', '2 canopy_width_m absent'], 'x']
  ])('%s', async (_, line, expected, value) => {
    const { rows, problems } = await read([HEAD + line + '\nsound,4,3,0,1\n']);
    expect(problems.map(short)).toEqual(expected);
    expect(problems[0]!.value).toBe(value);
    for (const p of problems) expect(problemSentence(p)).not.toContain('undefined');
    expect(rows.map((r) => [r.line, r.block])).toEqual([[3, 'sound']]);
  });
  it('tell what is allowed in the unit of their column', async () => {
    const { problems } = await read(['block,row_spacing_ft,tree_height_ft,canopy_width_ft\na,70,10,5\n']);
    expect(problems[0]!.parameters).toEqual({ least: 1.64, most: 65.6, unit: 'ft' });
    expect(problemSentence(problems[0]!)).toBe(
      'Line 2, row_spacing_ft is 70; 1.64 to 65.6 ft is allowed. Check the decimal point, and that it is in feet: 1 m is 3.28 ft.'
    );
  });
  it('that never end are left behind', async () => {
    const long = 'x'.repeat(50_000);
    const { rows, problems } = await read([HEAD, long, long, '\nsound,4,3,0,1\n']);
    expect(problems.map(short)).toEqual(['2  line-too-long']);
    expect(rows.map((r) => r.line)).toEqual([3]);
  });
  it('an open quote costs one line, however long the file', async () => {
    const { rows, problems } = await read([HEAD, '"open,4,3,0,1\n', ...Array<string>(5000).fill('b,4,3,0,1\n')]);
    expect(problems.map(short)).toEqual(['2  bad-quotes']);
    expect(rows).toHaveLength(5000);
  });
});

describe('the header', () => {
  it.each<[string, string, string[]]>([
    ['of an empty file', '', ['1  no-header']],
    ['of an empty file with line breaks', '\n\n', ['3  no-header']],
    ['with an unknown column', HEAD.replace('\n', ',colour\n'), ['1 colour unknown-column']],
    ['with a slip of the pen', HEAD.replace('tree_height_m', 'tree_heigth_m'), ['1 tree_heigth_m unknown-column']],
    ['with both units', HEAD.replace('\n', ',row_spacing_ft\n'), ['1 row_spacing_ft two-units']],
    ['with a column twice', HEAD.replace('\n', ',block\n'), ['1 block duplicate-column']],
    ['without a width', HEAD.replace(',canopy_width_m', ''), ['1 canopy_width_m missing-column']],
    ['without block', HEAD.replace('block,', ''), ['1 block missing-column']],
    ['that never ends', 'x'.repeat(100_000), ['1  line-too-long']]
  ])('%s is refused', async (_, text, expected) => {
    const table = await openCanopyTable([text]);
    if (table.ok) throw new Error('opened');
    expect(table.problems.map(short)).toEqual(expected);
    for (const p of table.problems) expect(problemSentence(p)).not.toContain('undefined');
  });
  it('proposes the column that was meant', async () => {
    const table = await openCanopyTable([HEAD.replace('tree_height_m', 'tree_heigth_m')]);
    expect(table.ok || table.problems[0]!.parameters['nearest']).toBe('tree_height_m');
  });
  it('alone is a table of no rows', async () => expect(await read([HEAD])).toEqual({ rows: [], problems: [] }));
});

describe('a table in pieces', () => {
  const text =
    '\uFEFF' + HEAD + 'à,4,3,0.5,1.5\r\n"b ""x""\r\ny",4,3,,2\r\n\r\nbad,4,x,0,1\r\n"c"d,4,3,0,1\r\n"e, 木",3.81,2.2,0.1,"1.0"\r\n"open,4,3,0,1\r\nlast,4,3,0,1';
  const bytes = new TextEncoder().encode(text);

  it('gives the same rows wherever its bytes are cut in two', async () => {
    const whole = await read([bytes]);
    expect(whole.rows.map((r) => r.block)).toEqual(['à', 'b "x"\r\ny', 'e, 木', 'last']);
    expect(whole.problems.map(short)).toEqual(['6 tree_height_m not-a-number', '7  bad-quotes', '9  bad-quotes']);
    for (let cut = 0; cut <= bytes.length; cut++) expect(await read([bytes.subarray(0, cut), bytes.subarray(cut)])).toEqual(whole);
    expect(await read([...bytes].map((b) => Uint8Array.of(b)))).toEqual(whole);
    expect(await read([...text])).toEqual(whole);
  });

  it('of any sort gives what papaparse gives', () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', ' ', 'é'), maxLength: 6 }).filter((s) => s.trim() !== ''), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 1, max: 30 }),
        async (names, size) => {
          const csv = HEAD + Papa.unparse(names.map((n) => [n, 4, 3, 0, 1]), { newline: '\n' }) + '\n';
          const parts: string[] = [];
          for (let i = 0; i < csv.length; i += size) parts.push(csv.slice(i, i + size));
          const { rows, problems } = await read(parts);
          expect(problems).toEqual([]);
          expect(rows.map((r) => r.block.trim())).toEqual(names.map((n) => n.trim()));
        }
      )
    ));

  it('never throws, whatever is in it', () =>
    fc.assert(
      fc.asyncProperty(fc.array(fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r', '4', '.', '\t', '-', 'é') })), async (parts) => {
        const { problems } = await read([HEAD, ...parts]);
        for (const p of problems) expect(problemSentence(p).length).toBeGreaterThan(10);
      })
    ));
});

describe.each(['sixty-blocks.csv', 'sixty-blocks-us.csv'])('demo-data/%s', (name) => {
  const url = new URL(`../../../../demo-data/${name}`, import.meta.url);
  it('has sixty sound rows, as papaparse reads them', async () => {
    const { rows, problems } = await read(createReadStream(url));
    expect(problems).toEqual([]);
    const other = Papa.parse<Record<string, string>>(readFileSync(url, 'utf8').trim(), { header: true }).data;
    expect(rows).toHaveLength(60);
    expect(rows.map((r) => r.block)).toEqual(other.map((o) => o['block']));
    rows.forEach((r, i) => expect(r.height).toBe('tree_height_m' in other[i]! ? Number(other[i]!['tree_height_m']) : Number(other[i]!['tree_height_ft']) * 0.3048));
  });
});

it('more rows than a batch holds come in order', async () => {
  const n = 10_000;
  const { rows } = await read([HEAD + Array.from({ length: n }, (_, i) => `b${i},4,3,0,${1 + i / n}\n`).join('')]);
  expect(rows).toHaveLength(n);
  expect(rows.every((r, i) => r.block === `b${i}` && r.line === i + 2 && r.width === Number(String(1 + i / n)))).toBe(true);
});
