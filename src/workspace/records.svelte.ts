import { carriedOver } from '#core/record/carry.ts';
import { calibrationFields, treatmentFields } from '#core/record/prefill.ts';
import type { ChosenRules } from '#core/record/rules.ts';
import { threads, type Thread } from '#core/record/thread.ts';
import type { AnyFields, RecordKind, WorkRecord } from '#core/record/types.ts';
import { checkRecords, readRecords, type RecordProblem } from '#job/record/read.ts';
import { recordsCsv, recordsJson } from '#job/record/write.ts';
import { download } from '#store/files.ts';
import { patched } from './edits.ts';
import { localIso } from './moment.ts';
import { draftOf, fieldsOf, fieldsOfUnit, isOfProduct, readDraft, type Draft, type ProductDraft } from './record-draft.ts';
import type { Workspace } from './workspace.svelte.ts';

const KEY = 'rowtailor-record-draft';

/** Why a draft made no record. */
export type Refusal = { readonly code: 'no-reason' | 'unchanged' } | { readonly code: 'problems'; readonly problems: readonly RecordProblem[] };
/** What came of a file. */
export type Taken = { readonly ok: true; readonly added: number; readonly passed: number } | { readonly ok: false; readonly problems: readonly RecordProblem[]; readonly more: number };

interface Outside {
  readonly now: () => Date;
  /** Some random letters and figures, so that records of two devices never share an id. */
  readonly letters: () => string;
  /** Keeps the draft over a reload. */
  readonly storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | null;
}

/** The records of the open document, and the one that is being written. */
export class Records {
  private held = $state.raw<Draft | null>(null);
  /** The one being written, while its block and the record that it amends are in the document, which may be opened after the draft was found. */
  readonly draft: Draft | null = $derived.by(() => {
    const { held } = this;
    const { blocks, records = [] } = this.workspace.document;
    if (!held || !blocks.some((b) => b.id === held.block)) return null;
    return held.amends === undefined || records.some((r) => r.id === held.amends) ? held : null;
  });
  readonly threads: readonly Thread[] = $derived.by(() => threads(this.workspace.document.records ?? []));
  /** Those of the block in view. */
  readonly ofBlock: readonly Thread[] = $derived.by(() => this.threads.filter((t) => t.standing.block === this.workspace.block.id));
  readonly rules: readonly ChosenRules[] = $derived.by(() => this.workspace.document.recordRules ?? []);

  constructor(
    private readonly workspace: Workspace,
    private readonly outside: Outside
  ) {
    this.held = this.kept();
  }

  choose(rules: ChosenRules, on: boolean): void {
    const next = on ? [...this.rules, rules] : this.rules.filter((r) => r !== rules);
    this.workspace.edit((d) => patched(d, { recordRules: next.length > 0 ? next : undefined }));
  }

  /** Begins a record of the block and the stage in view. */
  begin(kind: RecordKind): void {
    const { document, result, block } = this.workspace;
    const round = kind === 'calibration' ? result.rung.check?.rounds.at(-1)?.at : undefined;
    const date = localIso(round === undefined ? this.outside.now() : new Date(round)).slice(0, 10);
    const known: readonly AnyFields[] = kind === 'calibration' ? [calibrationFields(document, result, date)] : treatmentFields(document, result, date);
    this.keep(draftOf(kind, block.id, known.map((f) => carriedOver(f, kind, block.id, document.records ?? []))));
  }

  /** Begins an amendment of what stands. */
  amend(thread: Thread): void {
    const { standing } = thread;
    this.keep({ ...draftOf(standing.kind, standing.block ?? this.workspace.block.id, [standing.fields as AnyFields]), amends: standing.id, reason: '' });
  }

  /** What the draft is to amend. */
  readonly amended: WorkRecord | null = $derived.by(() => this.workspace.document.records?.find((r) => r.id === this.draft?.amends) ?? null);

