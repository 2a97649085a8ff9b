import { NEAR_CELLS, OTHER_ROWS, PER_PARCEL } from './flight.ts';
import { rayWeights } from './rays.ts';
import type { SideTransport, Transport } from './transport.ts';
import { DEPTHS, FATES, HEIGHTS, type FaceSpeed, type Fate, type HeightCell, type NozzleBalance, type Shares8, type SprayBalance, type SprayCase } from './types.ts';
import { byRay } from './weights.ts';

/** Where the spray of the nozzles in hand ends: weights times what becomes of each ray. Shares are of what the nozzles of both sides spray together. */
export function balance(c: SprayCase, { field, sides }: Transport): SprayBalance {
  const total = c.nozzles.reduce((q, n) => q + n.flowLPerMin, 0);
  const perNozzle: NozzleBalance[] = [];
  const sum = new Float64Array(PER_PARCEL);
  for (const side of sides) {
    // Nozzles of one spectrum together, ray by ray.
    const spectra = new Map<Float64Array, Float64Array>();
    for (const n of c.nozzles) {
      if (n.side !== side.side) continue;
      const rays = rayWeights(c, side.rays, n);
      const ends = byRay(side, n.vmdUm, c.constants.finePart);
      const all = spectra.get(ends) ?? new Float64Array(rays.length);
      spectra.set(ends, all);
      const own = new Float64Array(FATES.length);
      const part = total > 0 ? n.flowLPerMin / total : 0;
      for (let j = 0, at = 0; j < rays.length; j++, at += PER_PARCEL) {
        const w = rays[j]!;
        all[j]! += part * w;
        for (let f = 0; f < FATES.length; f++) own[f]! += w * ends[at + f]!;
      }
      perNozzle.push({ position: n.position, shares: named(own) });
    }
    for (const [ends, all] of spectra)
      for (let j = 0, at = 0; j < all.length; j++, at += PER_PARCEL) {
        const w = all[j]!;
        for (let i = 0; i < PER_PARCEL; i++) sum[i]! += w * ends[at + i]!;
      }
  }
  const shares = sum.subarray(0, NEAR_CELLS);
  const near = sum.subarray(NEAR_CELLS, OTHER_ROWS);
  const rows = sum.subarray(OTHER_ROWS);
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
    if (entered < 0) continue;
    // Nodes stand 0.2 m apart; the face is between two of them.
    const at = (column: Float64Array, i: number, f: number) => (i === 0 ? column[0]! : column[i - 1]! + f * (column[i]! - column[i - 1]!));
    const crossing = (i: number): number => {
      const before = i > 0 && inside(path.x[i - 1]!, path.z[i - 1]!);
      let [low, high] = [0, 1];
      for (let n = 0; n < 12; n++) {
        const f = (low + high) / 2;
        if (inside(at(path.x, i, f), at(path.z, i, f)) === before) low = f;
        else high = f;
      }
      return (low + high) / 2;
    };
    const f = crossing(entered);
    out.push({ side, heightM: at(path.z, entered, f), inMPerS: at(path.speed, entered, f), outMPerS: left < 0 ? null : at(path.speed, left, crossing(left)) });
  }
  return out.toSorted((a, b) => a.heightM - b.heightM);
}
