import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laserCanopy } from '#core/canopy/laser/canopy.ts';
import { AS_IT_IS, placed, proposedPlacement, type RawPoints } from '#core/canopy/laser/place.ts';
import { DEFAULT_RULES } from '#core/canopy/laser/rules.ts';
import { readLaserFile } from '#job/laser/open.ts';
import type { Source } from '#job/laser/source.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/spray/join.ts';
import { startUnpacker } from '../../../src/cli/laser-file.ts';
import { framePoints, onMap } from '../../support/frame.ts';
import { laz } from '../../support/laz.ts';
import { las, type LasOptions, type LasPoint } from '../../support/las.ts';

const sourceOf = (bytes: Uint8Array, name = 'points.las'): Source => ({ name, size: bytes.length, read: (from, to) => Promise.resolve(bytes.subarray(from, to)) });
const read = (bytes: Uint8Array, name?: string, most = 1e6) => readLaserFile(sourceOf(bytes, name), startUnpacker, most, () => {});
async function said(bytes: Uint8Array, name?: string): Promise<string> {
  const r = await read(bytes, name);
  return r.ok ? 'read' : r.refused ? refusalSentence(r.refused, 'metric') : r.problems.map((p) => p.code).join();
}
async function raw(bytes: Uint8Array, most?: number): Promise<RawPoints> {
  const r = await read(bytes, undefined, most);
  if (!r.ok) throw new Error(r.refused?.code);
  return r.raw;
}
const SOME: readonly LasPoint[] = [{ x: -1.5, y: 20, z: 2.25 }, { x: 1.25, y: 21, z: 0.125 }, { x: 0, y: -22, z: -0.5 }];
const mutated = (edit: (v: DataView) => void, options?: LasOptions): Uint8Array => {
  const bytes = las(SOME, options);
  edit(new DataView(bytes.buffer));
  return bytes;
};

describe('coordinates are scale times whole number plus offset', () => {
  it.each([2, 3, 4] as const)('in LAS 1.%i, in every point format', async (minor) => {
    for (let format = 0; format <= 10; format++) {
      const { x, y, z } = await raw(las(SOME, { minor: format >= 6 ? 4 : minor, format, offset: [100, -50, 3], extra: format % 3 }));
      SOME.forEach((p, i) => expect([x[i], y![i], z[i]].map((c, k) => Math.abs(c! - [p.x, p.y, p.z][k]!) < 1e-9), `format ${format}`).toEqual([true, true, true]));
    }
  });
  it('points that the file marks as withheld or as noise are left out', async () => {
    for (const format of [0, 6]) {
      const r = await read(las([...SOME, { x: 1, y: 1, z: 1, withheld: true }, { x: 1, y: 1, z: 1, class: 7 }, { x: 1, y: 1, z: 1, class: 18 }], { minor: 4, format }));
      expect(r).toMatchObject({ ok: true, marked: 3 });
    }
  });
  it('of more points than are kept, every second, third … is', async () => {
    const many = Array.from({ length: 25_000 }, (_, i) => ({ x: i / 1000, y: i, z: 1 }));
    const r = await read(las(many), undefined, 10_000);
    expect(r).toMatchObject({ ok: true, every: 3 });
    expect(r.ok && [...r.raw.y!.subarray(0, 3), r.raw.x.length]).toEqual([0, 3, 6, 8334]);
  });
});

