import type { FittingPosition, FittingProblem, FittingSize } from '#core/fitting/problem.ts';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import type { NozzleSize, NozzleTable } from '#core/sprayer/types.ts';

/** Small builders of fitting tasks. */

export const nozzleTable = (id: string, referenceBar: number, flows: readonly number[], more: Partial<NozzleTable> = {}): NozzleTable => ({
  id,
  name: id,
  pattern: 'hollow-cone',
  referenceBar,
  pressureMinBar: 3,
  pressureMaxBar: 20,
  sizes: flows.map((flowLPerMin, i): NozzleSize => ({ id: `${id}${i}`, flowLPerMin })),
  ...more
});

export const sizesOf = (...tables: readonly NozzleTable[]): FittingSize[] => tables.flatMap((table) => table.sizes.map((size) => ({ table, size, offered: true })));
export const isoSizes = (...ids: readonly string[]): FittingSize[] => sizesOf(ISO_10625).filter((s) => ids.length === 0 || ids.includes(s.size.id));

/** Positions of one side (or of both, alike) from the bottom up; weights on any scale. */
export function positionsOf(weights: readonly number[], present: readonly number[], sides: readonly ('left' | 'right')[] = ['left']): FittingPosition[] {
  const sum = weights.reduce((a, b) => a + b, 0) * sides.length;
  return sides.flatMap((side) => weights.map((w, i) => ({ id: `${side === 'left' ? 'L' : 'R'}${i + 1}`, side, heightM: 0.5 + 0.2 * i, angleDeg: 0, weight: w / sum, present: present[i]! })));
}

/** One alley of 4 m at 6 km/h: `flow` L/min in all makes the target. */
export const problemOf = (flow: number, more: Partial<FittingProblem> & Pick<FittingProblem, 'positions' | 'sizes'>): FittingProblem => ({
  weighting: 'own',
  targetLPerHa: (600 * flow) / (6 * 4),
  widthM: 4,
  specificGravity: 1,
  speed: { presentKmH: 6, leastKmH: 4, mostKmH: 8 },
  pressure: { presentBar: 10, leastBar: 5, mostBar: 15 },
  mirrored: false,
  mostChanges: more.positions.length,
  outlet: { kind: 'arc', axisHeightM: 0.95, radiusM: 0.55, fromDeg: -15, toDeg: 80, slotWidthM: 0.12 },
  canopyTopM: 3,
  evergreen: false,
  positionTolerance: 0.15,
  fewGain: 0.5,
  ...more
});
