import type { Refused } from '#core/working/answer.ts';

/** To the worker: one task. To stop it, the worker is ended. */
export interface Task<Problem> {
  readonly problem: Problem;
}

/** From the worker. */
export type Message<Found> = { readonly kind: 'progress'; readonly done: number } | { readonly kind: 'found'; readonly found: Found | Refused };
