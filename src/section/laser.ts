import { LEFT_OUT, type LaserCanopy, type Platform } from '#core/canopy/laser/types.ts';
import type { ThinPoints } from '#core/canopy/laser/thin.ts';
import { USED } from '#core/canopy/laser/canopy.ts';

/** A line in the section, in metres across from the scanner's track and up. */
export type Line = readonly (readonly [acrossM: number, heightM: number])[];

/** Laser points across the alley with what was made of them; lengths m, to be scaled by the view. */
export interface LaserScene {
  readonly halfWidthM: number;
  readonly topM: number;
  readonly bottomM: number;
  /** Where the row lines stand. */
  readonly rowLines: readonly number[];
  /** Face of each row by height, as it was seen. */
  readonly faces: readonly Line[];
  /** Closed outlines of the rows. */
  readonly outlines: readonly Line[];
  /** Points left out around the scanner. */
  readonly platform: Platform | null;
}

/** A point's place in the legend. */
export type PointKind = 'used' | 'out';
export const kindOf = (state: number): PointKind => (state === USED || state >= LEFT_OUT.length ? 'used' : 'out');

/** Room beside and above what is drawn, m. */
const MARGIN_M = 0.4;
/** Without a canopy, the part that is shown. */
const HALF_M = 4;
const TOP_M = 4;

/** The scene of the points and, where a canopy could be made of them, of that. */
export function laserScene(made: LaserCanopy | null, points: ThinPoints, platform: Platform | null): LaserScene {
  if (!made) return { halfWidthM: HALF_M, topM: Math.min(12, Math.max(TOP_M, highest(points))), bottomM: -MARGIN_M, rowLines: [], faces: [], outlines: [], platform };
  const { middleM, rowSpacingM, bands, sides } = made;
  const signs = sides.map((s) => (s.side === 'left' ? -1 : 1));
  const seen = bands.filter((b) => b.widthM !== null);
  const rows = signs.map((sign) => middleM + (sign * rowSpacingM) / 2);
  const half = (b: (typeof seen)[number]): number => b.widthM! / 2;
  const z = (b: (typeof seen)[number]): number => (b.fromM + b.toM) / 2;
  return {
    halfWidthM: rowSpacingM / 2 + (made.canopy.widthM / 2) + MARGIN_M + Math.abs(middleM),
    topM: made.canopy.heightM + 2 * MARGIN_M,
    bottomM: -MARGIN_M,
    rowLines: rows,
    faces: signs.map((sign) => seen.map((b) => [middleM + sign * b.faceM!, z(b)] as const)),
    outlines: rows.map((row) => {
      const low = seen[0];
      const skirt = low ? [[row + half(low), low.fromM] as const] : [];
      const up = seen.map((b) => [row + half(b), z(b)] as const);
      const down = seen.toReversed().map((b) => [row - half(b), z(b)] as const);
      return [...skirt, ...up, [row, made.canopy.heightM] as const, ...down, ...skirt.map(([x, h]) => [2 * row - x, h] as const)];
    }),
    platform
  };
}

const highest = ({ heightM }: ThinPoints): number => heightM.reduce((m, z) => Math.max(m, z), 0);
