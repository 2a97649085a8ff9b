import type { Drawn, DrawWish } from '#core/dose/compare/draws.ts';
import type { Document } from '#core/setting/document.ts';
import type { Refused } from '#core/working/answer.ts';

/** What may be asked. */
export interface Asked {
  readonly draws: { readonly document: Document; readonly blockId: string; readonly rungId: string } & DrawWish;
}

export interface Given {
  readonly draws: readonly Drawn[] | Refused;
}
export type Kind = keyof Asked;
export const KINDS: readonly Kind[] = ['draws'];

/** To the worker; `number` comes back with the answer. What is no longer wanted is dropped by its number. */
export type Task = { readonly [K in Kind]: { readonly kind: K; readonly number: number; readonly asked: Asked[K] } }[Kind] | { readonly kind: 'drop'; readonly number: number };

/** From the worker. */
export type Message =
  | { readonly [K in Kind]: { readonly kind: K; readonly number: number; readonly given: Given[K] } }[Kind]
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };
