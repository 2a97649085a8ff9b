import { parentPort, workerData } from 'node:worker_threads';
import { workOff, type Done, type Piece } from './piece.ts';
import type { Task } from './pool.ts';

async function workFor(task: Task): Promise<(piece: Piece) => Done> {
  if (task === null) return workOff;
  return 'spray' in task ? (await import('./balance-work.ts')).withBalance(task.spray) : (await import('./interval-work.ts')).withIntervals(task.intervals);
}
const work = await workFor(workerData as Task);

parentPort?.on('message', (piece: Piece) => {
  const done = work(piece);
  parentPort?.postMessage(done, [done.bytes.buffer]);
});
