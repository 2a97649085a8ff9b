import { describe, expect, it } from 'vitest';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { balance } from '#core/spray/balance.ts';
import { band } from '#core/spray/band.ts';
import { sprayCase } from '#core/spray/case.ts';
import { picture } from '#core/spray/picture.ts';
import { transport } from '#core/spray/transport.ts';
import { FATES, TRACK_STEP_S, type SprayCase } from '#core/spray/types.ts';
import { document } from '../../../support/sample.ts';

const d = document({ canopy: { ladM2PerM3: 2 } });
const made = sprayCase(d, evaluate(d, 'block', 'now') as Result);
if ('kind' in made) throw new Error(made.code);
const still: SprayCase = { ...made, constants: { ...made.constants, windMPerS: 0 } };
const t = transport(still);
const { map, jets, tracks } = picture(still, t, null, true);
const at = (x: number, z: number): number => map.density[Math.floor((z - map.zM) / map.cellM) * map.columns + Math.floor((x - map.xM) / map.cellM)]!;
const sum = (values: Iterable<number>): number => [...values].reduce((a, b) => a + b, 0);

describe('the picture of the spray', () => {
  it('is densest near the machine and thinner behind the row', () => {
    expect(Math.max(...map.density)).toBeCloseTo(1, 6);
    const R = still.canopy.rowSpacingM;
    expect(at(0.9, 1.2)).toBeGreaterThan(5 * at(R / 2 + 1, 1.2));
    expect(at(R / 2 + 1, 1.2)).toBeGreaterThan(0);
  });
  it('is its own mirror in still air', () => {
    for (let r = 0; r < map.rows; r += 3)
      for (let k = 0; k < map.columns / 2; k += 5) expect(map.density[r * map.columns + k]).toBeCloseTo(map.density[(r + 1) * map.columns - 1 - k]!, 4);
  });
  it('of one nozzle alone lies on its own side, where it points', () => {
    const alone = picture(still, t, 'R2').map;
    const half = (from: number, to: number) => sum(Array.from({ length: alone.rows }, (_, r) => sum(alone.density.subarray(r * alone.columns + from, r * alone.columns + to))));
    expect(half(alone.columns / 2, alone.columns)).toBeGreaterThan(50 * half(0, alone.columns / 2));
  });
  it('of a nozzle that does not spray is empty', () => {
    expect(Math.max(...picture(still, t, 'none-such').map.density)).toBe(0);
  });
  it('draws the air on both sides, slower the farther it comes', () => {
    expect(new Set(jets.map((j) => j.side))).toEqual(new Set(['left', 'right']));
    for (const { side, points } of jets) {
      expect(Math.sign(points[3]!.xM)).toBe(side === 'left' ? -1 : 1);
      expect(points.at(-1)!.speedMPerS).toBeLessThan(points[0]!.speedMPerS / 3);
      expect(points[10]!.halfWidthM).toBeGreaterThan(points[2]!.halfWidthM);
    }
  });
  it('follows drops step by step, none below the ground, none faster than the air at the outlet', () => {
    expect(tracks.length).toBeGreaterThan(20);
    for (const { points, dropUm } of tracks) {
      expect(dropUm).toBeGreaterThanOrEqual(40);
      for (let i = 3; i < points.length; i += 2) {
        expect(points[i]!).toBeGreaterThanOrEqual(0);
        const far = Math.hypot(points[i - 1]! - points[i - 3]!, points[i]! - points[i - 2]!);
        expect(far).toBeLessThan(1.05 * still.air[0]!.outletMPerS * TRACK_STEP_S);
      }
    }
    expect(sum(tracks.map((each) => each.share))).toBeCloseTo(1, 1);
  });
});

describe('the band', () => {
  const b = balance(made, transport(made));
  const heard: number[] = [];
  const found = band(made, { progress: (done) => heard.push(done) });
  it('holds the balance, and is at least ±15 points on the trees', () => {
    for (const f of FATES) {
      expect(found.shares[f][0]).toBeLessThanOrEqual(b.shares[f]);
      expect(found.shares[f][1]).toBeGreaterThanOrEqual(b.shares[f]);
    }
    expect(b.onTrees - found.onTrees[0]).toBeGreaterThanOrEqual(0.15 - 1e-12);
    expect(found.onTrees[1] - b.onTrees).toBeGreaterThanOrEqual(0.15 - 1e-12);
    expect(b.lost - found.lost[0]).toBeGreaterThanOrEqual(Math.min(0.1, b.lost) - 1e-12);
  });
  it('tells its progress to the end, and names what moves the answer most first', () => {
    expect(heard.at(-1)).toBe(1);
    expect(heard).toEqual(heard.toSorted((x, y) => x - y));
    const moved = found.runs.map(({ onTrees: [low, high] }) => Math.max(Math.abs(low - b.onTrees), Math.abs(high - b.onTrees)));
    expect(moved).toEqual(moved.toSorted((x, y) => y - x));
    // Leaf projection and leaf area decide the split, drag hardly does.
    const place = (id: string) => found.runs.findIndex((r) => r.assumption === id);
    expect(place('spray.projection')).toBeLessThan(place('spray.canopy-drag'));
  });
  it('leaves out what the user stated, and what the case does not ask for', () => {
    const ids = (c: SprayCase) => band(c).runs.map((r) => r.assumption);
    expect(ids(made)).toContain('spray.projection');
    expect(ids({ ...made, stated: ['spray.projection'] })).not.toContain('spray.projection');
    // An arc of slots, in full leaf: no spouts, no wood that shows.
    expect(ids(made)).not.toContain('spray.round-entrainment');
    expect(ids(made)).not.toContain('spray.wood-density');
    const bare = { ...made, canopy: { ...made.canopy, ladM2PerM3: 0 } };
    expect(ids(bare)).toContain('spray.wood-density');
    expect(ids(bare)).not.toContain('spray.leaf-size');
  });
});
