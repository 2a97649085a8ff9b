import type { SpeedRun } from '#core/check/types.ts';
import { FOOT_M } from '#core/quantity/constants.ts';

/** The distance that is marked unless another is chosen. */
export const USUAL_COURSE_M = 100;

/** Courses that the trade marks, as they are called: 88 ft in a minute is 1 mph. */
export const COURSES = [
  ['100 m', 100],
  ['50 m', 50],
  ['88 ft', 88 * FOOT_M],
  ['100 ft', 100 * FOOT_M]
] as const;

export type Direction = NonNullable<SpeedRun['direction']>;
export const other = (direction: Direction | undefined): Direction => (direction === 'out' ? 'back' : 'out');
/** Runs go out and back by turns, so that slope and wind are met from both ends. */
export const nextDirection = (runs: readonly SpeedRun[]): Direction => other(runs.at(-1)?.direction ?? 'back');
