import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Document } from '../../src/core/setting/document.ts';
import { closeDatabase, database } from '../../src/store/keep/database.ts';
import { writeLast } from '../../src/store/keep/journal.ts';
import * as store from '../../src/store/keep/orchards.ts';
import { Keeping } from '../../src/workspace/keep/keeping.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const DEMO = demo as unknown as Document;
const clock = { wall: 1_900_000_000_000 };

/** A storage of its own for each page; what all pages share is the browser's. */
function area(): Storage {
  const kept = new Map<string, string>();
  return { get length() { return kept.size; }, key: (i) => [...kept.keys()][i] ?? null, getItem: (k) => kept.get(k) ?? null, setItem: (k, v) => void kept.set(k, v), removeItem: (k) => void kept.delete(k), clear: () => kept.clear() };
}
let local: Storage;
let letters = 0;
let leaves = true;

async function page(session = area()): Promise<{ keeping: Keeping; workspace: Workspace; session: Storage }> {
  const workspace = new Workspace(DEMO);
  const keeping = new Keeping(workspace, DEMO, {
    nowMs: () => clock.wall,
    ownMs: () => performance.now(),
    letters: () => `id${++letters}`,
    local,
    session,
    mayLeave: () => leaves,
    names: { copy: (n) => `${n}, copy`, rescued: (n) => `${n}, rescued` }
  });
  await keeping.start();
  return { keeping, workspace, session };
}
const height = (w: Workspace) => w.rung.canopy.heightM;
const heightIn = (text: string) => (JSON.parse(text) as Document).blocks[0]!.rungs.at(-1)!.canopy.heightM;

const removed = () =>
  new Promise<void>((done, fail) => {
    const gone = indexedDB.deleteDatabase('rowtailor');
    gone.onsuccess = () => done();
    gone.onerror = () => fail(gone.error);
  });
beforeEach(async () => {
  await closeDatabase();
  await removed();
  local = area();
  leaves = true;
});
afterEach(() => vi.restoreAllMocks());

describe('an orchard', () => {
  it('is kept within a second of an edit, and opened by the next visit with its steps of undo and redo', async () => {
    const a = await page();
    for (const h of [2, 2.5, 3]) a.workspace.editCanopy({ heightM: h });
    a.workspace.undo();
    await expect.poll(() => a.keeping.state.kind, { timeout: 1500, interval: 20 }).toBe('kept');
    const b = await page();
    expect(height(b.workspace)).toBe(2.5);
    b.workspace.redo();
    expect(height(b.workspace)).toBe(3);
    for (const h of [2.5, 2, 3.3]) {
      b.workspace.undo();
      expect(height(b.workspace)).toBe(h);
    }
    expect(b.workspace.canUndo).toBe(false);
    expect(b.workspace.document).toEqual(DEMO);
  });
  it('that was only looked at leaves nothing behind', async () => {
    const a = await page();
    await a.keeping.flush();
    expect(await store.orchards()).toEqual([]);
  });
  it('opened from a file stands beside the others; opened twice it is one still', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    const text = JSON.stringify({ ...demo, name: 'Other' });
    expect(await a.keeping.openText(text, 'file')).toEqual({ ok: true });
    expect(await a.keeping.openText(text, 'file')).toEqual({ ok: true });
    expect((await store.orchards()).map((o) => o.name)).toEqual(['Other', demo.name]);
    const [, first] = await store.orchards();
    expect(await a.keeping.openOrchard(first!.id)).toEqual({ ok: true });
    expect(height(a.workspace)).toBe(2);
  });
  it('is renamed, copied with its saved settings, deleted, taken back, deleted for good', async () => {
    const a = await page();
    a.workspace.saveSetting();
    await a.keeping.flush();
    const { id } = a.keeping.orchard!;
    await a.keeping.copy(id, demo.name);
    const copy = (await a.keeping.list()).find((o) => o.id !== id)!;
    expect(copy.name).toBe(`${demo.name}, copy`);
    expect((JSON.parse((await store.kept(copy.id))!.text) as Document).name).toBe(copy.name);
    expect(await store.savedSettings(copy.id, 'lower-bench', 'full-leaf')).toHaveLength(1);
    await a.keeping.rename(copy.id, 'Hill');
    await a.keeping.rename(id, 'Dale');
    expect((await a.keeping.list()).map((o) => o.name).sort()).toEqual(['Dale', 'Hill']);
    expect(a.workspace.document.name).toBe('Dale');
    // The open one gives way to the other.
    await a.keeping.putAway(id);
    expect(a.workspace.document.name).toBe('Hill');
    expect((await page()).workspace.document.name).toBe('Hill');
    await a.keeping.takeBack(id);
    expect((await a.keeping.list()).every((o) => !o.away)).toBe(true);
    await a.keeping.erase(id);
    expect((await a.keeping.list()).map((o) => o.name)).toEqual(['Hill']);
    expect(await store.savedSettings(id, 'lower-bench', 'full-leaf')).toEqual([]);
  });
  it('whose text is damaged is told, keeps its bytes, and is not written over', async () => {
    await store.save({ id: 'bad', follows: 0, name: 'Bad', text: '{"format":', steps: null, settings: [], nowMs: 1 });
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    expect((await store.kept('bad'))!.text).toBe('{"format":');
    expect(await a.keeping.openOrchard('bad')).toMatchObject({ ok: false, unread: { from: 'kept', text: '{"format":' } });
    expect(height(a.workspace)).toBe(2);
  });
});

