/**
 * Looking for better settings of a rung: milliseconds a search, by the clock and in processor time (other work on the machine is not in the
 * latter), the settings that were judged, and the same for 500 of them.
 */
import { readFileSync } from 'node:fs';
import { adviceProblem, type AdviceProblem } from '#core/spray/advice/problem.ts';
import { adviseSpray } from '#core/spray/advice/search.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import { percentiles, report } from './report.ts';

function problemOf(file: string, block: string, rung: string): AdviceProblem {
  const document = JSON.parse(readFileSync(`demo-data/${file}.json`, 'utf8')) as Document;
  const result = evaluate(document, block, rung);
  const problem = 'kind' in result ? result : adviceProblem(document, result);
  if ('kind' in problem) throw new Error(problem.code);
  return problem;
}

const RUNS = 7;
const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

function measure(name: string, problem: AdviceProblem): void {
  const clock: number[] = [];
  const processor: number[] = [];
  let settings = 0;
  for (let i = 0; i < RUNS; i++) {
    const [t, c] = [performance.now(), cpu()];
    const found = adviseSpray(problem);
    clock.push(performance.now() - t);
    processor.push(cpu() - c);
    if ('kind' in found) throw new Error(found.code);
    settings = found.searched.settings;
  }
  report(`spray search, ${name}, ${settings} settings`, percentiles(clock), 'ms');
  report('  processor time', percentiles(processor), 'ms');
}

const tower = problemOf('cherry-wall', 'east-wall', 'green-fruit');
const [start, used] = [performance.now(), cpu()];
adviseSpray(tower);
console.log(`spray search, the very first: ${(performance.now() - start).toFixed(0)} ms by the clock, ${(cpu() - used).toFixed(0)} ms of processor time`);
measure('tower', tower);
measure('arc of 16', problemOf('lower-bench', 'lower-bench', 'full-leaf'));
measure('arc of 16, bare trees', problemOf('lower-bench', 'lower-bench', 'mouse-ear'));
measure('arc of 24, globes', problemOf('citrus-globes', 'globe-grove', 'fruit-fill'));