describe('a file that cannot be is refused by name', () => {
  it.each<[string, Uint8Array, string]>([
    ['another kind', new TextEncoder().encode('%PDF-1.7 and so on'), 'neither LAS nor LAZ'],
    ['nothing', new Uint8Array(0), 'The file is empty.'],
    ['half a header', las(SOME).subarray(0, 100), 'ends within its header: 100 bytes, and at least 227 are needed'],
    ['half a header of 1.4', las(SOME, { minor: 4 }).subarray(0, 300), 'ends within its header: 300 bytes, and at least 375'],
    ['LAS 2.0', mutated((v) => v.setUint8(24, 2)), 'The file is LAS 2.2; 1.0 to 1.4 are read.'],
    ['a format to come', mutated((v) => v.setUint8(104, 11)), 'points of format 11; 0 to 10 are read'],
    ['too short a record', mutated((v) => v.setUint16(105, 12, true)), 'A point of format 0 takes 20 bytes, but the file says 12.'],
    ['no scale', mutated((v) => v.setFloat64(139, 0, true)), 'The scale of y is 0; above 0 and up to 1 is allowed.'],
    ['an absurd scale', mutated((v) => v.setFloat64(147, 1e6, true)), 'The scale of z is 1000000;'],
    ['a scale that is no number', mutated((v) => v.setFloat64(131, NaN, true)), 'The scale of x is NaN;'],
    ['an endless offset', mutated((v) => v.setFloat64(155, Infinity, true)), 'The offset of x is Infinity'],
    ['no points', las([]), 'The file holds no points'],
    ['points withheld alone', las([{ x: 0, y: 0, z: 0, withheld: true }]), 'The file holds no points'],
    ['points cut off', las(SOME).subarray(0, 227 + 50), 'tells of 3 points but ends before that'],
    ['more points than there are', mutated((v) => v.setUint32(107, 4_000_000_000, true)), 'tells of 4000000000 points but ends before that']
  ])('%s', async (_, bytes, sentence) => expect(await said(bytes)).toContain(sentence));
  it('whatever single byte is changed, there is an answer', async () => {
    const whole = las(SOME, { minor: 4, format: 6 });
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.nat(255), async (at, b) => {
        const r = await read(Object.assign(whole.slice(), { [at]: b }));
        if (r.ok) for (const c of [r.raw.x, r.raw.y!, r.raw.z]) expect(c.every(Number.isFinite)).toBe(true);
        else expect(r.refused?.code ?? r.problems[0]?.code).toBeTruthy();
      }),
      { numRuns: 300 }
    );
  });
});

describe('LAZ', () => {
  const all = framePoints();
  it.each([1, 700, 50_000])('in chunks of %i gives the points that LAS gives', async (chunk) => {
    const [packed, plain] = [await read(laz(all, { chunk })), await raw(las(all))];
    expect(packed).toMatchObject({ ok: true, las: { compressed: true, format: 0, version: '1.2' }, raw: plain });
  });
  it('is known by its mark, not by its name', async () => expect(await read(laz(all.slice(0, 50)), 'points.las')).toMatchObject({ ok: true, las: { compressed: true } }));
  it('thinned as LAS is', async () => {
    const [packed, plain] = [await raw(laz(all), 1000), await raw(las(all), 1000)];
    expect(packed).toEqual(plain);
    expect(plain.x.length).toBeLessThanOrEqual(1000);
  });
  it.each([0.05, 0.5, 0.95])('cut off after %f of it is refused by name', async (part) => {
    const whole = laz(all, { chunk: 700 });
    expect(await said(whole.subarray(0, Math.floor(whole.length * part)))).toMatch(/^The file tells of 4968 points but ends before that|^The file ends within its header/);
  });
  it('without what tells how it is packed, is refused by name', async () => {
    const whole = laz(all);
    expect(await said(whole.map((b, i) => (i >= 227 && i < 281 ? 0 : b)))).toContain('of 4968 points the rest cannot be unpacked');
  });
  it('whatever single byte is changed, there is an answer', async () => {
    const whole = laz(all.slice(0, 400), { chunk: 150 });
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.nat(255), async (at, b) => {
        const r = await read(Object.assign(whole.slice(), { [at]: b }));
        if (!r.ok) expect(r.refused?.code).toMatch(/^las-/);
      }),
      { numRuns: 25 }
    );
  });
});

it('a table is still a table, whatever it is called', async () => {
  const many = await read(new TextEncoder().encode('lateral_m,height_m\n' + Array.from({ length: 25 }, (_, i) => `${i},1\n`).join('')), 'points.txt', 10);
  expect(many.ok && [many.every, [...many.raw.x]]).toEqual([3, [0, 3, 6, 9, 12, 15, 18, 21, 24]]);
  expect(await read(new TextEncoder().encode('lateral_m,height_m\n1,2\n'), 'points.csv')).toMatchObject({ ok: true, las: null, raw: { y: null } });
  expect(await said(new TextEncoder().encode('lateral_m,height_m\n1,2\n'), 'points.las')).toContain('neither LAS nor LAZ');
});

