import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beamWeight, laserCanopy } from '#core/canopy/laser/canopy.ts';
import { DEFAULT_RULES } from '#core/canopy/laser/rules.ts';
import { spacingSeen } from '#core/canopy/laser/spacing.ts';
import type { LaserCanopy, LaserPoints, LaserRules } from '#core/canopy/laser/types.ts';

type Point = readonly [lateral: number, along: number, height: number];
const points = (all: readonly Point[], withAlong = true): LaserPoints => ({
  lateralM: Float64Array.from(all, (p) => p[0]),
  alongM: withAlong ? Float64Array.from(all, (p) => p[1]) : null,
  heightM: Float64Array.from(all, (p) => p[2])
});

/** A wall of points on a grid: its face at a distance from the track on one side, 0.4 m deep, between two heights, over a stretch. */
function wall(sign: 1 | -1, faceM: number, fromM: number, toM: number, stretchM: readonly [number, number] = [0, 8], stepM = 0.1): Point[] {
  const out: Point[] = [];
  for (let y = stretchM[0] + stepM / 2; y < stretchM[1]; y += stepM)
    for (let z = fromM + stepM / 4; z < toM; z += stepM / 2) out.push([sign * (faceM + 0.4 * ((out.length * 0.618) % 1)), y, z]);
  return out;
}
const made = (all: readonly Point[], more: Partial<LaserRules> = {}, withAlong = true): LaserCanopy => {
  const r = laserCanopy(points(all, withAlong), { ...DEFAULT_RULES, ...more });
  if ('kind' in r) throw new Error(`${r.code} ${JSON.stringify(r.parameters)}`);
  return r;
};
const refusal = (all: readonly Point[], more: Partial<LaserRules> = {}): string => {
  const r = laserCanopy(points(all), { ...DEFAULT_RULES, ...more });
  return 'kind' in r ? r.code : 'none';
};
const ALLEY = [...wall(-1, 1.2, 0.5, 3), ...wall(1, 1.2, 0.5, 3)];

describe('an alley between two walls', () => {
  const l = made(ALLEY, { rowSpacingM: 3.5 });
  it('has their top, their skirt and twice the half width that is seen', () => {
    expect(l.canopy.heightM).toBeCloseTo(3, 1);
    // Foliage from 0.5 m; bands of 0.25 m from 0.3 m up, the first of which it hardly reaches.
    expect(l.canopy.skirtM).toBeCloseTo(0.55, 9);
    expect(made(ALLEY, { rowSpacingM: 3.5, skirtM: 0.5 }).canopy.skirtM).toBe(0.5);
    // The face is the 5th percentile of a depth of 0.4 m: 1.22 m, so 2·(1.75 − 1.22).
    for (const p of l.canopy.profile!) expect(p.widthM).toBeCloseTo(1.06, 1);
    expect(l.middleM).toBeCloseTo(0, 2);
  });
  it('is alike for points in any order', () => {
    const shuffled = ALLEY.map((p, i) => [(i * 7919) % ALLEY.length, p] as const).toSorted((a, b) => a[0] - b[0]).map(([, p]) => p);
    const again = made(shuffled, { rowSpacingM: 3.5 });
    expect(again.canopy).toEqual(l.canopy);
    expect(again.leftOut).toEqual(l.leftOut);
  });
  it('and mirrored, is the same canopy', () => expect(made(ALLEY.map(([x, y, z]) => [-x, y, z]), { rowSpacingM: 3.5 }).canopy).toEqual(l.canopy));
  it('is as wide when the scanner did not drive in the middle', () => {
    const beside = made(ALLEY.map(([x, y, z]) => [x + 0.3, y, z]), { rowSpacingM: 3.5 });
    expect(beside.middleM).toBeCloseTo(l.middleM + 0.3, 9);
    expect(beside.canopy).toEqual(l.canopy);
  });
  it('with one row alone, stands half a spacing from the track', () => {
    const right = made(ALLEY, { rowSpacingM: 3.5, side: 'right' });
    expect(right.sides.map((s) => s.side)).toEqual(['right']);
    expect(right.leftOut['other-side']).toBe(ALLEY.length / 2);
    const lone = made(wall(1, 1.2, 0.5, 3), { rowSpacingM: 3.5 });
    expect(lone.middleM).toBe(0);
    expect(lone.canopy.widthM).toBeCloseTo(right.canopy.widthM, 1);
  });
  it('takes what points do not tell along the row as one station', () => {
    const flat = made(ALLEY, { rowSpacingM: 3.5 }, false);
    expect(flat.gaps).toBeNull();
    expect(flat.canopy).not.toHaveProperty('filledFraction');
    expect(flat.canopy.widthM).toBeCloseTo(l.canopy.widthM, 1);
  });
});

