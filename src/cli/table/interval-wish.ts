import { LEAST_DRAWS } from '#core/canopy/draws/coverage.ts';
import { intervalCli as words } from '#words/en/interval-cli.ts';
import type { Stop } from '../exit.ts';

/** Which intervals are wanted. Plain data, for threads and the manifest. */
export interface IntervalWish {
  /** Draws for each canopy; none where the analytic interval is enough. */
  readonly draws: number | null;
  readonly seed: number;
}

export const MOST_DRAWS = 100_000;
export const DEFAULT_SEED = 1;

/** The options as they were written. */
export interface Written {
  readonly intervals: boolean;
  readonly draws?: string | undefined;
  readonly seed?: string | undefined;
}

/** Null where no intervals are wanted. Stops at options that do not go together, and at numbers that are none. */
export function intervalWish({ intervals, draws, seed }: Written, usage: (message: string) => Stop): IntervalWish | null {
  if (!intervals) {
    if (draws !== undefined || seed !== undefined) throw usage(words.withoutIntervals(draws === undefined ? '--seed' : '--draws'));
    return null;
  }
  if (draws === undefined) {
    if (seed !== undefined) throw usage(words.seedWithoutDraws);
    return { draws: null, seed: DEFAULT_SEED };
  }
  const whole = (option: string, text: string, least: number, most: number): number => {
    const value = Number(text);
    if (!/^\d+$/.test(text) || !(value >= least && value <= most)) throw usage(words.notWhole(option, text, least, most));
    return value;
  };
  return { draws: whole('--draws', draws, LEAST_DRAWS, MOST_DRAWS), seed: seed === undefined ? DEFAULT_SEED : whole('--seed', seed, 0, Number.MAX_SAFE_INTEGER) };
}
