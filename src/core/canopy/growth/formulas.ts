import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { formula } from '../../working/formula.ts';

/** Growth of a canopy from one rung, a, to another, b. u share of leaf unfolded, s share of the outline's growth done, 0…1. */

const SHARE = [0, 1] as const;

/** Volume of the row at b over that at a; gv is its growth from spring to summer. */
export const VOLUME_RATIO = formula('growth-volume-ratio', 'Gv', '1', { gv: '1', sa: '1', sb: '1' }, '(1 + gv * sb) / (1 + gv * sa)', (v) => (1 + v.gv * v.sb) / (1 + v.gv * v.sa), {
  sources: ['arenenberg-growth', 'habit'],
  certainty: 'assumed',
  range: { gv: NOT_NEGATIVE, sa: SHARE, sb: SHARE },
  published: { gv: [0, 0.5] }
});
/** Height where crown and width grow alike and the skirt stays: how growth is shared between them is not published. */
export const GROWN_HEIGHT = formula('growth-height', 'H', 'm', { Hs: 'm', Ha: 'm', Gv: '1' }, 'Hs + (Ha - Hs) * sqrt(Gv)', (v) => v.Hs + (v.Ha - v.Hs) * Math.sqrt(v.Gv), {
  sources: ['geometry', 'habit'],
  certainty: 'assumed',
  range: { Hs: NOT_NEGATIVE, Ha: POSITIVE, Gv: POSITIVE }
});
export const GROWN_WIDTH = formula('growth-width', 'W', 'm', { Wa: 'm', Gv: '1' }, 'Wa * sqrt(Gv)', (v) => v.Wa * Math.sqrt(v.Gv), {
  sources: ['geometry', 'habit'],
  certainty: 'assumed',
  range: { Wa: NOT_NEGATIVE, Gv: POSITIVE }
});
/** Leaf area goes with the published shares; it stands in a volume that has grown as well. */
export const GROWN_DENSITY = formula('growth-leaf-density', 'LAD', 'm2/m3', { LADa: 'm2/m3', ua: '1', ub: '1', Gv: '1' }, 'LADa * ub / (ua * Gv)', (v) => (v.LADa * v.ub) / (v.ua * v.Gv), {
  sources: ['forshey-1987'],
  certainty: 'memory',
  range: { LADa: NOT_NEGATIVE, ua: [0.01, 1], ub: SHARE, Gv: POSITIVE }
});

/** How far on the way between two dates, by degree-days: DDx up to the day, DDt in all. */
export const WAY = formula('growth-way', 'fw', '1', { DDx: 'K.d', DDt: 'K.d' }, 'DDx / DDt', (v) => v.DDx / v.DDt, {
  sources: ['litschmann-2016'],
  certainty: 'derived',
  range: { DDx: NOT_NEGATIVE, DDt: POSITIVE }
});
/** A length on the way between two measured ones. */
export const LENGTH_BETWEEN = formula('growth-length-between', 'L', 'm', { La: 'm', Lb: 'm', fw: '1' }, 'La + (Lb - La) * fw', (v) => v.La + (v.Lb - v.La) * v.fw, {
  sources: ['litschmann-2016', 'habit'],
  certainty: 'assumed',
  range: { La: NOT_NEGATIVE, Lb: NOT_NEGATIVE, fw: SHARE }
});
/** Leaf area on the way between two rungs. */
export const LEAF_BETWEEN = formula('growth-leaf-between', 'LAI', '1', { LAIa: '1', LAIb: '1', fw: '1' }, 'LAIa + (LAIb - LAIa) * fw', (v) => v.LAIa + (v.LAIb - v.LAIa) * v.fw, {
  sources: ['litschmann-2016'],
  certainty: 'derived',
  range: { LAIa: NOT_NEGATIVE, LAIb: NOT_NEGATIVE, fw: SHARE }
});
/** The density that brings a leaf area in a volume. */
export const DENSITY_OF_LEAF = formula('growth-density-of-leaf', 'LAD', 'm2/m3', { LAI: '1', TRVs: 'm3/ha' }, '10000 * LAI / TRVs', (v) => (10000 * v.LAI) / v.TRVs, {
  sources: ['walklate-2003'],
  certainty: 'derived',
  range: { LAI: NOT_NEGATIVE, TRVs: POSITIVE }
});
