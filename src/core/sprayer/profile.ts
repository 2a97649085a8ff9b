import { sectionArea } from '../canopy/outline.ts';
import type { WidthAt } from '../canopy/types.ts';
import { shareBetween } from './aim.ts';
import type { SprayPattern } from './types.ts';

/** One band of height: the share of the open flow aimed at it, and the share of the canopy's section that stands in it. */
export interface Band {
  readonly fromM: number;
  readonly toM: number;
  readonly aimed: number;
  readonly leaf: number;
}

export interface AimedNozzle {
  readonly x0: number;
  readonly z0: number;
  readonly angleDeg: number;
  readonly coneDeg: number;
  readonly pattern: SprayPattern;
  readonly flowLPerMin: number;
}

const DEG = 180 / Math.PI;

/**
 * Aimed flow against leaf, by height, where the straight spray crosses the middle of the near half row (a quarter of the width
 * inside the trunk line). Shares of the whole open flow and of the whole section; what passes over or under is in no band.
 */
export function bands(nozzles: readonly AimedNozzle[], outline: readonly WidthAt[], trunkX: number, widthM: number, count: number): readonly Band[] {
  const skirt = outline[0]?.heightM ?? 0;
  const top = outline.at(-1)?.heightM ?? 0;
  const area = sectionArea(outline);
  const flow = nozzles.reduce((s, n) => s + n.flowLPerMin, 0);
  if (!(top > skirt && area > 0)) return [];
  const planeX = trunkX - widthM / 4;
  return Array.from({ length: count }, (_, i) => {
    const fromM = skirt + ((top - skirt) * i) / count;
    const toM = skirt + ((top - skirt) * (i + 1)) / count;
    let aimed = 0;
    for (const n of nozzles) {
      const angle = (z: number) => Math.atan2(z - n.z0, Math.max(planeX - n.x0, 1e-6)) * DEG;
      aimed += n.flowLPerMin * shareBetween(n.pattern, n.angleDeg, n.coneDeg, angle(fromM), angle(toM));
    }
    return { fromM, toM, aimed: flow > 0 ? aimed / flow : 0, leaf: sectionArea(outline, fromM, toM) / area };
  });
}

/** Share of the open flow that stands where the leaf stands, 0…1: the overlap of the two profiles. */
export const overlap = (all: readonly Band[]): number => all.reduce((s, b) => s + Math.min(b.aimed, b.leaf), 0);
