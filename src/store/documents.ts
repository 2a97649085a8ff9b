import { openDB, type IDBPDatabase } from 'idb';

/** Where the open document is kept between visits: one record of file text, on this device alone. */
const NAME = 'rowtailor';
const STORE = 'open';
const KEY = 'document';

const database = (): Promise<IDBPDatabase> => openDB(NAME, 1, { upgrade: (db) => void db.createObjectStore(STORE) });

export async function loadText(): Promise<string | undefined> {
  const db = await database();
  try {
    const text: unknown = await db.get(STORE, KEY);
    return typeof text === 'string' ? text : undefined;
  } finally {
    db.close();
  }
}

export async function saveText(text: string): Promise<void> {
  const db = await database();
  try {
    await db.put(STORE, text, KEY);
  } finally {
    db.close();
  }
}
