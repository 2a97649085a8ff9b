import type { LaserRules } from './types.ts';

/** A stand of 1.5 m, as in the frame that the rule was made for; grass; both rows. */
export const DEFAULT_RULES: LaserRules = { platform: { halfWidthM: 0.75, fromM: 0.2, toM: 2 }, groundM: 0.3, side: 'both' };

/** Height of a band; taller trees have higher ones, since a document holds at most `MOST_BANDS` widths. */
export const BAND_M = 0.25;
export const MOST_BANDS = 60;
/** Lengths of row whose faces are read apart and averaged, as stations are in a survey by hand. */
export const STATION_M = 1;
/** The face is where a twentieth of the points lie nearer: a lone twig is not the face. */
export const FACE_SHARE = 0.05;
/** The top is where so few of the points lie higher: a lone shoot, a bird or a post is not the top. */
export const TOP_SHARE = 0.005;
/** Foliage begins where a band has this much of the middle band's points. */
export const SKIRT_SHARE = 0.5;
/** Fewest points of a station or band that are judged; and of a row. */
export const FEWEST_IN_BAND = 20;
export const FEWEST_IN_ROW = 100;
/** Cells along the row; one holds canopy with this much of the middle cell's points. Shorter stretches tell nothing of gaps. */
export const CELL_M = 0.25;
export const CELL_SHARE = 0.1;
export const SHORTEST_STRETCH_M = 5;
/**
 * Cells of a band's face along the row. Where points stood at random, five a cell on average leave e⁻⁵ of the cells empty, so an empty one is a gap;
 * with fewer points, or fewer cells, nothing is told.
 */
export const FACE_CELL_M = 0.1;
export const FEWEST_PER_CELL = 5;
export const FEWEST_CELLS = 8;
/** Part of the outline whose gaps must be told for the occupied volume; the rest is taken to be like it. */
export const GAPS_TOLD_SHARE = 0.9;
/** Width below which density is not divided by width any further. */
export const LEAST_WIDTH_M = 0.2;
/** A document takes no relative density beyond this. */
export const MOST_DENSITY = 5;
