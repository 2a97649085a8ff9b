import { sortedPoints } from '#core/canopy/laser/canopy.ts';
import { placed, proposedPlacement, type Placement, type RawPoints } from '#core/canopy/laser/place.ts';
import { thinned } from '#core/canopy/laser/thin.ts';
import type { LaserPoints } from '#core/canopy/laser/types.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { readLaserFile } from '#job/laser/open.ts';
import type { Source } from '#job/laser/source.ts';
import type { Message, Task } from '../file/client.ts';
import type { Asked, Judged, NotOpened, OpenedPoints, Opening } from './messages.ts';
import { startUnpacker } from './unpacker.ts';

/** Reads laser points beside the page's own thread and keeps them: nothing of them leaves the device. */
const scope = globalThis as unknown as { onmessage: ((event: MessageEvent<Task<Opening, Asked>>) => void) | null; postMessage(message: Message<OpenedPoints | NotOpened, Judged>, transfer?: Transferable[]): void };

/** Points that are kept; of more, every second, third … is: so many are judged anew in some two seconds when a rule changes. */
const MOST_KEPT = 1_500_000;
/** Lines of a table. */
const MOST_LINES = 8_000_000;
/** Points that are drawn. */
const MOST_SHOWN = 12_000;
/** Refused lines that are told one by one. */
const TOLD_LINES = 10;
const TOLD_EVERY_MS = 50;

let raw: RawPoints | null = null;
let last: { readonly key: string; readonly points: LaserPoints; readonly tooFar: number } | null = null;

const sourceOf = (file: Blob, name: string): Source => ({
  name,
  size: file.size,
  read: async (from, to) => new Uint8Array(await file.slice(from, to).arrayBuffer())
});

let told = 0;
function progress(done: number): void {
  const now = performance.now();
  if (now - told < TOLD_EVERY_MS) return;
  told = now;
  scope.postMessage({ kind: 'progress', done });
}

async function opened({ file, name, wasm }: Opening): Promise<OpenedPoints | NotOpened> {
  const problems: RowProblem[] = [];
  const tell = (p: RowProblem): void => void (problems.length < TOLD_LINES && problems.push(p));
  const read = await readLaserFile(sourceOf(file, name), () => startUnpacker(wasm), MOST_KEPT, tell, progress, MOST_LINES);
  if (!read.ok) return { refused: read.refused, problems: [...problems, ...read.problems].slice(0, TOLD_LINES) };
  const placement = proposedPlacement(read.raw);
  if ('kind' in placement) return { refused: placement, problems };
  raw = read.raw;
  const { las, every, marked, refusedLines } = read;
  return { las: las && { version: las.version, format: las.format, compressed: las.compressed }, kept: raw.x.length, every, marked, refusedLines, problems, placement };
}

function placedBy(placement: Placement) {
  const key = JSON.stringify(placement);
  if (last?.key !== key) last = { key, ...placed(raw!, placement) };
  return last;
}

/** A fault here is the worker's: the client hears it and ends. */
const fail = (error: unknown): void => {
  setTimeout(() => {
    throw error;
  });
};

scope.onmessage = ({ data: task }) => {
  if (task.kind === 'open') void opened(task.opening).then((o) => scope.postMessage({ kind: 'opened', opened: o }), fail);
  else {
    const { points, tooFar } = placedBy(task.asked.placement);
    const { made, state } = sortedPoints(points, task.asked.rules);
    const shown = thinned(points, state, MOST_SHOWN);
    scope.postMessage({ kind: 'told', told: { made, shown, tooFar } }, [shown.lateralM.buffer, shown.heightM.buffer, shown.state.buffer]);
  }
};