describe('points that are left out', () => {
  it('are counted by the first rule that they break, and with those used are all', () => {
    const all: Point[] = [...ALLEY, [0.5, 1, 1], [-0.74, 1, 1.9], [0.5, 1, 0.1], [1.5, 1, 0.2], [4, 1, 1], [1.4, 1, 9]];
    const l = made(all, { rowSpacingM: 3.5, skirtM: 0.5 });
    expect(l.leftOut).toMatchObject({ platform: 2, ground: 2, 'other-side': 0, beyond: 1 });
    expect(l.used + Object.values(l.leftOut).reduce((a, b) => a + b, 0)).toBe(all.length);
  });
  it('the platform’s own bounds are not in it, and it can be switched off', () => {
    const all: Point[] = [...ALLEY, [0.75, 1, 1], [0.5, 1, 2], [0.5, 1, 1]];
    expect(made(all, { rowSpacingM: 3.5 }).leftOut.platform).toBe(1);
    expect(made(all, { rowSpacingM: 3.5, platform: null }).leftOut.platform).toBe(0);
  });
  it('a lone shoot does not raise the top, a lone twig is not the face', () => {
    const l = made([...ALLEY, ...Array.from({ length: 20 }, (_, i): Point => [1.3, i / 3, 4 + i / 10]), ...Array.from({ length: 20 }, (_, i): Point => [0.8, i / 3, 2.5])], { rowSpacingM: 3.5 });
    expect(l.canopy.heightM).toBeLessThan(3.05);
    expect(l.canopy.widthM).toBeLessThan(1.2);
  });
});

describe('row spacing', () => {
  it('is read off the row behind, whose face stands one spacing further', () => {
    const l = made([...ALLEY, ...wall(1, 4.6, 1, 2, [0, 8], 0.3), ...wall(-1, 4.8, 1, 2, [0, 8], 0.3)]);
    expect(l.spacingFrom).toBe('seen');
    expect(l.rowSpacingM).toBeCloseTo(3.5, 1);
  });
  it('is refused where no row behind is seen, and where the alley behind is grown shut', () => {
    expect(refusal(ALLEY)).toBe('laser-no-spacing');
    expect(spacingSeen(Float64Array.from({ length: 5000 }, (_, i) => 1 + i / 1000))).toBeNull();
  });
  it('what is given comes first', () => expect(made([...ALLEY, ...wall(1, 4.6, 1, 2)], { rowSpacingM: 3 })).toMatchObject({ rowSpacingM: 3, spacingFrom: 'given' }));
  it('a mast beside the scanner is not taken for a row', () =>
    expect(spacingSeen(Float64Array.from([...Array(150).fill(0.1), ...Array(3000).fill(1.2), ...Array(100).fill(4.7)]))).toBeCloseTo(3.5, 9));
});

