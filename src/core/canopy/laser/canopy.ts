import type { Side } from '../../sprayer/types.ts';
import { refused, type Refused } from '../../working/answer.ts';
import type { Canopy } from '../types.ts';
import { faceGaps, gapsOf } from './gaps.ts';
import { BAND_M, FACE_SHARE, FEWEST_IN_ROW, GAPS_TOLD_SHARE, LEAST_WIDTH_M, MOST_BANDS, MOST_DENSITY } from './rules.ts';
import { facesOf, skirtOf, topOf, type RowPoints } from './side.ts';
import { spacingSeen } from './spacing.ts';
import { mean, quantile } from './statistics.ts';
import { LEFT_OUT, type LaserBand, type LaserCanopy, type LaserPoints, type LaserRules, type LaserSide, type LaserVolumes, type LeftOut } from './types.ts';

const SIDES = ['left', 'right'] as const;
const SIGN = { left: -1, right: 1 } as const;
/** What is said of a point that is used: it was left out for no reason. */
export const USED = 255;
const codeOf = (why: LeftOut): number => LEFT_OUT.indexOf(why);

/**
 * A canopy from the points of a scanner in an alley. Each row is seen from one side, its far side through leaves alone: so the near face is
 * measured, the row line assumed half a row spacing from the alley's middle, and the far side assumed like the near one. The alley's middle is
 * midway between the faces where both rows are seen, else the scanner's track. All lengths m; see `rules.ts` for each rule.
 * Refuses by name too few points, a row spacing that is neither given nor seen, faces that lie beyond the row line.
 */
export function laserCanopy(points: LaserPoints, rules: LaserRules): LaserCanopy | Refused {
  return sortedPoints(points, rules).made;
}

/** The same, and of each point why it was left out, as its place in `LEFT_OUT`, or that it was `USED`: as far as was judged where the whole is refused. */
export function sortedPoints(points: LaserPoints, rules: LaserRules): { readonly made: LaserCanopy | Refused; readonly state: Uint8Array } {
  const state = new Uint8Array(points.lateralM.length).fill(USED);
  return { made: canopyOf(points, rules, state), state };
}