  /** Sets a field of the draft, of its product where it is one; `undefined` empties it. */
  set(field: string, value: string | number | undefined, product = 0): void {
    const { draft } = this;
    if (!draft) return;
    if (isOfProduct(draft.kind, field)) this.setProduct(product, (p) => ({ ...p, fields: patched(p.fields, { [field]: value }) }));
    else this.keep({ ...draft, fields: patched(draft.fields, { [field]: value }) });
  }
  setReason(reason: string): void {
    if (this.draft) this.keep({ ...this.draft, reason });
  }
  setUnit(unit: ProductDraft['unit'], product: number): void {
    const gone = fieldsOfUnit(unit === 'kg' ? 'L' : 'kg');
    this.setProduct(product, (p) => ({ unit, fields: Object.fromEntries(Object.entries(p.fields).filter(([f]) => !gone.includes(f))) }));
  }
  addProduct(): void {
    if (this.draft) this.keep({ ...this.draft, products: [...this.draft.products, { unit: 'kg', fields: {} }] });
  }
  removeProduct(product: number): void {
    if (this.draft) this.keep({ ...this.draft, products: this.draft.products.filter((_, i) => i !== product) });
  }
  private setProduct(product: number, change: (p: ProductDraft) => ProductDraft): void {
    if (this.draft) this.keep({ ...this.draft, products: this.draft.products.map((p, i) => (i === product ? change(p) : p)) });
  }

  drop(): void {
    this.keep(null);
  }

  /** Makes the records of the draft; it then is no more. What is wrong instead, with nothing made. */
  make(): Refusal | null {
    const { draft, amended } = this;
    if (!draft) return null;
    const kept = this.workspace.document.records ?? [];
    const all = fieldsOf(draft).map(trimmed);
    const reason = draft.reason?.trim() ?? '';
    if (draft.amends !== undefined) {
      if (reason === '') return { code: 'no-reason' };
      if (amended && sameFields(all[0]!, amended.fields as AnyFields)) return { code: 'unchanged' };
    }
    const at = localIso(this.outside.now());
    const raws = all.map((fields) => ({
      id: `${at.slice(0, 10)}-${this.outside.letters()}`,
      kind: draft.kind,
      block: draft.block,
      at,
      fields,
      ...(draft.amends === undefined ? {} : { amends: draft.amends, reason })
    }));
    const judged = checkRecords(raws, kept);
    if (!judged.ok) return { code: 'problems', problems: judged.problems };
    this.workspace.addRecords(judged.added);
    this.keep(null);
    return null;
  }

  /** All of a file or nothing. */
  take(text: string): Taken {
    const reading = readRecords(text, this.workspace.document.records ?? []);
    if (!reading.ok) return reading;
    if (reading.added.length > 0) this.workspace.addRecords(reading.added);
    return { ok: true, added: reading.added.length, passed: reading.passed };
  }

  /** Every record of the document, of all blocks, as a file. */
  save(as: 'csv' | 'json'): void {
    const records = this.workspace.document.records ?? [];
    const name = `records-${localIso(this.outside.now()).slice(0, 10)}`;
    if (as === 'csv') download(`${name}.csv`, recordsCsv(records), 'text/csv');
    else download(`${name}.json`, recordsJson(records), 'application/json');
  }

  private kept(): Draft | null {
    try {
      return readDraft(this.outside.storage?.getItem(KEY) ?? null);
    } catch {
      return null;
    }
  }
  private keep(draft: Draft | null): void {
    this.held = draft;
    try {
      if (draft) this.outside.storage?.setItem(KEY, JSON.stringify(draft));
      else this.outside.storage?.removeItem(KEY);
    } catch {
      // Full or forbidden storage: the draft lasts as long as the page.
    }
  }
}

/** Text as it is kept: no blanks around it, no tabs, line breaks of one kind; what is empty says nothing. */
function trimmed(fields: AnyFields): AnyFields {
  const tidy = Object.entries(fields).map(([k, v]) => [k, typeof v === 'string' ? v.replace(/\r\n?/g, '\n').replaceAll('\t', ' ').trim() : v] as const);
  return Object.fromEntries(tidy.filter(([, v]) => v !== ''));
}

const sameFields = (a: AnyFields, b: AnyFields): boolean => Object.keys(a).length === Object.keys(b).length && Object.keys(a).every((k) => a[k] === b[k]);

/** The page's clock, chance and storage. */
export const page = (): Outside => ({
  now: () => new Date(),
  letters: () => [...crypto.getRandomValues(new Uint8Array(8))].map((n) => '0123456789abcdefghjkmnpqrstvwxyz'[n % 32]).join(''),
  storage: (() => {
    try {
      return localStorage;
    } catch {
      return null;
    }
  })()
});
