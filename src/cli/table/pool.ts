import { Worker } from 'node:worker_threads';
import type { Header } from '#job/csv/header.ts';
import { HEADER } from './columns.ts';
import { PIECE_BYTES } from './cut.ts';
import type { Front } from './front.ts';
import type { IntervalWish } from './interval-wish.ts';
import { workOff, type Done, type Piece } from './piece.ts';

/** Pieces that a thread may have before it: one in hand, one to go on with. */
const AHEAD = 2;

/** What other threads are told: whose balance, or which intervals; nothing where the figures stand alone. Plain data. */
export type Task = { readonly spray: Front } | { readonly intervals: IntervalWish } | null;

/** What is made of a table: its header, how pieces are worked off by this thread, and what other threads are told so that they do the same. */
export interface Work {
  readonly header: string;
  readonly here: (piece: Piece) => Done;
  readonly task: Task;
  /** Bytes of a piece. */
  readonly pieceBytes: number;
  /** What must be said beside the figures; may be empty. */
  readonly note: string;
  /** What is wanted of the header beyond what every table has; null where it is there. */
  readonly lacks?: (header: Header) => string | null;
}
export const FIGURES: Work = { header: HEADER, here: workOff, task: null, pieceBytes: PIECE_BYTES, note: '' };

/**
 * Works pieces off on several threads, this one among them, gives the results in the order of the pieces, and holds no more than a few at
 * a time. With one piece, or one thread, no other is started.
 */
export async function* inOrder(pieces: AsyncIterable<Piece>, { here, task }: Pick<Work, 'here' | 'task'>, threads: number): AsyncGenerator<Done> {
  const crew: Hand[] = [];
  const waiting: Promise<Done>[] = [];
  try {
    let begun = false;
    for await (const piece of pieces) {
      // Whether there is more than one piece is known when the second comes.
      if (begun && crew.length === 0) for (let i = 1; i < threads; i++) crew.push(new Hand(task));
      begun = true;
      const hand = idlest(crew);
      waiting.push(hand && hand.load < AHEAD ? hand.work(piece) : Promise.resolve(here(piece)));
      while (waiting.length >= AHEAD * threads) yield await waiting.shift()!;
    }
    for (const done of waiting) yield await done;
  } finally {
    await Promise.all(crew.map((hand) => hand.dismiss()));
  }
}

const idlest = (crew: readonly Hand[]): Hand | undefined => crew.reduce<Hand | undefined>((a, b) => (a && a.load <= b.load ? a : b), undefined);

/** One thread with its queue of pieces. */
class Hand {
  private readonly worker: Worker;
  private readonly asked: { resolve: (done: Done) => void; reject: (error: unknown) => void }[] = [];

  constructor(task: Task) {
    this.worker = new Worker(new URL('./worker.mjs', import.meta.url), { workerData: task, resourceLimits: { maxYoungGenerationSizeMb: 16 } });
    this.worker.on('message', (done: Done) => this.asked.shift()?.resolve(done));
    this.worker.on('error', (error) => {
      for (const a of this.asked.splice(0)) a.reject(error);
    });
  }
  get load(): number {
    return this.asked.length;
  }
  work(piece: Piece): Promise<Done> {
    const done = new Promise<Done>((resolve, reject) => this.asked.push({ resolve, reject }));
    // A failure is told where the result is awaited.
    done.catch(() => undefined);
    this.worker.postMessage(piece, [piece.bytes.buffer]);
    return done;
  }
  async dismiss(): Promise<void> {
    await this.worker.terminate();
  }
}
