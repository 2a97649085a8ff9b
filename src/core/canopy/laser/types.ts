import type { Side } from '../../sprayer/types.ts';
import type { Canopy } from '../types.ts';

/** Points of a laser scanner that stood or drove in an alley, m. Columns of one length, a place in each for every point. */
export interface LaserPoints {
  /** Across the rows from the scanner's track; to the right is positive. */
  readonly lateralM: Float64Array;
  /** Above ground. */
  readonly heightM: Float64Array;
  /** Along the rows; null where nothing tells it. */
  readonly alongM: Float64Array | null;
}

/** The vehicle or stand that carries the scanner, which sees itself: points nearer than `halfWidthM`, between the two heights, are no canopy. */
export interface Platform {
  readonly halfWidthM: number;
  readonly fromM: number;
  readonly toM: number;
}

/** How points become a canopy; the user sees all of it and can change it. */
export interface LaserRules {
  readonly platform: Platform | null;
  /** Points below are ground and grass, m. */
  readonly groundM: number;
  /** Rows whose near face is taken. */
  readonly side: Side | 'both';
  /** Distance of the rows, m; where it is silent it is read off the row behind, if that one is seen. */
  readonly rowSpacingM?: number;
  /** Lowest foliage, m; where it is silent it is read off the points. */
  readonly skirtM?: number;
  /** Height of the scanner, m; with it, points are weighed by how thinly its beams lie where they met. */
  readonly scannerHeightM?: number;
}

/** Why a point is no part of the canopy, in the order in which it is asked. */
export const LEFT_OUT = ['platform', 'ground', 'other-side', 'beyond', 'below-skirt', 'above-top'] as const;
export type LeftOut = (typeof LEFT_OUT)[number];

/** What is seen of the row on one side. */
export interface LaserSide {
  readonly side: Side;
  /** Points between this alley's middle and the next one's. */
  readonly points: number;
  /** Distance of the row's face from the alley's middle, m. */
  readonly faceM: number;
  readonly skirtM: number;
  readonly topM: number;
}

/** One height band. */
export interface LaserBand {
  readonly fromM: number;
  readonly toM: number;
  readonly points: number;
  /** Distance of the face from the alley's middle, and how far into the row points go (nineteen of twenty), m; null where points are too few. */
  readonly faceM: number | null;
  readonly depthM: number | null;
  /** Full width if the far side is like the near one, m. */
  readonly widthM: number | null;
  /** Points per area of the section, over their mean. */
  readonly relativeDensity: number | null;
  /** Share of the band's face, cell by cell along the row, that returned no point, 0…1; null where points are too few or do not tell where along the row they are. */
  readonly gapFraction: number | null;
}

/** Canopy on a metre of row, m³/m. */
export interface LaserVolumes {
  /** Skirt to top, as wide as the widest band. */
  readonly boxM3PerM: number;
  /** Inside the outline. */
  readonly outlineM3PerM: number;
  /** Inside the outline, without the gaps of the face, each taken to go right through; null where they are told for less than nine tenths of it. */
  readonly occupiedM3PerM: number | null;
}

/** How much of the row's length holds canopy. */
export interface LaserGaps {
  /** 0…1; null where the stretch is too short to tell. */
  readonly filledFraction: number | null;
  /** Length of row that was seen, m. */
  readonly stretchM: number;
}

/** A canopy made of points. */
export interface LaserCanopy {
  /** To the centimetre, fit for a document. Says nothing of leaf area: a scanner does not measure it. */
  readonly canopy: Canopy;
  readonly rules: LaserRules;
  readonly rowSpacingM: number;
  readonly spacingFrom: 'given' | 'seen';
  /** What the row behind shows, whether or not it was used; null where it is not seen. */
  readonly spacingSeenM: number | null;
  /** Where the alley's middle lies, from the scanner's track; 0 where one row alone is seen. */
  readonly middleM: number;
  readonly sides: readonly LaserSide[];
  readonly bands: readonly LaserBand[];
  /** null where the points do not tell where along the row they are. */
  readonly gaps: LaserGaps | null;
  readonly volumes: LaserVolumes;
  readonly total: number;
  readonly used: number;
  readonly leftOut: Readonly<Record<LeftOut, number>>;
}
