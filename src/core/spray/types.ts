import type { WidthAt } from '../canopy/types.ts';
import type { DropletClass, Outlet, Side } from '../sprayer/types.ts';

/** Where sprayed matter ends. Shares of what leaves the nozzles; together they are all of it. */
export const FATES = [
  // In the nearest row on the side that sprays: its near half and its far half.
  'near',
  'far',
  // In any other row.
  'rows',
  // On the ground between the rows of the block, and beyond its last row.
  'ground-in',
  'ground-out',
  // In the air when the model ends: gone over the top of the nearest row, or through it.
  'over',
  'through',
  // Drops that have dried to what does not evaporate, still in the air.
  'dried'
] as const;
export type Fate = (typeof FATES)[number];

/** Height cells of the crown, skirt to top, and depth cells of the nearest row, from the sprayed face to the other. */
export const HEIGHTS = 20;
export const DEPTHS = 4;

/** Constants of the model by short name; `assumptions.ts` says where each is from and what it may be. */
export interface SprayConstants {
  /** Leaf projection × clumping, G. */
  readonly projection: number;
  readonly leafBeta: number;
  readonly leafSizeM: number;
  readonly woodBeta: number;
  readonly woodSizeM: number;
  /** Projected wood area in the outline of a bare tree, m²/m³. */
  readonly woodM2PerM3: number;
  /** Leaf area density at which wood is hidden, m²/m³. */
  readonly fullLeafM2PerM3: number;
  readonly canopyDrag: number;
  /** Entrainment of a plane jet, α. */
  readonly entrainment: number;
  /** Entrainment of a round jet: growth of its flow per metre over the root of its momentum. */
  readonly roundEntrainment: number;
  /** Standard deviation of a nozzle's spray over its cone's full angle. */
  readonly plumeSpread: number;
  /** Outer part of the half width that is shell, and the core's leaf density over the shell's. */
  readonly shellShare: number;
  readonly coreRatio: number;
  /** Wind across the rows at the top of the canopy, m/s, from the left; and its decay into the canopy. */
  readonly windMPerS: number;
  readonly windDecay: number;
  readonly deltaTK: number;
  /** Dv0.1 over Dv0.5 of the spectrum. */
  readonly finePart: number;
  /** Part of the liquid that does not evaporate, by volume. */
  readonly nonVolatile: number;
  /** Speed at which drops leave the nozzle, m/s. */
  readonly releaseMPerS: number;
  /** Treated rows on each side of the machine. */
  readonly rows: number;
}

/** One canopy as the model sees it, alike on both sides and in every row. */
export interface SprayCanopy {
  readonly rowSpacingM: number;
  /** Full widths from skirt to top. */
  readonly outline: readonly WidthAt[];
  /** Mean leaf area density inside the outline, one-sided, m²/m³. */
  readonly ladM2PerM3: number;
  /** Leaf density by height over its mean; where it is silent, alike at all heights. */
  readonly densityByHeight?: readonly { readonly heightM: number; readonly relative: number }[];
  /** Share of the row length that holds canopy. */
  readonly filled: number;
}

/** The air of one side. */
export interface SideAir {
  readonly side: Side;
  readonly flowM3PerS: number;
  readonly outletMPerS: number;
}

/** One nozzle that sprays. */
export interface Release {
  readonly position: string;
  readonly side: Side;
  readonly heightM: number;
  readonly offsetM: number;
  readonly angleDeg: number;
  readonly coneDeg: number;
  readonly flowLPerMin: number;
  /** Volume median diameter, µm. */
  readonly vmdUm: number;
  readonly droplets: DropletClass | null;
}

/** Everything that the model is told: plain data, for a worker as well. */
export interface SprayCase {
  readonly canopy: SprayCanopy;
  readonly outlet: Outlet;
  readonly air: readonly SideAir[];
  readonly nozzles: readonly Release[];
  /** Directions of the nozzles as the machine was built, by height, rising: a tower's vanes follow them. */
  readonly vanes: readonly { readonly heightM: number; readonly angleDeg: number }[];
  /** Angles that any nozzle of a side may be turned to, degrees: how wide the fan of release rays must be. */
  readonly anglesDeg: readonly [least: number, most: number];
  readonly volumeLPerHa: number;
  readonly constants: SprayConstants;
  /** Leaf area density may as well lie here, m²/m³. */
  readonly ladRange: Range;
  /** Assumptions with a value of the user's own: those are taken at their word. */
  readonly stated: readonly string[];
}

