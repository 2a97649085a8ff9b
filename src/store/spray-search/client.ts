import type { AdviceProblem } from '#core/spray/advice/problem.ts';
import type { SprayAdvice } from '#core/spray/advice/types.ts';
import { refused } from '#core/working/answer.ts';
import { searchIn, type Start } from '../search/client.ts';

export type StartSpraySearch = Start<AdviceProblem, SprayAdvice>;
export const startSpraySearch: StartSpraySearch = searchIn(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }), refused('advice-cancelled', 'setting', {}));
