import { amount, finding, share, type Finding } from '../advice/finding.ts';
import { PSI_BAR } from '../quantity/constants.ts';
import type { SprayerState } from '../sprayer/sprayer.ts';
import { isRefused, valueOf } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { percent } from './speed-rules.ts';
import type { CatchesState, Diagnosis, RefillState } from './state.ts';
import { suspicions } from './suspects.ts';

/** What refill and jugs say about themselves and about the nozzles. */
export function outputFindings(refill: RefillState, catches: CatchesState | null, sprayer: SprayerState, assumptions: Assumptions): Finding[] {
  const out: Finding[] = [...refillFindings(refill, sprayer, assumptions)];
  if (catches) out.push(...catchFindings(catches), ...suspicions([{ of: 'flow', path: 'check.catches', found: catches.total.value, expected: sprayer.flow }]));
  if (refill.volume) out.push(...suspicions([{ of: 'volume', path: 'check.refill', found: refill.volume.value, expected: sprayer.volume }]));
  else out.push(...suspicions([{ of: 'flow', path: 'check.refill', found: refill.flow.value, expected: sprayer.flow }]));
  if (catches) out.push(...together(refill, catches, assumptions));
  return out;
}

function refillFindings(refill: RefillState, sprayer: SprayerState, assumptions: Assumptions): Finding[] {
  const out: Finding[] = [];
  const error = (refill.volume ?? refill.flow).error;
  if (refill.isLongEnough === false)
    out.push(finding('check-refill-short', 'note', { error: percent(error), wanted: percent(assumptions.take('check.refill-wanted')), long: amount(refill.longEnough) }, ['error-propagation'], 'check.refill'));
  const least = assumptions.take('check.refill-time');
  if (refill.refill?.kind === 'standing' && refill.refill.seconds !== undefined && refill.refill.seconds < least.value)
    out.push(finding('check-refill-brief', 'note', { time: { value: refill.refill.seconds, unit: 's' }, least: amount(least) }, ['habit'], 'check.refill.seconds'));
  const volume = refill.volume && valueOf(refill.volume.value);
  const [low, high] = [assumptions.take('check.usual-least'), assumptions.take('check.usual-most')];
  if (typeof volume === 'number' && (volume < low.value || volume > high.value)) out.push(unusual(volume, low.value, high.value));
  const litres = refill.refill?.litres;
  if (litres !== undefined && litres > sprayer.machine.tankL) out.push(finding('check-refill-over-tank', 'warn', { litres: { value: litres, unit: 'L' }, tank: { value: sprayer.machine.tankL, unit: 'L' } }, [], 'check.refill.litres'));
  return out;
}

export const unusual = (volume: number, least: number, most: number): Finding =>
  finding('check-volume-unusual', 'note', { volume: { value: volume, unit: 'L/ha' }, least: { value: least, unit: 'L/ha' }, most: { value: most, unit: 'L/ha' } }, ['habit'], 'check.output');

function catchFindings(c: CatchesState): Finding[] {
  const path = 'check.catches';
  const out: Finding[] = [];
  if (c.missing.length > 0) out.push(finding('check-catch-missing', 'note', { nozzles: c.missing }, ['deveau-2009'], path));
  if (c.shut.length > 0) out.push(finding('check-catch-shut', 'warn', { nozzles: c.shut }, [], path));
  if (c.tooCoarse) out.push(finding('check-catch-coarse', 'warn', { resolution: percent(c.resolution), limit: percent(c.tolerance.mean) }, ['error-propagation'], path));
  if (c.mirrored === false) out.push(finding('check-mirror-differs', 'note', {}, ['iso-16122-3'], 'setting.nozzles'));
  out.push(...DIAGNOSED[c.diagnosis](c));
  if (c.diagnosis === 'evenly-low' || c.diagnosis === 'evenly-high' || c.diagnosis === 'worn-set') out.push(...referenceHint(c));
  return out;
}

