import { FACE_SHARE, FEWEST_IN_ROW } from './rules.ts';
import { quantile } from './statistics.ts';

const BIN_M = 0.25;
/** Bins of an alley hold less than this of the fullest bin. */
const FREE_SHARE = 0.01;
/** A free strip as narrow as a bin may be chance. */
const ALLEY_BINS = 2;
/** The row behind is seen through the leaves of the first. */
const FEWEST_BEHIND = 50;

/**
 * Distance of two rows from how far the row behind stands: from the near face of the one to the near face of the other, both seen from the
 * same side. @param distances ascending, from the scanner's track, m @returns null where no second row is seen beyond a free strip
 */
export function spacingSeen(distances: Float64Array): number | null {
  const all = strips(distances);
  // The nearest row has by far the most points; a mast nearer by has few.
  const nearest = all.reduce((best, s, i) => (s.length > all[best]!.length ? i : best), 0);
  const [first, second] = all.slice(nearest);
  if (!first || !second || first.length < FEWEST_IN_ROW || second.length < FEWEST_BEHIND) return null;
  return quantile(second, FACE_SHARE) - quantile(first, FACE_SHARE);
}

/** Runs of distances between free strips. */
function strips(distances: Float64Array): Float64Array[] {
  const bins: number[] = [];
  for (const d of distances) {
    const bin = Math.floor(d / BIN_M);
    bins[bin] = (bins[bin] ?? 0) + 1;
  }
  const fullest = bins.reduce((most, n) => Math.max(most, n), 0);
  const free = (bin: number): boolean => (bins[bin] ?? 0) < FREE_SHARE * fullest;
  const out: Float64Array[] = [];
  let from = -1;
  for (let bin = 0; bin <= bins.length; bin++) {
    if (from < 0 && bin < bins.length && !free(bin)) from = bin;
    if (from < 0 || !Array.from({ length: ALLEY_BINS }, (_, i) => bin + i).every(free)) continue;
    out.push(distances.filter((d) => d >= from * BIN_M && d < bin * BIN_M));
    from = -1;
  }
  return out;
}
