import { NEAR_CELLS, OTHER_ROWS, PER_PARCEL } from './flight.ts';
import { rayWeights } from './rays.ts';
import { SIZE_GRID_UM, sizeWeights } from './spectrum.ts';
import type { SideTransport } from './transport.ts';
import { DEPTHS, HEIGHTS, type Release, type SprayCase } from './types.ts';

const SIZES = SIZE_GRID_UM.length;

/** Weights of one nozzle on the parcels of its side, ray by ray, size by size, together 1. */
export function parcelWeights(c: SprayCase, side: SideTransport, n: Release): Float64Array {
  const rays = rayWeights(c, side.rays, n);
  const sizes = sizeWeights(n.vmdUm, c.constants.finePart);
  const weights = new Float64Array(rays.length * SIZES);
  for (let j = 0, p = 0; j < rays.length; j++) for (let s = 0; s < SIZES; s++) weights[p++] = rays[j]! * sizes[s]!;
  return weights;
}

const known = new WeakMap<SideTransport, Map<string, Float64Array>>();

/** Sizes weighed together and heights shared out, once per spectrum: nozzles of one spectrum then differ by their weights on the rays alone. */
export function byRay(side: SideTransport, vmdUm: number, finePart: number): Float64Array {
  let spectra = known.get(side);
  if (!spectra) known.set(side, (spectra = new Map()));
  const key = `${vmdUm} ${finePart}`;
  const before = spectra.get(key);
  if (before) return before;
  const sizes = sizeWeights(vmdUm, finePart);
  const out = new Float64Array(side.rays.length * PER_PARCEL);
  const sum = new Float64Array(PER_PARCEL);
  for (let j = 0, p = 0; j < side.rays.length; j++) {
    sum.fill(0);
    for (let s = 0; s < SIZES; s++, p += PER_PARCEL) {
      const w = sizes[s]!;
      for (let i = 0; i < PER_PARCEL; i++) sum[i]! += w * side.ends[p + i]!;
    }
    const at = j * PER_PARCEL;
    for (let i = 0; i < NEAR_CELLS; i++) out[at + i] = sum[i]!;
    for (let from = 0; from < HEIGHTS; from++) {
      const cell = NEAR_CELLS + from * DEPTHS;
      const other = sum[OTHER_ROWS + from]!;
      for (let to = 0; to < HEIGHTS; to++) {
        const part = side.soft[from * HEIGHTS + to]!;
        if (part === 0) continue;
        for (let d = 0; d < DEPTHS; d++) out[at + NEAR_CELLS + to * DEPTHS + d]! += part * sum[cell + d]!;
        out[at + OTHER_ROWS + to]! += part * other;
      }
    }
  }
  spectra.set(key, out);
  return out;
}
