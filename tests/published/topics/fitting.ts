import { figuresOf } from '#core/fitting/figures.ts';
import { nearestSizes } from '#core/fitting/fit.ts';
import { piecesOf } from '#core/fitting/pressures.ts';
import { driveOf, rowOf } from '#core/fitting/row.ts';
import { isoSizes, positionsOf, problemOf } from '../../support/fitting.ts';
import { need, type Call, type Inputs } from '../../support/published.ts';

/** The plan of one side by hand: nearest sizes at the planned pressure, then the pressure for the total. */
function plan(i: Inputs) {
  const sizes = isoSizes(...(i.series as string[]));
  const weights = i.weights as number[];
  const problem = problemOf(need(i, 'side_flow'), { sizes, positions: positionsOf(weights, weights.map(() => 0)), pressure: { presentBar: need(i, 'pressure'), leastBar: 5, mostBar: 15 } });
  const chosen = nearestSizes(problem);
  const drive = driveOf(problem, piecesOf(problem), chosen);
  if (!drive) throw new Error('the plan does not fit');
  const row = rowOf(problem, chosen, drive);
  return { problem, row, figures: figuresOf(problem, row) };
}

const each = (name: string, of: (i: Inputs, k: number) => ReturnType<Call>): Record<string, Call> => Object.fromEntries([0, 1, 2, 3, 4, 5].map((k) => [`${name}_${k + 1}`, (i: Inputs) => of(i, k)]));

export const fitting: Record<string, Call> = {
  ...each('target', (i, k) => plan(i).figures.nozzles[k]!.target),
  ...each('flow', (i, k) => plan(i).figures.nozzles[k]!.flow),
  ...each('off', (i, k) => plan(i).figures.nozzles[k]!.off),
  /** 015 is 15 hundredths of the standard's size 1. */
  ...each('size', (i, k) => Number(plan(i).row.nozzles[k]!.size.padEnd(3, '0'))),
  pressure: (i) => plan(i).figures.pressure,
  flow: (i) => plan(i).figures.flow,
  match: (i) => plan(i).figures.match,
  top_share: (i) => plan(i).figures.topShare,
  upper_rule_met: (i) => Number(plan(i).row.rules.find((r) => r.rule === 'upper-large')!.met),
  named: (i) => (plan(i).row.findings.find((f) => f.code === 'fitting-position-off')?.parameters.nozzles as readonly string[]).length
};
