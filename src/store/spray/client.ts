import { KINDS, type Asked, type Given, type Kind, type Message, type Task } from './messages.ts';
import { moduleWorker } from '../worker.ts';
import file from './worker.ts?worker&url';

/** What a worker does for its client; tests put something else in its place. */
export interface Port {
  postMessage(task: Task): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Message>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}
export const startWorker = (): Port => moduleWorker(file);

/** Far beyond what anything here takes: whoever is silent for so long will not speak any more. */
const SILENT_MS = 20_000;
const NOT_STARTED = 'the worker could not be started';

interface Waiting<K extends Kind = Kind> {
  readonly kind: K;
  readonly number: number;
  readonly asked: Asked[K];
  readonly progress: ((done: number) => void) | undefined;
  readonly resolve: (given: Given[K] | null) => void;
  readonly reject: (error: Error) => void;
}

/**
 * Asks the spray model in one worker that lives as long as the page. Of each kind one question is worked on and the last one waits;
 * those in between, and whatever is dropped, are answered `null`. A band gives way to both other kinds. A worker that fails or
 * falls silent fails its questions, and the next question starts another.
 */
export class SprayClient {
  private port: Port | null = null;
  private number = 0;
  private readonly worked = new Map<Kind, Waiting>();
  private readonly next = new Map<Kind, Waiting>();
  private alarm: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly start: () => Port = startWorker,
    private readonly silentMs = SILENT_MS
  ) {
    // The worker reads its own code while the page fetches the rest.
    this.opened();
  }

  /** `null` where a newer question of its kind came before it was worked on, or it was dropped. */
  ask<K extends Kind>(kind: K, asked: Asked[K], progress?: (done: number) => void): Promise<Given[K] | null> {
    return new Promise((resolve, reject) => {
      this.next.get(kind)?.resolve(null);
      this.next.set(kind, { kind, number: ++this.number, asked, progress, resolve, reject } as unknown as Waiting);
      // A band of what is no longer in view is of no use: the new one need not wait for it.
      if (kind === 'band') this.dropBand();
      this.send();
    });
  }

  /** Gives up the band that is worked out. */
  dropBand(): void {
    const band = this.worked.get('band');
    if (!band) return;
    this.worked.delete('band');
    this.port?.postMessage({ kind: 'drop', number: band.number });
    band.resolve(null);
  }

  close(): void {
    this.end((w) => w.resolve(null));
  }

  private opened(): Port | null {
    if (this.port) return this.port;
    try {
      const port = this.start();
      port.onmessage = ({ data }) => {
        if (this.port === port) this.heard(data);
      };
      port.onerror = (event) => {
        if (this.port === port) this.lost(event.message || NOT_STARTED);
      };
      return (this.port = port);
    } catch {
      return null;
    }
  }

  private send(): void {
    for (const kind of KINDS) {
      const w = this.next.get(kind);
      if (!w || this.worked.has(kind)) continue;
      const port = this.opened();
      if (!port) return this.lost(NOT_STARTED);
      this.next.delete(kind);
      this.worked.set(kind, w);
      port.postMessage({ kind, number: w.number, asked: w.asked } as Task);
    }
    clearTimeout(this.alarm);
    if (this.worked.size > 0) this.alarm = setTimeout(() => this.lost('no answer'), this.silentMs);
  }

  private heard(message: Message): void {
    const w = [...this.worked.values()].find((each) => each.number === message.number);
    if (w && message.kind === 'progress') w.progress?.(message.done);
    else if (w) {
      this.worked.delete(w.kind);
      if (message.kind === 'failed') w.reject(new Error(message.why));
      else if (message.kind !== 'progress') w.resolve(message.given as never);
    }
    this.send();
  }

  private lost(why: string): void {
    this.end((w) => w.reject(new Error(why)));
  }

  private end(tell: (w: Waiting) => void): void {
    this.port?.terminate();
    this.port = null;
    clearTimeout(this.alarm);
    const all = [...this.worked.values(), ...this.next.values()];
    this.worked.clear();
    this.next.clear();
    all.forEach(tell);
  }
}
