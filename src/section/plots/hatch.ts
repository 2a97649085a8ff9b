import { px } from '../scene.ts';

/** How far apart the lines of each step of hatching stand, px; the first step has none. */
export const HATCH_GAPS = [0, 11, 7, 4.5, 2.8] as const;
/** Differences of dose index from which each step begins. */
export const HATCH_STEPS = [0, 0.05, 0.15, 0.3, 0.6] as const;
export type HatchStep = 0 | 1 | 2 | 3 | 4;

/** Step of hatching for a difference of dose indices, whatever its sign; the denser the larger. */
export function hatchStep(difference: number): HatchStep {
  const size = Math.abs(difference) + 1e-12;
  return HATCH_STEPS.findLastIndex((from) => size >= from) as HatchStep;
}

/** Lines at 45° inside a rectangle, rising to the right or falling, `gap` apart measured across them. */
export function hatchPath(x: number, y: number, width: number, height: number, gap: number, rising = true): string {
  if (!(width > 0 && height > 0 && gap > 0)) return '';
  const step = gap * Math.SQRT2;
  let d = '';
  for (let c = step / 2; c < width + height; c += step) {
    // The line u + v = c, u from the left and v from the top; mirrored for a falling one.
    const u0 = Math.max(0, c - height);
    const u1 = Math.min(width, c);
    const [a, b] = rising ? [u0, u1] : [width - u0, width - u1];
    d += `M${px(x + a)} ${px(y + c - u0)}L${px(x + b)} ${px(y + c - u1)}`;
  }
  return d;
}
