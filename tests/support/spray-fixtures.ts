import { readFileSync } from 'node:fs';
import { balance } from '#core/spray/balance.ts';
import { transport } from '#core/spray/transport.ts';
import type { SprayBalance, SprayCase, SprayConstants } from '#core/spray/types.ts';
import { airborne, sprayCaseOf, type Orchard } from './spray.ts';

type Guess = Partial<Orchard> & { readonly leafLayers?: number };

/**
 * A balance that somebody published, with the orchard guessed for it before the model was run on it, and not changed since. A frozen fixture:
 * it guards against change and claims no validation, for the summaries tell neither trees nor settings. The page of model against publication
 * (docs/validity.md) has other guesses of the same cases.
 */
export interface FrozenBalance {
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly note: string;
  /** Share on the trees, %. */
  readonly published: readonly [least: number, most: number];
  /** How far outside the guess may come out, points. */
  readonly tolerance: number;
  readonly guess: Guess;
  readonly plausible: Readonly<Record<string, readonly [number, number]>>;
  /** Hit and spread when it was frozen, %. */
  readonly found: { readonly model: number; readonly over: readonly [number, number] };
}
/** Shares that another implementation of the same equations found, %. */
export interface DerivedFigures {
  readonly id: string;
  readonly source: string;
  readonly orchard: Partial<Orchard>;
  readonly shutTop?: number;
  readonly shares: Readonly<Record<string, number>>;
}
const read = (file: string): unknown => JSON.parse(readFileSync(new URL(`../published/${file}.json`, import.meta.url), 'utf8'));
export const BALANCES = read('spray-balances') as readonly FrozenBalance[];
export const FIGURES = read('spray-figures') as readonly DerivedFigures[];

export const run = (c: SprayCase): SprayBalance => balance(c, transport(c));

const CONSTANT: ReadonlySet<string> = new Set<keyof SprayConstants>(['woodM2PerM3']);

/** The guess with some of its values otherwise. */
export function guessed({ guess }: FrozenBalance, otherwise: Readonly<Record<string, number>> = {}): SprayCase {
  const [constants, own] = [true, false].map((c) => Object.fromEntries(Object.entries(otherwise).filter(([name]) => CONSTANT.has(name) === c))) as [Partial<SprayConstants>, Guess];
  const { leafLayers, ...o }: Guess = { ...guess, ...own };
  return sprayCaseOf({ ...o, ...(leafLayers === undefined ? {} : { ladM2PerM3: leafLayers / o.widthM! }), constants: { ...guess.constants, ...constants } });
}

/** Share on the trees by the guess, and least and most over all corners of the plausible ranges, %. */
export function hit(b: FrozenBalance): { readonly model: number; readonly least: number; readonly most: number } {
  const names = Object.keys(b.plausible);
  const corners = Array.from({ length: 2 ** names.length }, (_, code) => Object.fromEntries(names.map((name, i) => [name, b.plausible[name]![Math.floor(code / 2 ** i) % 2 === 0 ? 0 : 1]])));
  const all = corners.map((c) => 100 * run(guessed(b, c)).onTrees);
  return { model: 100 * run(guessed(b)).onTrees, least: Math.min(...all), most: Math.max(...all) };
}

/** Shares as the derived figures name them, %. */
export function figuresOf(f: DerivedFigures): Record<string, number> {
  const c = sprayCaseOf(f.orchard);
  const perSide = c.nozzles.length / 2;
  const b = run({ ...c, nozzles: c.nozzles.filter((_, i) => i % perSide < perSide - (f.shutTop ?? 0)) });
  const { near, far, rows, over } = b.shares;
  const all = { row: near + far, rows, trees: b.onTrees, 'ground-in': b.shares['ground-in'], 'ground-out': b.shares['ground-out'], over, air: airborne(b.shares), lost: b.lost };
  return Object.fromEntries(Object.entries(all).map(([name, share]) => [name, 100 * share]));
}
