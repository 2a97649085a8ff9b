import type { Canopy } from '#core/canopy/types.ts';
import { isRefused } from '#core/working/answer.ts';
import type { WorkRecord } from '#core/record/types.ts';
import type { Block, Document, Rung } from '#core/setting/document.ts';
import { resultOf } from '#core/setting/result-of.ts';
import type { Result } from '#core/setting/result.ts';
import type { Setting } from '#core/sprayer/types.ts';
import { editBlock, editRung, patchCanopy, patched, patchNozzles, patchSetting } from './edits.ts';
import { History, type Steps } from './history.ts';
import type { Place } from './place.ts';

/** A step of undo. It also goes to where it was made, or its effect would not be seen. */
export interface Step {
  readonly document: Document;
  readonly place: Place;
}

/** The open document, the place in it, its result, and every way to change it. */
export class Workspace {
  document = $state.raw<Document>() as Document;
  private place = $state.raw<Place>({ block: '', rung: '', ghost: null });
  /** Nozzle position that is being set. */
  selected = $state<string | null>(null);
  /** Nozzle position under the pointer, or under the focus of the keyboard. */
  pointed = $state<string | null>(null);
  /** Set a nozzle on both sides at once. */
  paired = $state(true);
  private history = new History<Step>();
  /** Told of each setting that is saved. */
  onSaved: ((rung: Rung, block: Block) => void) | null = null;
  private turns = $state(0);

  constructor(document: Document) {
    this.open(document);
  }

  /** Opens a document on its first block, at the last rung of the season, the first rung as the ghost behind it; with the steps of an earlier visit, each of which is asked for whether it fits before it is taken. */
  open(document: Document, steps?: Steps<Step>, fits?: (step: Step) => boolean): void {
    this.document = document;
    this.history = new History(steps, fits);
    this.turns++;
    this.goTo(document.blocks[0]!.id);
  }

  readonly block: Block = $derived.by(() => this.document.blocks.find((b) => b.id === this.place.block) ?? this.document.blocks[0]!);
  readonly rung: Rung = $derived.by(() => this.block.rungs.find((r) => r.id === this.place.rung) ?? this.block.rungs[0]!);
  readonly result: Result = $derived.by(() => this.at(this.rung.id)!);
  readonly ghost: Result | null = $derived.by(() => (this.place.ghost !== null && this.place.ghost !== this.rung.id ? this.ghostOf(this.place.ghost) : null));
  readonly canUndo = $derived.by(() => (this.turns, this.history.canUndo));
  readonly canRedo = $derived.by(() => (this.turns, this.history.canRedo));

  private lastGhost: { readonly on: readonly unknown[]; readonly result: Result | null } = { on: [], result: null };
  /** A drag of one rung leaves the other as it is: what the ghost rests on is compared before it is worked out again. */
  private ghostOf(rungId: string): Result | null {
    const { blocks: _, ...shared } = this.document;
    const { rungs, ...block } = this.block;
    const on = [rungs.find((r) => r.id === rungId), ...Object.entries(shared).flat(), ...Object.entries(block).flat()];
    if (on.length !== this.lastGhost.on.length || on.some((v, i) => v !== this.lastGhost.on[i])) this.lastGhost = { on, result: this.at(rungId) };
    return this.lastGhost.result;
  }

  private at(rungId: string): Result | null {
    const result = resultOf(this.document, this.block.id, rungId);
    return 'kind' in result && isRefused(result) ? null : (result as Result);
  }

  get here(): Place {
    return this.place;
  }
  /** Goes to a place of an earlier visit, if it is still there. */
  returnTo({ block, rung, ghost }: Place): void {
    const rungs = this.document.blocks.find((b) => b.id === block)?.rungs ?? [];
    if (rungs.some((r) => r.id === rung)) this.place = { block, rung, ghost: rungs.some((r) => r.id === ghost) ? ghost : null };
  }

  goTo(blockId: string): void {
    const block = this.document.blocks.find((b) => b.id === blockId);
    if (!block) return;
    this.place = { block: block.id, rung: block.rungs.at(-1)!.id, ghost: block.rungs.length > 1 ? block.rungs[0]!.id : null };
    this.selected = null;
  }
  goToRung(rungId: string): void {
    const { ghost } = this.place;
    this.place = { ...this.place, rung: rungId, ghost: rungId === ghost ? this.rung.id : ghost };
  }
  setGhost(rungId: string | null): void {
    this.place = { ...this.place, ghost: rungId };
  }
  get ghostId(): string | null {
    return this.place.ghost;
  }

