import { parentPort, workerData } from 'node:worker_threads';
import { workOff, type Piece } from './piece.ts';

const work = workerData === null ? workOff : (await import('./balance-work.ts')).withBalance(workerData);

parentPort?.on('message', (piece: Piece) => {
  const done = work(piece);
  parentPort?.postMessage(done, [done.bytes.buffer]);
});
