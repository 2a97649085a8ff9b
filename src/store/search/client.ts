import type { Refused } from '#core/working/answer.ts';
import type { Message, Task } from './messages.ts';

/** A search that runs. */
export interface Running<Found> {
  /** Refused as cancelled when it was stopped; rejected where the worker itself failed. */
  readonly found: Promise<Found | Refused>;
  cancel(): void;
}

export type Start<Problem, Found> = (problem: Problem, progress: (done: number) => void) => Running<Found>;

/** Searches in a worker of its own, ended with the search. */
export const searchIn =
  <Problem, Found>(makeWorker: () => Worker, cancelled: Refused): Start<Problem, Found> =>
  (problem, progress) => {
    const worker = makeWorker();
    let cancel = (): void => {};
    const found = new Promise<Found | Refused>((resolve, reject) => {
      cancel = () => {
        worker.terminate();
        resolve(cancelled);
      };
      worker.onmessage = ({ data }: MessageEvent<Message<Found>>) => {
        if (data.kind === 'progress') return progress(data.done);
        worker.terminate();
        resolve(data.found);
      };
      worker.onerror = (event) => {
        worker.terminate();
        reject(new Error(event.message || 'the worker could not be started'));
      };
      worker.postMessage({ problem } satisfies Task<Problem>);
    });
    return { found, cancel };
  };