  /** Replaces the document; edits with one gesture key make one undo step. */
  edit(change: (document: Document) => Document, gesture: string | null = null): void {
    const before = this.document;
    const after = change(before);
    this.history.note({ document: before, place: this.place }, gesture);
    this.document = after;
    this.turns++;
  }
  rest(): void {
    this.history.rest();
  }
  /** Adds to what was done. No step of undo takes it back. */
  addRecords(records: readonly WorkRecord[]): void {
    this.document = { ...this.document, records: [...(this.document.records ?? []), ...records] };
    this.history.rest();
  }
  get steps(): Steps<Step> {
    return this.history.steps;
  }
  undo(): void {
    this.turn(this.history.undo({ document: this.document, place: this.place }));
  }
  redo(): void {
    this.turn(this.history.redo({ document: this.document, place: this.place }));
  }
  private turn(to: Step): void {
    // Records are no edit: a step back or forward leaves them as they are.
    const { records } = this.document;
    this.document = records === to.document.records ? to.document : patched(to.document, { records });
    this.place = to.place;
    this.turns++;
  }

  /** A block of the user's own from three measurements, with the setting of the block in view, and goes there. */
  addBlock(name: string, canopy: Canopy, rowSpacingM: number, machine: string, rungName: string): void {
    const ids = new Set(this.document.blocks.map((b) => b.id));
    let n = ids.size + 1;
    while (ids.has(`block-${n}`)) n++;
    const id = `block-${n}`;
    const m = this.document.machines.find((each) => each.id === machine) ?? this.result.machine;
    const now = this.rung.setting;
    const within = (v: number, least: number, most: number) => Math.min(Math.max(v, least), most);
    const speedKmH = within(now.speedKmH, m.speedMinKmH, m.speedMaxKmH);
    const pressureBar = within(now.pressureBar, m.pressureMinBar, m.pressureMaxBar);
    const ptoRpm = within(now.ptoRpm, m.ptoMinRpm, m.ptoMaxRpm);
    const gear = m.gears.find((g) => g.id === this.rung.setting.gear) ?? m.gears[0]!;
    const rung: Rung = { id: 'today', name: rungName, canopy, setting: { speedKmH, pressureBar, ptoRpm, gear: gear.id } };
    const { strategy, concentration } = this.block;
    const block: Block = { id, name, rowSpacingM, machine: m.id, strategy, rungs: [rung], ...(concentration === undefined ? {} : { concentration }) };
    this.edit((d) => ({ ...d, blocks: [...d.blocks, block] }));
    this.goTo(id);
  }

  editBlock(patch: { readonly [K in keyof Block]?: Block[K] | undefined }, gesture: string | null = null): void {
    this.edit((d) => editBlock(d, this.block.id, (b) => patched(b, patch)), gesture);
  }
  editRung(change: (rung: Rung) => Rung, gesture: string | null = null): void {
    this.edit((d) => editRung(d, this.block.id, this.rung.id, change), gesture);
  }
  editCanopy(patch: { readonly [K in keyof Canopy]?: Canopy[K] | undefined }, gesture: string | null = null): void {
    this.editRung((r) => patchCanopy(r, patch), gesture);
  }
  editSetting(patch: { readonly [K in keyof Setting]?: Setting[K] | undefined }, gesture: string | null = null): void {
    this.editRung((r) => patchSetting(r, patch), gesture);
  }
  saveSetting(): void {
    this.editRung((r) => ({ ...r, saved: r.setting }));
    this.onSaved?.(this.rung, this.block);
  }
  backToSaved(): void {
    this.editRung((r) => (r.saved ? { ...r, setting: r.saved } : r));
  }

  /** The position and, when both sides are set together, its mate at the same height and angle. */
  together(position: string): string[] {
    const all = this.result.machine.nozzles;
    const one = all.find((n) => n.id === position);
    if (!one || !this.paired) return [position];
    return all.filter((n) => n.id === position || (n.side !== one.side && n.heightM === one.heightM && n.angleDeg === one.angleDeg)).map((n) => n.id);
  }
  setOpen(position: string, open: boolean): void {
    this.editRung((r) => patchNozzles(r, this.together(position), { open }));
  }
  setSwivel(position: string, swivelDeg: number, gesture: string | null = null): void {
    this.editRung((r) => patchNozzles(r, this.together(position), { swivelDeg }), gesture);
  }
  setSize(position: string, size: string): void {
    const states = this.result.sprayer.nozzles;
    const has = (id: string) => states.some((n) => n.position.id === id && n.table?.sizes.some((s) => s.id === size));
    this.editRung((r) => patchNozzles(r, this.together(position).filter(has), { size }));
  }
  isOpen(position: string): boolean {
    return this.result.sprayer.nozzles.find((n) => n.position.id === position)?.open ?? true;
  }
}
