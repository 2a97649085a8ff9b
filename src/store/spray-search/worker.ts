import { adviseSpray } from '#core/spray/advice/search.ts';
import type { Message, Task } from './messages.ts';

/** The search beside the page's own thread. Told what to look for, it tells how far it is, then what it found. */
const scope = globalThis as unknown as { onmessage: ((event: MessageEvent<Task>) => void) | null; postMessage(message: Message): void };

/** Often enough for an eye, seldom enough to cost nothing. */
const TOLD_EVERY_MS = 50;

scope.onmessage = ({ data: { problem } }) => {
  let told = performance.now();
  const found = adviseSpray(problem, {
    progress: (done) => {
      const now = performance.now();
      if (now - told < TOLD_EVERY_MS) return;
      told = now;
      scope.postMessage({ kind: 'progress', done });
    }
  });
  scope.postMessage({ kind: 'found', found });
};
