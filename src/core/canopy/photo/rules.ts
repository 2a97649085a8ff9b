/** Height of a band unless the user says otherwise, m. */
export const BAND_M = 0.5;
export const MOST_BANDS = 24;
/**
 * Fewest gap pixels from which leaf area is told. Were every pixel a throw of its own, ln P would be known to 1/√gaps: at ten to a third. Pixels
 * beside each other are not, so it is known less well than that.
 */
export const FEWEST_GAPS = 10;
/** Fewest pixels of a band. */
export const FEWEST_PIXELS = 500;
/** Width below which a canopy has none, m. */
export const LEAST_WIDTH_M = 0.05;
/** Part of the section that may have too few gaps before nothing is told of the whole. */
export const MOST_SATURATED = 0.5;
/** A document takes leaf area densities within these, m²/m³, and no relative one beyond the last. */
export const LEAST_LAD = 0.05;
export const MOST_LAD = 15;
export const MOST_RELATIVE = 5;
/** Levels by which the threshold is moved to show how much hangs on it. */
export const THRESHOLD_DOUBT = 10;
