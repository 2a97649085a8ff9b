import type { WatchStore } from '#store/watch.ts';

/** What is timed, and for which rung. */
export interface Timed {
  readonly what: 'run' | 'refill' | 'jug';
  readonly block: string;
  readonly rung: string;
}

interface Running extends Timed {
  /** Clock at the tap, ms since 1970. */
  readonly startedMs: number;
}

const WHATS: readonly string[] = ['run', 'refill', 'jug'];

/**
 * A stopwatch that counts nothing: it keeps the instant of the start, and the time is always now less that instant. Whatever
 * happens to the page meanwhile, the time is right.
 */
export class Stopwatch {
  running = $state.raw<Running | null>(null);
  /** The start that was given up last, so that a slip of the thumb can be taken back. */
  dropped = $state.raw<Running | null>(null);
  /** False once the browser has refused to keep the start. */
  kept = $state(true);

  constructor(
    private readonly store: WatchStore,
    private readonly now: () => number = Date.now
  ) {
    this.running = read(store.load());
  }

  start(timed: Timed): void {
    this.dropped = null;
    this.set({ ...timed, startedMs: this.now() });
  }

  /** Seconds since the start; 0 where it does not run, or where the clock was set back behind the start. */
  seconds(): number {
    return this.running ? Math.max(0, this.now() - this.running.startedMs) / 1000 : 0;
  }

  /** Ends it and gives the time to a tenth of a second, which is what a thumb can do. */
  end(): number {
    const seconds = Math.round(this.seconds() * 10) / 10;
    this.set(null);
    return seconds;
  }

  /** Gives a false start up. */
  drop(): void {
    const was = this.running;
    this.set(null);
    this.dropped = was;
  }

  /** It was no false start: runs on from the same instant. */
  resume(): void {
    if (this.dropped) this.set(this.dropped);
    this.dropped = null;
  }

  private set(running: Running | null): void {
    this.running = running;
    this.kept = this.store.save(running && JSON.stringify(running));
  }
}

function read(text: string | null): Running | null {
  try {
    const v: unknown = JSON.parse(text ?? 'null');
    if (!v || typeof v !== 'object') return null;
    const { what, block, rung, startedMs } = v as Record<string, unknown>;
    const good = typeof what === 'string' && WHATS.includes(what) && typeof block === 'string' && typeof rung === 'string' && Number.isFinite(startedMs);
    return good ? (v as Running) : null;
  } catch {
    return null;
  }
}