function canopyOf(points: LaserPoints, rules: LaserRules, state: Uint8Array): LaserCanopy | Refused {
  const { lateralM, heightM } = points;
  const total = lateralM.length;
  const { platform, groundM } = rules;
  for (let i = 0; i < total; i++) {
    const z = heightM[i]!;
    if (platform && Math.abs(lateralM[i]!) < platform.halfWidthM && z > platform.fromM && z < platform.toM) state[i] = codeOf('platform');
    else if (z < groundM) state[i] = codeOf('ground');
  }
  const open = (i: number): boolean => state[i] === USED;
  const distances = (side: Side): Float64Array => lateralM.filter((x, i) => open(i) && SIGN[side] * x > 0).map((x) => SIGN[side] * x).sort();

  const both = { left: distances('left'), right: distances('right') };
  const seen = SIDES.flatMap((s) => spacingSeen(both[s]) ?? []);
  const spacingSeenM = seen.length > 0 ? mean(seen) : null;
  const rowSpacingM = rules.rowSpacingM ?? spacingSeenM;
  if (rowSpacingM === null) return refused('laser-no-spacing', 'rowSpacingM');

  const first = (side: Side): Float64Array => both[side].filter((d) => d < rowSpacingM);
  const wide = SIDES.map(first);
  const middleM = wide.every((d) => d.length >= FEWEST_IN_ROW) ? (quantile(wide[1]!, FACE_SHARE) - quantile(wide[0]!, FACE_SHARE)) / 2 : 0;

  const wanted = SIDES.filter((s) => rules.side === 'both' || rules.side === s);
  const rows = new Map<Side, { readonly at: number[] }>(SIDES.map((s) => [s, { at: [] }]));
  for (let i = 0; i < total; i++) {
    if (!open(i)) continue;
    const x = lateralM[i]! - middleM;
    if (Math.abs(x) >= rowSpacingM) state[i] = codeOf('beyond');
    else rows.get(x < 0 ? 'left' : 'right')!.at.push(i);
  }
  const taken = wanted.filter((s) => rows.get(s)!.at.length >= FEWEST_IN_ROW);
  for (const s of SIDES) if (!taken.includes(s)) for (const i of rows.get(s)!.at) state[i] = codeOf('other-side');
  if (taken.length === 0) return refused('laser-too-few', 'points', { found: Math.max(...wanted.map((s) => rows.get(s)!.at.length)), fewest: FEWEST_IN_ROW });

  const seenRows = taken.map((side): SeenRow => {
    const { at } = rows.get(side)!;
    const pick = (column: Float64Array): Float64Array => Float64Array.from(at, (i) => column[i]!);
    const row: RowPoints = {
      distanceM: Float64Array.from(at, (i) => Math.abs(lateralM[i]! - middleM)),
      fromTrackM: SIGN[side] * middleM,
      heightM: pick(heightM),
      alongM: points.alongM && pick(points.alongM)
    };
    const topM = topOf(row);
    const skirtM = rules.skirtM ?? skirtOf(row, groundM, topM, BAND_M);
    const shown: LaserSide = { side, points: at.length, faceM: quantile(row.distanceM.toSorted(), FACE_SHARE), skirtM, topM };
    return { at, row, shown };
  });
  const topM = mean(seenRows.map((r) => r.shown.topM));
  const skirtM = mean(seenRows.map((r) => r.shown.skirtM));
  if (!(skirtM < topM)) return refused('laser-skirt-above-top', 'skirtM', { skirt: cm(skirtM), top: cm(topM) });
  for (const { at } of seenRows)
    for (const i of at) {
      const z = heightM[i]!;
      if (z < skirtM) state[i] = codeOf('below-skirt');
      else if (z > topM) state[i] = codeOf('above-top');
    }

  const bands = bandsOf(seenRows, skirtM, topM, rowSpacingM, rules);
  const profile = bands.flatMap((b) => (b.widthM === null ? [] : [{ heightM: cm((b.fromM + b.toM) / 2), widthM: cm(b.widthM), ...(b.relativeDensity === null ? {} : { relativeDensity: Math.min(MOST_DENSITY, cm(b.relativeDensity)) }) }]));
  if (profile.length < 2) return refused('laser-too-few', 'points', { found: seenRows.reduce((n, r) => n + r.at.length, 0), fewest: FEWEST_IN_ROW });
  const widthM = Math.max(...profile.map((p) => p.widthM));
  if (!(widthM >= LEAST_WIDTH_M)) return refused('laser-no-face', 'rowSpacingM', { spacing: cm(rowSpacingM), face: cm(mean(seenRows.map((r) => r.shown.faceM))) });

  const gaps = points.alongM && gapsOf(seenRows.map((r) => r.row.alongM!.filter((_, i) => r.row.heightM[i]! >= skirtM && r.row.heightM[i]! <= topM)));
  const canopy: Canopy = {
    heightM: cm(topM),
    widthM,
    skirtM: cm(skirtM),
    profile,
    ...(gaps && gaps.filledFraction !== null ? { filledFraction: cm(gaps.filledFraction) } : {})
  };
  const leftOut = Object.fromEntries(LEFT_OUT.map((why) => [why, 0])) as Record<LeftOut, number>;
  let used = 0;
  for (const code of state) {
    if (code === USED) used++;
    else leftOut[LEFT_OUT[code]!]++;
  }
  return { canopy, rules, rowSpacingM, spacingFrom: rules.rowSpacingM === undefined ? 'seen' : 'given', spacingSeenM, middleM, sides: seenRows.map((r) => r.shown), bands, gaps, volumes: volumesOf(bands, topM - skirtM, widthM), total, used, leftOut };
}

