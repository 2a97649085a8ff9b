import type { FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { refused } from '#core/working/answer.ts';
import { searchIn, type Start } from '../search/client.ts';

export type StartFitting = Start<FittingProblem, FittingList>;
export const startFitting: StartFitting = searchIn(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }), refused('fitting-cancelled', 'fitting', {}));
