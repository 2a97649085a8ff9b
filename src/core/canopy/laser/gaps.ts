import { CELL_M, CELL_SHARE, FACE_CELL_M, FEWEST_CELLS, FEWEST_PER_CELL, SHORTEST_STRETCH_M } from './rules.ts';
import type { RowPoints } from './side.ts';
import { mean, median } from './statistics.ts';
import type { LaserGaps } from './types.ts';

/**
 * Share of the row's length that holds canopy: cells along the row with at least a tenth of the middle cell's points, out of all cells from
 * the first such to the last. Where both rows were seen, their mean. A stretch shorter than a few trees has no gap between trees to show.
 * @param alongBySide places of canopy points along each row, m
 */
export function gapsOf(alongBySide: readonly (readonly number[] | Float64Array)[]): LaserGaps {
  const rows = alongBySide.map((along) => {
    const cells = new Map<number, number>();
    for (const y of along) {
      const cell = Math.floor(y / CELL_M);
      cells.set(cell, (cells.get(cell) ?? 0) + 1);
    }
    const enough = CELL_SHARE * median([...cells.values()]);
    const held = [...cells].flatMap(([cell, n]) => (n >= enough ? [cell] : []));
    const length = held.reduce((a, b) => Math.max(a, b), -Infinity) - held.reduce((a, b) => Math.min(a, b), Infinity) + 1;
    return { filled: held.length / length, stretchM: length * CELL_M };
  });
  const stretchM = mean(rows.map((r) => r.stretchM));
  return { stretchM, filledFraction: stretchM < SHORTEST_STRETCH_M ? null : mean(rows.map((r) => r.filled)) };
}

/**
 * Share of empty cells along a row's face, band by band; null of a band with too few points, and of the row where it is too short or its points
 * do not tell where along it they are. The row is taken to reach from its first point to its last.
 */
export function faceGaps({ alongM, heightM }: RowPoints, bandOf: (zM: number) => number, bands: number): readonly (number | null)[] | null {
  if (!alongM) return null;
  const cell = (y: number): number => Math.floor(y / FACE_CELL_M);
  let [first, last] = [Infinity, -Infinity];
  for (let i = 0; i < alongM.length; i++) {
    if (bandOf(heightM[i]!) < 0) continue;
    const at = cell(alongM[i]!);
    if (at < first) first = at;
    if (at > last) last = at;
  }
  const cells = last - first + 1;
  if (!(cells >= FEWEST_CELLS)) return null;
  const held = Array.from({ length: bands }, () => new Set<number>());
  const points = new Float64Array(bands);
  for (let i = 0; i < alongM.length; i++) {
    const band = bandOf(heightM[i]!);
    if (band < 0) continue;
    held[band]!.add(cell(alongM[i]!));
    points[band]!++;
  }
  return held.map((h, k) => (points[k]! >= FEWEST_PER_CELL * cells ? 1 - h.size / cells : null));
}
