import type { AdviceProblem } from '#core/spray/advice/problem.ts';
import type { SprayAdvice } from '#core/spray/advice/types.ts';
import { refused, type Refused } from '#core/working/answer.ts';
import type { Message, Task } from './messages.ts';

/** A search that runs. */
export interface Running {
  /** Refused with `advice-cancelled` when it was stopped; rejected where the worker itself failed. */
  readonly found: Promise<SprayAdvice | Refused>;
  cancel(): void;
}

export type StartSpraySearch = (problem: AdviceProblem, progress: (done: number) => void) => Running;

/** Searches in a worker of its own, ended with the search. */
export const startSpraySearch: StartSpraySearch = (problem, progress) => {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  let cancel = (): void => {};
  const found = new Promise<SprayAdvice | Refused>((resolve, reject) => {
    cancel = () => {
      worker.terminate();
      resolve(refused('advice-cancelled', 'setting', {}));
    };
    worker.onmessage = ({ data }: MessageEvent<Message>) => {
      if (data.kind === 'progress') return progress(data.done);
      worker.terminate();
      resolve(data.found);
    };
    worker.onerror = (event) => {
      worker.terminate();
      reject(new Error(event.message || 'the worker could not be started'));
    };
    worker.postMessage({ problem } satisfies Task);
  });
  return { found, cancel };
};
