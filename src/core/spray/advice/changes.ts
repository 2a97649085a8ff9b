import type { NozzleSetting, Setting } from '../../sprayer/types.ts';
import type { Change } from './types.ts';

/** Sets something at some positions; what they had besides stays. */
function withNozzles(setting: Setting, positions: readonly string[], patch: Omit<NozzleSetting, 'position'>): Setting {
  const nozzles = new Map(setting.nozzles?.map((n) => [n.position, n]));
  for (const position of positions) nozzles.set(position, { ...(nozzles.get(position) ?? { position }), ...patch });
  return { ...setting, nozzles: [...nozzles.values()] };
}

/** A setting after one change. */
export function changed(setting: Setting, change: Change): Setting {
  switch (change.code) {
    case 'shut':
      return withNozzles(setting, change.nozzles, { open: false });
    case 'open':
      return withNozzles(setting, change.nozzles, { open: true });
    case 'swivel':
      return withNozzles(setting, change.nozzles, { swivelDeg: change.toDeg });
    case 'size':
      return withNozzles(setting, change.nozzles, { size: change.to });
    case 'pressure':
      return { ...setting, pressureBar: change.toBar };
    case 'gear':
      return { ...setting, gear: change.to };
    case 'pto':
      return { ...setting, ptoRpm: change.toRpm };
    case 'gear-and-pto':
      return { ...setting, gear: change.to, ptoRpm: change.toRpm };
    case 'speed':
      return { ...setting, speedKmH: change.toKmH };
  }
}
