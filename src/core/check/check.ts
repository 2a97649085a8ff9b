import { ranked } from '../advice/finding.ts';
import { ASSUMPTIONS } from '../setting/assumptions.ts';
import type { Document } from '../setting/document.ts';
import { sameSetting } from '../setting/evaluate.ts';
import type { Result } from '../setting/result.ts';
import { sprayerState, type SprayerState } from '../sprayer/sprayer.ts';
import type { Setting } from '../sprayer/types.ts';
import { Assumptions } from '../working/assumption.ts';
import { outcomeOf, speedFor, type Tested } from './outcome.ts';
import { pressureState } from './pressure.ts';
import { refillState } from './refill.ts';
import { speedState } from './speed.ts';
import { standings } from './standing.ts';
import type { CheckState, RoundState, TrailRow } from './state.ts';
import { toleranceOf } from './tolerance.ts';
import type { Check, Round } from './types.ts';
import { walkState } from './walk.ts';

/**
 * The headland check of the rung that `result` was made for; null where it has none. `check` may stand in for one that is only
 * begun. Pure; the document must have come through the reader.
 */
export function checkState(document: Document, result: Result, check: Check | undefined = result.rung.check): CheckState | null {
  if (!check) return null;
  const assumptions = new Assumptions(ASSUMPTIONS, document.assumptions);
  const machineWith = (setting: Setting): SprayerState =>
    sameSetting(setting, result.setting) ? result.sprayer : sprayerState(result.machine, setting, document.nozzleTables, result.canopy, result.pass, assumptions, result.sprayer);
  const tolerance = toleranceOf(check.tolerance ?? 'normal', assumptions);

  const rounds: RoundState[] = [];
  for (const [index, round] of check.rounds.entries()) rounds.push(roundState(index, round, machineWith(round.setting), rounds, result, assumptions));
  const outcome = outcomeOf(result.sprayer, rounds, result.water.wanted, result.pass, assumptions);
  const current = rounds.at(-1) ?? null;
  return {
    check,
    tolerance,
    walk: walkState(check),
    rounds,
    current,
    outcome,
    remedies: null,
    trail: rounds.map(trailRow),
    findings: ranked(current?.findings ?? []),
    assumptions: assumptions.used
  };
}

function roundState(index: number, round: Round, sprayer: SprayerState, before: readonly Tested[], { sprayer: now, water, pass }: Result, assumptions: Assumptions): RoundState {
  const stand = standings(sprayer, now);
  const speed = speedState(round, assumptions);
  const pressure = pressureState(round);
  const timed: Tested = { index, sprayer, speed, refill: null, catches: null };
  const refill = refillState(round, sprayer, speedFor(sprayer, [...before, timed]).value, pass, assumptions);
  const tested: Tested = { ...timed, refill };
  return {
    index,
    round,
    sprayer,
    speedStanding: stand.speed,
    outputStanding: stand.output,
    pressure,
    speed,
    refill,
    catches: null,
    law: null,
    outcome: outcomeOf(sprayer, [...before, tested], water.wanted, pass, assumptions),
    findings: []
  };
}

const trailRow = ({ index, round, outcome, catches }: RoundState): TrailRow => ({
  index,
  at: round.at ?? null,
  volume: outcome.volume.value,
  wanted: outcome.wanted,
  off: outcome.off,
  verdict: outcome.verdict,
  diagnosis: catches?.diagnosis ?? null
});
