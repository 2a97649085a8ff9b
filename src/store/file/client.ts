/** To the worker: the file once, then what is to be made of it. To stop it, the worker is ended. */
export type Task<Opening, Asked> = { readonly kind: 'open'; readonly opening: Opening } | { readonly kind: 'ask'; readonly asked: Asked };

/** From the worker. */
export type Message<Opened, Told> =
  | { readonly kind: 'progress'; readonly done: number }
  | { readonly kind: 'opened'; readonly opened: Opened }
  | { readonly kind: 'told'; readonly told: Told };

/** What a worker does for its client; tests put something else in its place. */
export interface Port<Opening, Opened, Asked, Told> {
  postMessage(task: Task<Opening, Asked>): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Message<Opened, Told>>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** One file in a worker of its own, asked again and again. It ends with the file, and with it all that was kept of it. */
export class FileClient<Opening, Opened, Asked, Told> {
  private readonly port: Port<Opening, Opened, Asked, Told>;
  private opening: { readonly resolve: (o: Opened | null) => void; readonly reject: (e: Error) => void } | null = null;
  private busy = false;
  private next: { readonly asked: Asked } | null = null;

  /**
   * @param told hears each answer; of several questions that were asked meanwhile, that of the last alone
   * @param lost hears why the worker failed after the file was read
   */
  constructor(
    start: () => Port<Opening, Opened, Asked, Told>,
    private readonly told: (told: Told) => void,
    private readonly lost: (why: Error) => void,
    private readonly progress: (done: number) => void = () => {}
  ) {
    this.port = start();
    this.port.onmessage = ({ data }) => this.heard(data);
    this.port.onerror = (event) => this.failed(new Error(event.message || 'the worker could not be started'));
  }

  /** null where it was stopped; rejected where the worker itself failed. */
  open(opening: Opening): Promise<Opened | null> {
    return new Promise((resolve, reject) => {
      this.opening = { resolve, reject };
      this.port.postMessage({ kind: 'open', opening });
    });
  }

  ask(asked: Asked): void {
    if (this.busy) this.next = { asked };
    else {
      this.busy = true;
      this.port.postMessage({ kind: 'ask', asked });
    }
  }

  close(): void {
    this.port.terminate();
    this.opening?.resolve(null);
    this.opening = null;
  }

  private heard(message: Message<Opened, Told>): void {
    if (message.kind === 'progress') this.progress(message.done);
    else if (message.kind === 'opened') {
      this.opening?.resolve(message.opened);
      this.opening = null;
    } else {
      this.busy = false;
      const { next } = this;
      this.next = null;
      if (next) this.ask(next.asked);
      else this.told(message.told);
    }
  }

  private failed(error: Error): void {
    this.port.terminate();
    if (this.opening) this.opening.reject(error);
    else this.lost(error);
    this.opening = null;
  }
}
