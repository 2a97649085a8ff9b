import { readFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { dispatch } from '#cli/dispatch.ts';

const FILE = 'tests/cli/documents/trees.csv';

/** Runs the verb in this process. */
async function survey(args: readonly string[], input = '') {
  let [out, err] = ['', ''];
  const code = await dispatch(['survey', ...args], { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}

describe('survey', () => {
  it('prints means, product, trees that stand out and the canopy', async () => {
    const { code, out, err } = await survey([FILE, '--block-trees', '400', '--by', 'variety']);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/survey-trees.txt');
  });
  it('weighs groups by what stands there, in US units', async () => {
    const { code, out, err } = await survey([FILE, '--by', 'variety', '--group-trees', 'Early=300,Late=100', '--leave-out', '12,#3', '--row-spacing', '4,0.05', '--units', 'us']);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/survey-trees-us.txt');
    expect(out.split('How it is worked out')[0]).not.toMatch(/\d\u00a0m²?\b/);
  });
  it('prints everything as JSON; the canopy is fit for a document', async () => {
    const { code, out } = await survey([FILE, '--json', '--leave-out', '12']);
    expect(code).toBe(0);
    const told = JSON.parse(out);
    expect([told.format, told.version, told.refusedLines, told.survey.trees, told.survey.leftOut, told.list.length]).toEqual(['rowtailor-survey', 1, 0, 11, 1, 12]);
    expect(told.list.filter((t: { leftOut?: boolean }) => t.leftOut).map((t: { tree: string }) => t.tree)).toEqual(['12']);
    const heights = (await readFile(FILE, 'utf8')).trim().split('\n').slice(1, -1).map((line) => Number(line.split(',')[3]));
    expect(told.canopy.heightM).toBeCloseTo(heights.reduce((s, h) => s + h, 0) / 11, 4);
    expect(told.canopy.errors.trees).toBe(11);
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
  });
  it('one tree from standard input has dashes for what it cannot tell', async () => {
    const { code, out } = await survey(['-'], 'height_m,width_m\n3,1\n');
    expect(code).toBe(0);
    expect(out).toMatch(/height +1 +3\.00\u00a0m +– +– +–/);
    expect(out).not.toMatch(/NaN|Infinity|undefined|null/);
  });
});

describe('options', () => {
  it.each<[string[], string]>([
    [['--block-trees', '0'], '--block-trees is "0"; a whole number, 1 to 1,000,000, is needed.'],
    [['--block-trees', 'many'], '--block-trees is "many"; a whole number, 1 to 1,000,000, is needed.'],
    [['--by', 'age'], '--by is "age"; it must be row or variety.'],
    [['--group-trees', 'Early=1'], '--group-trees goes with --by row or --by variety.'],
    [['--by', 'row', '--group-trees', 'Early'], '--group-trees is "Early"; write names and numbers of trees, as Early=400,Late=600, each name once.'],
    [['--by', 'row', '--group-trees', 'a=1,a=2'], '--group-trees is "a=1,a=2"; write names and numbers of trees, as Early=400,Late=600, each name once.'],
    [['--by', 'row', '--group-trees', 'a=1', '--block-trees', '9'], '--group-trees tells the trees of the block already; leave out --block-trees.'],
    [['--leave-out', '99'], '--leave-out names "99"; there is no such tree. Write its name, or its place as #3.'],
    [['--leave-out', '#0'], '--leave-out names "#0"; there is no such tree. Write its name, or its place as #3.'],
    [['--row-spacing', '4'], '--row-spacing is "4"; write the mean, 0.5 to 20 m, and its standard error, 0 to 5 m, as 4,0.05.'],
    [['--units', 'feet'], '--units is "feet"; it must be metric, metric-psi, metric-mph, acres, imperial or us.'],
    [['another.csv'], 'One file of trees at a time, not 2.']
  ])('%j are refused by name', async (more, said) => {
    expect(await survey([FILE, ...more])).toEqual({ code: 2, out: '', err: `${said}\nSee: rowtailor survey --help\n` });
  });
});

describe('ends', () => {
  it('0 with help', async () => {
    const { code, out } = await survey(['--help']);
    expect([code, out.startsWith('rowtailor survey FILE')]).toEqual([0, true]);
  });
  it('2 without a file, 3 where there is none', async () => {
    expect(await survey([])).toMatchObject({ code: 2, out: '' });
    expect(await survey(['no-such.csv'])).toMatchObject({ code: 3, out: '', err: 'no-such.csv cannot be read: there is no such file.\n' });
  });
  it('1 where a line was refused, with the survey of the others', async () => {
    const { code, out, err } = await survey(['-', '--json'], 'height_m,width_m\n3,1\nthree,1\n4,2\n');
    expect([code, err]).toEqual([1, 'Line 3, height_m is three; a number, 0.2 to 20 m, is needed. Write figures alone, without a unit.\n']);
    expect(JSON.parse(out)).toMatchObject({ refusedLines: 1, survey: { trees: 2, height: { mean: 3.5 } } });
  });
  it('1 where no survey can be made, with the remedy', async () => {
    expect(await survey(['-'], 'height_m,width_m\n')).toMatchObject({ code: 1, out: '', err: 'No tree is left to survey. Measure one, or take one back in.\n' });
    expect(await survey([FILE, '--block-trees', '5'])).toMatchObject({ code: 1, out: '', err: '12 trees were measured, but the block is said to hold 5. Correct the number of trees in the block.\n' });
    expect((await survey([FILE, '--by', 'variety', '--group-trees', 'Early=300'])).err).toBe('How many trees stand in “Late” was not told. Tell it for every group, or for none.\n');
    expect((await survey(['-'], 'height_m,width_m\nx,y\n')).err.split('\n')).toHaveLength(3);
  });
});
