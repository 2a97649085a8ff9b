import { VERSION } from '#core/setting/document.ts';
import { nameIn, within, type KeptSteps, type Orchard, type Original, type SavedSetting, type Store } from './database.ts';
import { isSoundSaved, soundOrchard } from './sound.ts';

export interface Kept {
  readonly orchard: Orchard;
  /** Text of the document. */
  readonly text: string;
  readonly steps: KeptSteps | null;
}

export interface Save {
  readonly id: string;
  /** Revision that this save follows; 0 for an orchard that is not kept yet. */
  readonly follows: number;
  readonly name: string;
  readonly text: string;
  /** Steps of undo and redo, as text; null keeps none. */
  readonly steps: { readonly format: number; readonly text: string } | null;
  readonly settings: readonly SavedSetting[];
  readonly nowMs: number;
  /** Version of the format in which the text is written, where it is not ours. */
  readonly format?: number;
  /** The document as it came, where it was lifted from an older version. */
  readonly original?: Original | null;
}

/** What became of a save. `newer`: another page saved meanwhile; `gone`: the orchard is no longer kept here. Neither wrote anything. */
export type Saved = { readonly kind: 'saved'; readonly orchard: Orchard } | { readonly kind: 'newer'; readonly orchard: Orchard } | { readonly kind: 'gone' };

/** Saved settings that are kept of one rung. */
export const MOST_SAVED = 50;

const nextTurn = (all: readonly Orchard[]): number => Math.max(0, ...all.map((o) => o.turn)) + 1;

const rows = async (store: Store<'orchards'>): Promise<Orchard[]> => (await store.getAll()).flatMap((row) => soundOrchard(row) ?? []);
const row = async (store: Store<'orchards'>, id: string): Promise<Orchard | null> => soundOrchard(await store.get(id));
const textAt = async (store: Store<'texts'>, id: string): Promise<string | undefined> => {
  const text: unknown = await store.get(id);
  return typeof text === 'string' ? text : undefined;
};

/** Every orchard of this device, those opened last first. */
export const orchards = async (): Promise<Orchard[]> => within(['orchards'], 'readonly', async (at) => (await rows(at('orchards'))).sort((a, b) => b.turn - a.turn));

export const orchard = async (id: string): Promise<Orchard | null> => within(['orchards'], 'readonly', async (at) => row(at('orchards'), id));

export const kept = async (id: string): Promise<Kept | null> =>
  within(['orchards', 'texts', 'steps'], 'readonly', async (at) => {
    const [found, text, steps] = await Promise.all([row(at('orchards'), id), textAt(at('texts'), id), at('steps').get(id)]);
    return found && text !== undefined ? { orchard: found, text, steps: steps?.revision === found.revision ? steps : null } : null;
  });

/** Says that an orchard is opened now; null where it is not there. */
export const opened = async (id: string): Promise<Orchard | null> =>
  within(['orchards'], 'readwrite', async (at) => {
    const store = at('orchards');
    const all = await rows(store);
    const found = all.find((o) => o.id === id);
    if (!found) return null;
    const next = { ...found, turn: nextTurn(all) };
    await store.put(next);
    return next;
  });

/** Saves if nobody saved since. The revision is looked at and written in one transaction, so that of two pages only one can be first. */
export const save = async ({ id, follows, name, text, steps, settings, nowMs, format = VERSION, original = null }: Save): Promise<Saved> =>
  within(['orchards', 'texts', 'steps', 'settings', 'originals'], 'readwrite', async (at) => {
    const all = await rows(at('orchards'));
    const stands = all.find((o) => o.id === id);
    if (follows === 0 ? stands : !stands || stands.away) return stands && !stands.away ? { kind: 'newer', orchard: stands } : { kind: 'gone' };
    if (stands && stands.revision !== follows)
      // The same text twice is no quarrel: a page that was put to sleep may not have heard that its save came through.
      return (await at('texts').get(id)) === text ? { kind: 'saved', orchard: stands } : { kind: 'newer', orchard: stands };
    const came = stands?.original === undefined ? (original ?? (stands ? await outgrown(stands, at('texts')) : null)) : null;
    const version = stands?.original ?? came?.version;
    const next: Orchard = { id, name, revision: follows + 1, changedMs: nowMs, turn: stands?.turn ?? nextTurn(all), length: text.length, format, ...(version === undefined ? {} : { original: version }) };
    await Promise.all([
      at('orchards').put(next),
      ...(came ? [at('originals').put(came, id)] : []),
      at('texts').put(text, id),
      steps ? at('steps').put({ ...steps, revision: next.revision }, id) : at('steps').delete(id),
      ...settings.map((s) => addSetting(at('settings'), id, s))
    ]);
    return { kind: 'saved', orchard: next };
  });

