import { untrack } from 'svelte';
import { LEAST_DRAWS } from '#core/canopy/draws/coverage.ts';
import { MOST_DRAWS, type Drawn } from '#core/dose/compare/draws.ts';
import { tornado, type Bar, type Tornado } from '#core/dose/compare/tornado.ts';
import { valueOf, type Refused } from '#core/working/answer.ts';
import { strategiesClient, type Client } from './strategies-client.ts';
import type { StrategiesView, StrategyRow } from './strategies.svelte.ts';

export type { Bar, Drawn, Tornado };
export type Quantity = Drawn['quantity'];
export const DRAWS_RANGE = { least: LEAST_DRAWS, most: MOST_DRAWS, whole: true } as const;
export const SEED_RANGE = { least: 0, most: Number.MAX_SAFE_INTEGER, whole: true } as const;

/** What was drawn, and how. */
export interface DrawnSet {
  readonly draws: number;
  readonly seed: number;
  readonly assumptions: boolean;
  readonly given: readonly Drawn[];
}

/** How sure the strategies' figures are: draws beside what is reckoned, and what moves one of them most. */
export class Sureness {
  constructor(
    private readonly view: StrategiesView,
    private readonly client: Client = strategiesClient()
  ) {}

  /** Whose uncertainty is looked at; the block's own strategy until another is named. */
  private named = $state<string | null>(null);
  readonly subject: StrategyRow = $derived.by(() => this.view.row(this.named ?? '') ?? this.view.row(this.view.workspace.block.strategy) ?? this.view.rows[0]!);
  setSubject(id: string): void {
    this.named = id;
  }
  private wanted = $state<Quantity>('index');
  /** Falls back to the index where the subject names no water, or no label gives a dose. */
  readonly quantity: Quantity = $derived.by(() => (this.wanted === 'index' || valueOf(this.subject[this.wanted]) !== undefined ? this.wanted : 'index'));
  setQuantity(quantity: Quantity): void {
    this.wanted = quantity;
  }
  readonly sway: Tornado | Refused = $derived.by(() => tornado(this.view.document, this.view.result, this.subject.id, this.quantity));

  draws = $state(10_000);
  seed = $state(1);
  /** Whether the assumptions that have a range are drawn as well. */
  assumptions = $state(false);
  /** Share that is done; null while nothing is drawn. */
  drawing = $state<number | null>(null);
  failed = $state(false);
  refusal = $state.raw<Refused | null>(null);
  private found = $state.raw<(DrawnSet & { readonly key: string }) | null>(null);
  /** All that the draws rest on. */
  private readonly key: string = $derived.by(() => {
    const { workspace, changes } = this.view;
    const { rung, block, document } = workspace;
    return JSON.stringify([block.rowSpacingM, block.pattern, block.label, block.evergreen, rung.bbch, rung.canopy, changes, document.ownStrategies, document.labels, document.assumptions]);
  });
  /** What was drawn last; `stale` where what it rests on has changed since. */
  readonly drawn: (DrawnSet & { readonly stale: boolean }) | null = $derived.by(() => this.found && { ...this.found, stale: this.found.key !== this.key });
  of(row: StrategyRow): Drawn | null {
    return this.drawn?.given.find((d) => d.id === row.id && d.quantity === this.quantity) ?? null;
  }

  private asked = 0;
  async draw(): Promise<void> {
    const { workspace, document } = this.view;
    const key = untrack(() => this.key);
    const { draws, seed, assumptions } = this;
    const mine = ++this.asked;
    this.drawing = 0;
    this.failed = false;
    this.refusal = null;
    try {
      const given = await this.client.ask('draws', { document: $state.snapshot(document) as typeof document, blockId: workspace.block.id, rungId: workspace.rung.id, draws, seed, assumptions }, (done) => {
        if (mine === this.asked && this.drawing !== null) this.drawing = done;
      });
      if (mine !== this.asked) return;
      if (given && 'kind' in given) this.refusal = given;
      else if (given) this.found = { key, draws, seed, assumptions, given };
    } catch {
      if (mine === this.asked) this.failed = true;
    }
    if (mine === this.asked) this.drawing = null;
  }
  cancel(): void {
    this.asked++;
    this.client.drop('draws');
    this.drawing = null;
  }
}
