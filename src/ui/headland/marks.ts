import type { CatchVerdict } from '#core/check/state.ts';

/** Verdict on a nozzle by shape: a ring, a point that hangs, a point that stands, a dash. Drawn around the origin. */
export const MARKS: Readonly<Record<CatchVerdict, string>> = {
  fine: 'M6 0A6 6 0 1 1-6 0A6 6 0 1 1 6 0Z',
  low: 'M-7-6H7L0 7Z',
  high: 'M-7 6H7L0-7Z',
  unknown: 'M-5 0H5'
};
