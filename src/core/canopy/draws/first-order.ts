import type { CanopyErrors } from '../types.ts';

/** Slopes of a figure by height, skirt, width and row spacing, in its unit per metre. */
export type Slopes = readonly [height: number, skirt: number, width: number, rowSpacing: number];

/** Step for a slope by differences, m: the same share of the measurement as in `intervalOf`. */
export const slopeStep = (value: number): number => Math.max(Math.abs(value), 1e-3) * 1e-5;

/**
 * Standard error of a figure by first-order propagation, with the covariance of height and width: GUM 2008 clause 5.2 (from memory).
 * The same as `intervalOf` gives, for figures whose working is not kept.
 */
export function standardError([height, skirt, width, spacing]: Slopes, e: CanopyErrors): number {
  const h = height * (e.heightSeM ?? 0);
  const w = width * (e.widthSeM ?? 0);
  const variance = h ** 2 + w ** 2 + (skirt * (e.skirtSeM ?? 0)) ** 2 + (spacing * (e.rowSpacingSeM ?? 0)) ** 2 + 2 * (e.heightWidthCorrelation ?? 0) * h * w;
  // A correlation of −1 may leave a trifle below nothing.
  return Math.sqrt(Math.max(variance, 0));
}
