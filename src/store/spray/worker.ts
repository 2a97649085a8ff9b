import { balance } from '#core/spray/balance.ts';
import { bandSteps } from '#core/spray/band.ts';
import { picture } from '#core/spray/picture.ts';
import { transport, type Transport } from '#core/spray/transport.ts';
import { warm } from '#core/spray/warm.ts';
import type { SprayCase, SprayPicture } from '#core/spray/types.ts';
import type { Message } from '../asking/client.ts';
import type { Asked, Given, Task } from './messages.ts';

/** The spray model beside the page's own thread, kept as long as the page: once warm it answers within a frame. */
const scope = globalThis as unknown as { onmessage: ((event: MessageEvent<Task>) => void) | null; postMessage(message: Message<Given>, transfer?: ArrayBuffer[]): void };

/** Which flights a case needs: nozzles, their flow and their drops only weigh them. */
const keyOf = ({ nozzles: _, volumeLPerHa: _v, ladRange: _l, stated: _s, ...flies }: SprayCase): string => JSON.stringify(flies);
let held: { readonly key: string; readonly transport: Transport } | null = null;
/** What a band in the making still weighs by: its lists are not used again before it is done. */
let lent: Transport | null = null;

function flown(c: SprayCase): Transport {
  const key = keyOf(c);
  if (held?.key !== key) held = { key, transport: transport(c, held && held.transport !== lent ? held.transport : null) };
  return held.transport;
}

/** Lets messages that have come in be heard first. */
const channel = new MessageChannel();
let go: (() => void) | null = null;
channel.port1.onmessage = () => go?.();
const breath = () =>
  new Promise<void>((done) => {
    go = done;
    channel.port2.postMessage(null);
  });

/** Paths of the air that are drawn on one side: more would be a grey wedge, and thousands of points are dear to hand over. */
const MOST_JETS = 7;

/** Every so many of neighbouring paths, the outermost among them, as far as the picture reaches. */
function seen({ map, jets, ...rest }: SprayPicture): SprayPicture {
  const far = (map.columns * map.cellM) / 2;
  const high = map.rows * map.cellM;
  const some = (['left', 'right'] as const).flatMap((side) => {
    const all = jets.filter((j) => j.side === side);
    return all.length <= MOST_JETS ? all : Array.from({ length: MOST_JETS }, (_, i) => all[Math.round((i * (all.length - 1)) / (MOST_JETS - 1))]!);
  });
  const cut = some.map(({ side, points }) => {
    const end = points.findIndex((p) => Math.abs(p.xM) > far || p.zM > high);
    return { side, points: end < 0 ? points : points.slice(0, end + 1) };
  });
  return { ...rest, map, jets: cut };
}

function answer(number: number, { case: c, position, tracks }: Asked['answer']): void {
  const t = flown(c);
  const drawn = seen(picture(c, t, position, tracks));
  const arrays = [drawn.map.density, ...drawn.tracks.map((d) => d.points)];
  scope.postMessage({ kind: 'answer', number, given: { balance: balance(c, t), picture: drawn } }, arrays.map((a) => a.buffer as ArrayBuffer));
}

/** The one band that is wanted. */
let wanted = 0;

async function workOutBand(number: number, { case: c }: Asked['band']): Promise<void> {
  wanted = number;
  const t = flown(c);
  lent = t;
  const steps = bandSteps(c, { transport: t, balance: balance(c, t) });
  for (;;) {
    const { done, value } = steps.next();
    if (done) {
      if (lent === t) lent = null;
      return scope.postMessage({ kind: 'band', number, given: { band: value } });
    }
    scope.postMessage({ kind: 'progress', number, done: value });
    await breath();
    if (wanted !== number) return;
  }
}

/** A fault of one question is its answer; the worker goes on. */
const failed = (number: number, error: unknown) => scope.postMessage({ kind: 'failed', number, why: error instanceof Error ? error.message : String(error) });

scope.onmessage = ({ data: task }) => {
  const { number } = task;
  try {
    if (task.kind === 'answer') answer(number, task.asked);
    else if (task.kind === 'balance') scope.postMessage({ kind: 'balance', number, given: { balance: balance(task.asked.case, transport(task.asked.case)) } });
    else if (task.kind === 'band') void workOutBand(number, task.asked).catch((error: unknown) => failed(number, error));
    else if (wanted === number) wanted = 0;
  } catch (error) {
    failed(number, error);
  }
};

// What was asked meanwhile waits no longer than it would for cold code.
warm();
