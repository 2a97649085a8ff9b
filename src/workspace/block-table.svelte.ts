import * as F from '#core/canopy/formulas.ts';
import type { StrategyColumns } from '#core/dose/table/columns.ts';
import type { OwnStrategy } from '#core/dose/own/types.ts';
import type { Unit } from '#core/quantity/units.ts';
import type { Given } from '#store/strategies/messages.ts';
import { keptRows, sortRows, summary, type Summary } from './block-rows.ts';
import { strategiesClient, type Client } from './strategies-client.ts';
import { turned, type Sorting } from './strategies.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

export type BlockTableData = Given['table'];
export const SETS = ['index', 'water', 'dose', 'concentration'] as const;
export type ColumnSet = (typeof SETS)[number];
export const FIXED = ['heightM', 'widthM', 'rowSpacingM', 'trv', 'lwa', 'spread'] as const;
export type FixedColumn = (typeof FIXED)[number];

/** A column of figures of the table. */
export interface TableColumn {
  /** `FixedColumn`, or the id of a strategy. */
  readonly id: string;
  readonly strategy: boolean;
  readonly unit: Unit;
  readonly values: Float64Array;
}
export interface FigureFilter {
  readonly by: string;
  readonly way: 'least' | 'most';
  readonly value: number;
}

/** A table of canopies and what every strategy says of each; read and worked out beside the page's own thread. */
export class BlockTable {
  constructor(
    readonly workspace: Workspace,
    private readonly client: Client = strategiesClient()
  ) {
    this.label = workspace.block.label ?? '';
  }

  name = $state('');
  /** Share that is done; null while nothing is read. */
  reading = $state<number | null>(null);
  readingName = $state('');
  trouble = $state<'failed' | 'cancelled' | 'empty' | null>(null);
  data = $state.raw<BlockTableData | null>(null);
  private source: { readonly name: string; readonly from: string | Blob } | null = null;

  set = $state<ColumnSet>('index');
  /** Id of the label by which doses are worked out; the block's own at first. */
  label = $state<string>('');
  appliedLPerHa = $state<number | undefined>(undefined);
  sorting = $state.raw<Sorting<string> | null>(null);
  nameFilter = $state('');
  figureFilter = $state.raw<FigureFilter | null>(null);
  /** Row of the table that is marked, by its number in the file's order. */
  marked = $state<number | null>(null);

  private asked = 0;
  /** Reads a file or a text; what was open stays until it is read, and stays where it cannot be. */
  async open(name: string, from: string | Blob): Promise<void> {
    const mine = ++this.asked;
    this.reading = 0;
    this.readingName = name;
    this.trouble = null;
    const { document } = this.workspace;
    const label = document.labels.find((l) => l.id === this.label);
    const own = document.ownStrategies;
    try {
      const given = await this.client.ask(
        'table',
        { from, ...(label ? { label } : {}), ...(this.appliedLPerHa === undefined ? {} : { appliedLPerHa: this.appliedLPerHa }), ...(own ? { own } : {}), ...(document.assumptions ? { assumptions: document.assumptions } : {}) },
        (done) => {
          if (mine === this.asked) this.reading = done;
        }
      );
      if (mine !== this.asked) return;
      if (given) this.take(name, from, given);
    } catch {
      if (mine === this.asked) this.trouble = 'failed';
    }
    if (mine === this.asked) this.reading = null;
  }
  private take(name: string, from: string | Blob, given: BlockTableData): void {
    const same = this.source?.from === from;
    this.source = { name, from };
    this.name = name;
    this.data = given;
    if (given.canopies.count === 0) this.trouble = 'empty';
    if (same) return;
    this.marked = null;
    this.sorting = null;
    this.nameFilter = '';
    this.figureFilter = null;
  }
  cancel(): void {
    this.asked++;
    this.client.drop('table');
    this.reading = null;
    this.trouble = 'cancelled';
  }
  /** Works the table out anew: with another label, another water. */
  async again(): Promise<void> {
    if (this.source) await this.open(this.source.name, this.source.from);
  }
  get own(): readonly OwnStrategy[] {
    return this.workspace.document.ownStrategies ?? [];
  }

