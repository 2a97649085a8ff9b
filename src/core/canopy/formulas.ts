import { formula } from '../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';

/**
 * The canopy in figures. H height, Hs skirt, W greatest width, R row spacing (m); f filled share of the row;
 * s share of the box crown that the section really fills; n faces treated.
 */

/** Crown height h (m): from the lowest foliage to the top. */
export const CROWN_HEIGHT = formula('crown-height', 'h', 'm', { H: 'm', Hs: 'm' }, 'H - Hs', (v) => v.H - v.Hs, {
  sources: ['geometry'],
  certainty: 'exact',
  range: { H: POSITIVE, Hs: NOT_NEGATIVE }
});

/** Filled share of the row: gaps within the row and missing trees together. */
export const FILLED = formula('filled-share', 'f', '1', { f0: '1', m: '1' }, 'f0 * (1 - m)', (v) => v.f0 * (1 - v.m), {
  sources: ['penn-state-tree-fruit'],
  certainty: 'derived',
  range: { f0: [0, 1], m: [0, 1] }
});

/** Tree-row volume with the height from the ground, the US convention, m³/ha. */
export const TRV_GROUND = formula(
  'row-volume-ground', 'TRVg', 'm3/ha', { H: 'm', W: 'm', R: 'm', f: '1' }, '10000 * H * W * f / R',
  (v) => (10000 * v.H * v.W * v.f) / v.R,
  { sources: ['penn-state-tree-fruit', 'landers-trv'], range: { H: POSITIVE, W: NOT_NEGATIVE, R: POSITIVE, f: [0, 1] } }
);

/** Tree-row volume of the crown alone, skirt to top, as a box of the greatest width, m³/ha. */
export const TRV_CROWN = formula(
  'row-volume-crown', 'TRVc', 'm3/ha', { h: 'm', W: 'm', R: 'm', f: '1' }, '10000 * h * W * f / R',
  (v) => (10000 * v.h * v.W * v.f) / v.R,
  { sources: ['furness-1998', 'arenenberg-2011'], range: { h: POSITIVE, W: NOT_NEGATIVE, R: POSITIVE, f: [0, 1] } }
);

/** Area of the crown's section across the row, m². */
export const SECTION_AREA = formula(
  'section-area', 'A', 'm2', { s: '1', h: 'm', W: 'm' }, 's * h * W', (v) => v.s * v.h * v.W,
  { sources: ['bound-boucher'], certainty: 'derived', range: { s: NOT_NEGATIVE, h: POSITIVE, W: NOT_NEGATIVE } }
);

/** Tree-row volume inside the outline, widths stacked by height, m³/ha. */
export const TRV_OUTLINE = formula(
  'row-volume-outline', 'TRVs', 'm3/ha', { A: 'm2', R: 'm', f: '1' }, '10000 * A * f / R', (v) => (10000 * v.A * v.f) / v.R,
  { sources: ['bound-boucher'], range: { A: NOT_NEGATIVE, R: POSITIVE, f: [0, 1] } }
);

/** Leaf wall area, skirt to top, over the faces treated, m²/ha. */
export const LEAF_WALL = formula(
  'leaf-wall-area', 'LWA', 'm2/ha', { n: '1', h: 'm', R: 'm', f: '1' }, '10000 * n * h * f / R',
  (v) => (10000 * v.n * v.h * v.f) / v.R,
  { sources: ['toews-friessleben-2012'], range: { n: [0, 2], h: POSITIVE, R: POSITIVE, f: [0, 1] } }
);

/** Row length on a hectare, m/ha. */
export const ROW_LENGTH = formula('row-length', 'RL', 'm/ha', { R: 'm' }, '10000 / R', (v) => 10000 / v.R, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { R: POSITIVE }
});

/** Unit canopy rows on a hectare: 1 m high, 1 m wide, 100 m long each. */
export const CANOPY_ROWS = formula(
  'unit-canopy-rows', 'UCR', 'UCR/ha', { h: 'm', W: 'm', R: 'm', f: '1' }, '100 * h * W * f / R',
  (v) => (100 * v.h * v.W * v.f) / v.R,
  { sources: ['furness-1998'], range: { h: POSITIVE, W: NOT_NEGATIVE, R: POSITIVE, f: [0, 1] } }
);

/** Leaf area index from leaf area density inside the outline. */
export const LEAF_AREA_INDEX = formula(
  'leaf-area-index', 'LAI', '1', { LAD: 'm2/m3', TRVs: 'm3/ha' }, 'LAD * TRVs / 10000', (v) => (v.LAD * v.TRVs) / 10000,
  { sources: ['walklate-2003'], certainty: 'derived', range: { LAD: NOT_NEGATIVE, TRVs: NOT_NEGATIVE } }
);

/** Leaf area density at a stage: the full-leaf density times the share of leaf that has unfolded. */
export const LEAF_DENSITY_AT_STAGE = formula(
  'leaf-density-at-stage', 'LAD', 'm2/m3', { LADf: 'm2/m3', u: '1' }, 'LADf * u', (v) => v.LADf * v.u,
  { sources: ['forshey-1987'], certainty: 'memory', range: { LADf: NOT_NEGATIVE, u: [0, 1] } }
);
