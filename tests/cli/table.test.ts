import { mkdir, mkdtemp, readFile, rm, stat, symlink, writeFile, link } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PIECE_BYTES } from '#cli/table/cut.ts';
import { LONGEST_ROW } from '#job/csv/rows.ts';
import { records, ROOT, rowtailor, shell } from '../support/command.ts';

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m\n';
const SIXTY = 'demo-data/sixty-blocks.csv';

let scratch = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
});
afterAll(() => rm(scratch, { recursive: true }));
const file = async (name: string, content: string | Uint8Array): Promise<string> => {
  const path = join(scratch, name);
  await writeFile(path, content);
  return path;
};
const there = (path: string): Promise<boolean> => stat(path).then(() => true, () => false);

const table = (text: string | Uint8Array) => rowtailor(['table', '-'], text);
const blocks = (out: string): string[] => records(out).map((r) => r['block']!);

describe('figures', () => {
  it('of the sixty demo blocks', async () => {
    const { code, out, err } = await rowtailor(['table', SIXTY]);
    expect([code, err]).toEqual([0, '']);
    expect(records(out)).toHaveLength(60);
    await expect(out).toMatchFileSnapshot('golden/sixty-blocks.csv');
  });

  it('are the same for the same canopy in feet', async () => {
    // Whole feet, so that the metres written out are exact: 1 ft is 0.3048 m.
    const feet = [[20, 16, 2, 10, '', ''], [13, 9.5, 1.5, 5.5, 0.9, 0.95], [35, 20, 0, 23, 1, '']] as const;
    const inFeet = feet.map(([r, h, s, w, k, f], i) => `b${i},${r},${h},${s},${w},${k},${f}\n`).join('');
    const m = (v: number): string => ((v * 3048) / 10000).toFixed(4);
    const inMetres = feet.map(([r, h, s, w, k, f], i) => `b${i},${m(r)},${m(h)},${m(s)},${m(w)},${k},${f}\n`).join('');
    const head = (u: string): string => `block,row_spacing_${u},tree_height_${u},skirt_height_${u},canopy_width_${u},density_gal_per_1000ft3,filled_fraction\n`;
    const [us, si] = [records((await table(head('ft') + inFeet)).out), records((await table(head('m') + inMetres)).out)];
    expect(us).toHaveLength(3);
    us.forEach((row, i) => {
      for (const [column, value] of Object.entries(row))
        if (column === 'block') expect(value).toBe(si[i]![column]);
        else expect(Math.abs(Number(value) / Number(si[i]![column]) - 1), column).toBeLessThan(1e-9);
    });
  });

  it('of the demo in feet agree where the two files hold the same canopy, and are written for all sixty', async () => {
    const { code, out } = await rowtailor(['table', 'demo-data/sixty-blocks-us.csv']);
    expect(code).toBe(0);
    const us = records(out);
    const si = records((await rowtailor(['table', SIXTY])).out);
    expect(us.map((r) => r['block'])).toEqual(si.map((r) => r['block']));
    const inputs = async (name: string) => records(await readFile(join(ROOT, 'demo-data', name), 'utf8'));
    const [ft, m] = [await inputs('sixty-blocks-us.csv'), await inputs('sixty-blocks.csv')];
    // The files are rounded apart, to half a foot and to a centimetre: height × width / row may part by the roundings of the three, not by more.
    us.forEach((row, i) => {
      const off = ['tree_height', 'canopy_width', 'row_spacing'].map((c) => Math.abs((Number(ft[i]![`${c}_ft`]) * 0.3048) / Number(m[i]![`${c}_m`]) - 1));
      const most = (1 + off[0]!) * (1 + off[1]!) / (1 - off[2]!) - 1;
      const parted = Math.abs(Number(row['trv_ground_m3_per_ha']) / Number(si[i]!['trv_ground_m3_per_ha']) - 1);
      expect(parted, row['block']).toBeLessThanOrEqual(most + 1e-9);
    });
  });

  it('are those that extension services published for canopies in feet', async () => {
    const { code, out } = await table(
      'block,row_spacing_ft,tree_height_ft,canopy_width_ft,density_gal_per_1000ft3\npenn,35,20,23,0.7\ncornell,18,8,10,0.7\ncornell-dense,18,8,10,1\n'
    );
    expect(code).toBe(0);
    const [penn, cornell, dense] = records(out).map((r) => Object.fromEntries(Object.entries(r).map(([k, v]) => [k, Number(v)])));
    // Penn State tree fruit guide: 400 gal/acre for the standard orchard; 43560·20·23/35 by hand.
    expect(penn!['trv_ground_ft3_per_ac']).toBeCloseTo(572502.857, 3);
    // × 0.3048³ / 0.40468564224, by hand
    expect(penn!['trv_ground_m3_per_ha']).toBeCloseTo(40059.43, 2);
    expect(penn!['us_trv_water_gal_per_ac']).toBeCloseTo(400.752, 3);
    // Landers: 193 600 ft³/acre; 136 and 194 gal/acre.
    expect(cornell!['trv_ground_ft3_per_ac']).toBeCloseTo(193600, 6);
    expect(cornell!['trv_ground_m3_per_ha']).toBeCloseTo(13546.67, 2);
    expect(cornell!['us_trv_water_gal_per_ac']).toBeCloseTo(135.52, 8);
    expect(cornell!['us_trv_water_l_per_ha']).toBeCloseTo(1267.65, 2);
    expect(dense!['us_trv_water_gal_per_ac']).toBeCloseTo(193.6, 8);
    expect(dense!['us_trv_water_l_per_ha']).toBeCloseTo(1810.93, 2);
  });
});

