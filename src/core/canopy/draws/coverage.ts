/** Draws below which the ends of a 95 % interval would be single extreme ones. */
export const LEAST_DRAWS = 100;

/** Ranks, counted from one, of the draws that bound the probabilistically symmetric interval: JCGM 101:2008 clause 7.7 (from memory). */
export function coverageRanks(draws: number, level = 0.95): readonly [number, number] {
  const inside = Math.floor(level * draws + 0.5);
  const low = Math.floor((draws - inside + 1) / 2);
  return [low, low + inside];
}

/**
 * Ends of the 95 % interval of drawn figures, `[low, high]` into `to`: the draws of those ranks, none between two.
 * @param figures at least `LEAST_DRAWS`, finite; their order is lost
 */
export function coverageInterval(figures: Float64Array, to: Float64Array): void {
  const [low, high] = coverageRanks(figures.length);
  to[0] = ranked(figures, low - 1, 0);
  to[1] = ranked(figures, high - 1, low);
}

/** The `k`th smallest, counted from zero, of those from `from` on, where smaller ones stand before: Hoare 1961, algorithm 65. */
function ranked(v: Float64Array, k: number, from: number): number {
  let lo = from;
  let hi = v.length - 1;
  while (lo < hi) {
    const pivot = v[k]!;
    let i = lo;
    let j = hi;
    do {
      while (v[i]! < pivot) i++;
      while (pivot < v[j]!) j--;
      if (i <= j) {
        const other = v[i]!;
        v[i++] = v[j]!;
        v[j--] = other;
      }
    } while (i <= j);
    if (j < k) lo = i;
    if (k < i) hi = j;
  }
  return v[k]!;
}
