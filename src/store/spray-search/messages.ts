import type { AdviceProblem } from '#core/spray/advice/problem.ts';
import type { SprayAdvice } from '#core/spray/advice/types.ts';
import type { Refused } from '#core/working/answer.ts';

/** To the worker: one task. To stop it, the worker is ended. */
export interface Task {
  readonly problem: AdviceProblem;
}

/** From the worker. */
export type Message = { readonly kind: 'progress'; readonly done: number } | { readonly kind: 'found'; readonly found: SprayAdvice | Refused };
