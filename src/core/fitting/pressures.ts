import { dropletClass } from '../sprayer/flow.ts';
import { DROPLET_CLASSES } from '../sprayer/types.ts';
import type { FittingProblem, FittingSize } from './problem.ts';

/** A stretch of pressures, or a single one, over which the same sizes may be used. */
export interface Piece {
  readonly leastBar: number;
  readonly mostBar: number;
  /** By size. */
  readonly allowed: Uint8Array;
}

/** Pressures this close are one. */
const SAME = 1e-9;

/** May this size spray at this pressure: inside its table's range and the wanted droplet classes? A class that the table does not print meets no wish. */
export function mayAt(problem: FittingProblem, { table, size }: FittingSize, bar: number): boolean {
  if (bar < table.pressureMinBar * (1 - SAME) || bar > table.pressureMaxBar * (1 + SAME)) return false;
  const { finestClass, coarsestClass } = problem;
  if (!finestClass && !coarsestClass) return true;
  const found = dropletClass(size, bar);
  if (!found) return false;
  const rank = DROPLET_CLASSES.indexOf(found);
  return rank >= (finestClass ? DROPLET_CLASSES.indexOf(finestClass) : 0) && rank <= (coarsestClass ? DROPLET_CLASSES.indexOf(coarsestClass) : Infinity);
}

/** All pressures of the machine and the wish, cut where a table's range or a droplet class begins or ends; rising. */
export function piecesOf(problem: FittingProblem): Piece[] {
  const { leastBar, mostBar } = problem.pressure;
  const cuts = [leastBar, mostBar];
  for (const { table, size } of problem.sizes) cuts.push(table.pressureMinBar, table.pressureMaxBar, ...(size.droplets ?? []).map((d) => d.fromBar));
  const at = [...new Set(cuts)].filter((b) => b >= leastBar && b <= mostBar).sort((a, b) => a - b);
  const allowedAt = (bar: number) => Uint8Array.from(problem.sizes, (s) => Number(mayAt(problem, s, bar)));
  return at.flatMap((bar, i) => {
    const point = { leastBar: bar, mostBar: bar, allowed: allowedAt(bar) };
    const next = at[i + 1];
    return next === undefined ? [point] : [point, { leastBar: bar * (1 + 2 * SAME), mostBar: next * (1 - 2 * SAME), allowed: allowedAt((bar + next) / 2) }];
  });
}

/** The piece that a pressure lies in. */
export const pieceAt = (pieces: readonly Piece[], bar: number): Piece | undefined =>
  pieces.find((p) => bar >= p.leastBar * (1 - SAME) && bar <= p.mostBar * (1 + SAME));
