import type { Refused } from '#core/working/answer.ts';
import type { FileClient, Port } from '../file/client.ts';
import { moduleWorker } from '../worker.ts';
import type { Asked, Opened, Opening } from './messages.ts';
import code from './worker.ts?worker&url';

/** One picture in a worker of its own: what is counted are histograms, those of `histogramsOf`. */
export type PhotoClient = FileClient<Opening, Opened | Refused, Asked, Uint32Array>;
export const startPhoto = (): Port<Opening, Opened | Refused, Asked, Uint32Array> => moduleWorker(code);