describe('settings that were saved', () => {
  it('are all there, the last first, by block and rung, and survive an undo', async () => {
    const a = await page();
    for (const speedKmH of [4, 5, 6]) {
      clock.wall += 60_000;
      a.workspace.editSetting({ speedKmH });
      a.workspace.saveSetting();
    }
    a.workspace.undo();
    const speeds = async (rung: string) => (await a.keeping.savedSettings('lower-bench', rung)).map((s) => s.setting.speedKmH);
    expect(await speeds('full-leaf')).toEqual([6, 5, 4]);
    await a.keeping.flush();
    expect(await speeds('full-leaf')).toEqual([6, 5, 4]);
    expect(await speeds('mouse-ear')).toEqual([]);
    const b = await page();
    expect((await b.keeping.savedSettings('lower-bench', 'full-leaf')).map((s) => s.atMs)).toEqual([0, -60_000, -120_000].map((ms) => clock.wall + ms));
  });
  it('are the last fifty', async () => {
    const settings = Array.from({ length: 60 }, (_, i) => ({ block: 'b', rung: 'r', atMs: i, setting: DEMO.blocks[0]!.rungs[0]!.setting }));
    await store.save({ id: 'x', follows: 0, name: 'x', text: '{}', steps: null, settings, nowMs: 1 });
    const kept = await store.savedSettings('x', 'b', 'r');
    expect([kept.length, kept[0]!.atMs, kept.at(-1)!.atMs]).toEqual([50, 59, 10]);
  });
});

