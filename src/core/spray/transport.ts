import { emptyPath, jetPath, type JetPath, type JetStart } from '../air/jet.ts';
import { windProfile, type WindProfile } from '../air/wind.ts';
import type { Side } from '../sprayer/types.ts';
import { canopyField, densityAt, fromTrunk, type CanopyField } from './field.ts';
import { Flight, PER_PARCEL } from './flight.ts';
import { pitchM, raysOf, type Ray } from './rays.ts';
import { SIZE_GRID_UM } from './spectrum.ts';
import { HEIGHTS, type SprayCase } from './types.ts';

/** One side's rays with where a drop of each size on each ray ends. */
export interface SideTransport {
  readonly side: Side;
  /** +1 where the wind blows along with the spray. */
  readonly along: 1 | -1;
  readonly rays: readonly Ray[];
  /** Path of each ray's jet; neighbouring rays may share one. */
  readonly paths: readonly JetPath[];
  readonly wind: WindProfile;
  /** Ray by ray, size by size, what becomes of a parcel; see `flight.ts` for the order. */
  readonly ends: Float64Array;
  /** How what a ray leaves at one height is shared with the heights around, from row to column, each row together 1; see `softened`. */
  readonly soft: Float64Array;
}

/** What becomes of drops on every ray, whichever nozzles spray: canopy, air, wind and weather decide it alone. */
export interface Transport {
  readonly field: CanopyField;
  readonly sides: readonly SideTransport[];
}

/**
 * Flies drops of every size along every ray of every side that blows.
 * @param spare one that is no longer looked at: its lists are used again, so that a drag leaves no garbage
 */
export function transport(c: SprayCase, spare: Transport | null = null): Transport {
  const field = canopyField(c.canopy, c.constants);
  return { field, sides: c.air.map((_, i) => sideTransport(c, field, i, spare?.sides[i])) };
}

/** The air of one side alone: its jets and its wind. */
export function sideAir(c: SprayCase, field: CanopyField, index: number, spare: readonly JetPath[] = []) {
  const air = c.air[index]!;
  const along = air.side === 'right' ? 1 : -1;
  const k = c.constants;
  const wind = windProfile(field.topM, along * k.windMPerS, k.windDecay);
  const rays = raysOf(c, air);
  const edge = k.rows * field.rowSpacingM;
  // Gaps let the air through as well.
  const density = (x: number, z: number) => (Math.abs(x) > edge ? 0 : field.filled * densityAt(field, fromTrunk(field, x), z));
  const used = [...new Set(spare)];
  const known = new Map<JetStart, JetPath>();
  const paths = rays.map(({ jet }) => {
    let path = known.get(jet);
    if (!path) {
      const old = used[known.size];
      path = jetPath(old?.kind === jet.kind ? old : emptyPath(jet.kind), jet, wind, density, k);
      known.set(jet, path);
    }
    return path;
  });
  return { side: air.side, along, rays, paths, wind } as const;
}

const flight = new Flight();

function sideTransport(c: SprayCase, field: CanopyField, index: number, spare: SideTransport | undefined): SideTransport {
  const air = sideAir(c, field, index, spare?.paths);
  const length = air.rays.length * SIZE_GRID_UM.length * PER_PARCEL;
  const ends = spare?.ends.length === length ? spare.ends.fill(0) : new Float64Array(length);
  flight.prepare(field, air.wind, c.constants);
  for (let j = 0, at = 0; j < air.rays.length; j++)
    for (const um of SIZE_GRID_UM) {
      flight.fly(air.paths[j]!, air.rays[j]!, um * 1e-6, ends, at);
      at += PER_PARCEL;
    }
  return { ...air, ends, soft: softened(field, pitchM(c, air.rays) / 2) };
}

/**
 * A ray stands for all spray between its neighbours: what it leaves at a height is shared with the heights around, by a Gaussian of
 * half the rays' spacing, as leaf stands there. Without it the deposit by height would show the rays as stripes.
 */
function softened({ areaIndex, skirtM, topM }: CanopyField, spreadM: number): Float64Array {
  const cell = (topM - skirtM) / HEIGHTS;
  const soft = new Float64Array(HEIGHTS * HEIGHTS);
  for (let i = 0; i < HEIGHTS; i++) {
    let sum = 0;
    for (let k = 0; k < HEIGHTS; k++) {
      const far = Math.abs((i - k) * cell) / spreadM;
      // Beyond three spreads nothing worth a sum arrives.
      if (far < 3) sum += soft[i * HEIGHTS + k] = Math.exp(-0.5 * far * far) * areaIndex[k]!;
    }
    for (let k = 0; k < HEIGHTS; k++) soft[i * HEIGHTS + k] = sum > 0 ? soft[i * HEIGHTS + k]! / sum : Number(i === k);
  }
  return soft;
}