function volumesOf(bands: readonly LaserBand[], heightM: number, widthM: number): LaserVolumes {
  const stack = (part: (b: LaserBand) => number): number => bands.reduce((s, b) => s + (b.widthM ?? 0) * (b.toM - b.fromM) * part(b), 0);
  const outlineM3PerM = stack(() => 1);
  const told = stack((b) => (b.gapFraction === null ? 0 : 1));
  const occupied = stack((b) => (b.gapFraction === null ? 0 : 1 - b.gapFraction));
  return { boxM3PerM: heightM * widthM, outlineM3PerM, occupiedM3PerM: told > 0 && told >= GAPS_TOLD_SHARE * outlineM3PerM ? (occupied / told) * outlineM3PerM : null };
}

/** A row with which of all points are its own, and what is shown of it. */
interface SeenRow {
  readonly at: readonly number[];
  readonly row: RowPoints;
  readonly shown: LaserSide;
}

/** To the centimetre, or the hundredth. */
const cm = (v: number): number => Math.round(v * 100) / 100;

/** Equal bands from skirt to top with face, width and density; what several rows show is averaged. */
function bandsOf(rows: readonly SeenRow[], skirtM: number, topM: number, rowSpacingM: number, { scannerHeightM }: LaserRules): readonly LaserBand[] {
  const count = Math.min(MOST_BANDS, Math.max(2, Math.round((topM - skirtM) / BAND_M)));
  const heightM = (topM - skirtM) / count;
  const bandOf = (z: number): number => (z >= skirtM && z <= topM ? Math.min(count - 1, Math.floor((z - skirtM) / heightM)) : -1);
  const faces = rows.map(({ row }) => facesOf(row, bandOf, count));
  const open = rows.map(({ row }) => faceGaps(row, bandOf, count));
  const points = new Float64Array(count);
  const weights = new Float64Array(count);
  for (const { row, shown } of rows)
    for (let i = 0; i < row.heightM.length; i++) {
      const z = row.heightM[i]!;
      const band = bandOf(z);
      if (band < 0) continue;
      points[band]!++;
      // A mast or a twig right beside the scanner stands for no face.
      weights[band]! += scannerHeightM === undefined ? 1 : beamWeight(z - scannerHeightM, Math.max(row.distanceM[i]!, shown.faceM) + row.fromTrackM);
    }
  const shape = Array.from({ length: count }, (_, k) => {
    const here = faces.flatMap((f) => f[k] ?? []);
    const widthM = here.length === 0 ? null : 2 * mean(here.map((f) => Math.max(0, rowSpacingM / 2 - f.faceM)));
    return { here, widthM, area: widthM === null ? 0 : Math.max(widthM, LEAST_WIDTH_M) * heightM };
  });
  const area = shape.reduce((a, s) => a + s.area, 0);
  const weight = shape.reduce((a, s, k) => a + (s.area > 0 ? weights[k]! : 0), 0);
  return shape.map(({ here, widthM, area: own }, k): LaserBand => ({
    fromM: skirtM + k * heightM,
    toM: skirtM + (k + 1) * heightM,
    points: points[k]!,
    faceM: here.length === 0 ? null : mean(here.map((f) => f.faceM)),
    depthM: here.length === 0 ? null : mean(here.map((f) => f.depthM)),
    widthM,
    relativeDensity: own > 0 && weight > 0 ? weights[k]! / own / (weight / area) : null,
    gapFraction: open.every((o) => o !== null && o[k] !== null) ? mean(open.map((o) => o![k]!)) : null
  }));
}

/**
 * How thinly beams lie on an upright face: equal angles between beams cover (d² + h²)/d of its height, at distance d and height h from the
 * scanner; over that at the scanner's own height, 1 + (h/d)².
 */
export const beamWeight = (riseM: number, distanceM: number): number => 1 + (riseM / distanceM) ** 2;
