import type { WidthAt } from '../types.ts';
import type { Spread } from './spread.ts';

/** One tree as it was measured. A width or a profile must be there. */
export interface SurveyTree {
  /** What the user calls the tree. */
  readonly tree?: string;
  readonly row?: string;
  readonly variety?: string;
  /** From the ground, m, above 0. */
  readonly heightM: number;
  /** Lowest foliage, m, below the top. */
  readonly skirtM?: number;
  /** Greatest width across the row, m. */
  readonly widthM?: number;
  /** Widths by height, rising. */
  readonly profile?: readonly WidthAt[];
  /** The user left it out: it stays in the list and counts in nothing. */
  readonly leftOut?: boolean;
}

/** What trees may be grouped by. */
export const GROUPINGS = ['row', 'variety'] as const;
export type Grouping = (typeof GROUPINGS)[number];

/** How many trees of one row or variety stand in the block. */
export interface GroupSize {
  readonly by: Grouping;
  /** '' for trees whose row or variety was not told. */
  readonly name: string;
  readonly trees: number;
}

/** The trees of one stage, as a document keeps them. */
export interface TreeSurvey {
  readonly trees: readonly SurveyTree[];
  /** Trees that stand in the block. */
  readonly blockTrees?: number;
  /** Sizes of the groups that the whole is weighted by. */
  readonly groups?: readonly GroupSize[];
}

export interface SurveyOptions {
  /** Trees that stand in the block, where that is known; not fewer than were measured. */
  readonly blockTrees?: number;
  readonly by?: Grouping;
  /** With `by`: trees that stand in each group, by its name. With them the whole is weighted, and their sum is the block. */
  readonly groupTrees?: Readonly<Record<string, number>>;
  /** Mean row spacing and its standard error, to be set beside height and width. */
  readonly rowSpacing?: { readonly meanM: number; readonly errorM: number };
  /** Wanted half interval of the row volume, relative. Default 0.1. */
  readonly wanted?: number;
}

/** What is measured of a tree, and so may stand out or spread. */
export type Measured = 'height' | 'skirt' | 'width';

/** A tree that stands out from the others. */
export interface Outlier {
  /** Its place in the list, from 0. */
  readonly index: number;
  readonly what: Measured;
  readonly valueM: number;
  /** Of the trees that it was judged among. */
  readonly medianM: number;
  /** Distance from the median in scaled deviations, with its sign. */
  readonly score: number;
}

/** Means over some trees. */
export interface Means {
  readonly height: Spread;
  readonly width: Spread;
  /** Over the trees whose skirt was told; null where none was. */
  readonly skirt: Spread | null;
  /** Height times width of each tree, m² (m³ per metre of row). */
  readonly product: Spread;
}

export interface Group extends Means {
  /** '' for trees whose row or variety was not told. */
  readonly name: string;
  readonly trees: number;
  readonly blockTrees: number | null;
  /** Its part of the whole, 0…1. */
  readonly weight: number;
}

/** What many measured trees say of a block. */
export interface Survey extends Means {
  /** Trees that count, and trees that the user left out. */
  readonly trees: number;
  readonly leftOut: number;
  readonly blockTrees: number | null;
  /** Mean height times mean width, m², and how far the mean of the products lies above it, relative. */
  readonly productOfMeans: number;
  readonly productExcess: number;
  /** Mean height of the tallest tenth, and how many trees that is. */
  readonly tallestTenth: { readonly trees: number; readonly meanM: number };
  /** Of height and width over the trees, within the groups where the whole is weighted; null under three trees, or where one of the two does not vary. */
  readonly correlation: number | null;
  readonly outliers: readonly Outlier[];
  /** Trees for a 95 % interval of the row volume within ±`wanted`; null where the spread is not known. */
  readonly needed: { readonly wanted: number; readonly trees: number; readonly more: number } | null;
  /** Parts of the variance of the row volume's mean, greatest first, without the covariance; empty where nothing varies. */
  readonly shares: readonly { readonly what: 'height' | 'width' | 'rowSpacing'; readonly share: number }[];
  /** What height and width add by going together, over the sum of those parts; below 0 where tall trees are narrow. */
  readonly covariance: number;
  readonly groups: { readonly by: Grouping; readonly weighted: boolean; readonly of: readonly Group[] } | null;
}