describe('two pages on one orchard', () => {
  const both = async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    return { a, b: await page() };
  };
  it('the older one hears of the newer save, and takes it over', async () => {
    const { a, b } = await both();
    b.workspace.editCanopy({ heightM: 2.5 });
    await b.keeping.flush();
    await expect.poll(() => a.keeping.state.kind).toBe('newer');
    expect([height(a.workspace), a.keeping.unkept]).toEqual([2, false]);
    await a.keeping.takeNewer();
    expect([height(a.workspace), a.keeping.state.kind]).toEqual([2.5, 'fresh']);
  });
  it('even unheard, nothing is written over: the second save is refused, and what is there is kept as a copy', async () => {
    const { a, b } = await both();
    // No word between them, as where one sleeps.
    vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockImplementation(() => undefined);
    b.workspace.editCanopy({ heightM: 2.5 });
    a.workspace.editCanopy({ heightM: 3 });
    expect(await b.keeping.flush()).toBe(true);
    expect(await a.keeping.flush()).toBe(false);
    expect(a.keeping.state.kind).toBe('newer');
    a.workspace.editCanopy({ heightM: 3.1 });
    expect(await a.keeping.flush()).toBe(false);
    const { id } = b.keeping.orchard!;
    expect(heightIn((await store.kept(id))!.text)).toBe(2.5);
    await a.keeping.keepAsCopy();
    expect(a.keeping.state.kind).toBe('kept');
    expect(a.workspace.document.name).toBe(`${demo.name}, copy`);
    expect(heightIn((await store.kept(a.keeping.orchard!.id))!.text)).toBe(3.1);
    expect(heightIn((await store.kept(id))!.text)).toBe(2.5);
  });
  it('of saves that race, one is first and the other is told', async () => {
    const { a, b } = await both();
    for (let i = 0; i < 10; i++) {
      a.workspace.editCanopy({ heightM: 4 + i / 100 });
      b.workspace.editCanopy({ heightM: 5 + i / 100 });
      const kept = await Promise.all([a.keeping.flush(), b.keeping.flush()]);
      expect(kept.filter(Boolean)).toHaveLength(1);
      const [first, other] = kept[0] ? [a, b] : [b, a];
      expect(heightIn((await store.kept(first.keeping.orchard!.id))!.text)).toBe(height(first.workspace));
      await expect.poll(() => other.keeping.state.kind).toBe('newer');
      await other.keeping.takeNewer();
      expect(height(other.workspace)).toBe(height(first.workspace));
    }
  });
  it('one deletes it: the other says so and keeps it again', async () => {
    const { a, b } = await both();
    await b.keeping.putAway(b.keeping.orchard!.id);
    await expect.poll(() => a.keeping.state.kind).toBe('gone');
    a.workspace.editCanopy({ heightM: 3 });
    expect(await a.keeping.flush()).toBe(false);
    await a.keeping.keepAnew();
    expect(a.keeping.state.kind).toBe('kept');
    expect((await store.orchards()).filter((o) => !o.away)).toHaveLength(1);
  });
});

describe('what stands in the way', () => {
  it('the data of the site are cleared: it is said, the work is here, and is kept again', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    await closeDatabase();
    await removed();
    await a.keeping.look();
    expect([a.keeping.state.kind, height(a.workspace)]).toEqual(['gone', 2]);
    await a.keeping.keepAnew();
    expect(a.keeping.state.kind).toBe('kept');
    expect((await store.orchards()).map((o) => o.name)).toEqual([demo.name]);
  });
  it('no room: it is said, the older save stands whole, and the next one goes through once there is room', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    const { id, revision } = a.keeping.orchard!;
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    a.workspace.editCanopy({ heightM: 2.5 });
    expect(await a.keeping.flush()).toBe(false);
    expect(a.keeping.state.kind).toBe('full');
    // It is tried again after a while, not over and over.
    const tries = full.mock.calls.length;
    await new Promise((done) => setTimeout(done, 900));
    expect(full.mock.calls.length - tries).toBeLessThanOrEqual(3);
    full.mockRestore();
    expect(await store.kept(id)).toMatchObject({ orchard: { revision } });
    a.workspace.editCanopy({ heightM: 2.6 });
    expect(await a.keeping.flush()).toBe(true);
    expect(a.keeping.state.kind).toBe('kept');
  });
  it('a store that does not answer is given up after a while, and used once it opens', async () => {
    const real = indexedDB.open.bind(indexedDB);
    let answer: (() => void) | null = null;
    // The request is made, but its success is heard late.
    vi.spyOn(indexedDB, 'open').mockImplementation((...given) => {
      const request = real(...given);
      const listen = request.addEventListener.bind(request);
      request.addEventListener = (type: string, listener: never) => (type === 'success' ? (answer = () => (listener as unknown as () => void)()) : listen(type, listener));
      return request;
    });
    const a = await page();
    expect(a.keeping.state.kind).toBe('blocked');
    answer!();
    a.workspace.editCanopy({ heightM: 2 });
    expect(await a.keeping.flush()).toBe(true);
  }, 20_000);
  it('work that is not kept is left only if the user says so', async () => {
    const a = await page();
    await store.save({ id: 'x', follows: 0, name: 'x', text: JSON.stringify({ ...demo, name: 'x' }), steps: null, settings: [], nowMs: 1 });
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    a.workspace.editCanopy({ heightM: 2.5 });
    leaves = false;
    expect(await a.keeping.openOrchard('x')).toEqual({ ok: false, unread: null });
    expect(height(a.workspace)).toBe(2.5);
    leaves = true;
    expect(await a.keeping.openOrchard('x')).toEqual({ ok: true });
    expect(a.workspace.document.name).toBe('x');
  });
  it('last words that find no room stay where they are, and do not keep the orchard from opening', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    const { id, revision } = a.keeping.orchard!;
    writeLast(local, 'gone', { id, follows: revision, text: JSON.stringify({ ...a.workspace.document, name: 'Typed last' }) });
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect(height((await page()).workspace)).toBe(2);
    full.mockRestore();
    expect((await page()).workspace.document.name).toBe('Typed last');
  });
  it('the browser is asked once to keep the data, and not before there is something to lose', async () => {
    const asked = vi.spyOn(navigator.storage, 'persist').mockResolvedValue(true);
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    expect(asked).not.toHaveBeenCalled();
    a.workspace.saveSetting();
    await a.keeping.flush();
    a.workspace.saveSetting();
    a.workspace.editCanopy({ heightM: 2.1 });
    await a.keeping.flush();
    expect(asked).toHaveBeenCalledTimes(1);
    const b = await page();
    b.workspace.saveSetting();
    await b.keeping.flush();
    expect(asked).toHaveBeenCalledTimes(1);
  });
  it('the clock goes back: it is said, and revisions still count', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    const { revision } = a.keeping.orchard!;
    clock.wall -= 10 * 86_400_000;
    a.workspace.editCanopy({ heightM: 2.5 });
    await a.keeping.flush();
    expect(a.keeping.orchard!.revision).toBe(revision + 1);
    expect(a.keeping.clockBackS).toBeGreaterThan(9.9 * 86_400);
    const b = await page();
    expect(height(b.workspace)).toBe(2.5);
  });
});

