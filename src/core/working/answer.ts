import type { SourceId } from '../sources/bibliography.ts';
import type { Unit } from '../quantity/units.ts';

/**
 * How sure a value is, strongest first.
 * exact: by definition · measured, stated: by the user · published: printed in a named source ·
 * derived: computed from published figures · practice: in general use, no citable source ·
 * memory: from memory, to be checked · assumed: a default where nothing was said.
 */
export const CERTAINTIES = ['exact', 'measured', 'stated', 'published', 'derived', 'practice', 'memory', 'assumed'] as const;
export type Certainty = (typeof CERTAINTIES)[number];

/** The weaker of two certainties: a figure is no surer than what it was made from. */
export const weaker = (a: Certainty, b: Certainty): Certainty => (RANK[a] >= RANK[b] ? a : b);
const RANK = Object.fromEntries(CERTAINTIES.map((c, i) => [c, i])) as Record<Certainty, number>;

/** A value that was not computed here: typed, measured, read off a table, or a default. */
export interface Given {
  readonly kind: 'given';
  readonly value: number;
  readonly unit: Unit;
  readonly certainty: Certainty;
  /** Where it stands in the document, so that the screen can lead there. */
  readonly path?: string;
  /** The assumption that it is, when the user may change it in the list of assumptions. */
  readonly assumption?: string;
  readonly sources?: readonly SourceId[];
}

/** What a formula says about itself. `expression` is plain arithmetic in the symbols of `inputs`. */
export interface Formula<K extends string = string> {
  readonly id: string;
  /** The trade's symbol for the result. */
  readonly symbol: string;
  readonly unit: Unit;
  /**
   * Arithmetic that any calculator reads: + - * / ^ ( ) sqrt min max exp log asin; abs in those of the user's own.
   * A test evaluates it with an independent parser and compares it with `compute`.
   */
  readonly expression: string;
  readonly inputs: Readonly<Record<K, Unit>>;
  readonly sources: readonly SourceId[];
  readonly certainty: Certainty;
  compute(v: Readonly<Record<K, number>>): number;
  /** Input ranges [least, most], inclusive, outside which the formula refuses. */
  readonly range?: Readonly<Partial<Record<K, readonly [number, number]>>>;
  /** Input ranges of the source; outside them the result is marked extrapolated. */
  readonly published?: Readonly<Partial<Record<K, readonly [number, number]>>>;
}

/** A value that a formula made, with all that it was made from: its own working. */
export interface Figure {
  readonly kind: 'figure';
  readonly value: number;
  readonly unit: Unit;
  readonly formula: Formula;
  readonly inputs: Readonly<Record<string, Quantity>>;
  readonly certainty: Certainty;
  readonly extrapolated: boolean;
}

export type Quantity = Given | Figure;

/** Why there is no number. `parameters` fill the sentence that `code` stands for. */
export interface Refused {
  readonly kind: 'refused';
  readonly code: string;
  readonly path: string;
  readonly parameters: Readonly<Record<string, number | string>>;
}

export type Answer = Quantity | Refused;

export const refused = (code: string, path: string, parameters: Record<string, number | string> = {}): Refused => ({
  kind: 'refused',
  code,
  path,
  parameters
});

export const isRefused = (a: Answer): a is Refused => a.kind === 'refused';

/** The value, or `undefined` where it was refused. */
export const valueOf = (a: Answer | null | undefined): number | undefined =>
  a && a.kind !== 'refused' ? a.value : undefined;

/** Options of a given value that are spelled out only where they matter. */
type GivenMore = { path?: string; assumption?: string; sources?: readonly SourceId[] };

export const given = (value: number, unit: Unit, certainty: Certainty = 'stated', more: GivenMore = {}): Given => ({
  kind: 'given',
  value,
  unit,
  certainty,
  ...more
});
