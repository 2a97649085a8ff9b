import { balance } from '../balance.ts';
import type { Transport } from '../transport.ts';
import type { HeightCell, SprayCase } from '../types.ts';
import type { Choice, Place } from './places.ts';
import { flowOf } from './stand.ts';

/** What one place adds to a setting, each number times its flow, L/min: what nozzles spray adds up, so a setting is the sum of its columns. */
export interface Column {
  readonly flow: number;
  readonly onTrees: number;
  readonly lost: number;
  readonly byHeight: Float64Array;
}

/** Leaf area by height, the same for all settings in front of one canopy. */
export const areasOf = (heights: readonly HeightCell[]): Float64Array => Float64Array.from(heights, (h) => h.areaIndex);

/** @param all the case with every position open, with the air and the drops of the transport and the pressure in hand */
export function columnOf(all: SprayCase, t: Transport, place: Place, { swivelDeg }: Choice): Column {
  const nozzles = all.nozzles
    .filter((n) => place.ids.includes(n.position))
    .map((n) => ({ ...n, angleDeg: place.positions.find((p) => p.id === n.position)!.state.position.angleDeg + swivelDeg }));
  const alone = { ...all, nozzles };
  const flow = flowOf(alone);
  const b = balance(alone, t);
  return { flow, onTrees: flow * b.onTrees, lost: flow * b.lost, byHeight: Float64Array.from(b.heights, (h) => flow * h.share) };
}

/** Deviation over mean of the deposit by height, weighted by leaf area, of shares that stay at each height; null where nothing grows or nothing stays. */
export function unevenness(byHeight: Float64Array, areas: Float64Array): number | null {
  let area = 0;
  let share = 0;
  for (let i = 0; i < areas.length; i++) {
    if (!(areas[i]! > 0)) continue;
    area += areas[i]!;
    share += byHeight[i]!;
  }
  if (!(area > 0) || !(share > 0)) return null;
  const mean = share / area;
  let squares = 0;
  for (let i = 0; i < areas.length; i++) if (areas[i]! > 0) squares += areas[i]! * (byHeight[i]! / areas[i]! - mean) ** 2;
  return Math.sqrt(squares / area) / mean;
}
