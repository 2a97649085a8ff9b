import type { AdviceProblem } from '#core/spray/advice/problem.ts';
import type { SprayAdvice } from '#core/spray/advice/types.ts';
import { refused } from '#core/working/answer.ts';
import { searchIn, type Start } from '../search/client.ts';
import { moduleWorker } from '../worker.ts';
import file from './worker.ts?worker&url';

export type StartSpraySearch = Start<AdviceProblem, SprayAdvice>;
export const startSpraySearch: StartSpraySearch = searchIn(() => moduleWorker(file), refused('advice-cancelled', 'setting', {}));
