import { Worker } from 'node:worker_threads';
import { BATCH_ROWS } from '#job/csv/batch.ts';
import { PIECE_BYTES } from './cut.ts';
import { handedOver, workOff, type Done, type Piece } from './piece.ts';
import type { Size } from './source.ts';
import { makerOf, type Wanted } from './wanted.ts';

/** Pieces that a thread may have before it: one in hand, one to go on with. */
const AHEAD = 2;

/** What is made of a table: what is wanted, which other threads are told, and how this one works a piece off. */
export interface Work {
  readonly wanted: Wanted;
  readonly names: readonly string[];
  readonly mayLack: readonly boolean[];
  readonly here: (piece: Piece) => Done;
  readonly size: Size;
}

/** Small where a canopy takes long: lines come out soon, and all threads have work. */
const sizeOf = ({ intervals, spray }: Wanted): Size =>
  spray || intervals?.draws ? { bytes: 1 << 13, rows: 1 << 7 } : intervals ? { bytes: 1 << 16, rows: 1 << 10 } : { bytes: PIECE_BYTES, rows: BATCH_ROWS };

export async function workOf(wanted: Wanted): Promise<Work> {
  const maker = await makerOf(wanted);
  return { wanted, names: maker.names, mayLack: maker.mayLack, here: workOff(maker, wanted.form, wanted.intervals !== null), size: sizeOf(wanted) };
}

/**
 * Works pieces off on several threads, this one among them, gives the results in the order of the pieces, and holds no more than a few at
 * a time. With one piece, or one thread, no other is started.
 */
export async function* inOrder(pieces: AsyncIterable<Piece>, { here, wanted }: Pick<Work, 'here' | 'wanted'>, threads: number): AsyncGenerator<Done> {
  const crew: Hand[] = [];
  const waiting: Promise<Done>[] = [];
  try {
    let begun = false;
    for await (const piece of pieces) {
      // Whether there is more than one piece is known when the second comes.
      if (begun && crew.length === 0) for (let i = 1; i < threads; i++) crew.push(new Hand(wanted));
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

  constructor(wanted: Wanted) {
    this.worker = new Worker(new URL('./worker.mjs', import.meta.url), { workerData: wanted, resourceLimits: { maxYoungGenerationSizeMb: 16 } });
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
    this.worker.postMessage(piece, handedOver(piece));
    return done;
  }
  async dismiss(): Promise<void> {
    await this.worker.terminate();
  }
}
