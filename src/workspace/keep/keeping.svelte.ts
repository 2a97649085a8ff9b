import { untrack } from 'svelte';
import { VERSION, type Document } from '#core/setting/document.ts';
import type { Reading } from '#job/read.ts';
import { refusedFor, type Orchard, type Original, type Refused, type SavedSetting } from '#store/keep/database.ts';
import { writeLast } from '#store/keep/journal.ts';
import * as store from '#store/keep/orchards.ts';
import { askToLast } from '#store/keep/room.ts';
import { tabs, type Tabs, type Word } from '#store/keep/tabs.ts';
import { editRung } from '../edits.ts';
import type { Workspace } from '../workspace.svelte.ts';
import { Autosave } from './autosave.ts';
import { WallClock } from './clock.ts';
import { takeLastWords } from './last-words.ts';
import { judge, read } from './reading.ts';
import { packed, STEP_FORMAT, unpacked } from './steps.ts';

/** How the open document is kept. `fresh`: as it was opened, there is nothing to keep. */
export type KeepState =
  | { readonly kind: 'fresh' | 'saving' | 'kept' | 'gone' | Refused }
  | { readonly kind: 'newer'; readonly atMs: number };

/** Why something was not opened. */
export interface Unread {
  readonly from: 'kept' | 'file' | 'link';
  readonly reading: Extract<Reading, { ok: false }>;
  readonly text: string;
}
export type Opening = { readonly ok: true } | { readonly ok: false; readonly unread: Unread | null };

export interface Outside {
  readonly nowMs: () => number;
  /** A clock that only goes on, ms. */
  readonly ownMs: () => number;
  /** Some random letters, never the same twice. */
  readonly letters: () => string;
  readonly local: Storage | null;
  readonly session: Storage | null;
  /** Whether work that could not be kept may be left. */
  readonly mayLeave: () => boolean;
  readonly names: { readonly copy: (name: string) => string; readonly rescued: (name: string) => string };
}

const HERE = 'rowtailor-orchard';
const ASKED = 'rowtailor-asked-to-last';
/** A refused save is tried again after a while, for room may have been made. */
const AGAIN_MS = 15_000;

/** Keeps the open document on this device: saves it, opens others, and says what stands in the way. Nothing is written over unseen. */
export class Keeping {
  state = $state.raw<KeepState>({ kind: 'fresh' });
  /** The open orchard as it is kept; null while it is not kept yet. */
  orchard = $state.raw<Orchard | null>(null);
  /** Seconds by which the clock of the device was seen to go back. */
  clockBackS = $state(0);
  /** Names of orchards that hold work which an earlier page could not bring in. */
  rescued = $state.raw<readonly string[]>([]);

  private readonly autosave = new Autosave(() => this.save());
  private readonly clock: WallClock;
  private readonly page: string;
  private channel: Tabs | null = null;
  private newId: string;
  /** The document that is kept, or was opened and not changed since. */
  private stands = $state.raw<Document>() as Document;
  private saves: readonly SavedSetting[] = [];
  /** The open document as it came, until it is kept, where it was lifted from an older version. */
  private original: Original | null = null;
  /** Counts the documents that were opened: what comes back late for an earlier one is passed over. */
  private openings = 0;
  private worth = false;
  private again: ReturnType<typeof setTimeout> | null = null;

  constructor(
    private readonly workspace: Workspace,
    private readonly demo: Document,
    private readonly outside: Outside
  ) {
    this.clock = new WallClock(outside.nowMs, outside.ownMs);
    this.page = outside.letters();
    this.newId = outside.letters();
    this.stands = demo;
  }

  /** Work that is not on this device yet. */
  get unkept(): boolean {
    return this.workspace.document !== this.stands;
  }

