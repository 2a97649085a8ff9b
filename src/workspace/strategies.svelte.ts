import { AXIS_UNITS, curves, measuredOn, rangeOf, type Axis, type Curve } from '#core/dose/compare/curves.ts';
import { pairs, type Pair } from '#core/dose/compare/differences.ts';
import { strategyRows, type StrategyRow } from '#core/dose/compare/rows.ts';
import { changed, type Changes } from '#core/dose/compare/scenario.ts';
import { sceneOf } from '#core/dose/compare/scene.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { valueOf } from '#core/working/answer.ts';
import { editBlock, editRung } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

export type { Axis, Changes, Curve, Pair, StrategyRow };
export { AXIS_UNITS };

/** What a strategy scales by, as the reader sorts them. */
export const FAMILIES = ['height', 'wall', 'volume', 'leaf', 'other'] as const;
export type StrategyFamily = (typeof FAMILIES)[number];
const FAMILY: Readonly<Record<string, StrategyFamily>> = { h: 'height', LWA: 'wall', TRVc: 'volume', TRVg: 'volume', TRVs: 'volume', UCR: 'volume', LAI: 'leaf' };
export const familyOf = (row: StrategyRow): StrategyFamily => FAMILY[row.strategy.descriptor ?? ''] ?? 'other';

export const COLUMN_IDS = ['name', 'by', 'water', 'index', 'dose', 'concentration'] as const;
export type ColumnId = (typeof COLUMN_IDS)[number];
export interface Sorting<K extends string = ColumnId> {
  readonly by: K;
  readonly down: boolean;
}

/** Measures that can be moved, and the axis that gives their range. */
export const MEASURES = { heightM: 'height', skirtM: 'skirt', widthM: 'width', rowSpacingM: 'spacing', ladM2PerM3: 'density' } as const satisfies Record<string, Axis>;
export type Measure = keyof typeof MEASURES;

/** The crown keeps at least so much height in what is tried. */
const LEAST_CROWN_M = 0.1;
const STEPS = 48;

/** The strategies on the block and rung in view, or on a canopy that is tried instead, and how they are looked at. */
export class StrategiesView {
  constructor(readonly workspace: Workspace) {}

  /** What is tried, and where: another block or rung begins from what was measured there. */
  private tried = $state.raw<{ readonly place: string; readonly changes: Changes }>({ place: '', changes: {} });
  private readonly place: string = $derived.by(() => `${this.workspace.block.id} ${this.workspace.rung.id}`);
  readonly changes: Changes = $derived.by(() => (this.tried.place === this.place ? this.tried.changes : {}));
  readonly trying: boolean = $derived.by(() => Object.keys(this.changes).length > 0);

  readonly document: Document = $derived.by(() => (this.trying ? this.withChanges(this.workspace.document) : this.workspace.document));
  readonly result: Result = $derived.by(() => {
    const { block, rung, result } = this.workspace;
    if (!this.trying) return result;
    const there = evaluate(this.document, block.id, rung.id);
    return 'kind' in there ? result : there;
  });
  private withChanges(document: Document): Document {
    const { block, rung, result } = this.workspace;
    const { canopy, rowSpacingM } = changed(sceneOf(document, result).standing, this.changes);
    const moved = editRung(document, block.id, rung.id, (r) => ({ ...r, canopy }));
    return rowSpacingM === block.rowSpacingM ? moved : editBlock(moved, block.id, (b) => ({ ...b, rowSpacingM }));
  }