describe('density by height', () => {
  it('is 1 in the mean over the section, and follows the points', () => {
    const l = made([...ALLEY, ...wall(1, 1.2, 2, 3)], { rowSpacingM: 3.5, skirtM: 0.5 });
    const area = l.bands.map((b) => b.widthM! * (b.toM - b.fromM));
    const mean = l.bands.reduce((s, b, k) => s + b.relativeDensity! * area[k]!, 0) / area.reduce((a, b) => a + b, 0);
    expect(mean).toBeCloseTo(1, 9);
    expect(l.bands.at(-2)!.relativeDensity! / l.bands[1]!.relativeDensity!).toBeCloseTo(1.5, 0);
  });
  it('with the scanner’s height, equal angles on an upright face are equal density', () => {
    // Beams every 0.05° from 1.5 m up, to a face 1.2 m away: the higher, the thinner they lie.
    const fan: Point[] = [];
    for (let deg = -38; deg < 52; deg += 0.05) for (const y of [0.2, 0.5, 0.8]) for (const sign of [1, -1]) fan.push([sign * 1.2, y, 1.5 + 1.2 * Math.tan((deg * Math.PI) / 180)]);
    const raw = made(fan, { rowSpacingM: 3.5, skirtM: 0.6 }).bands;
    const weighed = made(fan, { rowSpacingM: 3.5, skirtM: 0.6, scannerHeightM: 1.5 }).bands;
    expect(raw.at(-2)!.relativeDensity! / raw[3]!.relativeDensity!).toBeCloseTo(1 / (1 + ((raw.at(-2)!.fromM + raw.at(-2)!.toM) / 2 - 1.5) ** 2 / 1.2 ** 2), 1);
    for (const b of weighed) expect(b.relativeDensity!).toBeCloseTo(1, 1);
  });
  it('a beam at the scanner’s own height counts once, at 45° twice', () => expect([beamWeight(0, 2), beamWeight(2, 2), beamWeight(-2, 2)]).toEqual([1, 2, 2]));
});

describe('gaps along the row', () => {
  it('are the share of cells without canopy, between the first and the last with', () => {
    const trees = [...wall(1, 1.2, 0.5, 3, [0, 4]), ...wall(1, 1.2, 0.5, 3, [6, 10])];
    expect(made(trees, { rowSpacingM: 3.5 }).canopy.filledFraction).toBeCloseTo(0.8, 9);
    expect(made(trees, { rowSpacingM: 3.5 }).gaps!.stretchM).toBeCloseTo(10, 9);
  });
  it('are not told of less than five metres', () => {
    const l = made(wall(1, 1.2, 0.5, 3, [0, 4]), { rowSpacingM: 3.5 });
    expect(l.gaps).toEqual({ filledFraction: null, stretchM: 4 });
    expect(l.canopy).not.toHaveProperty('filledFraction');
  });
  it('count from any place along the row', () => {
    const far = (y0: number) => made([...wall(1, 1.2, 0.5, 3, [y0, y0 + 4]), ...wall(1, 1.2, 0.5, 3, [y0 + 6, y0 + 10])], { rowSpacingM: 3.5 }).canopy;
    expect(far(-5000)).toEqual(far(0));
    expect(far(500_000).filledFraction).toBeCloseTo(0.8, 9);
  });
});

describe('gaps of the face, and volumes', () => {
  // A wall with ten points in every cell of 0.1 m × 0.25 m, and every fifth cell of its upper half empty.
  const pierced = wall(1, 1.2, 0.5, 3, [0, 4], 0.05).filter(([, y, z]) => z < 1.75 || Math.floor(y / 0.1 + 1e-9) % 5 !== 2);
  const l = made(pierced, { rowSpacingM: 3.5, skirtM: 0.5 });
  it('are the cells without a point', () => {
    const [low, high] = [l.bands.slice(0, 4), l.bands.slice(6, 10)];
    for (const b of low) expect(b.gapFraction).toBe(0);
    for (const b of high) expect(b.gapFraction).toBeCloseTo(0.2, 9);
  });
  it('are not told of few points, of a short stretch, or where nothing tells along the row', () => {
    expect(made(pierced.filter((_, i) => i % 8 === 0), { rowSpacingM: 3.5, skirtM: 0.5 }).bands.map((b) => b.gapFraction)).toEqual(l.bands.map(() => null));
    expect(made(wall(1, 1.2, 0.5, 3, [0, 0.7], 0.02), { rowSpacingM: 3.5, skirtM: 0.5 }).bands[0]!.gapFraction).toBeNull();
    expect(made(pierced, { rowSpacingM: 3.5, skirtM: 0.5 }, false).bands[0]!.gapFraction).toBeNull();
  });
  it('box, outline and occupied volume nest', () => {
    const { boxM3PerM, outlineM3PerM, occupiedM3PerM } = l.volumes;
    expect(boxM3PerM).toBeCloseTo(2.5 * l.canopy.widthM, 1);
    expect(outlineM3PerM).toBeCloseTo(boxM3PerM, 1);
    // Half of the outline has a fifth of its face open.
    expect(occupiedM3PerM! / outlineM3PerM).toBeCloseTo(0.9, 1);
    expect(made(pierced, { rowSpacingM: 3.5, skirtM: 0.5 }, false).volumes.occupiedM3PerM).toBeNull();
  });
  it('the spacing that the row behind shows stands beside the one given', () => {
    expect(made([...ALLEY, ...wall(1, 4.6, 1, 2, [0, 8], 0.3), ...wall(-1, 4.8, 1, 2, [0, 8], 0.3)], { rowSpacingM: 3 }).spacingSeenM).toBeCloseTo(3.5, 1);
    expect(l.spacingSeenM).toBeNull();
  });
});

