/** From the worker; `number` is that of the question. */
export type Message<Given> =
  | { readonly [K in keyof Given]: { readonly kind: K; readonly number: number; readonly given: Given[K] } }[keyof Given]
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };

/** What a worker does for its client; tests put something else in its place. */
export interface Port<Task, Given> {
  postMessage(task: Task): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Message<Given>>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export interface Waiting<Given, K extends keyof Given = keyof Given> {
  readonly kind: K;
  readonly number: number;
  readonly progress: ((done: number) => void) | undefined;
  readonly resolve: (given: Given[K] | null) => void;
  readonly reject: (error: Error) => void;
}

const NOT_STARTED = 'the worker could not be started';

/**
 * Questions of several kinds to one worker that lives as long as the page; of each kind one is worked on. A worker that fails or falls
 * silent fails its questions, and the next question starts another. What becomes of a second question of a kind is for those who extend it.
 */
export abstract class AskingClient<Task, Given> {
  private port: Port<Task, Given> | null = null;
  protected number = 0;
  protected readonly worked = new Map<keyof Given, Waiting<Given>>();
  private alarm: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly start: () => Port<Task, Given>,
    private readonly silentMs: number
  ) {}

  close(): void {
    this.end((w) => w.resolve(null));
  }

  /** Starts the worker where none runs. Says whether there is one. */
  protected opened(): boolean {
    if (this.port) return true;
    try {
      const port = this.start();
      port.onmessage = ({ data }) => {
        if (this.port === port) this.heard(data);
      };
      port.onerror = (event) => {
        if (this.port === port) this.lost(event.message || NOT_STARTED);
      };
      this.port = port;
      return true;
    } catch {
      return false;
    }
  }

  /** Without a worker every question is lost. */
  protected post(task: Task): void {
    if (this.opened()) this.port!.postMessage(task);
    else this.lost(NOT_STARTED);
  }
  /** To a worker that runs; one that does not has nothing to be told. */
  protected tell(task: Task): void {
    this.port?.postMessage(task);
  }

  protected watch(): void {
    clearTimeout(this.alarm);
    if (this.worked.size > 0) this.alarm = setTimeout(() => this.lost('no answer'), this.silentMs);
  }

  /** An answer has come, or a word of progress. */
  protected goOn(): void {
    this.watch();
  }
  /** Questions that the worker has not been given yet: they end with the others. */
  protected held(): Waiting<Given>[] {
    return [];
  }

  private heard(message: Message<Given>): void {
    const w = [...this.worked.values()].find((each) => each.number === message.number);
    if (w && message.kind === 'progress') w.progress?.((message as { done: number }).done);
    else if (w) {
      this.worked.delete(w.kind);
      if (message.kind === 'failed') w.reject(new Error((message as { why: string }).why));
      else w.resolve((message as unknown as { given: never }).given);
    }
    this.goOn();
  }

  private lost(why: string): void {
    this.end((w) => w.reject(new Error(why)));
  }

  private end(tell: (w: Waiting<Given>) => void): void {
    this.port?.terminate();
    this.port = null;
    clearTimeout(this.alarm);
    const all = [...this.worked.values(), ...this.held()];
    this.worked.clear();
    all.forEach(tell);
  }
}
