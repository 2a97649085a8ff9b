import type { SourceId } from '../sources/bibliography.ts';
import { given, type Answer } from '../working/answer.ts';
import { deltaT, noDay, sea } from './psychrometry.ts';
import type { Day } from './types.ts';

/** A published range that the day's value is held against. Several are shown where they disagree; the label rules over all. */
export interface Limit {
  readonly code: string;
  readonly of: 'delta-t' | 'wind' | 'temperature' | 'humidity';
  readonly least?: number;
  readonly most?: number;
  readonly source: SourceId;
}

export const LIMITS: readonly Limit[] = [
  { code: 'delta-t-preferred', of: 'delta-t', least: 2, most: 8, source: 'bom-delta-t' },
  { code: 'delta-t-limit', of: 'delta-t', most: 10, source: 'bom-delta-t' },
  { code: 'wind-low-hazard', of: 'wind', least: 1, most: 3, source: 'waikato-plan' },
  { code: 'wind-limit', of: 'wind', most: 5, source: 'austria-chambers' },
  { code: 'temperature-limit', of: 'temperature', most: 25, source: 'tuebingen-2023' },
  { code: 'humidity-limit', of: 'humidity', least: 50, source: 'tuebingen-2023' }
];

export interface LimitState {
  readonly limit: Limit;
  readonly value: number;
  readonly side: 'inside' | 'below' | 'above';
}

export interface WeatherState {
  readonly deltaT: Answer;
  readonly limits: readonly LimitState[];
  /** Signs of an inversion: hardly any wind, or the sun low. */
  readonly inversion: boolean;
}

/** The day against the published ranges. `null` where nothing was measured. */
export function weatherState(day: Day | undefined): WeatherState | null {
  if (!day || Object.values(day).every((v) => v === undefined)) return null;
  const dT: Answer =
    day.temperatureC === undefined || day.humidityPct === undefined
      ? noDay
      : deltaT(
          given(day.temperatureC, 'degC', 'measured', { path: 'day.temperatureC' }),
          given(day.humidityPct, '%', 'measured', { path: 'day.humidityPct' }),
          day.altitudeM === undefined ? sea : given(day.altitudeM, 'm', 'stated', { path: 'day.altitudeM' })
        );
  const values = {
    'delta-t': dT.kind === 'refused' ? undefined : dT.value,
    wind: day.windMPerS,
    temperature: day.temperatureC,
    humidity: day.humidityPct
  };
  const limits: LimitState[] = [];
  for (const limit of LIMITS) {
    const value = values[limit.of];
    if (value === undefined) continue;
    const side = value < (limit.least ?? -Infinity) ? 'below' : value > (limit.most ?? Infinity) ? 'above' : 'inside';
    limits.push({ limit, value, side });
  }
  return { deltaT: dT, limits, inversion: (day.windMPerS !== undefined && day.windMPerS < 1) || day.sunLow === true };
}