  /** Moves one measure of what is tried; a skirt stays below the top. */
  try(measure: Measure, value: number): void {
    const next: Changes = { ...this.changes, [measure]: value };
    const height = next.heightM ?? this.workspace.rung.canopy.heightM;
    const skirt = next.skirtM ?? this.workspace.rung.canopy.skirtM ?? 0;
    const within = skirt > height - LEAST_CROWN_M ? { skirtM: Math.max(0, height - LEAST_CROWN_M) } : {};
    this.tried = { place: this.place, changes: { ...next, ...within } };
  }
  tryDensity(densityClass: NonNullable<Changes['densityClass']>): void {
    this.tried = { place: this.place, changes: { ...this.changes, densityClass } };
  }
  putBack(): void {
    this.tried = { place: '', changes: {} };
  }
  /** Makes what is tried the canopy of the rung: one step of undo. */
  takeOver(): void {
    if (!this.trying) return;
    this.workspace.edit((d) => this.withChanges(d));
    this.workspace.rest();
    this.putBack();
  }
  /** Range and present value of a measure; the range stays while it is moved. */
  measure(id: Measure): { readonly least: number; readonly most: number; readonly measured: number; readonly now: number } {
    const axis = MEASURES[id];
    const [least, most] = rangeOf(this.workspace.result, axis);
    return { least, most, measured: measuredOn(this.workspace.result, axis), now: measuredOn(this.result, axis) };
  }

  readonly rows: readonly StrategyRow[] = $derived.by(() => strategyRows(this.document, this.result));
  sorting = $state.raw<Sorting | null>(null);
  families = $state.raw<readonly StrategyFamily[]>([]);
  waters = $state<'any' | 'named' | 'none'>('any');
  /** Names by which rows are sorted; the words are the screen's. */
  nameOf: (row: StrategyRow) => string = (row) => row.id;

  /** Those that are asked for, in the order that is asked for. */
  readonly shown: readonly StrategyRow[] = $derived.by(() => {
    const some = this.rows.filter((r) => (this.families.length === 0 || this.families.includes(familyOf(r))) && (this.waters === 'any' || (r.strategy.water !== undefined) === (this.waters === 'named')));
    const s = this.sorting;
    return s ? sorted(some, s, this.nameOf) : some;
  });
  sortBy(by: ColumnId): void {
    this.sorting = turned(this.sorting, by);
  }
  row(id: string): StrategyRow | undefined {
    return this.rows.find((r) => r.id === id);
  }

  readonly pairs: ReadonlyMap<string, Pair> = $derived.by(() => new Map(pairs(this.document, this.result, this.rows).map((p) => [`${p.a} ${p.b}`, p])));
  /** The pair of two rows, the first less the second. */
  pair(a: string, b: string): Pair | null {
    const there = this.pairs.get(`${a} ${b}`);
    if (there) return there;
    const other = this.pairs.get(`${b} ${a}`);
    return other ? turnedPair(other) : null;
  }

  axis = $state<Axis>('height');
  readonly curves: readonly Curve[] = $derived.by(() => curves(this.document, this.result, this.axis, STEPS, rangeOf(this.workspace.result, this.axis)));
}

/** A heading that is pressed again turns the order; a third time it is the order as written. */
export function turned<K extends string>(now: Sorting<K> | null, by: K): Sorting<K> | null {
  if (now?.by !== by) return { by, down: false };
  return now.down ? null : { by, down: true };
}

/** What has no figure stands last, whichever way. */
export function sorted(rows: readonly StrategyRow[], { by, down }: Sorting, nameOf: (row: StrategyRow) => string): readonly StrategyRow[] {
  const way = down ? -1 : 1;
  const key = (r: StrategyRow): number | string | undefined => {
    if (by === 'name') return nameOf(r);
    if (by === 'by') return FAMILIES.indexOf(familyOf(r));
    return valueOf(r[by]);
  };
  return rows.toSorted((a, b) => {
    const [x, y] = [key(a), key(b)];
    if (x === undefined || y === undefined) return Number(x === undefined) - Number(y === undefined);
    return way * (typeof x === 'string' ? x.localeCompare(String(y)) : x - Number(y));
  });
}

/** The same pair seen from the other side. */
function turnedPair({ a, b, difference, ratio, reasons }: Pair): Pair {
  return {
    a: b,
    b: a,
    difference: difference === null ? null : -difference,
    ratio: ratio === null || ratio === 0 ? null : 1 / ratio,
    reasons: reasons.map(({ code, values }) => {
      const { a: x, b: y, factor, ...rest } = values;
      const swapped = { ...(y === undefined ? {} : { a: y }), ...(x === undefined ? {} : { b: x }), ...(typeof factor === 'number' && factor !== 0 ? { factor: 1 / factor } : {}) };
      return { code, values: { ...rest, ...swapped } };
    })
  };
}
