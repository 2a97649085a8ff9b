import type { Side } from '../sprayer/types.ts';

/** What a ribbon did while the machine drove past with its fan on, from no air to too much. */
export const RIBBON_CLASSES = ['still', 'lifts', 'flutters', 'streams'] as const;
export type RibbonClass = (typeof RIBBON_CLASSES)[number];

/**
 * Where a water-sensitive paper hung: on the face of the row that the machine drove past, at the trunk line, on the face behind it, above the
 * top, or on the ground under the row.
 */
export const PAPER_PLACES = ['near', 'middle', 'far', 'over', 'ground'] as const;
export type PaperPlace = (typeof PAPER_PLACES)[number];

/** One ribbon, on the face of the row behind the leaf. */
export interface SeenRibbon {
  /** Side of the machine. */
  readonly side: Side;
  /** Height above ground, m. */
  readonly heightM: number;
  readonly class: RibbonClass;
}

/** One paper. */
export interface SeenPaper {
  readonly side: Side;
  /** Height above ground, m. */
  readonly heightM: number;
  readonly place: PaperPlace;
  /** Part of the paper that is stained, %. */
  readonly coveragePercent: number;
}

/** What was seen in the field of one setting. It stands beside the prediction and goes before it; the model does not heed it. */
export interface Seen {
  readonly ribbons?: readonly SeenRibbon[];
  readonly papers?: readonly SeenPaper[];
}
