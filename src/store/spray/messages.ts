import type { SprayBalance, SprayBand, SprayCase, SprayPicture } from '#core/spray/types.ts';

/** What may be asked. */
export interface Asked {
  /** Balance and picture of a setting; the picture of one nozzle where one is named, with the ways of drops where they are wanted. */
  readonly answer: { readonly case: SprayCase; readonly position: string | null; readonly tracks: boolean };
  /** The balance alone, of a setting to compare with. */
  readonly balance: { readonly case: SprayCase };
  /** The band; gives way to whatever else is asked while it is worked out. */
  readonly band: { readonly case: SprayCase };
}
export interface Given {
  readonly answer: { readonly balance: SprayBalance; readonly picture: SprayPicture };
  readonly balance: { readonly balance: SprayBalance };
  readonly band: { readonly band: SprayBand };
}
export type Kind = keyof Asked;
export const KINDS: readonly Kind[] = ['answer', 'balance', 'band'];

/** To the worker; `number` comes back with the answer. A band that is no longer wanted is dropped by its number. */
export type Task = { readonly [K in Kind]: { readonly kind: K; readonly number: number; readonly asked: Asked[K] } }[Kind] | { readonly kind: 'drop'; readonly number: number };
