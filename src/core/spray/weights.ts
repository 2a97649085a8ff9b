import { CELLS } from './flight.ts';
import { rayWeights } from './rays.ts';
import { SIZE_GRID_UM, sizeWeights } from './spectrum.ts';
import type { SideTransport } from './transport.ts';
import { DEPTHS, FATES, HEIGHTS, type Release, type SprayCase } from './types.ts';

const SIZES = SIZE_GRID_UM.length;

/** Weights of one nozzle on the parcels of its side, ray by ray, size by size, together 1. */
export function parcelWeights(c: SprayCase, side: SideTransport, n: Release): Float64Array {
  const rays = rayWeights(c, side.rays, n);
  const sizes = sizeWeights(n.vmdUm, c.constants.finePart);
  const weights = new Float64Array(rays.length * SIZES);
  for (let j = 0, p = 0; j < rays.length; j++) for (let s = 0; s < SIZES; s++) weights[p++] = rays[j]! * sizes[s]!;
  return weights;
}

/** What one spectrum does on each ray: fates, cells of the nearest row, heights of the others, one after the other. */
export const PER_RAY = FATES.length + CELLS + HEIGHTS;

const known = new WeakMap<SideTransport, Map<string, Float64Array>>();

/** Sizes weighed together and heights shared out, once per spectrum: nozzles of one spectrum then differ by their weights on the rays alone. */
export function byRay(side: SideTransport, vmdUm: number, finePart: number): Float64Array {
  let spectra = known.get(side);
  if (!spectra) known.set(side, (spectra = new Map()));
  const key = `${vmdUm} ${finePart}`;
  const before = spectra.get(key);
  if (before) return before;
  const sizes = sizeWeights(vmdUm, finePart);
  const out = new Float64Array(side.rays.length * PER_RAY);
  const [near, rows] = [new Float64Array(CELLS), new Float64Array(HEIGHTS)];
  for (let j = 0, p = 0; j < side.rays.length; j++) {
    const at = j * PER_RAY;
    near.fill(0);
    rows.fill(0);
    for (let s = 0; s < SIZES; s++, p++) {
      const w = sizes[s]!;
      for (let i = 0; i < FATES.length; i++) out[at + i]! += w * side.fates[p * FATES.length + i]!;
      for (let i = 0; i < CELLS; i++) near[i]! += w * side.near[p * CELLS + i]!;
      for (let i = 0; i < HEIGHTS; i++) rows[i]! += w * side.rows[p * HEIGHTS + i]!;
    }
    const [nearAt, rowsAt] = [at + FATES.length, at + FATES.length + CELLS];
    for (let from = 0; from < HEIGHTS; from++)
      for (let to = 0; to < HEIGHTS; to++) {
        const part = side.soft[from * HEIGHTS + to]!;
        if (part === 0) continue;
        for (let d = 0; d < DEPTHS; d++) out[nearAt + to * DEPTHS + d]! += part * near[from * DEPTHS + d]!;
        out[rowsAt + to]! += part * rows[from]!;
      }
  }
  spectra.set(key, out);
  return out;
}