  /** Takes up what an earlier visit left, and opens the orchard that this page, or else any page, had open last. */
  async start(): Promise<Opening> {
    let opening: Opening = { ok: true };
    try {
      // Where there is no room for them they stay where they are.
      this.rescued = await takeLastWords(this.outside).catch(() => []);
      const all = (await store.orchards()).filter((o) => !o.away);
      const here = this.remembered();
      const found = all.find((o) => o.id === here) ?? all[0];
      // What was typed before the store answered is work too, and is not given up.
      if (found && !this.unkept) opening = await this.show(found.id);
    } catch (error) {
      this.state = { kind: refusedFor(error) };
    }
    this.watch();
    return opening;
  }

  private watch(): void {
    this.channel = tabs((word) => void this.heard(word));
    this.workspace.onSaved = ({ id, saved }, block) => {
      if (saved) this.saves = [...this.saves, { block: block.id, rung: id, atMs: this.outside.nowMs(), setting: saved }];
      this.worth = true;
    };
    $effect.root(() => {
      $effect(() => {
        // What comes of a save is no edit.
        if (this.workspace.document !== this.stands) untrack(() => this.changed());
      });
    });
  }

  private changed(): void {
    const { kind } = this.state;
    if (kind === 'newer' || kind === 'gone') return;
    if (kind === 'fresh' || kind === 'kept') this.state = { kind: 'saving' };
    this.autosave.later();
  }

  private async save(): Promise<void> {
    const { kind } = this.state;
    if (kind === 'newer' || kind === 'gone') return;
    if (this.again) clearTimeout(this.again);
    this.again = null;
    const { document } = this.workspace;
    const { openings, saves, orchard } = this;
    this.noticeClock();
    try {
      const answer = await store.save({
        id: orchard?.id ?? this.newId,
        follows: orchard?.revision ?? 0,
        name: document.name,
        text: JSON.stringify(document),
        steps: { format: STEP_FORMAT, text: packed(document, this.workspace.steps) },
        settings: saves,
        nowMs: this.outside.nowMs(),
        original: this.original
      });
      if (openings !== this.openings) return;
      if (answer.kind === 'newer') this.state = { kind: 'newer', atMs: answer.orchard.changedMs };
      else if (answer.kind === 'gone') this.state = { kind: 'gone' };
      else {
        this.orchard = answer.orchard;
        this.stands = document;
        this.saves = this.saves.slice(saves.length);
        this.original = null;
        this.remember(answer.orchard.id);
        this.channel?.say({ id: answer.orchard.id, revision: answer.orchard.revision });
        if (!this.unkept) {
          this.state = { kind: 'kept' };
          writeLast(this.outside.local, this.page, null);
        } else this.state = { kind: 'saving' };
        void this.askOnce();
      }
    } catch (error) {
      if (openings !== this.openings) return;
      this.state = { kind: refusedFor(error) };
      this.again = setTimeout(() => this.autosave.later(), AGAIN_MS);
    }
  }

  /** All that was done is on its way to the store when this is called, and there when it resolves. */
  async flush(): Promise<boolean> {
    if (this.unkept) this.changed();
    await this.autosave.now();
    return !this.unkept;
  }

  /** The page may be about to go: what is not kept is written down where writing does not wait. Says whether nothing would be lost. */
  goodbye(): boolean {
    if (!this.unkept) return true;
    const { document } = this.workspace;
    const written = writeLast(this.outside.local, this.page, { id: this.orchard?.id ?? this.newId, follows: this.orchard?.revision ?? 0, text: JSON.stringify(document) });
    if (this.orchard === null) this.remember(this.newId);
    void this.flush();
    return written;
  }

  /** The page is looked at again: what happened meanwhile? */
  async look(): Promise<void> {
    this.noticeClock();
    const { orchard } = this;
    if (!orchard || this.state.kind === 'newer' || this.state.kind === 'gone') return;
    await this.heard({ id: orchard.id, revision: Infinity });
  }

