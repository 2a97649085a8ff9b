import { Worker } from 'node:worker_threads';
import { workOff, type Done, type Piece } from './piece.ts';

/**
 * Works pieces off on several threads, gives the results in the order of the pieces, and holds no more than a few at a time. With one
 * piece, or one thread, it is done here.
 */
export async function* inOrder(pieces: AsyncIterable<Piece>, threads: number): AsyncGenerator<Done> {
  const crew: Hand[] = [];
  const waiting: Promise<Done>[] = [];
  try {
    let first: Piece | null = null;
    for await (const piece of pieces) {
      if (threads < 2) {
        yield workOff(piece);
        continue;
      }
      // Whether there is more than one piece is known when the second comes.
      if (crew.length === 0 && first === null) {
        first = piece;
        continue;
      }
      if (crew.length === 0) {
        for (let i = 0; i < threads; i++) crew.push(new Hand());
        waiting.push(idlest(crew).work(first!));
      }
      waiting.push(idlest(crew).work(piece));
      while (waiting.length >= 2 * threads) yield await waiting.shift()!;
    }
    if (crew.length === 0 && first !== null) yield workOff(first);
    for (const done of waiting) yield await done;
  } finally {
    await Promise.all(crew.map((hand) => hand.dismiss()));
  }
}

const idlest = (crew: readonly Hand[]): Hand => crew.reduce((a, b) => (b.load < a.load ? b : a));

/** One thread with its queue of pieces. */
class Hand {
  private readonly worker = new Worker(new URL('./worker.mjs', import.meta.url), { resourceLimits: { maxYoungGenerationSizeMb: 16 } });
  private readonly asked: { resolve: (done: Done) => void; reject: (error: unknown) => void }[] = [];

  constructor() {
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
