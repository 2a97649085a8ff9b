import { widthAt } from '../canopy/outline.ts';
import type { WidthAt } from '../canopy/types.ts';
import type { Assumption } from '../working/assumption.ts';
import { given, refused, type Answer, type Given } from '../working/answer.ts';
import { derive, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { SprayPattern } from './types.ts';

/**
 * Where a nozzle's spray goes, as straight lines in the plane across the row, up to the trunk line. x is outward from the machine's
 * centre line, z up. Seen from the nozzle, the near half of the canopy fills one interval of angles; what runs above that interval
 * goes over the top, what runs below it goes under the skirt. Geometry alone: air bends and spreads real spray.
 */

export const AIM_ASSUMPTIONS: readonly Assumption[] = [
  // Spray a little above the top is tolerated: 0.2 to 0.5 m or a tenth of the height are in use, none published.
  { id: 'aim.overshoot', value: 0.3, unit: 'm', least: 0, most: 1.5, certainty: 'memory', sources: ['habit'] },
  // A nozzle earns its place when this share of its spray meets leaf or the allowance above it.
  { id: 'aim.useful-share', value: 0.5, unit: '1', least: 0.05, most: 1, certainty: 'memory', sources: ['habit'] }
];

const DEG = 180 / Math.PI;
/** Beyond any angle that a nozzle can have: open ends of an interval. */
const UP = 360;
const DOWN = -360;

/** Angles above horizontal, degrees, between which a canopy is seen from a nozzle. */
export interface Sight {
  readonly lowDeg: number;
  readonly highDeg: number;
  /** Upper end with the allowance above the top. */
  readonly allowedDeg: number;
  /** The nozzle stands inside the canopy: all its spray meets leaf, and the machine does not fit. */
  readonly inside: boolean;
  /** Shortest way from the nozzle to the outline, m. */
  readonly clearanceM: number;
}

/**
 * @param x0 @param z0 the nozzle, m @param trunkX distance of the trunk line from the centre line, m
 * @param outline full widths from skirt to top; none, where the canopy is contradictory, has no sight
 */
export function sightOf(x0: number, z0: number, trunkX: number, outline: readonly WidthAt[], overshootM: number): Sight | null {
  const first = outline[0];
  const last = outline.at(-1);
  if (!first || !last) return null;
  const faceX = trunkX - widthAt(outline, z0) / 2;
  if (z0 > first.heightM && z0 < last.heightM && x0 >= faceX) return { lowDeg: DOWN, highDeg: UP, allowedDeg: UP, inside: true, clearanceM: 0 };
  let low = Infinity;
  let high = -Infinity;
  let allowed = -Infinity;
  const see = (x: number, z: number) => {
    const a = Math.atan2(z - z0, x - x0) * DEG;
    if (a < low) low = a;
    if (a > high) high = a;
    allowed = Math.max(allowed, a, Math.atan2(z + overshootM - z0, x - x0) * DEG);
  };
  see(trunkX, first.heightM);
  for (const p of outline) see(trunkX - p.widthM / 2, p.heightM);
  see(trunkX, last.heightM);
  return { lowDeg: low, highDeg: high, allowedDeg: allowed, inside: false, clearanceM: clearance(x0, z0, trunkX, outline) };
}

function clearance(x0: number, z0: number, trunkX: number, outline: readonly WidthAt[]): number {
  let least = Infinity;
  for (let i = 1; i < outline.length; i++) {
    const ax = trunkX - outline[i - 1]!.widthM / 2;
    const az = outline[i - 1]!.heightM;
    const dx = trunkX - outline[i]!.widthM / 2 - ax;
    const dz = outline[i]!.heightM - az;
    const t = Math.min(Math.max(((x0 - ax) * dx + (z0 - az) * dz) / (dx * dx + dz * dz || 1), 0), 1);
    least = Math.min(least, Math.hypot(x0 - ax - t * dx, z0 - az - t * dz));
  }
  return least;
}

/**
 * Share of the spray below a direction u (−1 lower edge … 1 upper edge of the cone), seen along the row. Derived from the plane
 * projection: a thin hollow cone runs mostly at its edges, a full cone mostly in its middle, a flat fan evenly.
 */
export function shareBelow(pattern: SprayPattern, u: number): number {
  const c = Math.min(Math.max(u, -1), 1);
  switch (pattern) {
    case 'hollow-cone':
      return 0.5 + Math.asin(c) / Math.PI;
    case 'full-cone':
      return 0.5 + (c * Math.sqrt(1 - c * c) + Math.asin(c)) / Math.PI;
    case 'flat-fan':
      return 0.5 + c / 2;
  }
}

/** Share of a cone of full angle `a` around `t` that runs between the angles `c` and `b`, degrees. */
const shareFormula = (pattern: SprayPattern, expressionOf: (u: string) => string) => {
  const u = (angle: string) => `min(max(2 * (${angle} - t) / a, -1), 1)`;
  return formula(
    `share-between-${pattern}`, 'w', '1', { c: 'deg', b: 'deg', t: 'deg', a: 'deg' }, `max(0, (${expressionOf(u('b'))}) - (${expressionOf(u('c'))}))`,
    (v) => Math.max(0, shareBelow(pattern, (2 * (v.b - v.t)) / v.a) - shareBelow(pattern, (2 * (v.c - v.t)) / v.a)),
    { sources: ['geometry'], certainty: 'derived', range: { a: POSITIVE } }
  );
};
const SHARE = {
  'hollow-cone': shareFormula('hollow-cone', (u) => `asin(${u}) / 3.141592653589793`),
  'full-cone': shareFormula('full-cone', (u) => `(${u} * sqrt(1 - ${u} ^ 2) + asin(${u})) / 3.141592653589793`),
  'flat-fan': shareFormula('flat-fan', (u) => `${u} / 2`)
};

export interface Shares {
  readonly inLeaf: Answer;
  readonly overTop: Answer;
  readonly underSkirt: Answer;
  /** Part of `overTop` that stays within the allowance. */
  readonly allowance: Answer;
}

const edge = (deg: number): Given => given(deg, 'deg', 'derived', EDGE);
const EDGE = { sources: ['geometry'] } as const;
const ABOVE = edge(UP);
const BELOW = edge(DOWN);

export function sharesOf(pattern: SprayPattern, angleDeg: Given, coneDeg: Given, sight: Sight | null): Shares {
  if (!sight) {
    const none = refused('no-outline', 'canopy', {});
    return { inLeaf: none, overTop: none, underSkirt: none, allowance: none };
  }
  const low = edge(sight.lowDeg);
  const high = edge(sight.highDeg);
  const between = (c: Given, b: Given) => derive(SHARE[pattern], { c, b, t: angleDeg, a: coneDeg });
  return {
    inLeaf: between(low, high),
    overTop: between(high, ABOVE),
    underSkirt: between(BELOW, low),
    allowance: between(high, edge(Math.max(sight.allowedDeg, sight.highDeg)))
  };
}

/** Share of the spray between two angles, as a number: for searches over many directions. */
export const shareBetween = (pattern: SprayPattern, angleDeg: number, coneDeg: number, lowDeg: number, highDeg: number): number =>
  Math.max(0, shareBelow(pattern, (2 * (highDeg - angleDeg)) / coneDeg) - shareBelow(pattern, (2 * (lowDeg - angleDeg)) / coneDeg));

/** `unknown` where the canopy itself is contradictory and has no outline. */
export type Verdict = 'in-leaf' | 'over-top' | 'under-skirt' | 'shut' | 'unknown';

export interface SwivelChoice {
  /** Turn from where it stands now, degrees, up positive. */
  readonly turnDeg: number;
  readonly inLeafAfter: number;
}

/** A turn that brings less than this into leaf is not worth proposing. */
const LEAST_GAIN = 0.05;

/**
 * The smallest turn within the swivel's range that brings nearly as much spray into leaf as any turn could (within 2 points);
 * null where no turn gains at least 5 points.
 */
export function bestSwivel(pattern: SprayPattern, nowDeg: number, fromDeg: number, toDeg: number, coneDeg: number, sight: Sight): SwivelChoice | null {
  const inLeaf = (deg: number) => shareBetween(pattern, deg, coneDeg, sight.lowDeg, sight.highDeg);
  const now = inLeaf(nowDeg);
  if (now > 1 - LEAST_GAIN) return null;
  const steps = Math.ceil((toDeg - fromDeg) * 2);
  if (!(steps > 0 && steps <= 720)) return null;
  const at = (i: number) => Math.min(fromDeg + i / 2, toDeg);
  let best = now;
  for (let i = 0; i <= steps; i++) best = Math.max(best, inLeaf(at(i)));
  if (best - now < LEAST_GAIN) return null;
  let choice: SwivelChoice | null = null;
  for (let i = 0; i <= steps; i++) {
    const deg = at(i);
    const share = inLeaf(deg);
    if (share >= best - 0.02 && (choice === null || Math.abs(deg - nowDeg) < Math.abs(choice.turnDeg)))
      choice = { turnDeg: deg - nowDeg, inLeafAfter: share };
  }
  return choice;
}
