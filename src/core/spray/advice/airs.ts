import { airFactor, type Air, type Stand } from './stand.ts';
import type { Change } from './types.ts';

/** PTO speeds that are tried in each gear, besides today's. */
const PTO_SPEEDS = 3;
const PTO_STEP_RPM = 10;
/** Below half of what the alley rule asks for nothing is advised: the published trials of less air went about so far. */
const LEAST_AIR = 0.5;
/** Air settings closer than this are one. */
const SAME_AIR = 0.02;

/** Today's first. A gear without air is none: the fan stays on. */
export function airsOf(stand: Stand): Air[] {
  const { machine, setting, air } = stand.result;
  const today: Air = { gear: setting.gear, ptoRpm: setting.ptoRpm };
  const airs: { readonly air: Air; readonly factor: number }[] = [{ air: today, factor: 1 }];
  const speeds = ptoSpeeds(machine.ptoMinRpm, machine.ptoMaxRpm);
  const within = setting.ptoRpm >= machine.ptoMinRpm && setting.ptoRpm <= machine.ptoMaxRpm;
  // Today's gear first, then today's PTO speed: of two settings that give the same air the one nearer to today's is kept.
  const gears = [...machine.gears].sort((a, b) => Number(b.id === setting.gear) - Number(a.id === setting.gear));
  for (const gear of gears) {
    if (!(gear.flowM3PerH > 0)) continue;
    for (const ptoRpm of new Set([...(within ? [setting.ptoRpm] : []), ...speeds])) {
      const factor = airFactor(stand, { gear: gear.id, ptoRpm });
      if (air.ratio !== undefined && air.ratio * factor < Math.min(LEAST_AIR, air.ratio)) continue;
      if (airs.some((a) => Math.abs(factor / a.factor - 1) < SAME_AIR)) continue;
      airs.push({ air: { gear: gear.id, ptoRpm }, factor });
    }
  }
  return airs.map((a) => a.air);
}

/** Evenly from the least to the most, on whole tens where the range lets it. */
function ptoSpeeds(least: number, most: number): number[] {
  return Array.from({ length: PTO_SPEEDS }, (_, i) => {
    const rpm = most - ((most - least) * i) / (PTO_SPEEDS - 1);
    return Math.min(Math.max(Math.round(rpm / PTO_STEP_RPM) * PTO_STEP_RPM, least), most);
  });
}

export function airChanges(from: Air, to: Air): Change[] {
  if (from.gear === to.gear) return from.ptoRpm === to.ptoRpm ? [] : [{ code: 'pto', fromRpm: from.ptoRpm, toRpm: to.ptoRpm }];
  if (from.ptoRpm === to.ptoRpm) return [{ code: 'gear', from: from.gear, to: to.gear }];
  return [{ code: 'gear-and-pto', from: from.gear, to: to.gear, fromRpm: from.ptoRpm, toRpm: to.ptoRpm }];
}
