import type { Refused } from '#core/working/answer.ts';
import type { Message, Task } from './messages.ts';

/** Often enough for an eye, seldom enough to cost nothing. */
const TOLD_EVERY_MS = 50;

/** A search beside the page's own thread. Told what to look for, it tells how far it is, then what it found. */
export function serve<Problem, Found>(search: (problem: Problem, watch: { readonly progress: (done: number) => void }) => Found | Refused): void {
  const scope = globalThis as unknown as { onmessage: ((event: MessageEvent<Task<Problem>>) => void) | null; postMessage(message: Message<Found>): void };
  scope.onmessage = ({ data: { problem } }) => {
    let told = performance.now();
    const found = search(problem, {
      progress: (done) => {
        const now = performance.now();
        if (now - told < TOLD_EVERY_MS) return;
        told = now;
        scope.postMessage({ kind: 'progress', done });
      }
    });
    scope.postMessage({ kind: 'found', found });
  };
}
