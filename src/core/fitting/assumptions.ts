import type { Assumption } from '../working/assumption.ts';

export const FITTING_ASSUMPTIONS: readonly Assumption[] = [
  // A nozzle farther than this from its target is named; in use for choosing nozzles from a catalogue, no source.
  { id: 'fitting.position-tolerance', value: 0.15, unit: '1', least: 0.02, most: 0.5, certainty: 'practice', sources: ['habit'] },
  // "Few changes" is the fewest that bring this share of what the best match gains. Ours.
  { id: 'fitting.few-gain', value: 0.5, unit: '1', least: 0.1, most: 0.95, certainty: 'assumed', sources: ['habit'] }
];