describe('points on a map are laid out as a scanner in the alley would see them', () => {
  const all = framePoints();
  const rules = { ...DEFAULT_RULES, rowSpacingM: 3.1 };
  const canopy = (points: RawPoints, placement = AS_IT_IS) => {
    const made = laserCanopy(placed(points, placement).points, rules);
    if ('kind' in made) throw new Error(made.code);
    return made.canopy;
  };
  it('those in the scanner’s own frame stay as they are', async () => {
    const points = await raw(las(all));
    expect(proposedPlacement(points)).toEqual(AS_IT_IS);
    const table = { x: Float64Array.from(all, (p) => p.x), y: Float64Array.from(all, (p) => p.y), z: Float64Array.from(all, (p) => p.z) };
    expect(canopy(points)).toEqual(canopy(table));
  });
  it('with the place told, the canopy is the same wherever it stands', async () => {
    const there = { unitM: 1, originX: 512_345, originY: 4_801_234, groundZ: 321, bearingDeg: 37 };
    const points = await raw(las(onMap(all, 37, [512_345, 4_801_234, 321]), { offset: [512_000, 4_801_000, 300] }));
    const [a, b] = [canopy(points, there), canopy({ x: Float64Array.from(all, (p) => p.x), y: Float64Array.from(all, (p) => p.y), z: Float64Array.from(all, (p) => p.z) })];
    expect(Math.abs(a.widthM - b.widthM)).toBeLessThan(0.02);
    expect(Math.abs(a.heightM - b.heightM)).toBeLessThan(0.011);
    expect(placed(points, there).tooFar).toBe(0);
  });
  it('in feet as in metres', () => {
    const feet = { x: Float64Array.of(10), y: Float64Array.of(0), z: Float64Array.of(10) };
    const { points } = placed(feet, { ...AS_IT_IS, unitM: 0.3048 });
    expect([points.lateralM[0], points.heightM[0]]).toEqual([3.048, 3.048]);
  });
  it.each([0, 20, 90, 155])('rows that run %i° from north are found, and the alley between two of them', (deg) => {
    // Four walls of leaf, 30 m long, 3.5 m apart, on a lawn.
    const rows = [-5.25, -1.75, 1.75, 5.25].flatMap((at, r) => Array.from({ length: 2500 }, (_, i) => ({ x: at + 0.5 * Math.sin(i * 1.7 + r), y: ((i * 0.618) % 1) * 30 - 15, z: 0.6 + ((i * 0.414) % 1) * 2.4 })));
    const lawn = Array.from({ length: 3000 }, (_, i) => ({ x: ((i * 0.755) % 1) * 12 - 6, y: ((i * 0.57) % 1) * 30 - 15, z: 0.02 * ((i * 0.33) % 1) }));
    const map = onMap([...rows, ...lawn], deg, [400_000, 5_200_000, 150]);
    const found = proposedPlacement({ x: Float64Array.from(map, (p) => p.x), y: Float64Array.from(map, (p) => p.y), z: Float64Array.from(map, (p) => p.z) });
    if ('kind' in found) throw new Error(found.code);
    expect(Math.abs(found.bearingDeg - deg)).toBeLessThanOrEqual(1);
    expect(Math.abs(found.groundZ - 150)).toBeLessThan(0.05);
    const [sin, cos] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
    const across = (found.originX - 400_000) * cos - (found.originY - 5_200_000) * sin;
    expect(Math.min(...[-3.5, 0, 3.5].map((alley) => Math.abs(across - alley)))).toBeLessThan(0.2);
  });
  it('points of two orchards are refused', () => {
    const far = { x: Float64Array.from({ length: 100 }, (_, i) => (i % 2) * 50_000), y: new Float64Array(100), z: new Float64Array(100) };
    expect(proposedPlacement(far)).toMatchObject({ code: 'las-far-apart', parameters: { apart: 50, most: 10 } });
  });
});
