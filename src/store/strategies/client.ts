import { AskingClient, type Port as AnyPort, type Waiting } from '../asking/client.ts';
import { moduleWorker } from '../worker.ts';
import type { Asked, Given, Kind, Task } from './messages.ts';
import file from './worker.ts?worker&url';

export type Port = AnyPort<Task, Given>;
export const startWorker = (): Port => moduleWorker(file);

/** Far beyond what lies between two words of progress. */
const SILENT_MS = 60_000;

/** Asks for draws and tables. A newer question of a kind takes the place of the one that is worked on; what was displaced or dropped is answered `null`. */
export class StrategiesClient extends AskingClient<Task, Given> {
  constructor(start: () => Port = startWorker, silentMs = SILENT_MS) {
    super(start, silentMs);
  }

  /** `null` where a newer question of its kind came, or it was dropped. */
  ask<K extends Kind>(kind: K, asked: Asked[K], progress?: (done: number) => void): Promise<Given[K] | null> {
    this.drop(kind);
    return new Promise((resolve, reject) => {
      const number = ++this.number;
      this.worked.set(kind, { kind, number, progress, resolve, reject } as unknown as Waiting<Given>);
      this.post({ kind, number, asked } as Task);
      this.watch();
    });
  }

  /** Gives up what is worked on. */
  drop(kind: Kind): void {
    const dropped = this.worked.get(kind);
    if (!dropped) return;
    this.worked.delete(kind);
    this.tell({ kind: 'drop', number: dropped.number });
    dropped.resolve(null);
    this.watch();
  }
}
