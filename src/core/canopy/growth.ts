/**
 * Share of the final leaf area that has unfolded at a BBCH stage of apple.
 * Full bloom (65) 0.10, petal fall (69) 0.23: Forshey, Weires & VanKirk 1987, from its abstract. Four weeks after bloom, eight times
 * bloom (0.80): the same, placed at BBCH 73 from memory. Leaf fall 92–97 with half of the leaves down at 95: BBCH scale, from memory.
 * Straight lines between; nothing before green tip (07), all from 75 to 92.
 */
export const UNFOLDED: readonly (readonly [bbch: number, share: number])[] = [[7, 0], [65, 0.1], [69, 0.23], [73, 0.8], [75, 1], [92, 1], [95, 0.5], [97, 0]];

/** @param bbch 0…99 @returns 0…1 */
export function unfoldedShare(bbch: number): number {
  let [b0, s0] = UNFOLDED[0]!;
  if (bbch <= b0) return s0;
  for (const [b1, s1] of UNFOLDED) {
    if (bbch <= b1) return b1 === b0 ? s1 : s0 + ((s1 - s0) * (bbch - b0)) / (b1 - b0);
    [b0, s0] = [b1, s1];
  }
  return s0;
}

/** Before the end of bloom, or bare after leaf fall: the water of the early season. */
export const isEarly = (bbch: number | undefined): boolean => bbch !== undefined && (bbch < 69 || bbch >= 97);
/** Before green tip or after leaf fall: wood only. */
export const isDormant = (bbch: number | undefined): boolean => bbch !== undefined && (bbch < 7 || bbch >= 97);
