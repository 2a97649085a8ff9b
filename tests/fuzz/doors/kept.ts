import fc from 'fast-check';
import '../../support/runes.ts';
import { isUnitSystem } from '#core/quantity/units.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { checkDocument } from '#job/read.ts';
import { readRecords } from '#job/record/read.ts';
import { isSoundSaved, soundOrchard } from '#store/keep/sound.ts';
import { readLast, writeLast } from '#store/keep/journal.ts';
import { wordIn } from '#store/keep/tabs.ts';
import { momentText } from '#words/en/keep/time.ts';
import { keptPlace } from '#workspace/place.ts';
import { fieldsOf, readDraft } from '#workspace/record-draft.ts';
import { THEMES } from '#workspace/look.ts';
import { FIRST_STEPS, Preferences } from '#workspace/preferences.svelte.ts';
import { Stopwatch } from '#workspace/stopwatch.svelte.ts';
import { editRung } from '#workspace/edits.ts';
import { packed, unpacked } from '#workspace/keep/steps.ts';
import { finite, text, utf8, valueIn, type Door } from '../door.ts';
import { DEMO } from './rung.ts';

const json = (value: unknown): Uint8Array => utf8(JSON.stringify(value));
/** A storage with one text in it, whatever its name. */
const holding = (value: string): Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> => ({ getItem: () => value, setItem: () => undefined, removeItem: () => undefined });
const must = (met: boolean, what: string): void => {
  if (!met) throw new Error(what);
};
/** Any plain value, with the names by which objects are reached. */
const anything = fc.anything({ key: fc.constantFrom('__proto__', 'constructor', 'id', 'name', 'revision', 'changedMs', 'turn', 'setting', 'past', 'what', 'block', 'fields', 'kind'), withNullPrototype: false }).map((v) => utf8(JSON.stringify(v) ?? 'null'));

const place = { block: DEMO.blocks[0]!.id, rung: DEMO.blocks[0]!.rungs.at(-1)!.id, ghost: null };
const lower = (heightM: number): Document => editRung(DEMO, place.block, place.rung, (r) => ({ ...r, canopy: { ...r.canopy, heightM } }));
const steps = [3.1, 3.2, 3.3].map((h) => ({ document: lower(h), place }));
const SETTING = DEMO.blocks[0]!.rungs.at(-1)!.setting;

