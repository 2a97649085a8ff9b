import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Document } from '../../src/core/setting/document.ts';
import { closeDatabase, database } from '../../src/store/keep/database.ts';
import * as store from '../../src/store/keep/orchards.ts';
import { Keeping } from '../../src/workspace/keep/keeping.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';
import { laySecond } from '../crash/page.ts';

/** A version before the first, made up here: what is called a name was called a farm. */
vi.mock('../../src/job/migrations.ts', async (load) => ({
  ...(await load<typeof import('../../src/job/migrations.ts')>()),
  MIGRATIONS: [{ from: 0, step: ({ farm, ...rest }: Record<string, unknown>) => ({ ...rest, name: farm }) }]
}));

const DEMO = demo as unknown as Document;
const { name: _, ...nameless } = demo;
const OLD = `${JSON.stringify({ ...nameless, version: 0, farm: 'Old bench' }, null, 3)}\n\n`;
let letters = 0;

async function page(): Promise<{ keeping: Keeping; workspace: Workspace }> {
  const workspace = new Workspace(DEMO);
  const keeping = new Keeping(workspace, DEMO, { nowMs: Date.now, ownMs: () => performance.now(), letters: () => `id${++letters}`, local: null, session: null, mayLeave: () => true, names: { copy: (n) => `${n}, copy`, rescued: (n) => n } });
  await keeping.start();
  return { keeping, workspace };
}
/** A kept orchard as a program of that version left it. */
async function lay(text: string): Promise<void> {
  const change = (await database()).transaction(['orchards', 'texts'], 'readwrite');
  await Promise.all([change.objectStore('orchards').put({ id: 'old', name: 'Old bench', revision: 4, changedMs: 1, turn: 1, length: text.length, format: 0 }), change.objectStore('texts').put(text, 'old'), change.done]);
}
const originalText = async (id: string) => {
  const came = await store.originalOf(id);
  return came && { version: came.version, text: new TextDecoder('utf-8', { ignoreBOM: true }).decode(came.bytes) };
};

beforeEach(async () => {
  await closeDatabase();
  await new Promise<void>((done, fail) => {
    const gone = indexedDB.deleteDatabase('rowtailor');
    gone.onsuccess = () => done();
    gone.onerror = () => fail(gone.error);
  });
  vi.restoreAllMocks();
});

describe('a document of an older version', () => {
  it('opened as a file is lifted, and kept byte for byte as it came', async () => {
    const { keeping, workspace } = await page();
    const bytes = new Uint8Array(new TextEncoder().encode(`\ufeff${OLD}`));
    expect(await keeping.openText(OLD, 'file', bytes)).toEqual({ ok: true });
    expect(workspace.document).toMatchObject({ version: 1, name: 'Old bench' });
    await keeping.flush();
    const { id } = keeping.orchard!;
    expect(await originalText(id)).toEqual({ version: 0, text: `\ufeff${OLD}` });
    expect((await keeping.list())[0]).toMatchObject({ format: 1, original: 0 });
    expect(JSON.parse((await store.kept(id))!.text)).toMatchObject({ version: 1 });
  });
  it('kept on the device stays as it is until it is changed; then what it was is beside it, and stays what it was', async () => {
    await lay(OLD);
    const { keeping, workspace } = await page();
    expect(workspace.document).toMatchObject({ version: 1, name: 'Old bench' });
    expect((await store.kept('old'))!.text).toBe(OLD);
    expect(await store.originalOf('old')).toBeNull();
    for (const heightM of [2.5, 2.6]) {
      workspace.editCanopy({ heightM });
      await keeping.flush();
    }
    expect(JSON.parse((await store.kept('old'))!.text)).toMatchObject({ version: 1, name: 'Old bench' });
    expect(await originalText('old')).toEqual({ version: 0, text: OLD });
    await keeping.rename('old', 'New bench');
    expect((await keeping.list())[0]).toMatchObject({ name: 'New bench', original: 0 });
    await keeping.erase('old');
    expect(await store.originalOf('old')).toBeNull();
  });
  it('whose save breaks off in the middle is there as it was: text and original go together', async () => {
    await lay(OLD);
    const { keeping, workspace } = await page();
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: unknown, key?: IDBValidKey) {
      const request = key === undefined ? put.call(this, value) : put.call(this, value, key);
      if (this.name === 'steps') this.transaction.abort();
      return request;
    });
    workspace.editCanopy({ heightM: 2.5 });
    expect(await keeping.flush()).toBe(false);
    expect((await store.kept('old'))!.text).toBe(OLD);
    expect(await store.originalOf('old')).toBeNull();
    vi.restoreAllMocks();
    workspace.editCanopy({ heightM: 2.6 });
    expect(await keeping.flush()).toBe(true);
    expect(await originalText('old')).toEqual({ version: 0, text: OLD });
  });
  it('of a version before that one is refused by name, and nothing is kept of it', async () => {
    const { keeping } = await page();
    expect(await keeping.openText(OLD.replace('"version": 0', '"version": -1'), 'file')).toMatchObject({ ok: false, unread: { reading: { problems: [{ code: 'not-a-version' }] } } });
    expect(await keeping.list()).toEqual([]);
  });
});

it('a store of the second version opens with all that it held', async () => {
  await laySecond(JSON.stringify({ ...demo, name: 'Second' }));
  const { keeping, workspace } = await page();
  expect(workspace.document.name).toBe('Second');
  workspace.editCanopy({ heightM: 2.5 });
  expect(await keeping.flush()).toBe(true);
  // It was of this version of the format already.
  expect(await store.originalOf('second')).toBeNull();
  expect((await keeping.list()).map((o) => [o.name, o.revision])).toEqual([['Second', 2]]);
});
