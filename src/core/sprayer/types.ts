export type Side = 'left' | 'right';

/** One nozzle place on the machine. */
export interface NozzlePosition {
  /** Its name on the machine, e.g. L1, counted from the bottom. */
  readonly id: string;
  readonly side: Side;
  /** Height above ground, m. */
  readonly heightM: number;
  /** Distance from the machine's centre line, m. */
  readonly offsetM: number;
  /** Direction of the spray's centre line above horizontal, pointing outward, degrees (90 is straight up). */
  readonly angleDeg: number;
  /** How far the body swivels from `angleDeg`, degrees: down (0 or negative) and up (0 or positive). */
  readonly swivelDownDeg: number;
  readonly swivelUpDeg: number;
  /** Full angle of the spray as the air carries it off, degrees: narrower than the nozzle's own angle in still air. */
  readonly coneAngleDeg: number;
  /** Nozzle table and size that the machine carries here. */
  readonly table: string;
  readonly size: string;
}

export interface FanGear {
  readonly id: string;
  readonly name: string;
  /** Air of both sides together at `atPtoRpm`, m³/h. */
  readonly flowM3PerH: number;
  readonly atPtoRpm: number;
  /** Share of it that leaves on the left, 0.2…0.8. Default 0.5. */
  readonly leftShare?: number;
}

/** The mouth of one round spout. */
export interface Spout {
  /** Height above ground, m. */
  readonly heightM: number;
  /** Distance from the machine's centre line, m. */
  readonly offsetM: number;
  /** Direction of its air above horizontal, pointing outward, degrees. */
  readonly angleDeg: number;
}

/**
 * Where the air leaves, alike on both sides. Arc: a slot around an axial fan, angles above horizontal. Tower: an upright slot at a distance
 * from the centre line. Spouts: round mouths of one diameter, each at its own place and in its own direction.
 */
export type Outlet =
  | { readonly kind: 'arc'; readonly axisHeightM: number; readonly radiusM: number; readonly fromDeg: number; readonly toDeg: number; readonly slotWidthM: number }
  | { readonly kind: 'tower'; readonly fromHeightM: number; readonly toHeightM: number; readonly offsetM: number; readonly slotWidthM: number }
  | { readonly kind: 'spouts'; readonly diameterM: number; readonly spouts: readonly Spout[] };

export interface Machine {
  readonly id: string;
  readonly name: string;
  readonly outlet: Outlet;
  /** Overall width of the body, m. */
  readonly bodyWidthM: number;
  readonly tankL: number;
  /** What the pump cannot draw, L. */
  readonly residualL?: number;
  readonly pressureMinBar: number;
  readonly pressureMaxBar: number;
  readonly speedMinKmH: number;
  readonly speedMaxKmH: number;
  readonly ptoMinRpm: number;
  readonly ptoMaxRpm: number;
  readonly gears: readonly FanGear[];
  readonly nozzles: readonly NozzlePosition[];
}

export const DROPLET_CLASSES = ['XF', 'VF', 'F', 'M', 'C', 'VC', 'XC', 'UC'] as const;
/** Droplet size class of ISO 25358, finest first. */
export type DropletClass = (typeof DROPLET_CLASSES)[number];

/** How the spray is spread over its angle, seen along the row. */
export type SprayPattern = 'hollow-cone' | 'full-cone' | 'flat-fan';

export interface NozzleSize {
  readonly id: string;
  /** Flow at the table's reference pressure, L/min. */
  readonly flowLPerMin: number;
  /** Name of the colour, as printed in the table. */
  readonly colour?: string;
  /** Measured or printed flows at other pressures, rising in pressure. */
  readonly points?: readonly { readonly pressureBar: number; readonly flowLPerMin: number }[];
  /** Droplet class from a pressure upward, rising in pressure. */
  readonly droplets?: readonly { readonly fromBar: number; readonly class: DropletClass }[];
}

export interface NozzleTable {
  readonly id: string;
  readonly name: string;
  readonly pattern: SprayPattern;
  /** Pressure at which `flowLPerMin` holds, bar. */
  readonly referenceBar: number;
  readonly pressureMinBar: number;
  readonly pressureMaxBar: number;
  readonly sizes: readonly NozzleSize[];
}

/** What is set at one position. Positions that are not named are open, with the machine's own size, unswivelled. */
export interface NozzleSetting {
  readonly position: string;
  readonly open?: boolean;
  readonly size?: string;
  readonly table?: string;
  readonly swivelDeg?: number;
}

/** Everything the operator sets for one block at one stage. */
export interface Setting {
  readonly speedKmH: number;
  readonly pressureBar: number;
  readonly gear: string;
  readonly ptoRpm: number;
  readonly nozzles?: readonly NozzleSetting[];
}

/** How the alleys are driven; see `volume.ts` for what each means for the width that one pass serves. */
export type PassPattern =
  | { readonly kind: 'every-alley' }
  | { readonly kind: 'one-side-both-faces'; readonly side: Side }
  | { readonly kind: 'one-side-one-face'; readonly side: Side }
  | { readonly kind: 'alternate-alleys' }
  | { readonly kind: 'whole-rows'; readonly rows: number }
  | { readonly kind: 'swath'; readonly widthM: number };
