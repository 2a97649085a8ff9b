import type { JetPath } from '../air/jet.ts';
import { Flight, PER_PARCEL, type Recorder } from './flight.ts';
import { SIZE_GRID_UM } from './spectrum.ts';
import type { SideTransport, Transport } from './transport.ts';
import { parcelWeights } from './weights.ts';
import { TRACK_STEP_S, type DropTrack, type JetPoint, type SprayCase, type SprayPicture } from './types.ts';

const CELL_M = 0.1;
/** Width of the softening, cells: about the spacing of neighbouring rays in the leaf. */
const SOFT_CELLS = 2;
const MOST_TRACK_S = 3;
/** Drops of a spectrum that are followed on each ray: small, middle, large by volume. */
const FOLLOWED = [0.15, 0.5, 0.85] as const;

const SIZES = SIZE_GRID_UM.length;

/**
 * What is drawn: spray that passes each place, the paths of the air, and the ways of some drops. Of all nozzles that spray, or of one alone.
 * @param position nozzle to be seen alone @param tracks whether ways of drops are wanted
 */
export function picture(c: SprayCase, t: Transport, position: string | null = null, tracks = false): SprayPicture {
  const R = c.canopy.rowSpacingM;
  const halfM = 1.5 * R;
  // As high as a drawing that is filled by the width of the rows shows.
  const heightM = Math.max(1.3 * t.field.topM + 1, 1.8 * R);
  const columns = Math.ceil((2 * halfM) / CELL_M);
  const rows = Math.ceil(heightM / CELL_M);
  const map = new Float32Array(columns * rows);
  const flight = new Flight();
  const drops: DropTrack[] = [];
  const chosen = position === null ? c.nozzles : c.nozzles.filter((n) => n.position === position);
  const total = chosen.reduce((q, n) => q + n.flowLPerMin, 0);
  for (const side of t.sides) {
    const sign = side.side === 'right' ? 1 : -1;
    const weights = new Float64Array(side.rays.length * SIZES);
    for (const n of chosen) {
      if (n.side !== side.side) continue;
      parcelWeights(c, side, n).forEach((w, p) => (weights[p]! += (w * n.flowLPerMin) / total));
    }
    flight.prepare(t.field, side.wind, c.constants);
    const paint = new Painter(map, columns, rows, halfM, sign);
    for (let j = 0, p = 0; j < side.rays.length; j++)
      for (let s = 0; s < SIZES; s++, p++) {
        if (weights[p]! < 1e-5) continue;
        paint.weight = weights[p]!;
        follow(flight, side, j, s, paint);
      }
    if (tracks) drops.push(...followedDrops(flight, side, weights, sign));
  }
  soften(map, columns, rows);
  soften(map, columns, rows);
  let most = 0;
  for (const v of map) most = Math.max(most, v);
  if (most > 0) for (let i = 0; i < map.length; i++) map[i]! /= most;
  return { map: { xM: -columns * CELL_M * 0.5, zM: 0, cellM: CELL_M, columns, rows, density: map }, jets: t.sides.flatMap(jetsOf), tracks: drops };
}

const bin = new Float64Array(PER_PARCEL);

function follow(flight: Flight, side: SideTransport, ray: number, size: number, recorder: Recorder): void {
  flight.recorder = recorder;
  flight.fly(side.paths[ray]!, side.rays[ray]!, SIZE_GRID_UM[size]! * 1e-6, bin, 0);
}

/** Adds a parcel's way through each cell, times what it still carries: spray that passes there, whether fast or slow. */
class Painter implements Recorder {
  weight = 0;
  constructor(
    private readonly map: Float32Array,
    private readonly columns: number,
    private readonly rows: number,
    private readonly halfM: number,
    private readonly sign: number
  ) {}
  step(fromX: number, fromZ: number, toX: number, toZ: number, _seconds: number, mass: number): void {
    const parts = Math.ceil(Math.max(Math.abs(toX - fromX), Math.abs(toZ - fromZ)) / CELL_M) || 1;
    const each = (this.weight * mass * Math.hypot(toX - fromX, toZ - fromZ)) / parts;
    for (let i = 0; i < parts; i++) {
      const f = (i + 0.5) / parts;
      const column = Math.floor((this.sign * (fromX + f * (toX - fromX)) + this.halfM) / CELL_M);
      const row = Math.floor((fromZ + f * (toZ - fromZ)) / CELL_M);
      if (column >= 0 && column < this.columns && row >= 0 && row < this.rows) this.map[row * this.columns + column]! += each;
    }
  }
}

/** A running mean along rows, then along columns. */
function soften(map: Float32Array, columns: number, rows: number): void {
  const line = new Float32Array(Math.max(columns, rows));
  const along = (count: number, at: (i: number) => number): void => {
    for (let i = 0; i < count; i++) line[i] = map[at(i)]!;
    for (let i = 0; i < count; i++) {
      const from = Math.max(0, i - SOFT_CELLS);
      const to = Math.min(count - 1, i + SOFT_CELLS);
      let sum = 0;
      for (let k = from; k <= to; k++) sum += line[k]!;
      map[at(i)] = sum / (to - from + 1);
    }
  };
  for (let r = 0; r < rows; r++) along(columns, (i) => r * columns + i);
  for (let k = 0; k < columns; k++) along(rows, (i) => i * columns + k);
}

/** A drop's place at even times, up to where half of its kind has been caught, or it has ended. */
class Follower implements Recorder {
  readonly points: number[] = [];
  private time = 0;
  constructor(private readonly sign: number) {}
  step(fromX: number, fromZ: number, toX: number, toZ: number, seconds: number, mass: number): void {
    const next = () => (this.points.length / 2) * TRACK_STEP_S;
    while (mass >= 0.5 && next() <= Math.min(this.time + seconds, MOST_TRACK_S)) {
      const f = (next() - this.time) / seconds;
      this.points.push(this.sign * (fromX + f * (toX - fromX)), Math.max(fromZ + f * (toZ - fromZ), 0));
    }
    this.time += seconds;
  }
}

function followedDrops(flight: Flight, side: SideTransport, weights: Float64Array, sign: number): DropTrack[] {
  const out: DropTrack[] = [];
  for (let j = 0; j < side.rays.length; j++) {
    const own = weights.subarray(j * SIZES, (j + 1) * SIZES);
    const share = own.reduce((a, b) => a + b, 0);
    if (share < 0.002) continue;
    for (const part of FOLLOWED) {
      let size = 0;
      for (let below = own[0]!; below < part * share && size < SIZES - 1; below += own[++size]!);
      const follower = new Follower(sign);
      follow(flight, side, j, size, follower);
      out.push({ side: side.side, dropUm: SIZE_GRID_UM[size]!, share: share / FOLLOWED.length, points: Float32Array.from(follower.points) });
    }
  }
  flight.recorder = null;
  return out;
}

/** Paths inside the curtain, each once. */
function jetsOf({ side, paths, rays }: SideTransport): SprayPicture['jets'] {
  const sign = side === 'right' ? 1 : -1;
  const inside = paths.filter((_, j) => rays[j]!.above >= 0 && rays[j]!.below >= 0);
  return [...new Set(inside)].map((path) => ({ side, points: pointsOf(path, sign) }));
}
const pointsOf = (path: JetPath, sign: number): JetPoint[] =>
  Array.from({ length: path.count }, (_, i) => ({ xM: sign * path.x[i]!, zM: path.z[i]!, speedMPerS: path.speed[i]!, halfWidthM: path.b[i]! }));
