/** Width of the canopy across the row at a height above ground, both in metres. */
export interface WidthAt {
  readonly heightM: number;
  readonly widthM: number;
}

/** One station of a measured profile. */
export interface ProfileStation extends WidthAt {
  /** Leaf density at this height over the mean of the canopy, 0…5. Widths, areas and aim do not heed it. */
  readonly relativeDensity?: number;
}

/** Standard errors of the measured means, and how height and width go together over the trees. */
export interface CanopyErrors {
  readonly heightSeM?: number;
  readonly skirtSeM?: number;
  readonly widthSeM?: number;
  readonly rowSpacingSeM?: number;
  /** Correlation of height and width over trees, −1…1. */
  readonly heightWidthCorrelation?: number;
  /** Trees measured; with it the interval uses Student's t, without it the normal distribution. */
  readonly trees?: number;
}

/**
 * Outline by which a canopy without measured widths is drawn and aimed at, always with its greatest width as measured:
 * box (a hedge wall), ellipse (a globe), spindle (narrow top), wall (a trimmed wall with rounded shoulders).
 */
export type CanopyShape = 'box' | 'ellipse' | 'spindle' | 'wall';

/** How dense the canopy stands, as a grower sees it. */
export type DensityClass = 'open' | 'medium' | 'dense';

/** Where a canopy that nobody has measured comes from. */
export interface Proposed {
  /** Id of the measured rung of the same block. */
  readonly from: string;
  /** Id of the later one where it lies between two. */
  readonly to?: string;
  /** By the published shares of growth stages, or by the degree-days between two dates. */
  readonly by: 'stage' | 'degree-days';
}

/** One canopy as measured. Only height and width are needed; the rest has stated defaults. */
export interface Canopy {
  /** Mean tree height from the ground, m. */
  readonly heightM: number;
  /** Greatest canopy width across the row, m. */
  readonly widthM: number;
  /** Height of the lowest foliage, m. Default 0. */
  readonly skirtM?: number;
  readonly shape?: CanopyShape;
  /** Measured widths from skirt to top, rising. */
  readonly profile?: readonly ProfileStation[];
  /** Share of the row length that holds canopy, 0…1. Default 1. */
  readonly filledFraction?: number;
  /** Share of the tree places that are empty, 0…1. Default 0. */
  readonly missingFraction?: number;
  /** Mean height of the tallest tenth of the trees, m. */
  readonly tallestTenthM?: number;
  readonly densityClass?: DensityClass;
  /** Density factor of the US tree-row-volume method, gal per 1000 ft³. */
  readonly usDensityGalPer1000Ft3?: number;
  /** Leaf area density, one-sided, m² per m³ of canopy. */
  readonly ladM2PerM3?: number;
  readonly errors?: CanopyErrors;
  /** It was proposed from other rungs and is not measured yet; the first measurement removes this. */
  readonly proposed?: Proposed;
}