/** What stands there, where it is of an older version and about to be written over. Whoever writes: the text goes nowhere unkept. */
async function outgrown({ id, format = 1 }: Orchard, texts: Store<'texts'>): Promise<Original | null> {
  const text = format < VERSION ? await textAt(texts, id) : undefined;
  return text === undefined ? null : { version: format, bytes: new TextEncoder().encode(text) };
}

/** A document as it came before it was lifted; null where it never was. */
export const originalOf = async (id: string): Promise<Original | null> => within(['originals'], 'readonly', async (at) => (await at('originals').get(id)) ?? null);

async function addSetting(store: Store<'settings'>, id: string, saved: SavedSetting): Promise<void> {
  await store.add({ ...saved, orchard: id });
  const keys = await store.index('rung').getAllKeys([id, saved.block, saved.rung]);
  for (const key of keys.slice(0, Math.max(0, keys.length - MOST_SAVED))) await store.delete(key);
}

/** Settings that were saved for a rung, the last one first. */
export const savedSettings = async (id: string, block: string, rung: string): Promise<SavedSetting[]> =>
  within(['settings'], 'readonly', async (at) => (await at('settings').index('rung').getAll([id, block, rung])).filter(isSoundSaved).reverse());

/** Puts an orchard away, or takes it back. */
export const putAway = async (id: string, away: boolean): Promise<void> =>
  within(['orchards'], 'readwrite', async (at) => {
    const found = await row(at('orchards'), id);
    if (!found) return;
    const { away: _, ...rest } = found;
    await at('orchards').put(away ? { ...rest, away } : rest);
  });

/** Deletes an orchard for good. */
export const erase = async (id: string): Promise<void> =>
  within(['orchards', 'texts', 'steps', 'settings', 'originals'], 'readwrite', async (at) => {
    const keys = await at('settings').index('orchard').getAllKeys(id);
    await Promise.all([at('orchards').delete(id), at('texts').delete(id), at('steps').delete(id), at('originals').delete(id), ...keys.map((key) => at('settings').delete(key))]);
  });

/** A second orchard with the same document and saved settings. Null where there is no such orchard. */
export const copied = async (id: string, newId: string, name: string, nowMs: number): Promise<Orchard | null> =>
  within(['orchards', 'texts', 'settings'], 'readwrite', async (at) => {
    const [all, text, settings] = await Promise.all([rows(at('orchards')), textAt(at('texts'), id), at('settings').index('orchard').getAll(id)]);
    const found = all.find((o) => o.id === id);
    if (!found || text === undefined) return null;
    const own = renamedText(text, name);
    const next: Orchard = { id: newId, name, revision: 1, changedMs: nowMs, turn: nextTurn(all), length: own.length, ...(found.format === undefined ? {} : { format: found.format }) };
    await Promise.all([at('orchards').put(next), at('texts').put(own, newId), ...settings.map((s) => at('settings').add({ ...s, orchard: newId }))]);
    return next;
  });

/** Gives an orchard that is not open here another name. It is a save like any other: a page that has it open is told. */
export const renamed = async (id: string, name: string, nowMs: number): Promise<Orchard | null> =>
  within(['orchards', 'texts', 'steps'], 'readwrite', async (at) => {
    const [found, text] = await Promise.all([row(at('orchards'), id), textAt(at('texts'), id)]);
    if (!found || text === undefined) return null;
    const own = renamedText(text, name);
    const next: Orchard = { ...found, name, revision: found.revision + 1, changedMs: nowMs, length: own.length };
    await Promise.all([at('orchards').put(next), at('texts').put(own, id), at('steps').delete(id)]);
    return next;
  });

/** A text that cannot be read keeps its bytes; only the list calls it otherwise. */
function renamedText(text: string, name: string): string {
  if (nameIn(text) === '') return text;
  const value = JSON.parse(text) as Record<string, unknown>;
  return JSON.stringify({ ...value, name });
}

/** An orchard, not put away, with the very same text. */
export const sameText = async (name: string, text: string): Promise<Orchard | null> =>
  within(['orchards', 'texts'], 'readonly', async (at) => {
    const alike = (await rows(at('orchards'))).filter((o) => o.name === name && o.length === text.length && !o.away);
    for (const o of alike) if ((await at('texts').get(o.id)) === text) return o;
    return null;
  });
