import { CELLS, NEAR_CELLS, OTHER_ROWS, PER_PARCEL } from '../flight.ts';
import { rayWeights } from '../rays.ts';
import type { SideTransport, Transport } from '../transport.ts';
import { DEPTHS, FATES, HEIGHTS, type Release, type SprayCase } from '../types.ts';
import { byRay } from '../weights.ts';

/**
 * What a litre of one nozzle does, as numbers that add up: on the trees, lost, then on the trees by height. What nozzles spray adds up, so a setting is the
 * sum of its columns, each times its flow.
 */
export type Column = Float64Array;
const ON_TREES = 0;
const LOST = 1;
const BY_HEIGHT = 2;
const LENGTH = BY_HEIGHT + HEIGHTS;

const TREES: ReadonlySet<string> = new Set(['near', 'far', 'rows']);
const LOSSES: ReadonlySet<string> = new Set(['ground-out', 'over', 'through', 'dried']);

/** What the model says of a setting. */
export interface Told {
  readonly onTrees: number;
  readonly lost: number;
  readonly cv: number | null;
}

/** Weights on the rays by nozzle and direction: the rays stand alike in every air and for all constants but the spread of the plume. */
export type RayWeights = Map<string, Float64Array>;

/** The columns of one transport; a test holds their sum against `balance`. */
export class Columns {
  private readonly bySpectrum = new Map<string, Float64Array>();
  private readonly known = new Map<string, Column>();
  constructor(
    private readonly c: SprayCase,
    private readonly t: Transport,
    private readonly weights: RayWeights
  ) {}

  /** The same flights with other weights. */
  with(c: SprayCase): Columns {
    return new Columns(c, this.t, this.weights);
  }

  of(n: Release): Column {
    const key = `${n.position} ${n.angleDeg} ${n.vmdUm}`;
    const before = this.known.get(key);
    if (before) return before;
    const column = new Float64Array(LENGTH);
    const side = this.t.sides.find((s) => s.side === n.side);
    if (side) {
      const ends = this.ends(side, n.vmdUm);
      this.raysOf(side, n).forEach((w, j) => {
        for (let i = 0; i < LENGTH; i++) column[i]! += w * ends[j * LENGTH + i]!;
      });
    }
    this.known.set(key, column);
    return column;
  }

  private raysOf(side: SideTransport, n: Release): Float64Array {
    const key = `${this.c.constants.plumeSpread} ${n.position} ${n.angleDeg}`;
    const before = this.weights.get(key) ?? rayWeights(this.c, side.rays, n);
    this.weights.set(key, before);
    return before;
  }

  /** Ray by ray, what one spectrum does. */
  private ends(side: SideTransport, vmdUm: number): Float64Array {
    const key = `${side.side} ${vmdUm}`;
    const before = this.bySpectrum.get(key);
    if (before) return before;
    const all = byRay(side, vmdUm, this.c.constants.finePart);
    const out = new Float64Array(side.rays.length * LENGTH);
    for (let j = 0; j < side.rays.length; j++) {
      const from = j * PER_PARCEL;
      const to = j * LENGTH;
      FATES.forEach((fate, i) => {
        if (TREES.has(fate)) out[to + ON_TREES]! += all[from + i]!;
        if (LOSSES.has(fate)) out[to + LOST]! += all[from + i]!;
      });
      for (let i = 0; i < CELLS; i++) out[to + BY_HEIGHT + Math.floor(i / DEPTHS)]! += all[from + NEAR_CELLS + i]!;
      for (let i = 0; i < HEIGHTS; i++) out[to + BY_HEIGHT + i]! += all[from + OTHER_ROWS + i]!;
    }
    this.bySpectrum.set(key, out);
    return out;
  }

  /** All nozzles of a case together. */
  tell(nozzles: readonly Release[]): Told {
    return told(this.sum(nozzles), flowOf(nozzles), this.areas);
  }
  /** Share of what they spray that stays at each height. */
  heights(nozzles: readonly Release[]): Float64Array {
    return this.sum(nozzles).subarray(BY_HEIGHT).map((v) => v / flowOf(nozzles));
  }
  private sum(nozzles: readonly Release[]): Column {
    const sum = empty();
    for (const n of nozzles) add(sum, this.of(n), n.flowLPerMin);
    return sum;
  }

  /** Leaf, or wood, by height. */
  get areas(): ArrayLike<number> {
    return this.t.field.areaIndex;
  }
}

const flowOf = (nozzles: readonly Release[]): number => nozzles.reduce((q, n) => q + n.flowLPerMin, 0);

export const empty = (): Column => new Float64Array(LENGTH);

export function add(sum: Column, column: Column, times: number): void {
  for (let i = 0; i < LENGTH; i++) sum[i]! += times * column[i]!;
}

/** @param sum of columns times flows @param flow of all of them together */
export const told = (sum: Column, flow: number, areas: ArrayLike<number>): Told => ({ onTrees: sum[ON_TREES]! / flow, lost: sum[LOST]! / flow, cv: unevenness(sum, areas) });

/** Deviation over mean of the deposit by height, weighted by leaf area; null where nothing grows or nothing stays. */
function unevenness(sum: Column, areas: ArrayLike<number>): number | null {
  let area = 0;
  for (let i = 0; i < HEIGHTS; i++) area += areas[i]!;
  const mean = sum[ON_TREES]! / area;
  if (!(area > 0) || !(mean > 0)) return null;
  let squares = 0;
  for (let i = 0; i < HEIGHTS; i++) if (areas[i]! > 0) squares += areas[i]! * (sum[BY_HEIGHT + i]! / areas[i]! - mean) ** 2;
  return Math.sqrt(squares / area) / mean;
}
