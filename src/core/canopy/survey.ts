/**
 * Two-sided Student quantile: t with P(|T| ≤ t) = level, for whole degrees of freedom.
 * The distribution in closed form for whole ν (Abramowitz & Stegun 1964, 26.7.3 and 26.7.4, from memory), inverted by halving.
 * @param level 0 < level < 1 @param nu whole, ≥ 1 @returns NaN outside that range
 */
export function studentT(level: number, nu: number): number {
  if (!(level > 0 && level < 1 && nu >= 1 && Number.isInteger(nu))) return NaN;
  let lo = 0;
  let hi = 1;
  while (within(hi, nu) < level && hi < 1e9) hi *= 2;
  for (let i = 0; i < 200 && hi - lo > 1e-13 * hi; i++) {
    const mid = (lo + hi) / 2;
    if (within(mid, nu) < level) lo = mid;
    else hi = mid;
  }
  return (lo + hi) / 2;
}

/** P(|T| ≤ t) for whole ν. */
function within(t: number, nu: number): number {
  const theta = Math.atan(t / Math.sqrt(nu));
  const c2 = Math.cos(theta) ** 2;
  const odd = nu % 2 === 1;
  let term = odd ? Math.cos(theta) : 1;
  let sum = nu === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= nu - 2; k += 2) {
    term *= (c2 * (k - 1)) / k;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}

/**
 * How many trees for a mean within ±`error` (relative, 95 %): the smallest n with t(0.975, n−1)·CV/√n·√(1 − n/N) ≤ error.
 * `cv` and `error` relative and above 0, `blockTrees` N ≥ 1 and whole, or infinite for a block of unknown size; NaN otherwise, and
 * never more than N. Derived; canopy spread from the user.
 */
export function treesNeeded(cv: number, error: number, blockTrees = Infinity): number {
  if (!(cv > 0 && error > 0 && blockTrees >= 1)) return NaN;
  const most = Math.min(blockTrees, MOST_TREES);
  // All trees of a block leave no error. t is never below its limit of many trees, so no fewer can do than with that.
  const enough = (n: number) => n === blockTrees || studentT(0.95, n - 1) * cv * Math.sqrt(1 / n - 1 / blockTrees) <= error;
  const without = ((NORMAL * cv) / error) ** 2;
  let n = Math.max(2, Math.floor(without / (1 + without / blockTrees)));
  while (n < most && !enough(n)) n++;
  return Math.min(n, most);
}
const MOST_TREES = 100_000;
/** t(0.975) of many trees, rounded down. */
const NORMAL = 1.9599;

/** Standard error of a mean of n out of a finite block of N trees: SE·√(1 − n/N). */
export const finiteError = (se: number, n: number, N: number): number => (n <= N ? se * Math.sqrt(1 - n / N) : NaN);
