import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rowtailor } from '../support/command.ts';
import { framePoints, onMap } from '../support/frame.ts';
import { las } from '../support/las.ts';
import { laz } from '../support/laz.ts';
import { DATA } from '../measured/stations.ts';

const FRAME = fileURLToPath(new URL('lidar-fuji-frame-every-4th.csv', DATA));
const laser = (args: readonly string[], input = '') => rowtailor(['laser', ...args], input);

describe('options', () => {
  it.each([
    [['--row-spacing', '3,5'], '--row-spacing is "3,5"; 0.5 to 20 m is allowed, as 3.5 or 11.5ft.'],
    [['--row-spacing', '380'], '--row-spacing is "380"; 0.5 to 20 m is allowed, as 3.5 or 11.5ft.'],
    [['--skirt', 'low'], '--skirt is "low"; 0 to 15 m is allowed, as 3.5 or 11.5ft.'],
    [['--side', 'up'], '--side is "up"; it must be left, right or both.'],
    [['--platform', '0.75,2,1'], '--platform is "0.75,2,1"; write half width and two heights in metres, the lower first, as 0.75,0.2,2, or none.'],
    [['--units', 'feet'], '--units is "feet"; it must be metric, metric-psi, metric-mph, acres, imperial or us.'],
    [['another.csv'], 'One file of points at a time, not 2.']
  ])('%j are refused by name', async (more, said) => {
    const { code, out, err } = await laser([FRAME, ...more]);
    expect([code, out, err]).toEqual([2, '', `${said}\nSee: rowtailor laser --help\n`]);
  });
  it('in feet are those in metres', async () => {
    const feet = JSON.parse((await laser([FRAME, '--json', '--row-spacing', '10ft', '--platform', '2ft,0,6.5ft'])).out);
    expect(feet.rules).toMatchObject({ rowSpacingM: 3.048, platform: { halfWidthM: 0.6096, fromM: 0, toM: 1.9812 } });
  });
  it('none keeps the platform', async () => expect(JSON.parse((await laser([FRAME, '--json', '--platform', 'none'])).out).leftOut.platform).toBe(0));
});

describe('ends', () => {
  it('0 with help', async () => {
    const { code, out } = await laser(['--help']);
    expect(code).toBe(0);
    expect(out).toContain('rowtailor laser FILE');
  });
  it('2 without a file, 3 where there is none', async () => {
    expect(await laser([])).toMatchObject({ code: 2, out: '' });
    expect(await laser(['no-such.csv'])).toMatchObject({ code: 3, out: '', err: 'no-such.csv cannot be read: there is no such file.\n' });
  });
  it('1 where a line was refused, with the canopy of the others', async () => {
    const sound = Array.from({ length: 2000 }, (_, i) => `${(1.2 + (i % 7) / 20) * (i % 2 ? 1 : -1)},${(0.4 + (i % 101) / 40).toFixed(3)}`);
    const { code, out, err } = await laser(['-', '--row-spacing', '3.5', '--json'], ['lateral_m,height_m', 'left,1', ...sound].join('\n'));
    expect([code, err]).toEqual([1, 'Line 2, lateral_m is left; a number, -100 to 100 m, is needed. Write figures alone, without a unit.\n']);
    expect(JSON.parse(out)).toMatchObject({ total: 2000, refusedLines: 1, gaps: null, spacingFrom: 'given' });
  });
  it('1 where no canopy can be made, with the remedy', async () => {
    expect(await laser(['-'], 'lateral_m,height_m\n1,2\n')).toMatchObject({ code: 1, out: '', err: 'The row spacing was not given, and no row behind the first is seen beyond a free strip. Give it; on the command line, --row-spacing 3.5.\n' });
    expect((await laser([FRAME, '--row-spacing', '1.5'])).err).toBe('The row’s face stands 0.96 m from the alley’s middle, at or beyond the row line of rows 1.5 m apart. Check the row spacing.\n');
  });
});

describe('LAS and LAZ', () => {
  let folder = '';
  const path = (name: string) => join(folder, name);
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'rowtailor-'));
    const map = onMap(framePoints(), 37, [512_345, 4_801_234, 321]);
    await writeFile(path('frame.laz'), laz(framePoints(), { chunk: 1000 }));
    await writeFile(path('map.las'), las(map, { offset: [512_000, 4_801_000, 300] }));
    await writeFile(path('cut.las'), las(map).subarray(0, 5000));
  });
  afterAll(() => rm(folder, { recursive: true }));

  it('of the frame make the canopy that the table makes', async () => {
    const [table, packed, piped] = await Promise.all([laser([FRAME, '--json']), laser([path('frame.laz'), '--json']), rowtailor(['laser', '-', '--json'], laz(framePoints()))]);
    expect([packed.code, packed.err]).toEqual([0, '']);
    const { las: header, placement, ...same } = JSON.parse(packed.out);
    expect(header).toMatchObject({ version: '1.2', format: 0, compressed: true, count: 4968 });
    const { las: none, placement: asItIs, ...whole } = JSON.parse(table.out);
    expect([none, placement]).toEqual([null, asItIs]);
    // Whole steps of a millimetre times 0.001 are not to the last bit what the table says.
    for (const part of ['canopy', 'leftOut', 'used', 'total', 'gaps'] as const) expect(same[part]).toEqual(whole[part]);
    expect(JSON.parse(piped.out).canopy).toEqual(whole.canopy);
  });
  it('on a map tell where the alley was taken to lie, and take what the user knows better', async () => {
    const { code, out } = await laser([path('map.las'), '--row-spacing', '3.1', '--bearing', '37', '--origin', '512345,4801234', '--ground-level', '321']);
    expect(code).toBe(0);
    expect(out).toMatch(/way of the rows +37° from the y axis/);
    expect(out).toMatch(/file +LAS 1\.2, point format 0/);
    expect(out).toMatch(/height +3\.20/);
    expect(out).toMatch(/box\s+[\d.]+\sm³\/m/);
  });
  it('are refused by name where they cannot be', async () => {
    expect(await laser([path('cut.las')])).toMatchObject({ code: 1, out: '', err: 'The file tells of 4968 points but ends before that. It was cut off: copy it again.\n' });
    expect(await laser([path('map.las'), '--origin', '512345'])).toMatchObject({ code: 2, err: expect.stringContaining('--origin is "512345"; 2 numbers are needed, as 512345.6,4801234.5.') });
    expect(await laser([path('map.las'), '--unit', 'yd'])).toMatchObject({ code: 2, err: expect.stringContaining('--unit is "yd"; it must be m or ft.') });
  });
});
