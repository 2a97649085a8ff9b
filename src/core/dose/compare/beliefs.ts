import { GAL_PER_1000FT3_L_PER_M3 } from '../../quantity/constants.ts';
import type { SourceId } from '../../sources/bibliography.ts';
import type { Certainty } from '../../working/answer.ts';

/** Between what an assumption is believed to lie, in its unit. Narrower than what the user may set. */
export interface Belief {
  readonly low: number;
  readonly high: number;
  readonly certainty: Certainty;
  readonly sources: readonly SourceId[];
}

const belief = (low: number, high: number, certainty: Certainty, ...sources: SourceId[]): Belief => ({ low, high, certainty, sources });

/**
 * Assumptions for which a source states a range, or several sources differ. The others have none: what nobody stated is not drawn.
 * A value that the user set himself has no range either. The order is that of the random streams: new ones go to the end.
 */
export const BELIEFS: ReadonlyMap<string, Belief> = new Map([
  // From well pruned to unpruned.
  ['canopy.us-density', belief(0.7 * GAL_PER_1000FT3_L_PER_M3, GAL_PER_1000FT3_L_PER_M3, 'published', 'landers-trv')],
  ['canopy.full-leaf-density', belief(1.5, 4, 'memory', 'habit')],
  ['us-row-volume.season-early', belief(0.25 / 0.7, 0.35 / 0.7, 'published', 'rutgers-1998')],
  ['crown-height.water', belief(100, 500, 'published', 'bvl-2012')],
  // Litres to run-off on a cubic metre of box: the metric standard orchard, and Swiss single strength at 10 000 m³/ha.
  ['row-volume.water', belief(3343 / 35676, 1600 / 10000, 'derived', 'canada-trv', 'arenenberg-2011')],
  ['unit-canopy-row.volume', belief(9, 50, 'memory', 'furness-1998')],
  // What was sprayed in citrus, and where run-off was sure.
  ['row-distance.volume', belief(25, 60, 'published', 'furness-thompson')],
  ['occupied-volume.water', belief(0.095, 0.13, 'memory', 'chen-zhu-2012')],
  ['leaf-area.deposit', belief(0.7, 0.9, 'published', 'furness-thompson')],
  // Apple in full leaf, hedgerow and bush.
  ['leaf-area.recovery', belief(0.22, 0.37, 'published', 'herrington-1981')]
]);
