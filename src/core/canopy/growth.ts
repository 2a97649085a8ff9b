/**
 * Share of the final leaf area that has unfolded at a BBCH stage of apple.
 * Full bloom (65) 0.10, petal fall (69) 0.23: Forshey, Weires & VanKirk 1987, from its abstract. Four weeks after bloom, eight times
 * bloom (0.80): the same, placed at BBCH 73 from memory. Straight lines between; nothing before green tip (07), all from 75.
 */
const UNFOLDED: readonly (readonly [bbch: number, share: number])[] = [[7, 0], [65, 0.1], [69, 0.23], [73, 0.8], [75, 1]];

/** @param bbch 0…99 @returns 0…1 */
export function unfoldedShare(bbch: number): number {
  let [b0, s0] = UNFOLDED[0]!;
  if (bbch <= b0) return s0;
  for (const [b1, s1] of UNFOLDED) {
    if (bbch <= b1) return b1 === b0 ? s1 : s0 + ((s1 - s0) * (bbch - b0)) / (b1 - b0);
    [b0, s0] = [b1, s1];
  }
  // Leaves colour and fall from 92 on; that is not modelled: a falling canopy is measured, not guessed.
  return 1;
}

/** Before the end of bloom: the water of the early season. */
export const isEarly = (bbch: number | undefined): boolean => bbch !== undefined && bbch < 69;
/** Before green tip: wood only. */
export const isDormant = (bbch: number | undefined): boolean => bbch !== undefined && bbch < 7;
