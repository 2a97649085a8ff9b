import { parentPort, workerData } from 'node:worker_threads';
import { handedOver, workOff, type Piece } from './piece.ts';
import { makerOf, type Wanted } from './wanted.ts';

const wanted = workerData as Wanted;
const work = workOff(await makerOf(wanted), wanted.form, wanted.intervals !== null);

parentPort?.on('message', (piece: Piece) => {
  const done = work(piece);
  parentPort?.postMessage(done, handedOver(done));
});
