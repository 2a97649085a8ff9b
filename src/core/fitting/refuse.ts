import { flowAt } from '../sprayer/flow.ts';
import { refused, type Refused } from '../working/answer.ts';
import type { Piece } from './pressures.ts';
import type { FittingProblem } from './problem.ts';

/** Sizes that a place could carry. */
interface Room {
  readonly count: number;
  readonly sizes: readonly number[];
}

/** Why no combination fits: the first limit that alone stands in the way, with what it would take. */
export function whyNothing(problem: FittingProblem, pieces: readonly Piece[], rooms: readonly Room[]): Refused {
  const used = new Set(rooms.flatMap((r) => r.sizes));
  const { finestClass, coarsestClass } = problem;
  if (finestClass || coarsestClass) {
    const unprinted = [...used].filter((s) => !problem.sizes[s]!.size.droplets?.length);
    if (unprinted.length === used.size) return refused('fitting-class-unknown', 'fitting.finestClass', { table: problem.sizes[unprinted[0]!]!.table.name });
    if (!pieces.some((p) => rooms.every((r) => r.sizes.some((s) => p.allowed[s] === 1)))) return refused('fitting-class-unmet', 'fitting.finestClass', {});
  }
  const usable = pieces.filter((p) => rooms.every((r) => r.sizes.some((s) => p.allowed[s] === 1)));
  if (usable.length === 0) {
    const tables = [...used].map((s) => problem.sizes[s]!.table);
    return refused('fitting-pressure-tables', 'fitting.pressureMinBar', {
      least: problem.pressure.leastBar,
      most: problem.pressure.mostBar,
      tableLeast: Math.min(...tables.map((t) => t.pressureMinBar)),
      tableMost: Math.max(...tables.map((t) => t.pressureMaxBar)),
      unit: 'bar'
    });
  }
  const volume = (bar: number, speed: number, pick: (flows: number[]) => number, piece: Piece): number => {
    let flow = 0;
    for (const room of rooms) {
      const flows = room.sizes.filter((s) => piece.allowed[s] === 1).map((s) => flowAt(problem.sizes[s]!.table, problem.sizes[s]!.size, bar, problem.specificGravity));
      flow += room.count * pick(flows);
    }
    return (600 * flow) / (speed * problem.widthM);
  };
  const most = Math.max(...usable.map((p) => volume(p.mostBar, problem.speed.leastKmH, (f) => Math.max(...f), p)));
  const least = Math.min(...usable.map((p) => volume(p.leastBar, problem.speed.mostKmH, (f) => Math.min(...f), p)));
  const target = problem.targetLPerHa;
  if (most < target) return refused('fitting-too-little', 'fitting.targetLPerHa', { target, most, unit: 'L/ha' });
  if (least > target) return refused('fitting-too-much', 'fitting.targetLPerHa', { target, least, unit: 'L/ha' });
  if (problem.mostChanges < problem.positions.length) return refused('fitting-changes-bind', 'fitting.mostChanges', { changes: problem.mostChanges });
  return refused('fitting-none', 'fitting', {});
}
