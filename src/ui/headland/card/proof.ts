import type { CheckState, RoundState } from '#core/check/state.ts';
import { valueOf } from '#core/working/answer.ts';

/**
 * within, off: proven, or measured and not as wanted · nozzles: as wanted in the sum alone · scaled: taken over from other open nozzles by their count · stale: what was
 * measured belongs to another setting · partial: speed or output is missing · none: nothing was measured.
 */
export type ProofState = 'within' | 'off' | 'nozzles' | 'scaled' | 'stale' | 'partial' | 'none';

export interface Proof {
  readonly state: ProofState;
  readonly at: Date | null;
  /** Measured and wanted, L/ha. */
  readonly volume: number | undefined;
  readonly wanted: number | undefined;
  /** What the tractor's display shows at the speed of the setting, km/h; undefined where nobody read it. */
  readonly display: number | undefined;
}

const measured = (r: RoundState): boolean => r.speed !== null || r.catches !== null || r.refill.refill !== null;

/** How the setting on the card stands to what was measured on the headland. */
export function proofOf({ outcome, rounds }: CheckState, speedKmH: number): Proof {
  const from = (index: number | null) => (index === null ? undefined : rounds[index]);
  const [speedRound, flowRound] = [from(outcome.speedRound), from(outcome.flowRound)];
  const off = valueOf(speedRound?.speed?.displayOff);
  const dates = [speedRound, flowRound].flatMap((r) => (r?.round.at === undefined ? [] : [new Date(r.round.at)]));
  return {
    state: stateOf(),
    at: dates.length === 0 ? null : new Date(Math.max(...dates.map(Number))),
    volume: valueOf(outcome.volume.value),
    wanted: valueOf(outcome.wanted),
    display: off === undefined ? undefined : speedKmH * (1 + off / 100)
  };

  function stateOf(): ProofState {
    if (outcome.verdict === 'bad-nozzles') return 'nozzles';
    if (outcome.verdict !== 'unknown') return outcome.verdict !== 'within' ? 'off' : outcome.flowStanding === 'scaled' ? 'scaled' : 'within';
    if (!rounds.some(measured)) return 'none';
    return speedRound || flowRound ? 'partial' : 'stale';
  }
}
