import type { Drawn, DrawWish } from '#core/dose/compare/draws.ts';
import type { OwnStrategy } from '#core/dose/own/types.ts';
import type { Canopies, SheetOptions, StrategyColumns } from '#core/dose/table/columns.ts';
import type { Document } from '#core/setting/document.ts';
import type { Refused } from '#core/working/answer.ts';
import type { RowProblem } from '#job/csv/header.ts';

/** What may be asked. */
export interface Asked {
  readonly draws: { readonly document: Document; readonly blockId: string; readonly rungId: string } & DrawWish;
  /** A table of canopies: CSV text, or a file's bytes, CSV or Parquet. */
  readonly table: {
    readonly from: string | Uint8Array<ArrayBuffer> | Blob;
    readonly own?: readonly OwnStrategy[];
  } & SheetOptions;
}

export interface Table {
  /** As they were read, in the engine's units; those that were refused are not among them. */
  readonly canopies: Canopies;
  /** Line of the file of each; of a Parquet file, its row. */
  readonly line: Float64Array;
  /** By strategy id. */
  readonly columns: ReadonlyMap<string, StrategyColumns>;
  /** What was refused, in the order of the file, as far as it is told one by one. */
  readonly problems: readonly RowProblem[];
  /** Problems beyond those. */
  readonly more: number;
  /** It was refused as a whole, for its head or its kind: the problems are none of lines. */
  readonly unread: boolean;
}

export interface Given {
  readonly draws: readonly Drawn[] | Refused;
  readonly table: Table;
}
export type Kind = keyof Asked;
export const KINDS: readonly Kind[] = ['draws', 'table'];

/** To the worker; `number` comes back with the answer. What is no longer wanted is dropped by its number. */
export type Task = { readonly [K in Kind]: { readonly kind: K; readonly number: number; readonly asked: Asked[K] } }[Kind] | { readonly kind: 'drop'; readonly number: number };
