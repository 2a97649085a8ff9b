import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandEdges, countsOf, photoOf } from '#core/canopy/photo/counts.ts';
import { canopyOfPhoto } from '#core/canopy/photo/canopy.ts';
import { photoDensity } from '#core/canopy/photo/density.ts';
import { histogramsOf } from '#core/canopy/photo/frame.ts';
import { otsu } from '#core/canopy/photo/otsu.ts';
import { LEVELS, type CanopyPhoto } from '#core/canopy/photo/types.ts';
import { outlineOf, sectionArea, widthAt } from '#core/canopy/outline.ts';
import type { Canopy } from '#core/canopy/types.ts';
import { isRefused, valueOf } from '#core/working/answer.ts';
import { workingLines } from '#words/working.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { checkDocument } from '#job/read.ts';
import '../../support/engine.ts';
import { lehmer } from '../../support/random.ts';
import { document } from '../../support/sample.ts';

const WHOLE = { left: 0, right: 1, top: 0, bottom: 1 };
const photo = (...bands: readonly (readonly [widthM: number, pixels: number, gaps: number])[]): CanopyPhoto => ({
  threshold: 128,
  bands: bands.map(([widthM, pixels, gaps], i) => ({ fromM: i / 2, toM: (i + 1) / 2, widthM, pixels, gaps }))
});
const spread = (levels: Readonly<Record<number, number>>): number[] => Array.from({ length: LEVELS }, (_, i) => levels[i] ?? 0);

describe('threshold', () => {
  it('parts two levels half way between them, wholly', () => {
    // Every level from 41 to 200 parts them alike.
    const found = otsu(spread({ 40: 700, 200: 300 }));
    expect(found).toMatchObject({ threshold: 121 });
    expect('separability' in found && found.separability).toBeCloseTo(1, 12);
  });
  // By hand: levels 0…5 with 8, 7, 2, 6, 9, 4 pixels; Otsu's own measure is greatest with 0…2 below.
  it('of a small histogram, by going through every level', () => {
    const counts = [8, 7, 2, 6, 9, 4];
    const values = counts.flatMap((n, level) => Array<number>(n).fill(level));
    const variance = (v: readonly number[]): number => v.reduce((s, x) => s + (x - v.reduce((a, b) => a + b, 0) / v.length) ** 2, 0);
    // The least variance within the two classes is the greatest between them.
    const within = [1, 2, 3, 4, 5].map((t) => variance(values.filter((v) => v < t)) + variance(values.filter((v) => v >= t)));
    const best = within.indexOf(Math.min(...within)) + 1;
    const found = otsu(spread({ ...counts }));
    expect(found).toMatchObject({ threshold: best });
    expect('separability' in found && found.separability).toBeCloseTo(1 - Math.min(...within) / variance(values), 9);
  });
  it('is refused where nothing is to be parted', () => {
    expect(otsu(spread({ 90: 5000 }))).toMatchObject({ code: 'photo-flat' });
    expect(otsu(spread({}))).toMatchObject({ code: 'photo-flat' });
  });
});

describe('counting', () => {
  it('goes by bands from the lowest, within the frame alone', () => {
    // Rows 0…3 from the top are 10, 20, 30, 40; columns 0 and 3 lie outside the frame.
    const levels = Uint8Array.from({ length: 16 }, (_, i) => 10 * (Math.floor(i / 4) + 1) + (i % 4 === 0 || i % 4 === 3 ? 100 : 0));
    const h = histogramsOf(levels, 4, 4, { left: 0.25, right: 0.75, top: 0, bottom: 1 }, 2);
    const low = h.subarray(0, LEVELS);
    const high = h.subarray(LEVELS);
    expect([low[30], low[40], high[10], high[20]]).toEqual([2, 2, 2, 2]);
    expect(h.reduce((a, b) => a + b)).toBe(8);
    expect(countsOf(low, 40)).toEqual({ pixels: 4, gaps: 2 });
  });
  it('bands are as near to the wanted height as goes', () => {
    expect(bandEdges(0.5, 3, 0.5)).toEqual([0.5, 1, 1.5, 2, 2.5, 3]);
    expect(bandEdges(0.5, 3, 0.6)).toHaveLength(5);
    expect(bandEdges(0, 0.2, 0.5)).toEqual([0, 0.2]);
    expect(bandEdges(0, 20, 0.1)).toHaveLength(25);
  });
});

