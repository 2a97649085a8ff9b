import { figuresOf } from '#core/fitting/figures.ts';
import { fit } from '#core/fitting/fit.ts';
import { fittingProblem } from '#core/fitting/problem.ts';
import { plain } from '#core/working/plain.ts';
import { USAGE } from '#words/en/cli.ts';
import '#words/headland/join.ts';
import { complain } from '../complain.ts';
import { EXIT, type Verb } from '../exit.ts';
import { fittingReport, type Fitted } from '../fitting-report.ts';
import { rungsOf } from '../rungs.ts';
import { wished } from '../wish.ts';

/** Prints the short list of fittings for the wanted blocks and rungs; see `USAGE.fit`. */
export const run: Verb = async (args, streams) => {
  const wish = wished('fit', args);
  if (!wish) {
    streams.out(USAGE.fit);
    return EXIT.done;
  }
  const { document, results } = await rungsOf(wish, streams);
  const fitted = results.map((result): Fitted => {
    const problem = fittingProblem(document, result);
    return 'kind' in problem ? { result, problem: null, list: problem } : { result, problem, list: fit(problem) };
  });
  streams.out(wish.json ? jsonText(fitted) : fitted.map((f) => fittingReport(f, wish.system)).join('\n\n'));
  return complain(fitted.map(({ result, list }) => ({ result, needed: 'kind' in list ? [list] : [] })), wish.system, streams.err);
};

const jsonText = (fitted: readonly Fitted[]): string =>
  JSON.stringify({ format: 'rowtailor-fitting', version: 1, fittings: fitted.map(one) }, null, 1) + '\n';

function one({ result: { block, rung, machine }, problem, list }: Fitted) {
  const head = { block: { id: block.id, name: block.name }, rung: { id: rung.id, name: rung.name }, machine: { id: machine.id, name: machine.name }, wish: rung.fitting ?? {} };
  if (!problem || 'kind' in list) return plain({ ...head, list });
  const { targetLPerHa, widthM, specificGravity, speed, pressure, weighting, mirrored, mostChanges } = problem;
  const sizes = problem.sizes.map((s) => ({ table: s.table.id, size: s.size.id, colour: s.size.colour, offered: s.offered, count: s.count }));
  return plain({
    ...head,
    problem: { targetLPerHa, widthM, specificGravity, speed, pressure, weighting, mirrored, mostChanges, positions: problem.positions, sizes },
    list: { ...list, rows: list.rows.map((row) => ({ ...row, figures: figuresOf(problem, row) })) }
  });
}