export const KEPT_DOORS: readonly Door[] = [
  {
    name: 'kept preferences',
    files: [json({ system: 'us', theme: 'sun', large: true, tried: ['top'] })],
    hostile: anything,
    read(bytes) {
      const p = new Preferences(holding(text(bytes)));
      must(isUnitSystem(p.system) && THEMES.includes(p.theme) && typeof p.large === 'boolean' && p.tried.every((s) => FIRST_STEPS.includes(s)), 'a preference that there is not');
      return p.system !== 'metric' || p.theme !== 'paper' || p.large || p.tried.length > 0;
    }
  },
  {
    name: 'kept stopwatch',
    files: [json({ what: 'run', block: 'lower-bench', rung: 'full-leaf', startedMs: 1_900_000_000_000 })],
    hostile: anything,
    read(bytes) {
      const watch = new Stopwatch({ load: () => text(bytes), save: () => true }, () => 1_900_000_100_000);
      finite(watch.seconds());
      must(watch.seconds() >= 0, 'a time below nothing');
      return watch.running !== null;
    }
  },
  {
    name: 'kept place',
    files: [json(place), json({ ...place, ghost: 'bloom' })],
    hostile: anything,
    read: (bytes) => keptPlace(holding(text(bytes))) !== null
  },
  {
    name: 'kept record being written',
    files: [json({ kind: 'treatment', block: 'block', fields: { date: '2031-05-12', treatedAreaHa: 1.8 }, products: [{ unit: 'kg', fields: { productName: 'Sample', productKgPerHa: 1.5 } }] }), json({ kind: 'calibration', block: 'block', fields: { machine: 'Arc', speedKmH: 5.4 }, products: [] })],
    hostile: anything,
    read(bytes) {
      const draft = readDraft(text(bytes));
      if (!draft) return false;
      finite(draft);
      // It becomes a record only by way of the reader.
      for (const [i, fields] of fieldsOf(draft).entries()) {
        const made = readRecords(JSON.stringify({ format: 'rowtailor-records', version: 1, records: [{ id: `r${i}`, kind: draft.kind, at: '2031-05-12T21:40:00+02:00', fields }] }), []);
        if (made.ok) finite(made.added);
      }
      return true;
    }
  },
  {
    name: 'last words of a page',
    files: [json({ id: 'a1', follows: 3, text: JSON.stringify(DEMO) }), json({ id: 'a1', follows: 0, text: '' })],
    hostile: anything,
    read(bytes) {
      const store = new Map([['rowtailor-unsaved-p', text(bytes)], ['other', '{}']]);
      const area = { get length() { return store.size; }, key: (i: number) => [...store.keys()][i] ?? null, getItem: (k: string) => store.get(k) ?? null, setItem: (k: string, v: string) => void store.set(k, v), removeItem: (k: string) => void store.delete(k) };
      const found = readLast(area);
      for (const words of found) {
        must(Number.isInteger(words.follows), 'a revision that is none');
        writeLast(area, 'p', words);
        const [again] = readLast(area);
        must(again?.text === words.text && again.id === words.id && again.follows === words.follows, 'last words come back as others');
      }
      return found.length > 0;
    }
  },
  {
    name: 'kept steps of undo',
    files: [utf8(packed(DEMO, { past: steps, future: steps.slice(0, 1) })), utf8(packed(DEMO, { past: [{ document: { ...DEMO, blocks: [...DEMO.blocks, { ...DEMO.blocks[0]!, id: 'b2' }] }, place }], future: [] }))],
    hostile: anything,
    read(bytes) {
      const back = unpacked(text(bytes), DEMO);
      if (!back) return false;
      // Each is judged before it is taken, see `fits`; the nearest is what the next undo asks for.
      const nearest = [back.past.at(-1), back.future.at(-1)].flatMap((s) => (s && s.document.blocks.length > 0 && checkDocument(s.document).ok ? [s.document] : []));
      for (const document of nearest) finite(evaluate(document, document.blocks[0]!.id, document.blocks[0]!.rungs[0]!.id));
      return nearest.length > 0;
    }
  },
  {
    name: 'kept rows',
    files: [json({ id: 'a', name: 'Bench', revision: 3, changedMs: 1_900_000_000_000, turn: 2, length: 7000 }), json({ id: 'a', name: 'Bench', revision: 3, changedMs: 1_900_000_000_000, turn: 2, length: 7000, away: true }), json({ orchard: 'a', block: 'b', rung: 'r', atMs: 1_900_000_000_000, setting: SETTING })],
    hostile: anything,
    read(bytes) {
      const row = valueIn(text(bytes));
      const orchard = soundOrchard(row);
      if (orchard) {
        finite(orchard);
        must(momentText(orchard.changedMs).length > 5 && orchard.name.length <= 120 && orchard.revision >= 1, 'a row that cannot be shown');
      }
      if (!isSoundSaved(row)) return orchard !== null;
      momentText(row.atMs);
      const { setting } = row;
      const judged = checkDocument(editRung(DEMO, place.block, place.rung, (r) => ({ ...r, setting })));
      if (judged.ok) finite(evaluate(judged.document, place.block, place.rung));
      return judged.ok;
    }
  },
  {
    name: 'word from another tab',
    files: [json({ id: 'a1', revision: 4 }), json({ id: 'a1', revision: 0 })],
    hostile: anything,
    read(bytes) {
      const word = wordIn(valueIn(text(bytes)));
      must(word === null || (typeof word.id === 'string' && word.revision >= 0), 'a word that is none');
      return word !== null;
    }
  }
];
