import type { Refused } from '#core/working/answer.ts';
import { CANCELLED } from '#job/photo/header.ts';
import { moduleWorker } from '../worker.ts';
import type { Asked, Message, Opened, Task } from './messages.ts';
import code from './worker.ts?worker&url';

/** What a worker does for its client; tests put something else in its place. */
export interface Port {
  postMessage(task: Task): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Message>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}
const startWorker = (): Port => moduleWorker(code);

/** One picture in a worker of its own. It ends with the picture, and with it all that was kept of it. */
export class PhotoClient {
  private readonly port: Port;
  private opening: { readonly resolve: (o: Opened | Refused) => void; readonly reject: (e: Error) => void } | null = null;
  private counting = false;
  private next: Asked | null = null;

  /**
   * @param counted hears each count; of several that were asked for meanwhile, the last alone
   * @param lost hears why the worker failed after the picture was read
   */
  constructor(
    private readonly counted: (histograms: Uint32Array) => void,
    private readonly lost: (why: Error) => void,
    private readonly progress: (done: number) => void = () => {},
    start: () => Port = startWorker
  ) {
    this.port = start();
    this.port.onmessage = ({ data }) => this.heard(data);
    this.port.onerror = (event) => this.failed(new Error(event.message || 'the worker could not be started'));
  }

  /** Refused by name where the file is no picture that is read, or reading was stopped; rejected where the worker itself failed. */
  open(file: Blob): Promise<Opened | Refused> {
    return new Promise((resolve, reject) => {
      this.opening = { resolve, reject };
      this.port.postMessage({ kind: 'open', file });
    });
  }

  count(asked: Asked): void {
    if (this.counting) this.next = asked;
    else {
      this.counting = true;
      this.port.postMessage({ kind: 'count', asked });
    }
  }

  close(): void {
    this.port.terminate();
    this.opening?.resolve(CANCELLED);
    this.opening = null;
  }

  private heard(message: Message): void {
    if (message.kind === 'progress') this.progress(message.done);
    else if (message.kind === 'opened') {
      this.opening?.resolve(message.opened);
      this.opening = null;
    } else {
      this.counting = false;
      const { next } = this;
      this.next = null;
      if (next) this.count(next);
      else this.counted(message.histograms);
    }
  }

  private failed(error: Error): void {
    this.port.terminate();
    if (this.opening) this.opening.reject(error);
    else this.lost(error);
    this.opening = null;
  }
}
