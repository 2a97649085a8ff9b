import { FOOT_M } from '../../quantity/constants.ts';
import { refused, type Refused } from '../../working/answer.ts';
import { quantile } from './statistics.ts';
import type { LaserPoints } from './types.ts';

/** Points as a file holds them: in the scanner's own frame, or on a map. Columns of one length. */
export interface RawPoints {
  readonly x: Float64Array;
  /** null where nothing tells it. */
  readonly y: Float64Array | null;
  readonly z: Float64Array;
}

/** Where the alley lies in a file's own coordinates. */
export interface Placement {
  /** Metres in one of the file's units. */
  readonly unitM: number;
  /** A point on the middle of the alley, in the file's units. */
  readonly originX: number;
  readonly originY: number;
  /** Height of the ground, in the file's units. */
  readonly groundZ: number;
  /** Way of the rows, degrees from the file's y axis towards its x axis (on a map, from north over east), 0…180. */
  readonly bearingDeg: number;
}

/** The file is in the scanner's frame already: x across, y along, z above ground, metres. */
export const AS_IT_IS: Placement = { unitM: 1, originX: 0, originY: 0, groundZ: 0, bearingDeg: 0 };

/** Points further than these from the alley's middle and the ground are no part of it, m. */
export const FURTHEST_M = 100;
export const LOWEST_M = -20;
export const HIGHEST_M = 60;
/** Points that lie further apart are not of one orchard, m. */
const FARTHEST_APART_M = 10_000;
/** So many points are looked at to find the rows. */
const LOOKED_AT = 20_000;
/** The ground is where a twentieth of the points lie lower; points lie as wide as between the outermost twentieths. */
const TWENTIETH = 0.05;
/** Foliage, for finding rows: between these heights above the ground, m. */
const FOLIAGE_M = [0.6, 6] as const;
const BIN_M = 0.1;
/** An alley is looked for so far to either side of the middle of the points, m. */
const ALLEY_WITHIN_M = 6;
/** The least that an alley is wide, m. */
const ALLEY_M = 0.8;
/** Bins of an alley hold less than this of the fullest bin. */
const ALLEY_SHARE = 0.1;

export const unitOf = (unit: 'm' | 'ft'): number => (unit === 'ft' ? FOOT_M : 1);

/**
 * Where the alley seems to lie. Points within 100 m of x = 0 and from 20 m below to 60 m above z = 0 are taken to be in the scanner's own frame. Others are on a map:
 * the ground is the 5th percentile of heights, the rows run the way in which foliage, seen along it, stands in the sharpest strips, and the
 * alley is the free strip nearest to the middle. All of it is a proposal.
 * Refused by name: points that lie too far apart.
 */
export function proposedPlacement(raw: RawPoints, unitM = 1): Placement | Refused {
  const every = Math.max(1, Math.floor(raw.x.length / LOOKED_AT));
  const some = (column: Float64Array): Float64Array => column.filter((_, i) => i % every === 0).map((v) => v * unitM);
  const [xs, ys, zs] = [some(raw.x), raw.y && some(raw.y), some(raw.z)];
  const range = (column: Float64Array): readonly [number, number] => {
    const sorted = column.toSorted();
    return [quantile(sorted, 0.001), quantile(sorted, 0.999)];
  };
  const [x, y, z] = [range(xs), ys ? range(ys) : ([0, 0] as const), range(zs)];
  const apart = Math.max(x[1] - x[0], y[1] - y[0], z[1] - z[0]);
  if (!(apart <= FARTHEST_APART_M)) return refused('las-far-apart', 'points', { apart: Math.round(apart / 1000), most: FARTHEST_APART_M / 1000 });
  if (x[0] >= -FURTHEST_M && x[1] <= FURTHEST_M && z[0] >= LOWEST_M && z[1] <= HIGHEST_M) return { ...AS_IT_IS, unitM };

  const middle = (column: Float64Array): number => quantile(column.toSorted(), 0.5);
  const ground = quantile(zs.toSorted(), TWENTIETH);
  const leafy = (_: number, i: number): boolean => zs[i]! > ground + FOLIAGE_M[0] && zs[i]! < ground + FOLIAGE_M[1];
  const [cx, cy] = [middle(xs), ys ? middle(ys) : 0];
  const dx = xs.filter(leafy).map((v) => v - cx);
  const dy = ys ? ys.filter(leafy).map((v) => v - cy) : dx.map(() => 0);
  const bearingDeg = ys ? sharpestBearing(dx, dy) : 0;
  const [sin, cos] = [Math.sin(rad(bearingDeg)), Math.cos(rad(bearingDeg))];
  const across = alleyNear(dx.map((v, i) => v * cos - dy[i]! * sin));
  return { unitM, originX: (cx + across * cos) / unitM, originY: (cy - across * sin) / unitM, groundZ: ground / unitM, bearingDeg };
}

