import { parentPort, workerData } from 'node:worker_threads';
import fc from 'fast-check';
import { DOORS } from './doors.ts';
import { foreign } from './mutate.ts';
import { give } from './one.ts';

/** Inputs are made so many at a time, each lot from a seed of its own, so that any of them can be made again. */
export const LOT = 500;

const { name, seed, runs } = workerData as { name: string; seed: number; runs: number };
const door = DOORS.find((d) => d.name === name)!;
const inputs = foreign(door.files);
for (let lot = 0; lot * LOT < runs; lot++) {
  const all = fc.sample(inputs, { seed: seed + lot, numRuns: Math.min(LOT, runs - lot * LOT) });
  for (const [i, bytes] of all.entries()) {
    // Before, not after: a reader that hangs is known by the input that it was given last.
    parentPort!.postMessage({ kind: 'given', lot, i, bytes });
    const { wrong, taken, ms } = await give(door, bytes);
    parentPort!.postMessage({ kind: 'done', wrong, taken, ms });
  }
}
parentPort!.postMessage({ kind: 'end' });
