import { refused, type Refused } from '../../working/answer.ts';
import { LEVELS, type Histogram } from './types.ts';

/** A level that parts dark from light. */
export interface Parted {
  /** Levels from here on are light. */
  readonly threshold: number;
  /** Variance between the two classes over all variance, 0…1: how well they part. */
  readonly separability: number;
}

/**
 * The level that parts a histogram in two with the greatest variance between them: σ²_B(t) = (μ_T·ω(t) − μ(t))² / (ω(t)·(1 − ω(t))), where
 * ω and μ are the share and the first moment of the levels below t (Otsu 1979). Where several levels part alike, the middle of them.
 * Refused by name where there is one level alone.
 */
export function otsu(histogram: Histogram): Parted | Refused {
  let total = 0;
  let sum = 0;
  let squares = 0;
  for (let level = 0; level < LEVELS; level++) {
    const n = histogram[level]!;
    total += n;
    sum += n * level;
    squares += n * level ** 2;
  }
  const mean = sum / total;
  const variance = squares / total - mean ** 2;
  if (!(variance > 1e-9)) return refused('photo-flat', 'photo');
  let below = 0;
  let moment = 0;
  let best = -1;
  let first = 0;
  let last = 0;
  for (let t = 1; t < LEVELS; t++) {
    below += histogram[t - 1]! / total;
    moment += (histogram[t - 1]! * (t - 1)) / total;
    if (!(below > 0 && below < 1)) continue;
    const between = (mean * below - moment) ** 2 / (below * (1 - below));
    if (between > best * (1 + 1e-9)) {
      best = between;
      first = t;
    }
    if (between >= best * (1 - 1e-9)) last = t;
  }
  return { threshold: Math.round((first + last) / 2), separability: Math.min(1, best / variance) };
}