describe('a picture of leaves at random gives back the leaf that was put in', () => {
  // Each pixel is a gap with the chance exp(−G·LAD·W): the counts are binomial, and their spread is known.
  it.each([[0.5, 1.2], [2, 1.2], [3, 1.5]])('%f m²/m³ in %f m, pixel by pixel', (lad, widthM) => {
    const P = Math.exp(-0.5 * lad * widthM);
    const next = lehmer(20260101);
    const levels = Uint8Array.from({ length: 400 * 400 }, () => (next() < P ? 200 + 50 * next() : 20 + 60 * next()));
    const h = histogramsOf(levels, 400, 400, WHOLE, 4);
    const parted = otsu(h.subarray(0, LEVELS));
    if ('kind' in parted) throw new Error(parted.code);
    const outline = [{ heightM: 0, widthM }, { heightM: 2, widthM }];
    const said = photoDensity(photoOf([0, 1, 2, 3].map((k) => h.subarray(k * LEVELS, (k + 1) * LEVELS)), bandEdges(0, 2, 0.5), outline, parted.threshold));
    // Of ln P: √((1 − P)/(n·P)); four of them over the whole.
    const error = Math.sqrt((1 - P) / (160_000 * P)) / (0.5 * widthM);
    expect(Math.abs(valueOf(said.density)! - lad)).toBeLessThan(4 * error);
    for (const b of said.bands) expect(Math.abs(valueOf(b.density)! - lad)).toBeLessThan(4 * 2 * error);
  });
  // Round leaves thrown at random cover 1 − exp(−N·a): the leaf that a view meets, G·LAD·W, is N·a.
  it('disc by disc', () => {
    const [side, discs, radius] = [800, 600, 20];
    const next = lehmer(7);
    const levels = new Uint8Array(side * side).fill(240);
    for (let d = 0; d < discs; d++) {
      const [cx, cy] = [next() * side, next() * side];
      for (let y = -radius; y <= radius; y++)
        for (let x = -radius; x <= radius; x++)
          // Over the edge and in again, so that every place is met alike.
          if (x * x + y * y <= radius * radius) levels[((Math.floor(cy + y) + side) % side) * side + ((Math.floor(cx + x) + side) % side)] = 30;
    }
    const said = photoDensity({ threshold: 128, bands: [{ fromM: 0, toM: 2, widthM: 1, ...countsOf(histogramsOf(levels, side, side, WHOLE, 1), 128) }] });
    const lad = (discs * Math.PI * radius ** 2) / side ** 2 / 0.5;
    expect(Math.abs(valueOf(said.density)! / lad - 1)).toBeLessThan(0.05);
  });
});

describe('figures', () => {
  it('follow Beer and Lambert: e⁻¹ of gaps in 1 m of leaves at random is 2 m²/m³', () => {
    const said = photoDensity(photo([1, 1_000_000, Math.round(1_000_000 / Math.E)]));
    expect(valueOf(said.density)).toBeCloseTo(2, 5);
    expect(said.atLeast).toBe(false);
  });
  it('the mean is by area of the section', () => {
    const P = (lad: number, w: number): number => Math.round(1e6 * Math.exp(-0.5 * lad * w));
    const said = photoDensity(photo([1.5, 1e6, P(1, 1.5)], [0.5, 1e6, P(3, 0.5)]));
    expect(valueOf(said.density)).toBeCloseTo((1 * 1.5 + 3 * 0.5) / 2, 3);
  });
  it('halve as G or the clumping doubles; both are assumptions of the document', () => {
    const one = photo([1, 1e5, 3e4]);
    const base = valueOf(photoDensity(one).density)!;
    expect(valueOf(photoDensity(one, { 'photo.projection': 1 }).density)).toBeCloseTo(base / 2, 9);
    expect(valueOf(photoDensity(one, { 'photo.clumping': 0.5 }).density)).toBeCloseTo(base * 2, 9);
    expect([...photoDensity(one).assumptions].map(([id, g]) => [id, g.value, g.certainty])).toEqual([['photo.projection', 0.5, 'assumed'], ['photo.clumping', 1, 'assumed']]);
  });
  it('carry their working to the counts', () => {
    const { filled, inputs } = workingLines(photoDensity(photo([1.2, 1000, 250])).density, 'metric');
    expect(filled).toContain('ln');
    expect(JSON.stringify(inputs)).toContain('250');
  });
});

describe('what cannot be told is refused by name', () => {
  it('a band with too few gaps, which then stands in the mean with what it has at least', () => {
    const said = photoDensity(photo([1, 1e5, 3e4], [1, 1e5, 3]));
    expect(said.bands[1]!.density).toMatchObject({ code: 'photo-saturated', parameters: { from: 0.5, to: 1, gaps: 3, fewest: 10 } });
    expect(valueOf(said.bands[1]!.atLeast)).toBeCloseTo(Math.log(1e4) / 0.5, 6);
    expect([said.atLeast, said.saturated]).toEqual([true, 0.5]);
    expect(valueOf(said.density)).toBeCloseTo((Math.log(1 / 0.3) / 0.5 + Math.log(1e4) / 0.5) / 2, 6);
  });
  it.each([
    ['photo-mostly-saturated', photo([1, 1e5, 3], [1, 1e5, 3], [1, 1e5, 1e4])],
    ['photo-few-pixels', photo([1, 1e5, 3e4], [1, 100, 50])],
    ['photo-no-width', photo([1, 1e5, 3e4], [0, 1e5, 3e4])],
    ['photo-no-leaf', photo([1, 1e5, 99_990])],
    ['photo-too-dense', photo([0.1, 1e5, 20])],
    ['photo-no-bands', photo()]
  ])('%s', (code, p) => expect(photoDensity(p).density).toMatchObject({ code }));
});

