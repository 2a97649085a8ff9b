import { CELL_M, CELL_SHARE, SHORTEST_STRETCH_M } from './rules.ts';
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
