import type { FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { refused } from '#core/working/answer.ts';
import { searchIn, type Start } from '../search/client.ts';
import { moduleWorker } from '../worker.ts';
import file from './worker.ts?worker&url';

export type StartFitting = Start<FittingProblem, FittingList>;
export const startFitting: StartFitting = searchIn(() => moduleWorker(file), refused('fitting-cancelled', 'fitting', {}));
