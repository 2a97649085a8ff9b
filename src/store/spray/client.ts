import { AskingClient, type Port as AnyPort, type Waiting as AnyWaiting } from '../asking/client.ts';
import { moduleWorker } from '../worker.ts';
import { KINDS, type Asked, type Given, type Kind, type Task } from './messages.ts';
import file from './worker.ts?worker&url';

export type Port = AnyPort<Task, Given>;
export const startWorker = (): Port => moduleWorker(file);

/** Far beyond what anything here takes: whoever is silent for so long will not speak any more. */
const SILENT_MS = 20_000;

type Waiting = AnyWaiting<Given> & { readonly asked: Asked[Kind] };

/**
 * Asks the spray model. Of each kind the last question waits for the one that is worked on; those in between, and whatever is dropped, are
 * answered `null`. A band gives way to both other kinds.
 */
export class SprayClient extends AskingClient<Task, Given> {
  private readonly next = new Map<Kind, Waiting>();

  constructor(start: () => Port = startWorker, silentMs = SILENT_MS) {
    super(start, silentMs);
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
      this.goOn();
    });
  }

  /** Gives up the band that is worked out. */
  dropBand(): void {
    const band = this.worked.get('band');
    if (!band) return;
    this.worked.delete('band');
    this.tell({ kind: 'drop', number: band.number });
    band.resolve(null);
  }

  protected override goOn(): void {
    for (const kind of KINDS) {
      const w = this.next.get(kind);
      if (!w || this.worked.has(kind)) continue;
      this.next.delete(kind);
      this.worked.set(kind, w);
      this.post({ kind, number: w.number, asked: w.asked } as Task);
    }
    this.watch();
  }

  protected override held(): Waiting[] {
    const all = [...this.next.values()];
    this.next.clear();
    return all;
  }
}
