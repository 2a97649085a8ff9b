import type { FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import type { Refused } from '#core/working/answer.ts';

/** To the worker: one task. To stop it, the worker is ended. */
export interface Task {
  readonly problem: FittingProblem;
}

/** From the worker. */
export type Message = { readonly kind: 'progress'; readonly done: number } | { readonly kind: 'found'; readonly found: FittingList | Refused };
