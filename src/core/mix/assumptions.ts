import type { Assumption } from '../working/assumption.ts';

/** What loads and the day's work rest on where nothing was said. */
export const MIX_ASSUMPTIONS: readonly Assumption[] = [
  { id: 'mix.turn', value: 25, unit: 's', least: 0, most: 600, certainty: 'practice', sources: ['habit'] },
  { id: 'mix.fill', value: 25, unit: 'min', least: 0, most: 600, certainty: 'practice', sources: ['habit'] },
  // A load under this share of the usable tank is hard to agitate and to measure for.
  { id: 'mix.small-load', value: 0.25, unit: '1', least: 0, most: 1, certainty: 'practice', sources: ['habit'] },
  { id: 'mix.first-water', value: 0.7, unit: '1', least: 0.3, most: 0.95, certainty: 'practice', sources: ['habit'] },
  // How far a weighed amount may be from the dose; jugs and caps are worse.
  { id: 'mix.amount-tolerance', value: 0.05, unit: '1', least: 0.005, most: 0.2, certainty: 'practice', sources: ['habit'] }
];
