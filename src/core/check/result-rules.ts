import { amount, finding, type Finding } from '../advice/finding.ts';
import type { Result } from '../setting/result.ts';
import { isRefused } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { unusual } from './output-rules.ts';
import { percent } from './speed-rules.ts';
import type { Outcome, RoundState } from './state.ts';

/** Measured against wanted for the setting that is set now; tests that no longer hold for it; open nozzles that miss the leaf. */
export function resultFindings(outcome: Outcome, rounds: readonly RoundState[], { sprayer }: Result, assumptions: Assumptions): Finding[] {
  return [...volumeFindings(outcome, assumptions), ...standingFindings(outcome, rounds), ...aimFindings(sprayer)];
}

function volumeFindings({ volume, wanted, off, verdict }: Outcome, assumptions: Assumptions): Finding[] {
  const out: Finding[] = [];
  const path = 'check.output';
  if (!isRefused(off)) {
    const p = { volume: amount(volume.value), wanted: amount(wanted), off: { value: Math.abs(off.value), unit: '%' as const } };
    const above = off.value > 0;
    if (verdict === 'within') out.push(finding('check-volume-within', 'good', p, ['ozkan-2021'], path));
    else if (verdict === 'bad-nozzles') out.push(finding('check-volume-hides', 'warn', p, ['florida-manual'], path));
    else if (verdict === 'adjust') out.push(above ? finding('check-volume-above', 'warn', p, ['ozkan-2021'], path) : finding('check-volume-below', 'warn', p, ['ozkan-2021'], path));
    else out.push(above ? finding('check-volume-far-above', 'warn', p, ['texas-worksheet'], path) : finding('check-volume-far-below', 'warn', p, ['texas-worksheet'], path));
  }
  const adjust = assumptions.take('check.volume-adjust');
  if (!isRefused(volume.error) && volume.error.value > adjust.value) out.push(finding('check-uncertain', 'note', { error: percent(volume.error), limit: percent(adjust) }, ['error-propagation'], path));
  const [low, high] = [assumptions.take('check.usual-least').value, assumptions.take('check.usual-most').value];
  if (!isRefused(volume.value) && (volume.value.value < low || volume.value.value > high)) out.push(unusual(volume.value.value, low, high));
  return out;
}

/** A test belongs to the setting that it was made with. */
function standingFindings(outcome: Outcome, rounds: readonly RoundState[]): Finding[] {
  const out: Finding[] = [];
  const timed = rounds.findLast((r) => r.speed);
  if (timed && outcome.speedRound === null) for (const measurement of timed.speedStanding.changed) out.push(finding('check-speed-stale', 'warn', { measurement }, [], measurement));
  const tested = rounds.findLast((r) => r.outcome.flowRound === r.index);
  if (tested && outcome.flowRound === null) for (const measurement of tested.outputStanding.changed) out.push(finding('check-output-stale', 'warn', { measurement }, [], measurement));
  if (outcome.flowStanding === 'scaled') out.push(finding('check-output-scaled', 'note', { flow: amount(outcome.flow.value) }, ['arithmetic'], 'setting.nozzles'));
  return out;
}

/** Shut in pairs, then flow and pressure are set again: what was measured with them open holds no more. */
function aimFindings({ nozzles }: Result['sprayer']): Finding[] {
  const missing = nozzles.filter((n) => n.spraying && (n.verdict === 'over-top' || n.verdict === 'under-skirt')).map((n) => n.position.id);
  return missing.length === 0 ? [] : [finding('check-aimed-past', 'warn', { nozzles: missing }, ['lwk-nrw'], 'setting.nozzles')];
}
