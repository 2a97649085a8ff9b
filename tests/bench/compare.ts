/** The strategies side by side on one block, with own strategies: what a slider asks for at each move, and draws. Milliseconds by the clock. */
import { readFileSync } from 'node:fs';
import { curves } from '#core/dose/compare/curves.ts';
import { pairs } from '#core/dose/compare/differences.ts';
import { drawSteps } from '#core/dose/compare/draws.ts';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { scenario } from '#core/dose/compare/scenario.ts';
import { tornado } from '#core/dose/compare/tornado.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { percentiles, report } from './report.ts';

const demo = JSON.parse(readFileSync('demo-data/lower-bench.json', 'utf8')) as Document;
const document: Document = { ...demo, ownStrategies: [{ id: 'a', name: 'A', index: 'max(0.5, TRVc / 10000)', water: '100 + 0.09 * TRVc' }, { id: 'b', name: 'B', index: 'sqrt(TRVc / 10000)' }] };
const [block, rung] = ['lower-bench', 'full-leaf'];
const result = evaluate(document, block, rung) as Result;

function measure(name: string, runs: number, work: (i: number) => unknown): void {
  for (let i = 0; i < runs; i++) work(i);
  const clock = Array.from({ length: runs }, (_, i) => {
    const t = performance.now();
    work(i);
    return performance.now() - t;
  });
  report(`strategies, ${name}`, percentiles(clock), 'ms');
}
const finished = (draws: number, assumptions: boolean) => {
  const steps = drawSteps(document, block, rung, { draws, seed: 1, assumptions });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};

measure('rows', 300, () => strategyRows(document, result));
measure('rows of a canopy that a slider moves', 300, (i) => scenario(document, result, { heightM: 3 + (i % 50) / 50 }));
measure('pairs with their reasons', 100, () => pairs(document, result));
measure('curves of one measurement, 61 points', 100, () => curves(document, result, 'height'));
measure('what moves one figure', 100, () => tornado(document, result, 'row-volume', 'index'));
measure('10 000 draws of all figures', 10, () => finished(10_000, false));
measure('10 000 draws, assumptions too', 10, () => finished(10_000, true));
