import type { LaserPoints } from './types.ts';

/** Points for a picture of the section: across and up, m, and what became of each (see `sortedPoints`). */
export interface ThinPoints {
  readonly lateralM: Float32Array;
  readonly heightM: Float32Array;
  readonly state: Uint8Array;
}

/** Every so many of the points, `most` at most. */
export function thinned({ lateralM, heightM }: LaserPoints, state: Uint8Array, most: number): ThinPoints {
  const every = Math.max(1, Math.ceil(lateralM.length / most));
  const pick = (_: unknown, i: number): boolean => i % every === 0;
  return { lateralM: Float32Array.from(lateralM.filter(pick)), heightM: Float32Array.from(heightM.filter(pick)), state: state.filter(pick) };
}
