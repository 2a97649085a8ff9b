import { flowAt, nozzleFlow, TOTAL_FLOW } from '../sprayer/flow.ts';
import { pressureFor } from '../sprayer/pressure.ts';
import { APPLICATION_VOLUME, FLOW_FOR_VOLUME } from '../sprayer/volume.ts';
import { given, isRefused, refused, type Answer, type Given } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import { OFF_TARGET, PROFILE_MATCH, TARGET_FLOW, TOP_SHARE } from './formulas.ts';
import type { FittingProblem } from './problem.ts';
import type { FittedNozzle, FittingRow } from './row.ts';

/** The figures of one fitting with their working: worked out again from the sizes, as the row itself is bare numbers that a worker may hand out. */
export interface FittingFigures {
  readonly wanted: Answer;
  readonly pressure: Answer;
  readonly flow: Answer;
  readonly volume: Answer;
  readonly match: Answer;
  readonly topShare: Answer;
  readonly nozzles: readonly { readonly position: string; readonly flow: Answer; readonly target: Answer; readonly off: Answer }[];
}

export function figuresOf(problem: FittingProblem, row: FittingRow): FittingFigures {
  const SG = given(problem.specificGravity, '1', 'stated', { assumption: 'mix.specific-gravity' });
  const speed = given(row.speedKmH, 'km/h', row.atPresentSpeed ? 'stated' : 'derived', { path: 'setting.speedKmH' });
  const B = given(problem.widthM, 'm', 'derived', { path: 'pattern' });
  const wanted = derive(FLOW_FOR_VOLUME, { V: given(problem.targetLPerHa, 'L/ha', 'stated', { path: 'fitting.targetLPerHa' }), v: speed, B });
  const fitted = row.nozzles.map((n) => ({ n, ...problem.sizes.find((s) => s.table.id === n.table && s.size.id === n.size)! }));
  const plan = given(problem.pressure.presentBar, 'bar', 'stated', { path: 'setting.pressureBar' });
  const together = (bar: Given): Answer => derive(TOTAL_FLOW, Object.fromEntries(fitted.map(({ n, table, size }) => [n.position, nozzleFlow(table, size, bar, SG)])));
  const pressure = pressureFor(wanted, plan, together(plan), (bar) => fitted.reduce((sum, { table, size }) => sum + flowAt(table, size, bar, SG.value), 0));
  const bar = given(row.pressureBar, 'bar', 'derived', { path: 'setting.pressureBar' });
  const flow = together(bar);
  const differences = row.nozzles.reduce((s, n) => s + Math.abs(n.share - n.weight), 0);
  return {
    wanted,
    pressure,
    flow,
    volume: derive(APPLICATION_VOLUME, { Q: flow, v: speed, B }),
    match: derive(PROFILE_MATCH, { e: given(differences, '1', 'derived', { sources: ['arithmetic'] }) }),
    topShare: isRefused(flow) ? flow : derive(TOP_SHARE, { qt: given(row.topShare * flow.value, 'L/min', 'derived', { sources: ['arithmetic'] }), Q: flow }),
    nozzles: fitted.map(({ n, table, size }) => {
      const q = nozzleFlow(table, size, bar, SG);
      const target = derive(TARGET_FLOW, { w: weightOf(n), Q: wanted });
      return { position: n.position, flow: q, target, off: n.off === null ? refused('nothing-wanted-here', 'fitting.weights', { position: n.position }) : derive(OFF_TARGET, { q, qw: target }) };
    })
  };
}

const weightOf = (n: FittedNozzle): Given => given(n.weight, '1', 'derived', { sources: ['geometry'] });
