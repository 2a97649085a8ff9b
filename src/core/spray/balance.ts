import { CELLS } from './flight.ts';
import { rayWeights } from './rays.ts';
import { SIZE_GRID_UM, sizeWeights } from './spectrum.ts';
import type { SideTransport, Transport } from './transport.ts';
import { DEPTHS, FATES, HEIGHTS, type FaceSpeed, type Fate, type HeightCell, type NozzleBalance, type Release, type Shares8, type SprayBalance, type SprayCase } from './types.ts';

const SIZES = SIZE_GRID_UM.length;

/** Weights of one nozzle on the parcels of its side, ray by ray, size by size, together 1. */
export function parcelWeights(c: SprayCase, side: SideTransport, n: Release): Float64Array {
  const rays = rayWeights(c, side.rays, n);
  const sizes = sizeWeights(n.vmdUm, c.constants.finePart);
  const weights = new Float64Array(rays.length * SIZES);
  for (let j = 0, p = 0; j < rays.length; j++) for (let s = 0; s < SIZES; s++) weights[p++] = rays[j]! * sizes[s]!;
  return weights;
}

/** Where the spray of the nozzles in hand ends: weights times what becomes of each parcel. Shares are of what the nozzles of both sides spray together. */
export function balance(c: SprayCase, { field, sides }: Transport): SprayBalance {
  const total = c.nozzles.reduce((q, n) => q + n.flowLPerMin, 0);
  const perNozzle: NozzleBalance[] = [];
  const shares = new Float64Array(FATES.length);
  const near = new Float64Array(CELLS);
  const rows = new Float64Array(HEIGHTS);
  for (const side of sides) {
    const parcels = side.rays.length * SIZES;
    const all = new Float64Array(parcels);
    for (const n of c.nozzles) {
      if (n.side !== side.side) continue;
      const weights = parcelWeights(c, side, n);
      const own = new Float64Array(FATES.length);
      const part = total > 0 ? n.flowLPerMin / total : 0;
      for (let p = 0; p < parcels; p++) {
        const w = weights[p]!;
        if (w < 1e-9) continue;
        all[p]! += w * part;
        for (let f = 0; f < FATES.length; f++) own[f]! += w * side.fates[p * FATES.length + f]!;
      }
      perNozzle.push({ position: n.position, shares: named(own) });
    }
    for (let p = 0; p < parcels; p++) {
      const w = all[p]!;
      if (w === 0) continue;
      for (let f = 0; f < FATES.length; f++) shares[f]! += w * side.fates[p * FATES.length + f]!;
      for (let i = 0; i < CELLS; i++) near[i]! += w * side.near[p * CELLS + i]!;
      for (let i = 0; i < HEIGHTS; i++) rows[i]! += w * side.rows[p * HEIGHTS + i]!;
    }
  }
  const order = new Map(c.nozzles.map((n, i) => [n.position, i]));
  perNozzle.sort((a, b) => order.get(a.position)! - order.get(b.position)!);

  const { skirtM, topM, areaIndex } = field;
  const heights = Array.from({ length: HEIGHTS }, (_, k): HeightCell => {
    const byDepth = Array.from(near.subarray(k * DEPTHS, (k + 1) * DEPTHS));
    const share = byDepth.reduce((a, b) => a + b, 0) + rows[k]!;
    return {
      fromM: skirtM + ((topM - skirtM) * k) / HEIGHTS,
      toM: skirtM + ((topM - skirtM) * (k + 1)) / HEIGHTS,
      areaIndex: areaIndex[k]!,
      share,
      byDepth,
      depositUlPerCm2: areaIndex[k]! > 0 ? onArea(c.volumeLPerHa, share, areaIndex[k]!) : null
    };
  });
  const byFate = named(shares);
  const onTrees = byFate.near + byFate.far + byFate.rows;
  const area = areaIndex.reduce((a, b) => a + b, 0);
  const mean = area > 0 ? onArea(c.volumeLPerHa, onTrees, area) : null;
  return {
    shares: byFate,
    onTrees,
    lost: byFate['ground-out'] + byFate.over + byFate.through + byFate.dried,
    perNozzle,
    heights,
    depositUlPerCm2: mean,
    cv: mean !== null && mean > 0 ? unevenness(heights, mean) : null,
    faces: sides.flatMap((side) => faceSpeeds(side, field)),
    bare: field.bare
  };
}

/** 1 L/ha is 0.01 µL on a cm² of ground. */
const onArea = (litresPerHa: number, share: number, areaIndex: number): number => (litresPerHa * share) / (100 * areaIndex);

const named = (values: Float64Array): Shares8 => Object.fromEntries(FATES.map((f, i) => [f, values[i]!])) as Record<Fate, number>;

/** Standard deviation of the deposit over height, weighted by leaf area, over its mean. */
function unevenness(heights: readonly HeightCell[], mean: number): number {
  let area = 0;
  let squares = 0;
  for (const h of heights) {
    if (h.depositUlPerCm2 === null) continue;
    area += h.areaIndex;
    squares += h.areaIndex * (h.depositUlPerCm2 - mean) ** 2;
  }
  return area > 0 ? Math.sqrt(squares / area) / mean : 0;
}

/** Where each path of air meets the nearest row's outline, and where it leaves it on the far side. */
function faceSpeeds({ side, paths, rays }: SideTransport, field: Transport['field']): FaceSpeed[] {
  const R = field.rowSpacingM;
  const inside = (x: number, z: number) => x > 0 && x < R && z > field.skirtM && z < field.topM && Math.abs(x - R / 2) < field.half[(z / field.stepM) | 0]!;
  const out: FaceSpeed[] = [];
  for (const path of new Set(paths.filter((_, j) => rays[j]!.above >= 0 && rays[j]!.below >= 0))) {
    let entered = -1;
    let left = -1;
    for (let i = 0; i < path.count && left < 0; i++) {
      const now = inside(path.x[i]!, path.z[i]!);
      if (entered < 0 && now) entered = i;
      else if (entered >= 0 && !now) left = i;
    }
    if (entered >= 0) out.push({ side, heightM: path.z[entered]!, inMPerS: path.speed[Math.max(entered - 1, 0)]!, outMPerS: left < 0 ? null : path.speed[left]! });
  }
  return out.toSorted((a, b) => a.heightM - b.heightM);
}
