import type { NozzleState, SprayerState } from '../sprayer/sprayer.ts';
import type { Changed, Standing } from './state.ts';

/** How the tests made with one setting stand to another. */
export interface Standings {
  readonly speed: Standing;
  readonly output: Standing;
}

/**
 * Of one machine with two settings, its nozzles in the same order. Speed holds while the speed set, the fan gear and the PTO speed stay; output while pressure, PTO speed, sizes and open nozzles stay.
 * Where only the count of open nozzles changed and all of them are alike, output is taken over by the count.
 */
export function standings(tested: SprayerState, now: SprayerState): Standings {
  const a = tested.setting;
  const b = now.setting;
  const when = (changed: boolean, what: Changed): Changed[] => (changed ? [what] : []);
  const speed = [...when(a.speedKmH !== b.speedKmH, 'setting.speedKmH'), ...when(a.gear !== b.gear, 'setting.gear'), ...when(a.ptoRpm !== b.ptoRpm, 'setting.ptoRpm')];

  const both = tested.nozzles.map((n, i) => [n, now.nozzles[i]!] as const);
  const opened = both.some(([n, m]) => n.spraying !== m.spraying);
  const resized = both.some(([n, m]) => n.spraying && m.spraying && kind(n) !== kind(m));
  const output = [...when(a.pressureBar !== b.pressureBar, 'setting.pressureBar'), ...when(a.ptoRpm !== b.ptoRpm, 'setting.ptoRpm'), ...when(resized, 'setting.sizes'), ...when(opened, 'setting.nozzles')];
  const kinds = new Set([...tested.nozzles, ...now.nozzles].filter((n) => n.spraying).map(kind));
  const byCount = output[0] === 'setting.nozzles' && kinds.size === 1 && now.nozzles.some((n) => n.spraying);

  return {
    speed: { stands: speed.length > 0 ? 'stale' : 'holds', changed: speed },
    output: { stands: output.length === 0 ? 'holds' : byCount ? 'scaled' : 'stale', changed: output }
  };
}

/** What a position carries. */
const kind = (n: NozzleState): string => `${n.table?.id}/${n.size?.id}`;
