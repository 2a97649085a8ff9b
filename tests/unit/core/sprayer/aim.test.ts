import { describe, expect, test } from 'vitest';
import { bestSwivel, shareBelow, shareBetween, sharesOf, sightOf, type Sight } from '#core/sprayer/aim.ts';
import { given } from '#core/working/answer.ts';
import { num, refusal } from '../../../support/sample.ts';
import { faultsOf, originsOf } from '../../../support/working.ts';

describe('how a pattern spreads over its angle', () => {
  test('half is below the middle, all below the upper edge, none below the lower one', () => {
    for (const pattern of ['hollow-cone', 'full-cone', 'flat-fan'] as const)
      for (const [u, share] of [[-2, 0], [-1, 0], [0, 0.5], [1, 1], [2, 1]] as const) expect(shareBelow(pattern, u), `${pattern} ${u}`).toBeCloseTo(share, 12);
  });
  test('half way up: asin ½ is π/6 of a ring; a disc adds ½·√¾; a fan is even', () => {
    expect(shareBelow('hollow-cone', 0.5)).toBeCloseTo(0.666667, 6);
    expect(shareBelow('full-cone', 0.5)).toBeCloseTo(0.804499, 6);
    expect(shareBelow('flat-fan', 0.5)).toBeCloseTo(0.75, 12);
    expect(shareBelow('full-cone', -0.5)).toBeCloseTo(0.195501, 6);
  });
  test('between two angles, of a cone of 40° around 10°', () => {
    // 0° is half way down, 20° half way up.
    expect(shareBetween('flat-fan', 10, 40, 0, 20)).toBeCloseTo(0.5, 12);
    expect(shareBetween('hollow-cone', 10, 40, 0, 20)).toBeCloseTo(0.333333, 6);
    expect(shareBetween('flat-fan', 10, 40, 20, 0)).toBe(0);
    expect(shareBetween('flat-fan', 10, 40, -60, 60)).toBeCloseTo(1, 12);
  });
});

describe('shares of a nozzle', () => {
  const sight: Sight = { lowDeg: 0, highDeg: 20, allowedDeg: 25, inside: false, clearanceM: 1 };
  const of = (s: Sight | null) => sharesOf('flat-fan', given(10, 'deg'), given(40, 'deg'), s);
  test('leaf, over, under, and what is allowed of over', () => {
    const { inLeaf, overTop, underSkirt, allowance } = of(sight);
    expect([num(inLeaf), num(overTop), num(underSkirt), num(allowance)]).toEqual([0.5, 0.25, 0.25, 0.125].map((v) => expect.closeTo(v, 12) as number));
  });
  test('nothing is allowed where the allowance ends under the top', () => expect(num(of({ ...sight, allowedDeg: 10 }).allowance)).toBe(0));
  test('edges are of geometry', () => {
    expect(originsOf(of(sight)).sort()).toEqual(['(from nowhere) deg stated', '(geometry) deg derived']);
    expect(faultsOf(of(sight))).toEqual([]);
  });
  test('without a sight each is refused', () => expect(Object.values(of(null)).map((a) => refusal(a))).toEqual(Array(4).fill('no-outline @ canopy')));
});

describe('sight', () => {
  const deg = (dz: number, dx: number) => (Math.atan2(dz, dx) * 180) / Math.PI;
  /** A wedge: nothing wide at 1 m, 2 m wide at 2 m and up to 3 m; the trunk line is 3 m out. */
  const wedge = [{ heightM: 1, widthM: 0 }, { heightM: 2, widthM: 2 }, { heightM: 3, widthM: 2 }];
  test('every corner counts', () => {
    const s = sightOf(1, 1.5, 3, wedge, 0)!;
    // Lowest is the foot, 2 m out and half a metre down; highest the head of the face, 1 m out and 1.5 m up.
    expect([s.lowDeg, s.highDeg]).toEqual([expect.closeTo(deg(-0.5, 2), 10), expect.closeTo(deg(1.5, 1), 10)]);
  });
  test('the shortest way goes to a side, or to a corner where no side is nearer', () => {
    // The lower side runs where x + z = 4: from (2, 1) it is 1/√2 away, half way along.
    expect(sightOf(2, 1, 3, wedge, 0)!.clearanceM).toBeCloseTo(Math.SQRT1_2, 12);
    // Straight out to the face.
    expect(sightOf(1, 2.5, 3, wedge, 0)!.clearanceM).toBeCloseTo(1, 12);
    // From below the foot, and from above the head.
    expect(sightOf(3, 0.5, 3, wedge, 0)!.clearanceM).toBeCloseTo(0.5, 12);
    expect(sightOf(1, 3.75, 3, wedge, 0)!.clearanceM).toBeCloseTo(1.25, 12);
  });
  test('a corner written down twice does no harm', () => expect(sightOf(1, 2.5, 3, [wedge[0]!, wedge[1]!, wedge[1]!, wedge[2]!], 0)!.clearanceM).toBeCloseTo(1, 12));
  test('inside is between skirt and top, at or behind the face', () => {
    expect(sightOf(2.2, 2.5, 3, wedge, 0)!.inside).toBe(true);
    expect(sightOf(2.2, 1, 3, wedge, 0)!.inside).toBe(false);
    expect(sightOf(2.2, 3, 3, wedge, 0)!.inside).toBe(false);
    // At 1.5 m the wedge is 1 m wide: its face is 2.5 m out.
    expect([sightOf(2.5, 1.5, 3, wedge, 0)!.inside, sightOf(2.49, 1.5, 3, wedge, 0)!.inside]).toEqual([true, false]);
  });
  test('the allowance stands above every corner', () => {
    // From above the top the far end of the top is seen highest; 0.3 m over it, higher still.
    const s = sightOf(1, 4, 3, wedge, 0.3)!;
    expect([s.highDeg, s.allowedDeg]).toEqual([expect.closeTo(deg(-1, 2), 10), expect.closeTo(deg(-0.7, 2), 10)]);
  });
});

describe('a better turn', () => {
  const sight: Sight = { lowDeg: 0, highDeg: 30, allowedDeg: 30, inside: false, clearanceM: 1 };
  test('a body that does not turn has none, even where it stands askew', () => expect(bestSwivel('flat-fan', 40, 20, 20, 10, sight)).toBeNull());
  test('a range of more than a full turn is no range', () => {
    expect(bestSwivel('flat-fan', 40, -180, 180, 10, sight)).toEqual({ turnDeg: -15, inLeafAfter: 1 });
    expect(bestSwivel('flat-fan', 40, -180, 180.5, 10, sight)).toBeNull();
    expect(bestSwivel('flat-fan', 40, NaN, 60, 10, sight)).toBeNull();
  });
  test('up as well as down, the nearer of two', () => {
    // 10 points from leaf on either side; only within the range.
    expect(bestSwivel('flat-fan', -4, -10, 60, 10, sight)).toEqual({ turnDeg: 9, inLeafAfter: 1 });
    expect(bestSwivel('flat-fan', 34, -10, 60, 10, sight)).toEqual({ turnDeg: -9, inLeafAfter: 1 });
  });
  test('nearly as much as any turn could is enough: within 2 points', () => {
    // A fan of 50° over 30°: at best 0.6 of it is in leaf, from 5° on; at 4°, 0.58; at 3.5°, 0.57.
    expect(bestSwivel('flat-fan', -5, -10, 60, 50, sight)).toEqual({ turnDeg: 9, inLeafAfter: expect.closeTo(0.58, 9) });
  });
});
