import { amount, finding, type Amount, type Finding } from '../advice/finding.ts';
import type { Label } from '../dose/types.ts';
import { valueOf } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import type { LoadsState, PartnerState } from './state.ts';

/** An amount of product. */
export const ofProduct = (value: number, { unit }: Label): Amount => ({ value, unit: unit === 'kg' ? 'kg' : 'Lprod' });

/** Weighing is allowed this much at the label's maximum, and no more. */
const HAIR = 0.005;

/**
 * What was put into each load against what its land takes: product per hectare must be the dose in every load, and the sum dose × area. An amount
 * that is off by the concentration factor, or is that of a full load, is named for what it is.
 */
export function putInFindings(state: LoadsState, assumptions: Assumptions): Finding[] {
  return state.partners.flatMap((p) => (p.putIn.length === 0 ? [] : ofPartner(p, state, assumptions.take('mix.amount-tolerance').value)));
}

function ofPartner(p: PartnerState, { loads }: LoadsState, tolerance: number): Finding[] {
  const { label } = p;
  const product = label.name;
  const like = (a: number, b: number): boolean => Math.abs(a / b - 1) <= tolerance;
  const due = loads.map((l) => l.products.find((m) => m.label === label)?.total ?? 0);
  const most = Math.max(...due);
  const cf = valueOf(p.concentration) ?? 1;
  const byFactor = label.basis === 'per-100-l-dilute' && !like(cf, 1);
  const out: Finding[] = [];
  let sum = 0;
  // Of two amounts for one load the later one holds.
  const amounts = new Map(p.putIn.map((x) => [x.load, x.amount]));
  for (const [load, put] of amounts) {
    const mine = due[load - 1];
    if (mine === undefined) {
      out.push(finding('put-in-no-load', 'note', { product, load: String(load), count: String(loads.length) }, [], 'mix.partners'));
      continue;
    }
    sum += put;
    const area = valueOf(loads[load - 1]!.area) ?? NaN;
    // What is for the residual is not sprayed on this land.
    const landed = (put * (mine - (loads[load - 1]!.products.find((m) => m.label === label)?.forResidual ?? 0))) / mine / area;
    const above = label.maxPerHa !== undefined && landed > label.maxPerHa * (1 + HAIR);
    if (mine === 0 || (like(put, mine) && !above)) continue;
    const severity = above ? 'stop' : 'warn';
    const values = { product, load: String(load), put: ofProduct(put, label), due: ofProduct(mine, label), factor: amount(p.concentration) };
    if (byFactor && like(put, mine * cf)) out.push(finding('put-in-factor-twice', severity, values, ['neapmg-1996'], 'mix.partners'));
    else if (byFactor && like(put, mine / cf)) out.push(finding('put-in-factor-missed', severity, values, ['neapmg-1996'], 'mix.partners'));
    else if (!like(mine, most) && like(put, most)) out.push(finding('put-in-of-full-load', severity, values, [], 'mix.partners'));
    else if (put > mine) out.push(finding('put-in-too-much', severity, values, [], 'mix.partners'));
    else out.push(finding('put-in-too-little', severity, values, [], 'mix.partners'));
  }
  const whole = amounts.size === loads.length && out.length === 0;
  return whole ? [finding('put-in-right', 'good', { product, put: ofProduct(sum, label), due: ofProduct(p.total, label) }, [], 'mix.partners')] : out;
}