describe('exit codes', () => {
  it('0 for a table without fault, 1 where a line is refused', async () => {
    expect(await table(HEAD + 'a,4,3,0.5,1\n')).toMatchObject({ code: 0, err: '' });
    expect((await table(HEAD + 'a,4,3,0.5,1\nb,4,3,0.5,\n')).code).toBe(1);
  });
  it.each([
    ['no file', [], 'Name one CSV file'],
    ['two files', ['a.csv', 'b.csv'], 'not 2'],
    ['an option that is not there', [SIXTY, '--output', 'x'], "'--output'"],
    ['--out without its value', [SIXTY, '--out'], '--out'],
    ['--out that is the file read', [SIXTY, '--out', SIXTY], '--out is the file that is read']
  ])('2 for %s', async (_, args, message) => {
    const { code, out, err } = await rowtailor(['table', ...args]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
    expect(err).toContain('rowtailor table --help');
  });
  it('3 for a file that is not there, a folder, a file of other characters', async () => {
    const cases: [string, string][] = [
      [join(scratch, 'absent.csv'), 'there is no such file'],
      [scratch, 'it is a folder'],
      [await file('utf16.csv', Buffer.from('\uFEFF' + HEAD + 'a,4,3,0,1\n', 'utf16le')), 'it is not UTF-8 text']
    ];
    for (const [path, message] of cases) {
      const { code, out, err } = await rowtailor(['table', path]);
      expect([path, code, out]).toEqual([path, 3, '']);
      expect(err).toBe(`${path} cannot be read: ${message}.\n`);
    }
  });
  it('3 for an output that cannot be written', async () => {
    const cases: [string, string][] = [
      [scratch, 'it is a folder'],
      [join(scratch, 'nowhere', 'x.csv'), 'there is no such folder'],
      [join(await file('plain', ''), 'x.csv'), 'there is no such folder'],
      ['/dev/full', 'there is no room left']
    ];
    for (const [path, message] of cases) expect(await rowtailor(['table', SIXTY, '--out', path])).toEqual({ code: 3, out: '', err: `${path} cannot be written: ${message}.\n` });
    expect(await shell(`$ROWTAILOR table ${SIXTY} > /dev/full`)).toEqual({ code: 3, out: '', err: 'Standard output cannot be written: there is no room left.\n' });
  });
  it('tells its usage', async () => {
    const { code, out, err } = await rowtailor(['table', '--help']);
    expect([code, err]).toEqual([0, '']);
    for (const word of ['rowtailor table FILE', 'row_spacing_ft', 'note_', '--out', 'Exit codes']) expect(out).toContain(word);
  });
});

describe('the output file', () => {
  it('holds what standard output would, and a dash stands for that', async () => {
    const path = join(scratch, 'out.csv');
    expect(await rowtailor(['table', SIXTY, '--out', path])).toEqual({ code: 0, out: '', err: '' });
    const { out } = await rowtailor(['table', SIXTY, '--out', '-']);
    expect(await readFile(path, 'utf8')).toBe(out);
    expect(await there(join(ROOT, '-'))).toBe(false);
  });
  it('is replaced as a whole, also by fewer lines', async () => {
    const path = await file('longer.csv', 'x'.repeat(100_000));
    await rowtailor(['table', '-', '--out', path], HEAD + 'a,4,3,0,1\n');
    const text = await readFile(path, 'utf8');
    expect(text).not.toContain('xxx');
    expect(records(text)).toHaveLength(1);
  });
  it.each<[string, () => Promise<string[]>]>([
    ['a header that is not understood', async () => [await file('bad-header.csv', 'block,height\na,3\n')]],
    ['an empty file', async () => [await file('empty.csv', '')]],
    ['a file that is not there', async () => [join(scratch, 'absent.csv')]],
    ['wrong usage', async () => [SIXTY, 'another.csv']]
  ])('that stands already is left alone by %s', async (_, args) => {
    const path = await file('kept.csv', 'yesterday\n');
    const { code } = await rowtailor(['table', ...(await args()), '--out', path]);
    expect(code).toBeGreaterThan(0);
    expect(await readFile(path, 'utf8')).toBe('yesterday\n');
  });
  it('is never the file that is read, however it is spelt or linked', async () => {
    const text = HEAD + 'a,4,3,0,1\n';
    const path = await file('same.csv', text);
    await mkdir(join(scratch, 'sub'), { recursive: true });
    await symlink(path, join(scratch, 'soft.csv'));
    await link(path, join(scratch, 'hard.csv'));
    for (const other of [relative(ROOT, path), join(scratch, 'sub') + '/../same.csv', scratch + '/./same.csv', join(scratch, 'soft.csv'), join(scratch, 'hard.csv')]) {
      const { code, err } = await rowtailor(['table', path, '--out', other]);
      expect([other, code]).toEqual([other, 2]);
      expect(err).toContain('--out is the file that is read');
    }
    expect((await shell(`$ROWTAILOR table - --out '${path}' < '${path}'`)).code).toBe(2);
    expect(await readFile(path, 'utf8')).toBe(text);
  });
});

describe('a header that is not understood is told, and nothing is written', () => {
  it.each<[string, string, string]>([
    ['an unknown column, with a proposal', HEAD.replace('tree_height_m', 'tree_heigth_m'), 'Line 1: "tree_heigth_m" is not a column that is known'],
    ['and its proposal', HEAD.replace('tree_height_m', 'tree_heigth_m'), 'Did you mean "tree_height_m"?'],
    ['a unit that is not read', HEAD.replace('tree_height_m', 'tree_height_cm'), '"tree_height_cm" is not a column that is known'],
    ['one quantity in two units', HEAD.replace('\n', ',row_spacing_ft\n'), 'row_spacing_m, row_spacing_ft tell the same quantity in two units'],
    ['a column twice', HEAD.replace('\n', ',block\n'), '"block" stands twice'],
    ['a column that is missing', HEAD.replace(',canopy_width_m', ''), 'canopy_width_m is missing; one of canopy_width_m, canopy_width_ft is needed'],
    ['no name', HEAD.replace('block,', ''), 'Line 1, block is missing'],
    ['blank lines before it', '\n\r\n' + HEAD.replace('block,', ''), 'Line 3, block is missing'],
    ['rows alone', '', 'Line 1: "0.5" is not a column that is known'],
    ['a first line without end', 'x'.repeat(1_000_000), `is longer than 16,384 characters`]
  ])('%s', async (_, head, message) => {
    const { code, out, err } = await table(head + 'a,4,3,0.5,1\n');
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(message);
  });
  it.each([['an empty file', '', 1], ['only blank lines', '\n \r\n', 3], ['only delimiters', ';;;\n', 1]])('%s', async (_, text, line) => {
    const { code, out, err } = await table(text);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(new RegExp(`^Line ${line} has no header line`));
  });
  it('but a header alone is a table of no canopies', async () => {
    const { code, out, err } = await table(HEAD);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^block,trv_ground_m3_per_ha,.*\n$/);
    expect(await table(HEAD.trimEnd())).toEqual({ code, out, err });
  });
});

