import { UNFOLDED, unfoldedShare } from '../growth.ts';

/** From here on the leaf is out and shoots have ended: the outline stands until it is cut. */
const GROWN = 75;

/**
 * Share of the season's growth of the outline at a stage, 0…1: as the leaf unfolds, and not lost with it. That shoots and leaf keep step is an
 * assumption; no source at hand says when in the season the row's volume grows.
 */
export const grownShare = (bbch: number): number => (bbch >= GROWN ? 1 : unfoldedShare(bbch));

/** The stage at which so much leaf has unfolded, in spring; null for a share beyond 0…1. The inverse of `unfoldedShare` up to full leaf. */
export function stageOfShare(share: number): number | null {
  if (!(share >= 0 && share <= 1)) return null;
  for (let i = 1; i < UNFOLDED.length; i++) {
    const [b0, s0] = UNFOLDED[i - 1]!;
    const [b1, s1] = UNFOLDED[i]!;
    if (s1 > s0 && share >= s0 && share <= s1) return b0 + ((b1 - b0) * (share - s0)) / (s1 - s0);
  }
  return null;
}
