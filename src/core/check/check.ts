import { ranked, type Finding } from '../advice/finding.ts';
import { ASSUMPTIONS } from '../setting/assumptions.ts';
import type { Document } from '../setting/document.ts';
import { sameSetting } from '../setting/result-of.ts';
import type { Result } from '../setting/result.ts';
import { sprayerState, type SprayerState } from '../sprayer/sprayer.ts';
import type { Setting } from '../sprayer/types.ts';
import { Assumptions } from '../working/assumption.ts';
import { catchesState } from './catches.ts';
import { dueFindings } from './due.ts';
import { lawState } from './law.ts';
import { outcomeOf, speedFor, type Tested } from './outcome.ts';
import { outputFindings } from './output-rules.ts';
import { pressureState } from './pressure.ts';
import { pressureFindings } from './pressure-rules.ts';
import { refillState } from './refill.ts';
import { remediesFor } from './remedies.ts';
import { resultFindings } from './result-rules.ts';
import { speedState } from './speed.ts';
import { speedFindings } from './speed-rules.ts';
import { standings } from './standing.ts';
import type { CheckState, Outcome, RoundState, Tolerance, TrailRow } from './state.ts';
import { toleranceOf } from './tolerance.ts';
import type { Check, Round } from './types.ts';
import { usedState } from './used.ts';
import { walkState } from './walk.ts';
import { walkFindings } from './walk-rules.ts';

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
  for (const [index, round] of check.rounds.entries()) rounds.push(roundState(index, round, machineWith(round.setting), rounds, result, tolerance, assumptions));
  const walk = walkState(check);
  const current = rounds.at(-1) ?? null;
  const outcome = outcomeOf(result.sprayer, rounds, result.water.wanted, result.pass, assumptions);
  // Nozzles that were found bad count as long as the output measured with them does.
  const catches = outcome.flowRound === null ? null : rounds[outcome.flowRound]!.catches;
  const used = usedState(result, outcome.volume.value, assumptions);
  const findings: Finding[] = [
    ...dueFindings(result.block, { ...result.rung, check }),
    ...walkFindings(check, walk),
    ...(current?.findings ?? []),
    ...timed(rounds, outcome),
    ...resultFindings(outcome, rounds, result, assumptions),
    ...(used?.findings ?? [])
  ];
  return {
    check,
    tolerance,
    walk,
    rounds,
    current,
    outcome,
    remedies: remediesFor(result.sprayer, outcome, catches, result.pass, assumptions),
    trail: rounds.map(trailRow),
    used,
    findings: ranked(once(findings)),
    assumptions: assumptions.used
  };
}

/** What was found about the speed that counts, which may be of an earlier round. */
const timed = (rounds: readonly RoundState[], { speedRound }: Outcome): Finding[] =>
  speedRound === null ? [] : rounds[speedRound]!.findings.filter((f) => f.path === 'check.runs' || f.path === 'check.displayKmH');

/** Two rules may see the same thing: it is said once. */
const once = (findings: readonly Finding[]): Finding[] => {
  const said = new Set<string>();
  return findings.filter((f) => {
    const key = JSON.stringify([f.code, f.parameters, f.path]);
    return !said.has(key) && said.add(key);
  });
};

function roundState(index: number, round: Round, sprayer: SprayerState, before: readonly Tested[], { sprayer: now, water, pass }: Result, tolerance: Tolerance, assumptions: Assumptions): RoundState {
  const stand = standings(sprayer, now);
  const pressure = pressureState(round);
  const law = lawState(round, assumptions);
  const speed = speedState(round, assumptions);
  const catches = catchesState(round, sprayer, pressure, tolerance, assumptions);
  const timed: Tested = { index, sprayer, speed, refill: null, catches };
  const refill = refillState(round, sprayer, speedFor(sprayer, [...before, timed]).value, pass, assumptions);
  return {
    index,
    round,
    sprayer,
    speedStanding: stand.speed,
    outputStanding: stand.output,
    pressure,
    speed,
    refill,
    catches,
    law,
    outcome: outcomeOf(sprayer, [...before, { ...timed, refill }], water.wanted, pass, assumptions),
    findings: ranked([...speedFindings(speed, round.setting, assumptions), ...pressureFindings(pressure, law, sprayer, assumptions), ...outputFindings(refill, catches, sprayer, assumptions)])
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
