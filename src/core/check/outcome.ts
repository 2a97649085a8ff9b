import type { SprayerState } from '../sprayer/sprayer.ts';
import { APPLICATION_VOLUME, type Pass } from '../sprayer/volume.ts';
import { given, isRefused, refused, type Answer } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { UNFIT } from './diagnosis.ts';
import { FLOW_BY_COUNT, MIX_FLOW, VOLUME_ERROR, VOLUME_OFF } from './formulas.ts';
import { measured, noOutput, noSpeed, unmeasured } from './measured.ts';
import { standings } from './standing.ts';
import type { CatchesState, Measured, Outcome, RefillState, SpeedState, VolumeVerdict } from './state.ts';

/** What one round measured, with the machine as it was set then. */
export interface Tested {
  readonly index: number;
  readonly sprayer: SprayerState;
  readonly speed: SpeedState | null;
  readonly refill: RefillState | null;
  readonly catches: CatchesState | null;
}

interface Found {
  readonly value: Measured;
  readonly round: number | null;
}

/** The latest measured speed that holds for a setting. */
export function speedFor(now: SprayerState, rounds: readonly Tested[]): Found {
  const known = rounds.findLast((r) => r.speed && standings(r.sprayer, now).speed.stands === 'holds');
  if (known) return { value: known.speed!.measured, round: known.index };
  const stale = rounds.some((r) => r.speed);
  return { value: unmeasured(stale ? refused('speed-stale', 'check.runs') : noSpeed()), round: null };
}

interface Output {
  readonly flow: Measured;
  readonly from: NonNullable<Outcome['flowFrom']>;
}

/** All open nozzles caught count more than a refill: they tell which nozzle is off. */
function outputOf({ catches, refill }: Tested): Output | null {
  if (catches && !isRefused(catches.total.value)) return { flow: catches.total, from: 'catches' };
  if (!refill?.refill) return null;
  if (refill.volume) return isRefused(refill.volume.value) ? null : { flow: refill.flow, from: 'course' };
  return isRefused(refill.flow.value) ? null : { flow: refill.flow, from: 'standing' };
}

/** What was measured for a setting, from the latest of these rounds that holds for it. */
export function outcomeOf(now: SprayerState, rounds: readonly Tested[], wanted: Answer, pass: Pass, assumptions: Assumptions): Outcome {
  const speed = speedFor(now, rounds);
  const outputs = rounds.flatMap((round) => {
    const output = outputOf(round);
    return output ? [{ ...output, round, standing: standings(round.sprayer, now) }] : [];
  });
  const last = outputs.findLast((o) => o.standing.output.stands !== 'stale');
  const none = unmeasured(outputs.length > 0 ? refused('output-stale', 'check.output') : noOutput());
  const flow = last ? flowNow(last.flow, last.round.sprayer, now, last.standing.output.stands) : none;

  // Litres over a course are the volume itself, as long as nothing of the setting has changed.
  const direct = last?.from === 'course' && last.standing.output.stands === 'holds' && last.standing.speed.stands === 'holds' ? last.round.refill!.volume : null;
  const volume = direct ?? (last ? measured(derive(APPLICATION_VOLUME, { Q: flow.value, v: speed.value.value, B: pass.width }), derive(VOLUME_ERROR, { EQ: flow.error, Ev: speed.value.error })) : none);
  const off = derive(VOLUME_OFF, { V: volume.value, Vw: wanted });
  // A refill after it does not mend what the jugs have shown.
  const caught = rounds.findLast((r) => r.catches && standings(r.sprayer, now).output.stands !== 'stale')?.catches;
  return {
    speed: speed.value,
    speedRound: speed.round,
    flow,
    flowRound: last?.round.index ?? null,
    flowFrom: last?.from ?? null,
    flowStanding: last?.standing.output.stands ?? 'stale',
    volume,
    predicted: derive(APPLICATION_VOLUME, { Q: now.flow, v: speed.value.value, B: pass.width }),
    wanted,
    off,
    computed: now.volume,
    computedOff: derive(VOLUME_OFF, { V: volume.value, Vw: now.volume }),
    verdict: verdictOf(off, caught !== undefined && caught !== null && UNFIT.has(caught.diagnosis), assumptions)
  };
}

/** Flow as measured, by the count of open nozzles where that alone changed, and of the mix where it is no water. */
function flowNow(flow: Measured, tested: SprayerState, now: SprayerState, stands: Outcome['flowStanding']): Measured {
  const count = (s: SprayerState) => given(s.nozzles.filter((n) => n.spraying).length, '1', 'exact', { path: 'check.openNozzles' });
  const byCount = stands === 'scaled' ? derive(FLOW_BY_COUNT, { Q1: flow.value, n1: count(tested), n2: count(now) }) : flow.value;
  const ofMix = now.specificGravity.value === 1 ? byCount : derive(MIX_FLOW, { Q1: byCount, SG: now.specificGravity });
  return measured(ofMix, flow.error);
}

/** Against the closer limit (adjust) and the wider one (other nozzles). A sum that is right may hide nozzles that are not. */
export function verdictOf(off: Answer, unfit: boolean, assumptions: Assumptions): VolumeVerdict {
  const adjust = assumptions.take('check.volume-adjust').value;
  const nozzles = assumptions.take('check.volume-nozzles').value;
  if (isRefused(off)) return 'unknown';
  const size = Math.abs(off.value);
  return size <= adjust ? (unfit ? 'bad-nozzles' : 'within') : size <= nozzles ? 'adjust' : 'other-nozzles';
}