const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Bins of a column that hold points, by their number. */
function binned(values: Float64Array): Map<number, number> {
  const bins = new Map<number, number>();
  for (const v of values) {
    const bin = Math.floor(v / BIN_M);
    bins.set(bin, (bins.get(bin) ?? 0) + 1);
  }
  return bins;
}

/**
 * Whole degrees in which the points, seen along, stand in the fullest strips for how wide they lie: the greatest sum of squares times the
 * number of strips between the outermost twentieths, which is the same for points spread evenly however wide.
 */
function sharpestBearing(dx: Float64Array, dy: Float64Array): number {
  let best = { deg: 0, sharp: -1 };
  for (let deg = 0; deg < 180; deg++) {
    const [sin, cos] = [Math.sin(rad(deg)), Math.cos(rad(deg))];
    const across = dx.map((v, i) => v * cos - dy[i]! * sin);
    const sorted = across.toSorted();
    let sharp = 0;
    for (const n of binned(across).values()) sharp += n * n;
    sharp *= quantile(sorted, 1 - TWENTIETH) - quantile(sorted, TWENTIETH);
    if (sharp > best.sharp) best = { deg, sharp };
  }
  return best.deg;
}

/** Middle of the strip nearest to 0 that holds next to no foliage and is wide enough to drive in; 0 where there is none. */
function alleyNear(across: Float64Array): number {
  const bins = binned(across);
  const enough = ALLEY_SHARE * Math.max(...bins.values(), 0);
  const reach = Math.round(ALLEY_WITHIN_M / BIN_M);
  let nearest = Infinity;
  for (let bin = -reach, from = -reach; bin <= reach; bin++) {
    if ((bins.get(bin) ?? 0) < enough) continue;
    const middle = ((from + bin) / 2) * BIN_M;
    if ((bin - from) * BIN_M >= ALLEY_M && Math.abs(middle) < Math.abs(nearest)) nearest = middle;
    from = bin + 1;
  }
  return Number.isFinite(nearest) ? nearest : 0;
}

/** Points as a scanner in the alley would tell them, without those too far from it; and how many those were. */
export function placed({ x, y, z }: RawPoints, { unitM, originX, originY, groundZ, bearingDeg }: Placement): { readonly points: LaserPoints; readonly tooFar: number } {
  const [sin, cos] = [Math.sin(rad(bearingDeg)), Math.cos(rad(bearingDeg))];
  const lateralM = new Float64Array(x.length);
  const heightM = new Float64Array(x.length);
  const alongM = y && new Float64Array(x.length);
  let kept = 0;
  for (let i = 0; i < x.length; i++) {
    const dx = (x[i]! - originX) * unitM;
    const dy = y ? (y[i]! - originY) * unitM : 0;
    const lateral = y ? dx * cos - dy * sin : dx;
    const height = (z[i]! - groundZ) * unitM;
    if (!(Math.abs(lateral) <= FURTHEST_M && height >= LOWEST_M && height <= HIGHEST_M)) continue;
    lateralM[kept] = lateral;
    heightM[kept] = height;
    if (alongM) alongM[kept] = dx * sin + dy * cos;
    kept++;
  }
  return { points: { lateralM: lateralM.subarray(0, kept), heightM: heightM.subarray(0, kept), alongM: alongM && alongM.subarray(0, kept) }, tooFar: x.length - kept };
}
