// Named here and not in the worker, so that it is among the files that the page keeps for when there is no signal.
import wasm from 'laz-perf/lib/worker/laz-perf.wasm?url';
import type { FileClient, Port } from '../file/client.ts';
import { moduleWorker } from '../worker.ts';
import type { Asked, Judged, NotOpened, OpenedPoints, Opening } from './messages.ts';
import code from './worker.ts?worker&url';

/** One file of laser points in a worker of its own. */
export type LaserClient = FileClient<Opening, OpenedPoints | NotOpened, Asked, Judged>;
export const startLaser = (): Port<Opening, OpenedPoints | NotOpened, Asked, Judged> => moduleWorker(code);
export { wasm };
