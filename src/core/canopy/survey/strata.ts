import { spreadFrom, type Spread } from './spread.ts';

/** One stratum of a block: its spread, and its part of the block, 0…1. */
export interface Part {
  readonly spread: Spread;
  readonly weight: number;
}

/**
 * Mean of a block from those of its strata: Σ w·m, SE² = Σ w²·SE², each stratum's own SE being that of a finite block.
 * Degrees of freedom (Σ w²SE²)² / Σ (w²SE²)²/(n−1), rounded down: Satterthwaite's, as in Cochran 1977, Sampling Techniques, 5.4; from
 * memory. A stratum of one tree, if it holds more, tells no error, and the whole none.
 */
export function weightedSpread(parts: readonly Part[]): Spread {
  const sum = (f: (p: Part) => number): number => parts.reduce((s, p) => s + f(p), 0);
  const trees = sum((p) => p.spread.trees);
  const mean = sum((p) => p.weight * p.spread.mean);
  if (parts.some((p) => p.spread.standardError === null)) return spreadFrom(trees, mean, null, null, 0);
  const variance = (p: Part): number => (p.weight * p.spread.standardError!) ** 2;
  const total = sum(variance);
  const nu = total > 0 ? Math.floor(total ** 2 / sum((p) => (p.spread.trees > 1 ? variance(p) ** 2 / (p.spread.trees - 1) : 0)) + 1e-9) : 0;
  // Of a tree of the block: within the strata and between them.
  const deviation = Math.sqrt(sum((p) => p.weight * ((p.spread.standardDeviation ?? 0) ** 2 + (p.spread.mean - mean) ** 2)));
  return spreadFrom(trees, mean, deviation, Math.sqrt(total), nu);
}
