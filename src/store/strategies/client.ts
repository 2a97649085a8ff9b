import { moduleWorker } from '../worker.ts';
import type { Asked, Given, Kind, Message, Task } from './messages.ts';
import file from './worker.ts?worker&url';

/** What a worker does for its client; tests put something else in its place. */
export interface Port {
  postMessage(task: Task): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Message>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}
export const startWorker = (): Port => moduleWorker(file);

/** Far beyond what lies between two words of progress. */
const SILENT_MS = 60_000;
const NOT_STARTED = 'the worker could not be started';

interface Waiting<K extends Kind = Kind> {
  readonly kind: K;
  readonly number: number;
  readonly progress: ((done: number) => void) | undefined;
  readonly resolve: (given: Given[K] | null) => void;
  readonly reject: (error: Error) => void;
}

/**
 * Asks for draws and tables in one worker that lives as long as the page. Of each kind one question is worked on: a newer one takes its place.
 * What was displaced or dropped is answered `null`. A worker that fails or falls silent fails its questions, and the next question starts another.
 */
export class StrategiesClient {
  private port: Port | null = null;
  private number = 0;
  private readonly worked = new Map<Kind, Waiting>();
  private alarm: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly start: () => Port = startWorker,
    private readonly silentMs = SILENT_MS
  ) {}

  /** `null` where a newer question of its kind came, or it was dropped. */
  ask<K extends Kind>(kind: K, asked: Asked[K], progress?: (done: number) => void): Promise<Given[K] | null> {
    this.drop(kind);
    return new Promise((resolve, reject) => {
      const waiting = { kind, number: ++this.number, progress, resolve, reject };
      this.worked.set(kind, waiting as unknown as Waiting);
      const port = this.opened();
      if (!port) return this.lost(NOT_STARTED);
      port.postMessage({ kind, number: waiting.number, asked } as Task);
      this.watch();
    });
  }

  /** Gives up what is worked on. */
  drop(kind: Kind): void {
    const dropped = this.worked.get(kind);
    if (!dropped) return;
    this.worked.delete(kind);
    this.port?.postMessage({ kind: 'drop', number: dropped.number });
    dropped.resolve(null);
    this.watch();
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

  private watch(): void {
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
    this.watch();
  }

  private lost(why: string): void {
    this.end((w) => w.reject(new Error(why)));
  }

  private end(tell: (w: Waiting) => void): void {
    this.port?.terminate();
    this.port = null;
    clearTimeout(this.alarm);
    const all = [...this.worked.values()];
    this.worked.clear();
    all.forEach(tell);
  }
}
