import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction, type StoreNames } from 'idb';
import type { Setting } from '#core/sprayer/types.ts';

const NAME = 'rowtailor';
/** 1: one record of file text, `open/document`. 2: several orchards. 3: what was lifted, as it came. Stores are only ever added to; a step stays here for ever. */
const VERSION = 3;

/** An orchard kept on this device: what a list of them shows, without the document itself. */
export interface Orchard {
  readonly id: string;
  readonly name: string;
  /** Counts the saves. A save says which one it follows; if another came between, nothing is written. */
  readonly revision: number;
  /** Clock of the device at the last save, ms since 1970. A clock may be set back: nothing is decided by it. */
  readonly changedMs: number;
  /** Rises by one with each opening on this device: the order of the list, whatever the clock says. */
  readonly turn: number;
  /** Characters of the document. */
  readonly length: number;
  /** Put away by the user, and still there until it is deleted for good. */
  readonly away?: true;
  /** Version of the format in which the text is written; 1 where nothing says it. */
  readonly format?: number;
  /** Version in which the document came, where that was an older one: as it came it is kept beside. */
  readonly original?: number;
}

/** A document of an older version, byte for byte as it came, before it was lifted. */
export interface Original {
  readonly version: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A setting that was saved for a rung. */
export interface SavedSetting {
  readonly block: string;
  readonly rung: string;
  readonly atMs: number;
  readonly setting: Setting;
}

/** Steps of undo and redo. They hold for one revision of the document, and for the format in which they were made. */
export interface KeptSteps {
  readonly revision: number;
  readonly format: number;
  readonly text: string;
}

export interface Schema extends DBSchema {
  orchards: { key: string; value: Orchard };
  texts: { key: string; value: string };
  steps: { key: string; value: KeptSteps };
  originals: { key: string; value: Original };
  /** By number, in the order in which they were saved. */
  settings: { key: number; value: SavedSetting & { readonly orchard: string }; indexes: { rung: [string, string, string]; orchard: string } };
}
export type Stores = ('orchards' | 'texts' | 'steps' | 'settings' | 'originals')[];

/** The name that a document's text gives itself; of a text that cannot be read, none. */
export function nameIn(text: string): string {
  try {
    const value: unknown = JSON.parse(text);
    const name = value && typeof value === 'object' && 'name' in value ? value.name : '';
    return typeof name === 'string' ? name.slice(0, 120) : '';
  } catch {
    return '';
  }
}

type Upgrade = IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>;

/** Step by step, all in one transaction: after a crash the old store stands as it was. */
async function upgrade(db: IDBPDatabase<Schema>, from: number, transaction: Upgrade): Promise<void> {
  if (from < 2) await toSeveral(db, from, transaction);
  db.createObjectStore('originals');
}

/** From the one document of the first store to several. */
async function toSeveral(db: IDBPDatabase<Schema>, from: number, transaction: Upgrade): Promise<void> {
  db.createObjectStore('orchards', { keyPath: 'id' });
  db.createObjectStore('texts');
  db.createObjectStore('steps');
  const settings = db.createObjectStore('settings', { autoIncrement: true });
  settings.createIndex('rung', ['orchard', 'block', 'rung']);
  settings.createIndex('orchard', 'orchard');
  if (from !== 1) return;
  const old = transaction as unknown as IDBPTransaction<unknown, string[], 'versionchange'>;
  const text: unknown = await old.objectStore('open').get('document');
  // Whether it can be read is another question: what was kept is kept.
  if (typeof text === 'string') {
    await transaction.objectStore('orchards').put({ id: 'first', name: nameIn(text), revision: 1, changedMs: Date.now(), turn: 1, length: text.length });
    await transaction.objectStore('texts').put(text, 'first');
  }
  (db as unknown as IDBPDatabase).deleteObjectStore('open');
}

const PATIENCE_MS = 5000;
let opened: Promise<IDBPDatabase<Schema>> | null = null;

/** The one connection of this page. A connection that the browser ends (site data cleared, a newer version) is opened anew when it is next needed. */
export function database(): Promise<IDBPDatabase<Schema>> {
  const forget = () => (opened = null);
  const open = async () =>
    openDB<Schema>(NAME, VERSION, {
      upgrade: (db, from, _to, transaction) => upgrade(db, from, transaction as Upgrade),
      blocking: (_now, _next, event) => {
        forget();
        (event.target as IDBDatabase).close();
      },
      terminated: forget
    });
  opened ??= open().catch((error: unknown) => {
    forget();
    throw error;
  });
  return inTime(opened);
}

/** Some browsers leave the opening of a store without an answer. It is then refused for this time; should it open later, the next save finds it open. */
function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((done, fail) => {
    const timer = setTimeout(() => fail(new DOMException('the store does not answer', 'TimeoutError')), PATIENCE_MS);
    promise.then(done, fail).finally(() => clearTimeout(timer));
  });
}

/** Ends the connection of this page. */
export async function closeDatabase(): Promise<void> {
  const open = opened;
  opened = null;
  (await open?.catch(() => null))?.close();
}

/** Why a store refused: no room, no store at all, or something else. */
export type Refused = 'full' | 'blocked' | 'failed';

export function refusedFor(error: unknown): Refused {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  return ['SecurityError', 'InvalidStateError', 'UnknownError', 'VersionError', 'ReferenceError', 'TypeError', 'NotAllowedError', 'TimeoutError'].includes(name) ? 'blocked' : 'failed';
}

/**
 * One transaction over some stores. It has happened when this resolves, and not at all when it rejects; the reason is the
 * transaction's own where it has one, since its requests then say no more than that it was given up.
 */
export async function within<T>(
  stores: Stores,
  mode: 'readonly' | 'readwrite',
  act: (at: <N extends StoreNames<Schema>>(name: N) => Store<N>) => Promise<T>
): Promise<T> {
  const db = await database();
  // Strict: it is on the disk, and not only on its way there, when it is said to be kept.
  const transaction = db.transaction(stores, mode, mode === 'readwrite' ? { durability: 'strict' } : {});
  const done = transaction.done.then(
    () => null,
    (error: unknown) => error ?? new DOMException('given up', 'AbortError')
  );
  try {
    const value = await act((name) => transaction.objectStore(name) as unknown as Store<typeof name>);
    const failed = await done;
    if (failed) throw failed;
    return value;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended by itself.
    }
    await done;
    throw transaction.error ?? error;
  }
}

/** The part of an object store that is used here. */
export interface Store<N extends StoreNames<Schema>> {
  get(key: Schema[N]['key']): Promise<Schema[N]['value'] | undefined>;
  getAll(): Promise<Schema[N]['value'][]>;
  put(value: Schema[N]['value'], key?: Schema[N]['key']): Promise<unknown>;
  add(value: Schema[N]['value'], key?: Schema[N]['key']): Promise<unknown>;
  delete(key: Schema[N]['key']): Promise<void>;
  index(name: string): { getAll(key: IDBValidKey): Promise<Schema[N]['value'][]>; getAllKeys(key: IDBValidKey): Promise<Schema[N]['key'][]> };
}