it('lines that cannot be used are told with line, column, value and reason; the others are written', async () => {
  const bad: [string, string, ...string[]][] = [
    ['wide,4,3,0.5,broad', 'canopy_width_m is broad; a number, 0.1 to 12 m, is needed'],
    ['unit,4 m,3,0.5,1', 'row_spacing_m is 4 m; a number, 0.5 to 20 m, is needed'],
    ['far,40,3,0.5,1', 'row_spacing_m is 40; 0.5 to 20 m is allowed'],
    ['negative,4,3,-0.5,1', 'skirt_height_m is -0.5; 0 to 15 m is allowed'],
    ['infinite,4,1e999,0.5,1', 'tree_height_m is 1e999; 0.2 to 20 m is allowed'],
    ['skirted,4,3,3.0,1', 'skirt_height_m is 3.0, but tree_height_m is 3; the skirt must be lower than the top'],
    ['nothing,4,,0.5,1', 'tree_height_m is empty; 0.2 to 20 m is needed'],
    [',4,3,0.5,1', 'block is empty; a name is needed'],
    ['few,4,3', 'has 3 fields, the header 5'],
    ['comma,4,3,0,5,1,2', 'has 7 fields, the header 5', 'a decimal comma'],
    ['n'.repeat(201) + ',4,3,0.5,1', `block is ${'n'.repeat(39)}…, 201 characters; at most 200 are allowed`],
    ['"open,4,3,0.5,1', '("open,4,3,0.5,1) has a quote that is opened and not closed'],
    ['nan,4,NaN,0.5,1', 'tree_height_m is NaN; a number, 0.2 to 20 m, is needed'],
    ['l'.repeat(LONGEST_ROW + 1), 'is longer than 16,384 characters']
  ];
  const text = HEAD + bad.map(([line], i) => `good-${i},4,3,0.5,1\n${line}\n`).join('') + 'last,4,3,0.5,1\n';
  const { code, out, err } = await table(text);
  expect(code).toBe(1);
  expect(blocks(out)).toEqual([...bad.map((_, i) => `good-${i}`), 'last']);
  const told = err.trimEnd().split('\n');
  expect(told).toHaveLength(bad.length);
  bad.forEach(([, ...messages], i) => {
    expect(told[i]).toMatch(new RegExp(`^Line ${3 + 2 * i}[ ,]`));
    for (const message of messages) expect(told[i]).toContain(message);
  });
});

