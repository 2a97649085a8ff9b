// Named here and not in the worker, so that it is among the files that the page keeps for when there is no signal.
import wasm from 'laz-perf/lib/worker/laz-perf.wasm?url';
import { moduleWorker } from '../worker.ts';
import type { Asked, Judged, Message, NotOpened, OpenedPoints, Task } from './messages.ts';
import code from './worker.ts?worker&url';

/** What a worker does for its client; tests put something else in its place. */
export interface Port {
  postMessage(task: Task): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Message>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}
const startWorker = (): Port => moduleWorker(code);

/** One file of laser points in a worker of its own. It ends with the file, and with it all that was kept of it. */
export class LaserClient {
  private readonly port: Port;
  private opening: { readonly resolve: (o: OpenedPoints | NotOpened | null) => void; readonly reject: (e: Error) => void } | null = null;
  private judging = false;
  private next: Asked | null = null;

  /**
   * @param judged hears each judgement; of several that were asked for meanwhile, the last alone
   * @param lost hears why the worker failed after the file was read
   */
  constructor(
    private readonly judged: (judged: Judged) => void,
    private readonly lost: (why: Error) => void,
    private readonly progress: (done: number) => void = () => {},
    start: () => Port = startWorker
  ) {
    this.port = start();
    this.port.onmessage = ({ data }) => this.heard(data);
    this.port.onerror = (event) => this.failed(new Error(event.message || 'the worker could not be started'));
  }

  /** null where it was stopped; rejected where the worker itself failed. */
  open(file: Blob, name: string): Promise<OpenedPoints | NotOpened | null> {
    return new Promise((resolve, reject) => {
      this.opening = { resolve, reject };
      this.port.postMessage({ kind: 'open', file, name, wasm });
    });
  }

  judge(asked: Asked): void {
    if (this.judging) this.next = asked;
    else {
      this.judging = true;
      this.port.postMessage({ kind: 'judge', asked });
    }
  }

  close(): void {
    this.port.terminate();
    this.opening?.resolve(null);
    this.opening = null;
  }

  private heard(message: Message): void {
    if (message.kind === 'progress') this.progress(message.done);
    else if (message.kind === 'opened') {
      this.opening?.resolve(message.opened);
      this.opening = null;
    } else {
      this.judging = false;
      const { next } = this;
      this.next = null;
      if (next) this.judge(next);
      else this.judged(message.judged);
    }
  }

  private failed(error: Error): void {
    this.port.terminate();
    if (this.opening) this.opening.reject(error);
    else this.lost(error);
    this.opening = null;
  }
}