  private async heard({ id, revision }: Word): Promise<void> {
    const { orchard: mine, openings } = this;
    if (id !== mine?.id || (revision !== 0 && revision <= mine.revision)) return;
    const now = await store.orchard(id).catch(() => mine);
    if (openings !== this.openings || this.orchard?.id !== id) return;
    if (!now || now.away) this.state = { kind: 'gone' };
    else if (now.revision > this.orchard.revision) this.state = { kind: 'newer', atMs: now.changedMs };
    if (this.state.kind === 'newer' || this.state.kind === 'gone') this.autosave.drop();
  }

  /** Lets go of what is open here, and shows what another page saved since. */
  async takeNewer(): Promise<Opening> {
    return this.orchard ? this.show(this.orchard.id) : { ok: true };
  }

  /** What is open here becomes an orchard of its own beside the newer one. */
  async keepAsCopy(): Promise<void> {
    this.workspace.edit((d) => ({ ...d, name: this.outside.names.copy(d.name) }));
    await this.keepAnew();
  }

  /** Keeps what is open here as a new orchard. */
  async keepAnew(): Promise<void> {
    this.openings++;
    this.orchard = null;
    this.newId = this.outside.letters();
    this.state = { kind: 'saving' };
    this.autosave.later();
    await this.autosave.now();
  }

  /** Whether another document may take the place of the open one on the screen. */
  private async leave(): Promise<boolean> {
    return (await this.flush()) || this.outside.mayLeave();
  }

  async openOrchard(id: string): Promise<Opening> {
    return (await this.leave()) ? this.show(id) : { ok: false, unread: null };
  }

  private async show(id: string): Promise<Opening> {
    const found = await store.kept(id);
    if (!found) {
      this.state = { kind: 'gone' };
      return { ok: false, unread: null };
    }
    const reading = await read(found.text);
    if (!reading.ok) return { ok: false, unread: { from: 'kept', reading, text: found.text } };
    const steps = found.steps?.format === STEP_FORMAT ? unpacked(found.steps.text, reading.document) : undefined;
    const kept = new WeakSet(steps && [...steps.past, ...steps.future].map((s) => s.document));
    const { fits } = await judge();
    this.enter(reading.document, found.orchard, { kind: 'fresh' }, () => this.workspace.open(reading.document, steps, ({ document }) => !kept.has(document) || fits(document)));
    this.remember(id);
    this.clockBackS = this.clock.beforeS(found.orchard.changedMs);
    void store.opened(id).catch(() => undefined);
    return { ok: true };
  }

  /** Opens a text from outside as an orchard of its own beside those that are kept. */
  async openText(text: string, from: 'file' | 'link', bytes = new TextEncoder().encode(text)): Promise<Opening> {
    const reading = await read(text);
    if (!reading.ok) return { ok: false, unread: { from, reading, text } };
    return (await this.openDocument(reading.document, reading.from < VERSION ? { version: reading.from, bytes } : null)) ? { ok: true } : { ok: false, unread: null };
  }

  async openDocument(document: Document, original: Original | null = null): Promise<boolean> {
    if (!(await this.leave())) return false;
    // Opened twice, it is one orchard still.
    const same = await store.sameText(document.name, JSON.stringify(document)).catch(() => null);
    if (same) return (await this.show(same.id)).ok;
    this.newId = this.outside.letters();
    this.enter(document, null, { kind: 'saving' }, () => this.workspace.open(document));
    this.original = original;
    // It is not kept yet, though nothing was changed in it.
    this.stands = this.demo;
    this.worth = true;
    this.autosave.later();
    await this.autosave.now();
    return true;
  }

  /** The demo, as it came: it is kept once something is changed in it. */
  async openDemo(): Promise<boolean> {
    if (!(await this.leave())) return false;
    this.newId = this.outside.letters();
    this.enter(this.demo, null, { kind: 'fresh' }, () => this.workspace.open(this.demo));
    this.remember(null);
    return true;
  }

