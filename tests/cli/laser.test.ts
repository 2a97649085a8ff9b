import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { rowtailor } from '../support/command.ts';
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
    [['--units', 'feet'], '--units is "feet"; it must be metric or us.'],
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
    expect(await laser(['-'], 'lateral_m,height_m\n1,2\n')).toMatchObject({ code: 1, out: '', err: 'The row spacing was not given, and no row behind the first is seen beyond a free strip. Give it: --row-spacing 3.5.\n' });
    expect((await laser([FRAME, '--row-spacing', '1.5'])).err).toBe('The row’s face stands 0.96 m from the alley’s middle, at or beyond the row line of rows 1.5 m apart. Check the row spacing.\n');
  });
});
