import { drawSteps } from '#core/dose/compare/draws.ts';
import type { Message } from '../asking/client.ts';
import type { Asked, Given, Task } from './messages.ts';
import { tableSteps, transferred } from './table.ts';

/** The comparison of strategies beside the page's own thread. */
const scope = globalThis as unknown as { onmessage: ((event: MessageEvent<Task>) => void) | null; postMessage(message: Message<Given>, transfer?: ArrayBuffer[]): void };

/** Lets messages that have come in be heard first. */
const channel = new MessageChannel();
const waiting: (() => void)[] = [];
channel.port1.onmessage = () => waiting.shift()?.();
const breath = () =>
  new Promise<void>((done) => {
    waiting.push(done);
    channel.port2.postMessage(null);
  });

/** Often enough for an eye and for a cancel, seldom enough to cost nothing. */
const TOLD_EVERY_MS = 50;
/** Questions that are still wanted. */
const wanted = new Set<number>();

/** Steps until there is an answer, each of them with its progress; null where it is no longer wanted. */
async function worked<T>(number: number, steps: Generator<number, T> | AsyncGenerator<number, T>): Promise<{ readonly given: T } | null> {
  let told = performance.now();
  for (;;) {
    const { done, value } = await steps.next();
    if (done) return { given: value };
    const now = performance.now();
    if (now - told < TOLD_EVERY_MS) continue;
    told = now;
    scope.postMessage({ kind: 'progress', number, done: value });
    await breath();
    if (!wanted.has(number)) return null;
  }
}

async function draws(number: number, { document, blockId, rungId, ...wish }: Asked['draws']): Promise<void> {
  const answer = await worked(number, drawSteps(document, blockId, rungId, wish));
  if (answer) scope.postMessage({ kind: 'draws', number, given: answer.given });
}

async function table(number: number, asked: Asked['table']): Promise<void> {
  const answer = await worked(number, tableSteps(asked));
  if (answer) scope.postMessage({ kind: 'table', number, given: answer.given }, transferred(answer.given));
}

scope.onmessage = ({ data: task }) => {
  const { number } = task;
  if (task.kind === 'drop') return void wanted.delete(number);
  wanted.add(number);
  const answered = task.kind === 'draws' ? draws(number, task.asked) : table(number, task.asked);
  // A fault of one question is its answer; the worker goes on.
  void answered
    .catch((error: unknown) => scope.postMessage({ kind: 'failed', number, why: error instanceof Error ? error.message : String(error) }))
    .finally(() => wanted.delete(number));
};