export type Shares8 = Readonly<Record<Fate, number>>;

/** One height cell of the crown. */
export interface HeightCell {
  readonly fromM: number;
  readonly toM: number;
  /** Leaf, and the wood that shows, on the ground area of the row spacing, m²/m². */
  readonly areaIndex: number;
  /** Share of what is sprayed that stays at this height, all rows. */
  readonly share: number;
  /** Of it, in the nearest row by depth, from the sprayed face. */
  readonly byDepth: readonly number[];
  /** Deposit on leaf and showing wood, one side counted, µL/cm²; null where nothing grows. */
  readonly depositUlPerCm2: number | null;
}

/** Where one nozzle's spray ends. */
export interface NozzleBalance {
  readonly position: string;
  readonly shares: Shares8;
}

/** Speed of the air along one path, m/s: where it meets the leaf of the nearest row and where it leaves it. */
export interface FaceSpeed {
  readonly side: Side;
  readonly heightM: number;
  readonly inMPerS: number;
  /** null where the air stops within the row. */
  readonly outMPerS: number | null;
}

/** Where the spray goes. */
export interface SprayBalance {
  readonly shares: Shares8;
  /** near + far + rows. */
  readonly onTrees: number;
  /** ground-out + over + through + dried: gone from the block. */
  readonly lost: number;
  readonly perNozzle: readonly NozzleBalance[];
  readonly heights: readonly HeightCell[];
  /** Mean deposit on leaf and showing wood, µL/cm², and how uneven it is by height: standard deviation over mean, weighted by leaf area. */
  readonly depositUlPerCm2: number | null;
  readonly cv: number | null;
  readonly faces: readonly FaceSpeed[];
  /** Nothing but wood was there to catch. */
  readonly bare: boolean;
}

/** Place on a jet's path as it is drawn: x to the right of the machine's centre line, so negative on the left; speed at the middle of the jet. */
export interface JetPoint {
  readonly xM: number;
  readonly zM: number;
  readonly speedMPerS: number;
  /** Half-velocity half width, m. */
  readonly halfWidthM: number;
}

/** Where drops are over time: x and z in turn, one pair every `TRACK_STEP_S`, x to the right. */
export interface DropTrack {
  readonly side: Side;
  readonly dropUm: number;
  /** Share of what is sprayed that flies so, at its start. */
  readonly share: number;
  readonly points: Float32Array;
}
export const TRACK_STEP_S = 0.04;

/** What is drawn of the spray. */
export interface SprayPicture {
  /** Spray that passes: columns by rows from the lower left, x to the right; volume × way per cell as a share of the greatest cell. */
  readonly map: { readonly xM: number; readonly zM: number; readonly cellM: number; readonly columns: number; readonly rows: number; readonly density: Float32Array };
  readonly jets: readonly { readonly side: Side; readonly points: readonly JetPoint[] }[];
  readonly tracks: readonly DropTrack[];
}

/** From … to, both as shares or as the quantity's own unit. */
export type Range = readonly [least: number, most: number];

/** One constant at both ends of its plausible range. */
export interface BandRun {
  readonly assumption: string;
  readonly values: Range;
  /** Share on the trees at each end. */
  readonly onTrees: Range;
}

/** The band of a balance, from running the plausible range of every constant; never narrower than the model's own error. */
export interface SprayBand {
  readonly shares: Readonly<Record<Fate, Range>>;
  readonly onTrees: Range;
  readonly lost: Range;
  readonly cv: Range | null;
  readonly depositUlPerCm2: Range | null;
  /** Those that move the share on the trees most come first. */
  readonly runs: readonly BandRun[];
}
/** Against published balances the share on the trees was off by this much with guessed trees: the band is at least as wide. */
export const LEAST_BAND = 0.15;
/** Losses of a plume that does not fit the trees were off by this much in neighbouring paths: their band is at least as wide. */
export const LEAST_LOSS_BAND = 0.1;