describe('text', () => {
  const GOOD = 'a,4,3,0.5,1.5\nb,3.5,2.75,0,1\n';
  it.each<[string, string | Uint8Array]>([
    ['CRLF', (HEAD + GOOD).replaceAll('\n', '\r\n')],
    ['a byte order mark', '\uFEFF' + HEAD + GOOD],
    ['semicolons and decimal commas', (HEAD + GOOD).replaceAll(',', ';').replaceAll('.', ',')],
    ['tabs', (HEAD + GOOD).replaceAll(',', '\t')],
    ['tabs and decimal commas', (HEAD + GOOD).replaceAll(',', '\t').replaceAll('.', ',')],
    ['quotes around everything', (HEAD + GOOD).replace(/[^,\n]+/g, '"$&"')],
    ['no line break at the end', (HEAD + GOOD).trimEnd()],
    ['blank lines', '\n' + HEAD + '\n' + GOOD.replace('\n', '\n\n ,,,,\n') + '\n'],
    ['notes', (HEAD + GOOD).replace('\n', ',note_\n').replace(/5\n/, '5,"""so, \n so""" \n').replace(/1\n$/, '1,\n')]
  ])('with %s is read as without', async (_, text) => {
    expect(await table(text)).toEqual(await table(HEAD + GOOD));
  });

  it('has names that come through unchanged: commas, quotes, line breaks, other scripts, blanks', async () => {
    const names = ['a, b', 'the "old" one', '"', 'two\nlines', 'two\r\nlines', 'Obstgarten Höhe', '上の畑', '🍎 top', "' 5\"", ' blanks '];
    const field = (n: string): string => `"${n.replaceAll('"', '""')}"`;
    const { code, out, err } = await table(HEAD + names.map((n) => `${field(n)},4,3,0.5,1\n`).join(''));
    expect([code, err]).toEqual([0, '']);
    // Read back by a reader of ours that knows nothing of the writer: a field is quoted or ends at the first comma.
    const found = [...out.slice(out.indexOf('\n') + 1).matchAll(/(?:"((?:[^"]|"")*)"|([^,\n"]*))(?:,[-+.e\d]+)+\n/gy)].map((m) => m[1]?.replaceAll('""', '"') ?? m[2]);
    expect(found).toEqual(names);
  });

  it('has names that a spreadsheet could take for a formula: they are names, and are written as they came', async () => {
    const names = ['=1+1', '+north', '-south', '@home', "=cmd|' /C calc'!A0"];
    const { code, out } = await table(HEAD + names.map((n) => `${n},4,3,0.5,1\n`).join(''));
    expect(code).toBe(0);
    expect(blocks(out)).toEqual(names);
    expect((await rowtailor(['table', '--help'])).out).toContain('import the\ncolumn block as text');
  });

  it('that is not UTF-8 costs its line: a name is not changed behind its owner’s back', async () => {
    const { code, out, err } = await table(Buffer.from(HEAD + 'H\xf6he,4,3,0.5,1\nb,4,3,0.5,1\nc,4,3,0.5,1\xb0\n', 'latin1'));
    expect(code).toBe(1);
    expect(blocks(out)).toEqual(['b']);
    expect(err).toMatch(/^Line 2, block is H\ufffdhe, with bytes that are not UTF-8 text/);
    expect(err).toMatch(/\nLine 4, canopy_width_m is 1\ufffd; a number/);
  });

  it('shows control characters of a bad value instead of sending them to the terminal', async () => {
    const { err } = await table(HEAD + 'a,4,3,0.5,\u001b[31mred\n');
    expect(err).not.toContain('\u001b');
    expect(err).toContain('\\u001b[31mred');
  });
});

