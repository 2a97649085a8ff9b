import { parentPort, workerData } from 'node:worker_threads';
import { workOff, type Piece } from './piece.ts';
import { makerOf, type Wanted } from './wanted.ts';

const wanted = workerData as Wanted;
const work = workOff(await makerOf(wanted), wanted.intervals !== null);

parentPort?.on('message', (piece: Piece) => {
  const done = work(piece);
  parentPort?.postMessage(done, [done.bytes.buffer]);
});