describe('no canopy is made of', () => {
  it('too few points', () => {
    expect(refusal([], { rowSpacingM: 3.5 })).toBe('laser-too-few');
    expect(refusal(ALLEY.slice(0, 99), { rowSpacingM: 3.5 })).toBe('laser-too-few');
    expect(refusal(wall(1, 1.2, 0.5, 3), { rowSpacingM: 3.5, side: 'left' })).toBe('laser-too-few');
  });
  it('a face at the row line or behind it', () => expect(refusal(ALLEY, { rowSpacingM: 2.4 })).toBe('laser-no-face'));
  it('a skirt above the top', () => expect(refusal(ALLEY, { rowSpacingM: 3.5, skirtM: 3.5 })).toBe('laser-skirt-above-top'));
});

/** Points scattered evenly over a box, the same for the same seed. */
function scattered(seed: number, count: number, [lateral, along, height]: readonly [number, number, number]): Point[] {
  let state = seed;
  const next = (): number => (state = (state * 16807) % 2147483647) / 2147483647;
  return Array.from({ length: count }, (): Point => [lateral * (2 * next() - 1), along * (2 * next() - 1), height * next()]);
}
it('whatever the points, a canopy is sound or refused by name', () => {
  let canopies = 0;
  const size = (most: number) => fc.double({ min: 0.1, max: most, noNaN: true });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e9 }), fc.integer({ min: 0, max: 3000 }), fc.tuple(size(8), size(100), size(15)), fc.option(fc.double({ min: 0.5, max: 20, noNaN: true }), { nil: undefined, freq: 9 }), (seed, count, box, rowSpacingM) => {
      const all = scattered(seed, count, box);
      const r = laserCanopy(points(all), { ...DEFAULT_RULES, ...(rowSpacingM === undefined ? {} : { rowSpacingM }) });
      if ('kind' in r) {
        expect(r.code).toMatch(/^laser-/);
        return;
      }
      canopies++;
      expect(r.used + Object.values(r.leftOut).reduce((a, b) => a + b, 0)).toBe(all.length);
      const { canopy } = r;
      expect(canopy.skirtM!).toBeLessThan(canopy.heightM);
      expect(canopy.widthM).toBeLessThanOrEqual(r.rowSpacingM + 0.01);
      expect(canopy.profile!.length).toBeLessThanOrEqual(60);
      canopy.profile!.forEach((p, i, list) => {
        expect(p.heightM).toBeGreaterThan(list[i - 1]?.heightM ?? -Infinity);
        expect(p.widthM).toBeGreaterThanOrEqual(0);
      });
      for (const b of r.bands) if (b.relativeDensity !== null) expect(Number.isFinite(b.relativeDensity)).toBe(true);
    }),
    { numRuns: 200 }
  );
  expect(canopies).toBeGreaterThan(20);
});
