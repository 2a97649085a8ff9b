import { finding, share, type Finding } from '../../advice/finding.ts';
import { airFactor, type Stand } from './stand.ts';
import type { Plan } from './types.ts';

/** A third of the crown that gets this much less of the dose is named. */
const THINNER = 0.1;
/** Litres that differ by less need no new mix. */
const SAME_LITRES = 0.005;

/** What the operator must know of a plan, worst first. @param before share of what is sprayed that stays at each height, today; @param after by the plan */
export function planRemarks(stand: Stand, before: ArrayLike<number>, after: ArrayLike<number>, plan: Omit<Plan, 'names' | 'remarks'>): Finding[] {
  const { assumptions, sprayer } = stand.result;
  const out: Finding[] = [];
  const tolerance = assumptions.get('air.tolerance')!.value;
  if (plan.airRatio !== null && plan.airRatio < 1 - tolerance)
    out.push(finding('spray-advice-ribbon-decides', 'warn', { off: share(1 - plan.airRatio), tolerance: share(tolerance) }, ['landers-air', 'ucce-airblast'], 'setting.gear'));
  else if (plan.airRatio === null && airFactor(stand, plan.setting) < 1) out.push(finding('spray-advice-ribbon-unruled', 'warn', {}, ['ucce-airblast'], 'setting.gear'));
  out.push(...thinner(before, after));
  if (!plan.clear) out.push(finding('spray-advice-no-clear-difference', 'note'));
  const litres = sprayer.volume.kind === 'refused' ? plan.volumeLPerHa : sprayer.volume.value;
  if (Math.abs(plan.volumeLPerHa / litres - 1) > SAME_LITRES)
    out.push(finding('spray-advice-remix', 'note', { from: { value: litres, unit: 'L/ha' }, to: { value: plan.volumeLPerHa, unit: 'L/ha' } }, ['arithmetic']));
  // What a step alone is about is said at the step.
  const seen = new Set([...out.map((f) => f.code), 'spray-advice-holds-litres']);
  for (const f of plan.steps.flatMap((s) => s.remarks)) {
    if (seen.has(f.code)) continue;
    seen.add(f.code);
    out.push(f);
  }
  return out;
}

/** Thirds of the crown, from the bottom up, whose share of the dose on their leaf falls: the product on a hectare is taken to stay. */
function thinner(before: ArrayLike<number>, after: ArrayLike<number>): Finding[] {
  const third = (shares: ArrayLike<number>, k: number): number =>
    Array.from(shares).slice(Math.round((shares.length * k) / 3), Math.round((shares.length * (k + 1)) / 3)).reduce((s, v) => s + v, 0);
  return [0, 1, 2].flatMap((k) => {
    const less = 1 - third(after, k) / third(before, k);
    if (!(less >= THINNER)) return [];
    const p = { less: share(less) };
    return [k === 0 ? finding('spray-advice-thinner-bottom', 'warn', p) : k === 1 ? finding('spray-advice-thinner-middle', 'warn', p) : finding('spray-advice-thinner-top', 'warn', p)];
  });
}

/** What to know of the whole search. */
export function wholeFindings(stand: Stand, plans: readonly Plan[]): Finding[] {
  const out: Finding[] = [];
  const stopped = stand.result.findings.some((f) => f.severity === 'stop');
  if (stopped) out.push(finding('spray-advice-today-stopped', 'warn', {}, [], 'setting'));
  if (plans.length === 0 && !stopped) out.push(finding('spray-advice-today-stands', 'good'));
  else if (!stopped && plans.every((p) => !p.clear)) out.push(finding('spray-advice-none-clear', 'note'));
  if (stand.result.sprayer.nozzles.some((n) => n.spraying && n.droplets === undefined)) out.push(finding('spray-advice-classes-unknown', 'note', {}, ['cross-2001']));
  out.push(finding('spray-advice-judges', 'note', {}, ['ucce-airblast']));
  return out;
}