/** Finding of each diagnosis, with what to do. */
const DIAGNOSED: Readonly<Record<Diagnosis, (c: CatchesState) => Finding[]>> = {
  incomplete: () => [],
  fine: (c) => [finding('check-nozzles-fine', 'good', { limit: percent(c.tolerance.mean), total: amount(c.total.value) }, c.tolerance.mean.sources ?? [], 'check.catches')],
  'evenly-low': (c) => [finding('check-evenly-low', 'warn', even(c), ['luxembourg-vine'], 'check.catches')],
  'evenly-high': (c) => [finding('check-evenly-high', 'warn', even(c), ['luxembourg-vine'], 'check.catches')],
  'worn-set': (c) => [finding('check-worn-set', 'warn', even(c), ['deveau-2009'], 'check.catches')],
  'one-low': (c) => [finding('check-one-low', 'warn', one(c), ['habit', 'luxembourg-vine'], 'check.catches'), notByPressure(c)],
  'one-high': (c) => [finding('check-one-high', 'warn', one(c), ['habit', 'florida-manual'], 'check.catches'), notByPressure(c)],
  'hidden-pair': (c) => [
    finding('check-hidden-pair', 'warn', { low: names(c, 'low'), high: names(c, 'high'), mean: { value: Math.abs(100 * ((valueOf(c.meanRatio) ?? NaN) - 1)), unit: '%' } }, ['habit'], 'check.catches'),
    notByPressure(c)
  ],
  'several-bad': (c) => [finding('check-several-bad', 'warn', { nozzles: c.bad }, ['habit', 'deveau-2009'], 'check.catches'), notByPressure(c)],
  'sides-differ': (c) => [finding('check-sides-differ', 'warn', { left: amount(c.left), right: amount(c.right), off: share(Math.abs((valueOf(c.sidesOff) ?? NaN) / 100)) }, ['iso-16122-3'], 'check.catches')]
};

const even = (c: CatchesState) => ({ off: { value: Math.abs(100 * ((valueOf(c.meanRatio) ?? NaN) - 1)), unit: '%' as const }, pressure: amount(c.nozzles[0]!.nominal.kind === 'figure' ? c.nozzles[0]!.nominal.inputs.P! : c.nozzles[0]!.nominal) });
const one = (c: CatchesState) => ({ nozzles: c.bad, off: share(Math.abs((valueOf(c.nozzles.find((n) => n.nozzle.position.id === c.bad[0])!.deviation) ?? NaN) / 100)) });
const names = (c: CatchesState, verdict: 'low' | 'high') => c.nozzles.filter((n) => n.verdict === verdict).map((n) => n.nozzle.position.id);
const notByPressure = (c: CatchesState) => finding('check-not-by-pressure', 'warn', { nozzles: c.bad }, ['deveau-2009'], 'setting.pressureBar');

/** Pressures at which makers print flows: 40 psi, 3, 5 and 10 bar. From memory. */
const REFERENCES = [40 * PSI_BAR, 3, 5, 10];

/** All off alike by what a flow read at another reference pressure would leave. */
function referenceHint(c: CatchesState): Finding[] {
  const ratio = valueOf(c.meanRatio);
  const references = new Set(c.nozzles.map((n) => n.nozzle.table?.referenceBar));
  const [own] = references;
  if (ratio === undefined || references.size !== 1 || own === undefined) return [];
  const other = REFERENCES.find((bar) => Math.abs(ratio / Math.sqrt(own / bar) - 1) <= 0.02);
  return other === undefined ? [] : [finding('check-reference-pressure', 'note', { table: { value: own, unit: 'bar' }, other: { value: other, unit: 'bar' } }, ['iso-10625', 'sqrt-law'], 'check.catches')];
}

/** Refill and jugs measure the same flow. */
function together(refill: RefillState, catches: CatchesState, assumptions: Assumptions): Finding[] {
  const [a, b] = [refill.flow.value, catches.total.value];
  if (isRefused(a) || isRefused(b)) return [];
  const off = Math.abs(a.value / b.value - 1);
  const allowed = Math.max(assumptions.take('check.volume-adjust').value, Math.hypot(valueOf(refill.flow.error) ?? 0, valueOf(catches.total.error) ?? 0)) / 100;
  if (off <= allowed) return [];
  return [finding('check-sum-and-refill', 'warn', { refill: amount(a), sum: amount(b), off: share(off) }, ['arithmetic'], 'check.refill'), ...suspicions([{ of: 'flow', path: 'check.refill', found: a, expected: b }])];
}