describe('last words', () => {
  it('of a page that was gone before its save are taken up by the next visit', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    const { id, revision } = a.keeping.orchard!;
    writeLast(local, 'gone', { id, follows: revision, text: JSON.stringify({ ...a.workspace.document, name: 'Typed last' }) });
    const b = await page();
    expect([b.workspace.document.name, b.keeping.rescued]).toEqual(['Typed last', []]);
    expect(local.length).toBe(0);
  });
  it('that another page has overtaken become an orchard of their own', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    await a.keeping.flush();
    const { id, revision } = a.keeping.orchard!;
    a.workspace.editCanopy({ heightM: 2.5 });
    await a.keeping.flush();
    writeLast(local, 'gone', { id, follows: revision, text: JSON.stringify({ ...a.workspace.document, day: undefined }) });
    const b = await page();
    expect(b.keeping.rescued).toEqual([`${demo.name}, rescued`]);
    expect(heightIn((await store.kept(id))!.text)).toBe(2.5);
  });
  it('are written when the page goes, and taken back once the save is through', async () => {
    const a = await page();
    a.workspace.editCanopy({ heightM: 2 });
    expect(a.keeping.goodbye()).toBe(true);
    expect([...Array(local.length).keys()].some((i) => local.key(i)!.includes('unsaved'))).toBe(true);
    await a.keeping.flush();
    expect([...Array(local.length).keys()].some((i) => local.key(i)!.includes('unsaved'))).toBe(false);
  });
});

describe('the store of the first version', () => {
  const lay = (text: unknown) =>
    new Promise<void>((done, fail) => {
      const open = indexedDB.open('rowtailor', 1);
      open.onupgradeneeded = () => void open.result.createObjectStore('open');
      open.onerror = () => fail(open.error);
      open.onsuccess = () => {
        const change = open.result.transaction('open', 'readwrite');
        change.objectStore('open').put(text, 'document');
        change.oncomplete = () => (open.result.close(), done());
      };
    });
  it('is lifted: its document is the one that opens', async () => {
    await lay(JSON.stringify({ ...demo, name: 'Kept before' }));
    const a = await page();
    expect(a.workspace.document.name).toBe('Kept before');
    expect([...(await database()).objectStoreNames]).toEqual(['orchards', 'originals', 'settings', 'steps', 'texts']);
  });
  it('with a text that cannot be read keeps its bytes', async () => {
    await lay('{"format":');
    await page();
    expect((await store.kept('first'))!.text).toBe('{"format":');
  });
  it('with nothing in it is an empty store', async () => {
    await lay(7);
    await page();
    expect(await store.orchards()).toEqual([]);
  });
});