  /** Figures that every table shows, whatever the set. */
  private readonly fixed: Readonly<Record<FixedColumn, TableColumn>> | null = $derived.by(() => (this.data ? fixedColumns(this.data) : null));
  /** The columns of one set, by strategy, in the order of the strategy table. */
  private ofSet(set: ColumnSet): readonly TableColumn[] {
    const unit: Unit = set === 'index' || set === 'concentration' ? '1' : set === 'water' ? 'L/ha' : this.doseUnit;
    return [...(this.data?.columns ?? [])].flatMap(([id, c]): TableColumn[] => {
      const values = c[set];
      return values ? [{ id, strategy: true, unit, values }] : [];
    });
  }
  /** The label with which the table was worked out decides the unit. */
  get doseUnit(): Unit {
    return this.workspace.document.labels.find((l) => l.id === this.label)?.unit === 'L' ? 'Lprod/ha' : 'kg/ha';
  }
  readonly columns: readonly TableColumn[] = $derived.by(() => (this.fixed ? [...FIXED.map((id) => this.fixed![id]), ...this.ofSet(this.set)] : []));
  column(id: string): TableColumn | undefined {
    return this.columns.find((c) => c.id === id);
  }

  /** Numbers of the rows that are shown, in their order. */
  readonly order: Uint32Array = $derived.by(() => {
    if (!this.data) return new Uint32Array();
    const { canopies } = this.data;
    const f = this.figureFilter;
    const limit = f && this.column(f.by)?.values;
    const rows = keptRows(canopies, this.nameFilter, limit && f ? { values: limit, ...f } : null);
    const s = this.sorting;
    return s ? sortRows(rows, s.down, s.by === 'block' ? canopies.block : (this.column(s.by)?.values ?? null)) : rows;
  });
  readonly summaries: ReadonlyMap<string, Summary> = $derived.by(() => new Map(this.columns.map((c) => [c.id, summary(c.values, this.order)])));
  /** Where the strategies agree least among the rows shown: the row, and its lowest and highest index by strategy. */
  readonly least: { readonly row: number; readonly low: readonly [id: string, index: number]; readonly high: readonly [id: string, index: number] } | null = $derived.by(() => {
    const spread = this.fixed?.spread.values;
    if (!this.data || !spread) return null;
    let row = -1;
    for (const i of this.order) if (spread[i]! > (spread[row] ?? -Infinity)) row = i;
    const ends = row < 0 ? null : endsOf(this.data.columns, row);
    return ends && { row, ...ends };
  });
  sortBy(by: string): void {
    this.sorting = turned(this.sorting, by);
  }
}

const CANOPY_UNITS: Readonly<Record<FixedColumn, Unit>> = { heightM: 'm', widthM: 'm', rowSpacingM: 'm', trv: 'm3/ha', lwa: 'm2/ha', spread: '1' };

function fixedColumns({ canopies: c, columns }: BlockTableData): Readonly<Record<FixedColumn, TableColumn>> {
  const trv = new Float64Array(c.count);
  const lwa = new Float64Array(c.count);
  const v: Record<string, number> = { n: 2 };
  for (let i = 0; i < c.count; i++) {
    v['h'] = c.treeHeightM[i]! - c.skirtHeightM[i]!;
    v['W'] = c.canopyWidthM[i]!;
    v['R'] = c.rowSpacingM[i]!;
    v['f'] = c.filledFraction[i]!;
    trv[i] = F.TRV_CROWN.compute(v as never);
    lwa[i] = F.LEAF_WALL.compute(v as never);
  }
  const spread = new Float64Array(c.count);
  const all = [...columns.values()].map((each) => each.index);
  for (let i = 0; i < c.count; i++) {
    let [low, high] = [Infinity, -Infinity];
    for (const index of all) {
      const x = index[i]!;
      if (x < low) low = x;
      if (x > high) high = x;
    }
    spread[i] = high >= low ? high - low : NaN;
  }
  const values: Readonly<Record<FixedColumn, Float64Array>> = { heightM: c.treeHeightM, widthM: c.canopyWidthM, rowSpacingM: c.rowSpacingM, trv, lwa, spread };
  return Object.fromEntries(FIXED.map((id) => [id, { id, strategy: false, unit: CANOPY_UNITS[id], values: values[id] }])) as unknown as Readonly<Record<FixedColumn, TableColumn>>;
}

function endsOf(columns: ReadonlyMap<string, StrategyColumns>, row: number): { low: readonly [string, number]; high: readonly [string, number] } | null {
  let low: readonly [string, number] | null = null;
  let high: readonly [string, number] | null = null;
  for (const [id, { index }] of columns) {
    const x = index[row]!;
    if (Number.isNaN(x)) continue;
    if (!low || x < low[1]) low = [id, x];
    if (!high || x > high[1]) high = [id, x];
  }
  return low && high && { low, high };
}
