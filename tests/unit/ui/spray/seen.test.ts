import { describe, expect, it } from 'vitest';
import type { SprayBalance } from '#core/spray/types.ts';
import { behind, depositAt, paperAt, ribbonAt, strength, withPaper, withRibbon } from '#ui/spray/seen.ts';

describe('what was seen', () => {
  it('is put down by side and height, changed, and taken back to nothing', () => {
    const one = withRibbon({}, 'left', 3, 'still')!;
    const two = withRibbon(one, 'right', 3, 'streams')!;
    const changed = withRibbon(two, 'left', 3.001, 'lifts')!;
    expect(changed.ribbons).toHaveLength(2);
    expect([ribbonAt(changed, 'left', 3), ribbonAt(changed, 'right', 3), ribbonAt(changed, 'left', 2)]).toEqual(['lifts', 'streams', undefined]);
    expect(withRibbon(one, 'left', 3, undefined)).toBeUndefined();
    expect(one.ribbons).toHaveLength(1);
  });
  it('papers of one height are told apart by place; ribbons stay', () => {
    const a = withPaper({ ribbons: [{ side: 'left', heightM: 1, class: 'still' }] }, 'left', 2, 'near', 40)!;
    const b = withPaper(a, 'left', 2, 'far', 0)!;
    expect([paperAt(b, 'left', 2, 'near'), paperAt(b, 'left', 2, 'far'), paperAt(b, 'right', 2, 'far')]).toEqual([40, 0, undefined]);
    expect(withPaper(withPaper(b, 'left', 2, 'near', undefined)!, 'left', 2, 'far', undefined)).toEqual({ ribbons: a.ribbons });
  });
  it('ribbons are ordered by how much they move', () => {
    expect((['streams', 'still', 'flutters', 'lifts'] as const).toSorted((x, y) => strength(x) - strength(y))).toEqual(['still', 'lifts', 'flutters', 'streams']);
  });
});

describe('what is expected there', () => {
  const b = {
    heights: [{ fromM: 0.5, toM: 1.5, areaIndex: 1, share: 0.3, byDepth: [0.12, 0.06, 0.04, 0.02], depositUlPerCm2: 2 }, { fromM: 1.5, toM: 2.5, areaIndex: 0, share: 0, byDepth: [0, 0, 0, 0], depositUlPerCm2: null }],
    faces: [{ side: 'left', heightM: 1, inMPerS: 12, outMPerS: null }, { side: 'right', heightM: 1, inMPerS: 12, outMPerS: 5 }]
  } as unknown as SprayBalance;
  it('air that stops within the row is none behind it; where no air comes nothing is said', () => {
    expect(behind(b, { side: 'left', heightM: 1 })).toBe(0);
    expect(behind(b, { side: 'right', heightM: 1 })).toBe(5);
    expect(behind(b, { side: 'right', heightM: 3 })).toBeUndefined();
  });
  it('deposit is parted by depth as the row catches it, and its mean over depth is that of the height', () => {
    const at = (place: 'near' | 'middle' | 'far') => depositAt(b, { heightM: 1, place })!;
    expect([at('near'), at('middle'), at('far')]).toEqual([expect.closeTo(4, 9), expect.closeTo(5 / 3, 9), expect.closeTo(2 / 3, 9)]);
    expect((at('near') + 2 * at('middle') + at('far')) / 4).toBeCloseTo(2, 9);
  });
  it('single cells are rough: height is told from the cells beside it, depth from more of them', () => {
    const cell = (k: number, byDepth: readonly number[], depositUlPerCm2: number) => ({ fromM: k, toM: k + 1, areaIndex: 1, share: 0, byDepth, depositUlPerCm2 });
    const rough = { heights: Array.from({ length: 9 }, (_, k) => cell(k, k % 2 ? [0.2, 0.1, 0.1, 0] : [0, 0.1, 0.1, 0.2], k % 3)), faces: [] } as unknown as SprayBalance;
    // 0, 1 and 2 about the middle; seven cells of depth, four of one kind and three of the other: 0.8 or 0.6 of 1.4 · 2.
    expect(depositAt(rough, { heightM: 4.5, place: 'near' })).toBeCloseTo((1 * 0.8) / 0.7, 9);
    expect(depositAt(rough, { heightM: 4.5, place: 'far' })).toBeCloseTo((1 * 0.6) / 0.7, 9);
  });
  it('nothing is predicted where nothing grows or beside the crown', () => {
    expect(depositAt({ ...b, heights: b.heights.slice(1) }, { heightM: 2, place: 'near' })).toBeUndefined();
    expect(depositAt({ ...b, heights: [] }, { heightM: 2, place: 'near' })).toBeUndefined();
    expect(depositAt(b, { heightM: 1, place: 'over' })).toBeUndefined();
    expect(depositAt(b, { heightM: 0, place: 'ground' })).toBeUndefined();
  });
});
