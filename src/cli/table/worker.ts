import { parentPort } from 'node:worker_threads';
import { workOff, type Piece } from './piece.ts';

parentPort?.on('message', (piece: Piece) => {
  const done = workOff(piece);
  parentPort?.postMessage(done, [done.bytes.buffer]);
});
