import { BASE_TEMPERATURE } from '../weather/degree-days.ts';
import type { Assumption } from '../working/assumption.ts';

/** Growth of the row's volume from spring to summer, as published: usually between the first two, never above the third. */
export const VOLUME_GROWTH = { low: 0.2, high: 0.3, most: 0.5 } as const;

/** What growth between rungs rests on; apart from the engine's other assumptions, so that the first screen does not load it. */
export const SEASON_ASSUMPTIONS: readonly Assumption[] = [
  // The middle of the published range.
  { id: 'growth.volume', value: 0.25, unit: '1', least: 0, most: VOLUME_GROWTH.most, certainty: 'derived', sources: ['arenenberg-growth'] },
  BASE_TEMPERATURE
];
export const SEASON_REGISTRY: ReadonlyMap<string, Assumption> = new Map(SEASON_ASSUMPTIONS.map((a) => [a.id, a]));
