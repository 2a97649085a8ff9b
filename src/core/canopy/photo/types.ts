/** One height band of a photographed canopy: how many of its pixels were counted, and how many of them showed what is behind. */
export interface PhotoBand {
  readonly fromM: number;
  readonly toM: number;
  /** Width of the canopy along the view, across the row, at the middle of the band, m. */
  readonly widthM: number;
  readonly pixels: number;
  /** At most `pixels`. */
  readonly gaps: number;
}

/** What a document keeps of a photograph: the counts, never the picture. */
export interface CanopyPhoto {
  /** Pixels whose blue, 0…255, is this or more are gaps. */
  readonly threshold: number;
  /** From the lowest up, joined to each other. */
  readonly bands: readonly PhotoBand[];
}

/** Levels of the blue channel. */
export const LEVELS = 256;
/** How many pixels of a band have each level; `LEVELS` numbers. */
export type Histogram = ArrayLike<number>;
