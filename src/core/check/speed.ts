import { studentT } from '../canopy/survey.ts';
import { given, isRefused, refused, type Answer, type Given } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { DISPLAY_OFF, JOINED_SPEED, RUN_OFF, RUN_SPEED, SPEED_ERROR, SPEED_OFF, SPEED_STANDARD_ERROR, WATCH_SPEED_ERROR } from './formulas.ts';
import { measured } from './measured.ts';
import type { DirectionState, RunState, SpeedState } from './state.ts';
import type { Round, SpeedRun } from './types.ts';

/**
 * Forward speed from timed runs. In one direction all metres over all seconds; both directions joined harmonically. The spread
 * is that of runs of one direction around their mean, so that a slope is no spread.
 */
export function speedState(round: Round, assumptions: Assumptions): SpeedState | null {
  const runs = round.runs ?? [];
  if (runs.length === 0) return null;
  const watch = assumptions.take('check.watch-error');
  const limit = assumptions.take('check.run-differs').value;

  const speeds = runs.map(speedOf);
  const groups = [...new Set(runs.map((r) => r.direction ?? null))].map((direction) => ({ direction, members: runs.flatMap((r, i) => ((r.direction ?? null) === direction ? [i] : [])) }));
  const directions: DirectionState[] = groups.map(({ direction, members }) => ({ direction, runs: members.length, speed: pooled(members.map((i) => runs[i]!)) }));
  const out = directions.find((d) => d.direction === 'out');
  const back = directions.find((d) => d.direction === 'back');
  // Runs that name no direction can only be taken all together.
  const both = out && back && directions.length === 2;
  const speed = both ? derive(JOINED_SPEED, { v1: out.speed, v2: back.speed }) : pooled(runs);

  const spread = spreadOf(speeds, (both ? groups : [{ members: runs.map((_, i) => i) }]).map((g) => g.members));
  const effective = both ? (4 * out.runs * back.runs) / (out.runs + back.runs) : runs.length;
  const standardError = derive(SPEED_STANDARD_ERROR, { s: spread.value, n: given(effective, '1', 'derived', { path: 'check.runs.number' }) });
  const t = given(runs.reduce((s, r) => s + r.seconds, 0) / runs.length, 's', 'measured', { path: 'check.runs.meanSeconds' });
  const watchError = derive(WATCH_SPEED_ERROR, { v: speed, w: watch, t });
  // A single run tells nothing of its spread: what the watch leaves is the least, and said to be so by a finding.
  const error = derive(SPEED_ERROR, {
    T: given(spread.freedom > 0 ? studentT(0.95, spread.freedom) : 1, '1', 'derived', { path: 'check.studentT', sources: ['student-1908'] }),
    SE: isRefused(standardError) ? given(0, 'km/h', 'assumed', { path: 'check.runs.spread' }) : standardError,
    Ew: watchError,
    v: speed
  });

  const display: Given | null = round.displayKmH === undefined ? null : given(round.displayKmH, 'km/h', 'stated', { path: 'check.displayKmH' });
  return {
    runs: judged(runs, speeds, groups.map((g) => g.members), limit, watch.value),
    directions,
    measured: measured(speed, error),
    spread: spread.value,
    standardError,
    watchError,
    display,
    displayOff: display && derive(DISPLAY_OFF, { vd: display, v: speed }),
    settingOff: derive(SPEED_OFF, { v: speed, vs: given(round.setting.speedKmH, 'km/h', 'stated', { path: 'setting.speedKmH' }) })
  };
}

const speedOf = (run: SpeedRun): Answer =>
  derive(RUN_SPEED, { D: given(run.distanceM, 'm', 'measured', { path: 'check.runs.distanceM' }), t: given(run.seconds, 's', 'measured', { path: 'check.runs.seconds' }) });

const pooled = (runs: readonly SpeedRun[]): Answer =>
  speedOf({ distanceM: runs.reduce((s, r) => s + r.distanceM, 0), seconds: runs.reduce((s, r) => s + r.seconds, 0) });

/** Standard deviation around the mean of each group, all groups together. */
function spreadOf(speeds: readonly Answer[], groups: readonly (readonly number[])[]): { value: Answer; freedom: number } {
  let squares = 0;
  let freedom = 0;
  for (const members of groups) {
    const values = members.map((i) => speeds[i]!).flatMap((a) => (isRefused(a) ? [] : [a.value]));
    const mean = values.reduce((s, v) => s + v, 0) / values.length;
    squares += values.reduce((s, v) => s + (v - mean) ** 2, 0);
    freedom += Math.max(values.length - 1, 0);
  }
  const path = 'check.runs.spread';
  return { freedom, value: freedom > 0 ? given(Math.sqrt(squares / freedom), 'km/h', 'measured', { path, sources: ['error-propagation'] }) : refused('too-few-runs', path) };
}

/** Each run against the middle one of its direction: a mean would itself be drawn to a run that differs. */
function judged(runs: readonly SpeedRun[], speeds: readonly Answer[], groups: readonly (readonly number[])[], limit: number, watch: number): RunState[] {
  return runs.map((run, i) => {
    const speed = speeds[i]!;
    const mates = groups.find((g) => g.includes(i))!;
    const deviation = mates.length < 2 ? null : derive(RUN_OFF, { v: speed, vm: middle(mates.map((m) => speeds[m]!)) });
    const explained = (200 * watch) / run.seconds;
    // Of two runs either may be the odd one: both are half of the gap away from their middle.
    const allowed = Math.max(limit, explained) / (mates.length === 2 ? 2 : 1);
    return { number: i + 1, run, speed, deviation, differs: deviation !== null && !isRefused(deviation) && Math.abs(deviation.value) > allowed };
  });
}

function middle(speeds: readonly Answer[]): Answer {
  const values = speeds.flatMap((a) => (isRefused(a) ? [] : [a.value])).sort((a, b) => a - b);
  const half = values.length >> 1;
  const value = values.length % 2 === 1 ? values[half]! : (values[half - 1]! + values[half]!) / 2;
  return given(value, 'km/h', 'measured', { path: 'check.runs.middle' });
}