describe('taken into a canopy', () => {
  const canopy: Canopy = { heightM: 3, widthM: 1.4, skirtM: 0.5, shape: 'wall', densityClass: 'dense' };
  const taken = (c: Canopy) => {
    const outline = outlineOf(c);
    const edges = bandEdges(c.skirtM!, c.heightM, 0.5);
    const bands = edges.slice(1).map((toM, i) => ({ fromM: edges[i]!, toM, widthM: widthAt(outline, (edges[i]! + toM) / 2), pixels: 1e5, gaps: 2e4 + 1e4 * i }));
    return { outline, said: photoDensity({ threshold: 128, bands }) };
  };
  it.each([['a drawn outline', canopy], ['measured widths', { ...canopy, profile: [{ heightM: 1, widthM: 1.4 }, { heightM: 2.25, widthM: 1, relativeDensity: 2 }] }]])('%s stays as it was', (_, c) => {
    const { outline, said } = taken(c);
    const made = canopyOfPhoto(c, said, true)!;
    const after = outlineOf({ ...c, ...made });
    for (let z = 0.51; z < 3; z += 0.07) expect(widthAt(after, z)).toBeCloseTo(widthAt(outline, z), 3);
    expect(sectionArea(after)).toBeCloseTo(sectionArea(outline), 3);
    const told = made.profile!.filter((p) => p.relativeDensity !== undefined);
    expect(told.map((p) => p.heightM)).toEqual([0.75, 1.25, 1.75, 2.25, 2.75]);
    told.forEach((p, i) => expect(p.relativeDensity).toBeCloseTo(valueOf(said.bands[i]!.density)! / valueOf(said.density)!, 3));
  });
  it('the density alone, where no more is wanted; nothing, where it was refused', () => {
    const { said } = taken(canopy);
    expect(Object.keys(canopyOfPhoto(canopy, said, false)!)).toEqual(['ladM2PerM3']);
    expect(canopyOfPhoto(canopy, photoDensity(photo()), true)).toBeNull();
  });
});

it('whatever the counts, a density is finite and within what a document takes, or refused by name', () => {
  let told = 0;
  const often = <T>(usual: fc.Arbitrary<T>, any: fc.Arbitrary<T>) => fc.oneof({ weight: 19, arbitrary: usual }, { weight: 1, arbitrary: any });
  const band = fc.record({
    widthM: often(fc.integer({ min: 50, max: 400 }).map((cm) => cm / 100), fc.double({ min: 0, max: 12, noNaN: true })),
    pixels: often(fc.integer({ min: 100_000, max: 1e8 }), fc.integer({ min: 1, max: 1e8 })),
    share: often(fc.integer({ min: 1, max: 99 }).map((p) => p / 100), fc.double({ min: 0, max: 1, noNaN: true }))
  });
  fc.assert(
    fc.property(fc.array(band, { minLength: 1, maxLength: 24 }), (bands) => {
      const { density } = photoDensity({ threshold: 1, bands: bands.map((b, i) => ({ fromM: i / 2, toM: (i + 1) / 2, widthM: b.widthM, pixels: b.pixels, gaps: Math.round(b.pixels * b.share) })) });
      if (isRefused(density)) expect(density.code).toMatch(/^photo-/);
      else {
        told++;
        expect(density.value).toBeGreaterThanOrEqual(0.05);
        expect(density.value).toBeLessThanOrEqual(15);
      }
    })
  );
  expect(told).toBeGreaterThan(10);
});

it('in a document the density then stands as derived, and as measured without the counts', () => {
  const bare = document({ canopy: { ladM2PerM3: 2.5 } });
  const counted = { ...bare, blocks: bare.blocks.map((b) => ({ ...b, rungs: b.rungs.map((r) => ({ ...r, photo: photo([1, 1000, 300]) })) })) };
  const certainty = (d: typeof bare) => {
    const r = evaluate(d, d.blocks[0]!.id, d.blocks[0]!.rungs[0]!.id);
    if ('kind' in r) throw new Error(r.code);
    return (r.canopy.figures.LAD as { certainty?: string }).certainty;
  };
  expect([certainty(bare), certainty(counted)]).toEqual(['measured', 'derived']);
  expect(checkDocument(counted).ok).toBe(true);
  const wrong = { ...counted, blocks: counted.blocks.map((b) => ({ ...b, rungs: b.rungs.map((r) => ({ ...r, photo: photo([1, 1000, 3000]) })) })) };
  const read = checkDocument(wrong);
  expect(read.ok ? [] : read.problems.map((p) => `${p.path} ${p.code}`)).toEqual(['/blocks/0/rungs/0/photo/bands/0/gaps least-above-most']);
});