  private enter(document: Document, orchard: Orchard | null, state: KeepState, open: () => void): void {
    this.openings++;
    this.autosave.drop();
    writeLast(this.outside.local, this.page, null);
    this.saves = [];
    this.original = null;
    this.orchard = orchard;
    this.stands = document;
    this.state = state;
    open();
  }

  readonly list = (): Promise<Orchard[]> => store.orchards();

  async rename(id: string, name: string): Promise<void> {
    if (id !== this.orchard?.id) {
      const next = await store.renamed(id, name, this.outside.nowMs());
      if (next) this.channel?.say({ id, revision: next.revision });
      return;
    }
    this.workspace.edit((d) => ({ ...d, name }));
    await this.flush();
  }

  async copy(id: string, name: string): Promise<void> {
    if (id === this.orchard?.id) await this.flush();
    await store.copied(id, this.outside.letters(), this.outside.names.copy(name), this.outside.nowMs());
  }

  /** Puts an orchard away, so that it can be taken back. The open one gives way to the one before it, or to the demo. */
  async putAway(id: string): Promise<Opening> {
    const open = id === this.orchard?.id;
    if (open && !(await this.leave())) return { ok: false, unread: null };
    await store.putAway(id, true);
    this.channel?.say({ id, revision: 0 });
    if (!open) return { ok: true };
    const next = (await store.orchards()).find((o) => !o.away);
    const opening = next ? await this.show(next.id) : { ok: false as const, unread: null };
    if (!opening.ok) {
      this.stands = this.workspace.document;
      await this.openDemo();
    }
    return { ok: true };
  }
  readonly takeBack = (id: string): Promise<void> => store.putAway(id, false);
  async erase(id: string): Promise<void> {
    await store.erase(id);
    this.channel?.say({ id, revision: 0 });
  }
  /** A kept orchard byte for byte as it came, where it was lifted from an older version. */
  readonly originalOf = async (id: string): Promise<Original | null> => store.originalOf(id);
  /** The text of a kept orchard, as it is kept. */
  readonly textOf = async (id: string): Promise<string | null> => (id === this.orchard?.id ? JSON.stringify(this.workspace.document) : ((await store.kept(id))?.text ?? null));

  /** Settings that were saved for a rung, the last one first. */
  async savedSettings(block: string, rung: string): Promise<readonly SavedSetting[]> {
    const unkept = this.saves.filter((s) => s.block === block && s.rung === rung).reverse();
    return [...unkept, ...(this.orchard ? await store.savedSettings(this.orchard.id, block, rung) : [])];
  }

  /** Goes back to a setting that was saved, as one step of undo; where the document could not hold it, why. */
  async backTo(setting: SavedSetting['setting']): Promise<Opening> {
    const { block, rung, document } = this.workspace;
    const reading = (await judge()).judged(editRung(document, block.id, rung.id, (r) => ({ ...r, setting })));
    if (!reading.ok) return { ok: false, unread: { from: 'kept', reading, text: JSON.stringify(setting) } };
    this.workspace.editRung((r) => ({ ...r, setting }));
    return { ok: true };
  }

  private noticeClock(): void {
    const backS = this.clock.setBackS();
    if (backS > 0) this.clockBackS = backS;
  }

  /** Once, when there is something of the user's own to lose. */
  private async askOnce(): Promise<void> {
    if (!this.worth || this.outside.local === null) return;
    this.worth = false;
    try {
      if (this.outside.local.getItem(ASKED) !== null) return;
      this.outside.local.setItem(ASKED, 'yes');
    } catch {
      return;
    }
    await askToLast();
  }

  private remembered(): string | null {
    try {
      return this.outside.session?.getItem(HERE) ?? null;
    } catch {
      return null;
    }
  }
  private remember(id: string | null): void {
    try {
      if (id === null) this.outside.session?.removeItem(HERE);
      else this.outside.session?.setItem(HERE, id);
    } catch {
      // The next visit opens the orchard that was opened last.
    }
  }
}
