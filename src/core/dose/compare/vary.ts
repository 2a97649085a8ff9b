import type { CanopyState } from '../../canopy/canopy.ts';
import type { Errors } from '../../canopy/uncertainty.ts';
import type { Answer, Formula, Given, Quantity } from '../../working/answer.ts';
import { product } from '../product.ts';
import { BELIEFS, type Belief } from './beliefs.ts';
import { answerOf, type StrategyRow } from './rows.ts';
import type { Scene } from './scene.ts';

export type Quantities = 'water' | 'index' | 'dose';
export const QUANTITIES: readonly Quantities[] = ['water', 'index', 'dose'];

/** What may vary: a measured mean with an error, or an assumption that has a range. */
export type Leaf =
  | { readonly kind: 'measured'; readonly id: string; readonly given: Given; readonly standardError: number }
  | { readonly kind: 'assumed'; readonly id: string; readonly given: Given; readonly belief: Belief };

interface Node {
  readonly formula: Formula;
  readonly values: Record<string, number>;
  /** Inputs that vary. */
  readonly from: readonly { readonly symbol: string; readonly slot: number }[];
  readonly slot: number;
}

/**
 * Workings that are worked out again and again with other values at their leaves: the same formulas in the same order, all else held, as
 * `intervalOf` holds it. What two figures rest on is worked out once.
 */
export class Variable {
  readonly leaves: Leaf[] = [];
  private readonly slots = new Map<Quantity, number>();
  private readonly assumed = new Map<string, number>();
  private readonly slotOfLeaf = new Map<Leaf, number>();
  private readonly nodes: Node[] = [];
  /** Values now, leaves and nodes as they were met. */
  private readonly now: number[] = [];

  /** @param withAssumptions whether assumptions vary too */
  constructor(
    private readonly errors: Errors,
    private readonly withAssumptions: boolean
  ) {}

  /** The place of a figure; null where nothing under it varies. */
  slotOf(q: Quantity): number | null {
    const known = this.slots.get(q);
    if (known !== undefined) return known < 0 ? null : known;
    const slot = q.kind === 'given' ? this.leaf(q) : this.node(q);
    this.slots.set(q, slot ?? -1);
    return slot;
  }

  private leaf(given: Given): number | null {
    const standardError = this.errors.of.get(given);
    if (standardError !== undefined) return this.add({ kind: 'measured', id: given.path ?? '', given, standardError });
    const id = given.assumption;
    const range = id === undefined || given.certainty === 'stated' || !this.withAssumptions ? undefined : BELIEFS.get(id);
    if (!range || id === undefined) return null;
    const known = this.assumed.get(id);
    if (known !== undefined) return known;
    const slot = this.add({ kind: 'assumed', id, given, belief: range });
    this.assumed.set(id, slot);
    return slot;
  }

  private add(leaf: Leaf): number {
    this.leaves.push(leaf);
    this.slotOfLeaf.set(leaf, this.now.length);
    return this.now.push(leaf.given.value) - 1;
  }

  private node(q: Exclude<Quantity, Given>): number | null {
    const from = Object.entries(q.inputs).flatMap(([symbol, input]) => {
      const slot = this.slotOf(input);
      return slot === null ? [] : [{ symbol, slot }];
    });
    if (from.length === 0) return null;
    const values = Object.fromEntries(Object.entries(q.inputs).map(([symbol, input]) => [symbol, input.value]));
    const slot = this.now.push(q.value) - 1;
    this.nodes.push({ formula: q.formula, values, from, slot });
    return slot;
  }

  set(leaf: Leaf, value: number): void {
    this.now[this.slotOfLeaf.get(leaf)!] = value;
  }

  /** Works everything out again. */
  run(): void {
    const { now } = this;
    for (const { formula, values, from, slot } of this.nodes) {
      for (const f of from) values[f.symbol] = now[f.slot]!;
      now[slot] = formula.compute(values);
    }
  }

  at(slot: number): number {
    return this.now[slot]!;
  }
}

/** A figure of a row whose value can be had anew. */
export interface Varied {
  readonly row: StrategyRow;
  readonly quantity: Quantities;
  /** The value now: NaN where the formula gives none. */
  readonly value: () => number;
}

/**
 * The figures of some rows that vary with what `variable` lets vary. The label's cap acts on each value anew, so that it is not taken for a
 * part of the working that is always, or never, there.
 */
export function variedOf(variable: Variable, rows: readonly StrategyRow[], { label, assumptions }: Scene, canopy: CanopyState): readonly Varied[] {
  const { maxPerHa: most = Infinity, ...free } = label ?? {};
  return rows.flatMap((row) =>
    QUANTITIES.flatMap((quantity): Varied[] => {
      const uncapped = (): Answer | null => (row.dose && label ? product(free as typeof label, canopy, answerOf(row.strategy, canopy, assumptions)).perHa : null);
      const answer = quantity === 'dose' ? uncapped() : row[quantity];
      if (!answer || answer.kind === 'refused') return [];
      const slot = variable.slotOf(answer);
      if (slot === null) return [];
      return [{ row, quantity, value: quantity === 'dose' ? () => Math.min(variable.at(slot), most) : () => variable.at(slot) }];
    })
  );
}
