import type { SourceId } from '../sources/bibliography.ts';
import type { Unit } from '../quantity/units.ts';
import type { Certainty } from '../working/answer.ts';
import type { Assumption } from '../working/assumption.ts';

const a = (id: string, value: number, unit: Unit, least: number, most: number, certainty: Certainty, ...sources: SourceId[]): Assumption => ({ id: `check.${id}`, value, unit, least, most, certainty, sources });

/** What a watch, a jug and a gauge leave, and how far things may be off on the headland. No standard's text was read: the limits are the user's. */
export const CHECK_ASSUMPTIONS: readonly Assumption[] = [
  a('watch-error', 0.5, 's', 0, 10, 'memory', 'habit'),
  a('least-course', 50, 'm', 10, 500, 'practice', 'habit'),
  a('least-runs', 3, '1', 1, 20, 'memory', 'habit'),
  a('run-differs', 3, '%', 0.5, 20, 'assumed', 'habit'),
  a('display', 5, '%', 1, 20, 'memory', 'habit'),
  a('fast', 6, 'km/h', 2, 12, 'practice', 'habit'),
  a('refill-time', 180, 's', 30, 900, 'practice', 'habit'),
  a('refill-litres', 2, 'L', 0, 50, 'derived', 'error-propagation'),
  a('refill-seconds', 2, 's', 0, 60, 'derived', 'error-propagation'),
  a('refill-wanted', 2, '%', 0.5, 10, 'assumed', 'habit'),
  a('catch-litres', 0.01, 'L', 0, 1, 'derived', 'error-propagation'),
  a('catch-seconds', 1, 's', 0, 10, 'derived', 'error-propagation'),
  a('volume-adjust', 5, '%', 1, 20, 'published', 'ozkan-2021'),
  a('volume-nozzles', 10, '%', 2, 40, 'published', 'texas-worksheet'),
  a('usual-least', 200, 'L/ha', 10, 2000, 'practice', 'habit'),
  a('usual-most', 1000, 'L/ha', 100, 10000, 'practice', 'habit'),
  a('mean-strict', 5, '%', 1, 30, 'practice', 'habit'),
  a('mean-normal', 10, '%', 1, 30, 'published', 'florida-manual'),
  a('mean-inspection', 15, '%', 1, 30, 'published', 'luxembourg-vine'),
  a('nominal-strict', 5, '%', 1, 30, 'practice', 'habit'),
  a('nominal-normal', 10, '%', 1, 30, 'published', 'deveau-2009'),
  a('nominal-inspection', 15, '%', 1, 30, 'memory', 'iso-16122-3'),
  a('sides', 10, '%', 1, 30, 'memory', 'iso-16122-3'),
  a('gauge-rest', 0.2, 'bar', 0, 2, 'assumed', 'habit'),
  a('gauge-off', 10, '%', 1, 30, 'memory', 'iso-16122-3'),
  a('pressure-loss', 15, '%', 1, 50, 'memory', 'iso-16122-3'),
  a('one-side', 10, '%', 1, 50, 'memory', 'iso-16122-3'),
  a('exponent-least', 0.45, '1', 0.3, 0.5, 'memory', 'sqrt-law'),
  a('exponent-most', 0.55, '1', 0.5, 0.8, 'memory', 'sqrt-law'),
  a('fine-gap', 10, '%', 2, 30, 'memory', 'habit'),
  a('moderate-gap', 25, '%', 5, 60, 'assumed', 'habit'),
  a('used-alarm', 5, '%', 1, 30, 'practice', 'habit'),
  a('used-stop', 10, '%', 2, 50, 'practice', 'habit')
];