describe('a long file', () => {
  const KINDS: readonly ((i: number) => string)[] = [
    (i) => `wide-${i},4,3,0.5,broad\n`,
    (i) => `far-${i},400,3,0.5,1\n`,
    () => '"open,4,3,0.5,1\n',
    (i) => `few-${i},4\n`,
    () => '"closed"late,4,3,0.5,1\n',
    () => 'l'.repeat(LONGEST_ROW + 1) + '\n'
  ];
  /** Good and bad rows by a rule, with the lines at which the bad ones begin. */
  function written(bytes: number): { text: string; names: string[]; bad: number[] } {
    const parts = [HEAD];
    const names: string[] = [];
    const bad: number[] = [];
    let line = 2;
    for (let i = 0, size = 0; size < bytes; i++) {
      let row: string;
      if (i % 97 === 50) {
        bad.push(line);
        row = KINDS[((i - 50) / 97) % KINDS.length]!(i);
      } else {
        const name = i % 7 === 3 ? `two\nlines, "${i}"` : i % 7 === 5 ? `${i} 12" stake` : i % 7 === 6 ? `höhe-${i}` : `plain-${i}`;
        names.push(name);
        const field = i % 7 === 3 ? `"${name.replaceAll('"', '""')}"` : name;
        row = `${field},${(3 + (i % 200) / 100).toFixed(2)},${(2 + (i % 300) / 100).toFixed(2)},0.5,${(1 + (i % 90) / 100).toFixed(2)}\n`;
      }
      parts.push(row);
      size += row.length;
      line += row.split('\n').length - 1;
    }
    return { text: parts.join(''), names, bad };
  }

  it('keeps the order of its lines over several threads, tells the right lines, and gives what its parts give', async () => {
    const { text, names, bad } = written(6 * PIECE_BYTES);
    const whole = await table(text);
    expect(whole.code).toBe(1);
    const found = [...whole.out.slice(whole.out.indexOf('\n') + 1).matchAll(/(?:"((?:[^"]|"")*)"|([^,\n]*))(?:,[-+.e\d]+)+\n/gy)].map((m) => m[1]?.replaceAll('""', '"') ?? m[2]);
    expect(found).toEqual(names);
    expect([...whole.err.matchAll(/^Line (\d+)/gm)].map((m) => Number(m[1]))).toEqual(bad);

    // The same rows as files of less than a piece each: worked off in one thread, in one piece.
    const rows = text.slice(HEAD.length).split(/(?<=\n)(?!lines, )/);
    let out = '';
    for (let i = 0; i < rows.length; ) {
      let part = '';
      while (i < rows.length && part.length + rows[i]!.length < 0.9 * PIECE_BYTES) part += rows[i++];
      const one = await table(HEAD + part);
      out += out === '' ? one.out : one.out.slice(one.out.indexOf('\n') + 1);
    }
    expect(whole.out === out).toBe(true);
  });

  it('loses one line to a stray quote, not what follows it', async () => {
    const n = Math.ceil((5 * PIECE_BYTES) / 20);
    const lines = Array.from({ length: n }, (_, i) => (i === 10 ? '"stray,4,3,0.5,1\n' : `block-${i},4,3,0.5,1.25\n`));
    const { code, out, err } = await table(HEAD + lines.join(''));
    expect(code).toBe(1);
    expect(err).toMatch(/^Line 12 \("stray,4,3,0.5,1\) has a quote.*\n$/);
    const rows = records(out);
    expect(rows).toHaveLength(n - 1);
    expect(new Set(rows.map((r) => r['ucr_per_ha'])).size).toBe(1);
  });

  it('of one line without end is refused without being held', async () => {
    // That little of it is held is tested with the cutting itself.
    const { code, out, err } = await shell(`(printf '${HEAD.replace('\n', '\\n')}'; head -c 100000000 /dev/zero | tr '\\0' 'x'; printf ',4,3,0,1\\nlast,4,3,0,1\\n') | $ROWTAILOR table -`);
    expect(code).toBe(1);
    expect(err).toBe('Line 2 is longer than 16,384 characters, the most that is allowed. Check that the file is a table with line breaks.\n');
    expect(blocks(out)).toEqual(['last']);
  });

  it('whose reader closes early ends quietly', async () => {
    const path = await file('long.csv', HEAD + 'a,4,3,0.5,1.25\n'.repeat(100_000));
    const { code, out, err } = await shell(`$ROWTAILOR table '${path}' | head -n 2; echo "ended \${PIPESTATUS[0]}"`);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')[1]).toMatch(/^a,9375,/);
    expect(out).toContain('ended 0');
  });
});
