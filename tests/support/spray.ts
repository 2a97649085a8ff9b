import { SPRAY_CONSTANTS } from '#core/spray/assumptions.ts';
import type { Fate, SprayCase, SprayConstants } from '#core/spray/types.ts';
import type { Outlet } from '#core/sprayer/types.ts';

/** Small builder of spray cases: an orchard in a few numbers, the same for checks, laws and the page of balances. */

/** Defaults of the engine; wood is hidden from 2 m² of leaf per m³. */
export const CONSTANTS = { ...Object.fromEntries(Object.entries(SPRAY_CONSTANTS).map(([name, a]) => [name, a.value])), fullLeafM2PerM3: 2 } as unknown as SprayConstants;

export interface Orchard {
  readonly outlet: 'arc' | 'tower' | 'spouts';
  readonly rowSpacingM: number;
  readonly heightM: number;
  readonly skirtM: number;
  readonly widthM: number;
  /** Width at the top; where it is silent, a box. */
  readonly topWidthM?: number;
  readonly ladM2PerM3: number;
  readonly filled: number;
  /** Both sides together, m³/h. */
  readonly airM3PerH: number;
  readonly outletMPerS: number;
  /** Arc: axis height and radius; air and nozzles alike from … to. */
  readonly axisHeightM: number;
  readonly radiusM: number;
  readonly fromDeg: number;
  readonly toDeg: number;
  /** Tower: slot and nozzles alike from … to, at a distance from the middle, all in one direction. Spouts: one at each nozzle. */
  readonly slotFromM: number;
  readonly slotToM: number;
  readonly offsetM: number;
  readonly angleDeg: number;
  readonly nozzlesPerSide: number;
  readonly coneDeg: number;
  readonly vmdUm: number;
  readonly constants: Partial<SprayConstants>;
}

/** The apple orchard of the feasibility figures: 3.5 m rows, box of 2.5 × 1.2 m, 30 000 m³/h at 30 m/s from −15° to 50°, core as dense as shell. */
export const APPLE: Orchard = {
  outlet: 'arc',
  rowSpacingM: 3.5,
  heightM: 3,
  skirtM: 0.5,
  widthM: 1.2,
  ladM2PerM3: 2,
  filled: 1,
  airM3PerH: 30_000,
  outletMPerS: 30,
  axisHeightM: 1,
  radiusM: 0.45,
  fromDeg: -15,
  toDeg: 50,
  slotFromM: 0.5,
  slotToM: 3,
  offsetM: 0.5,
  angleDeg: 0,
  nozzlesPerSide: 8,
  coneDeg: 24,
  vmdUm: 200,
  constants: { coreRatio: 1 }
};

/** Middles of the equal parts of an outlet. */
const placed = (o: Orchard, i: number): number => {
  const [from, to] = o.outlet === 'arc' ? [o.fromDeg, o.toDeg] : [o.slotFromM, o.slotToM];
  return from + ((to - from) * (i + 0.5)) / o.nozzlesPerSide;
};

/** The outlet that lets the flow out at its speed. */
function outletOf(o: Orchard): Outlet {
  const areaM2 = o.airM3PerH / 7200 / o.outletMPerS;
  switch (o.outlet) {
    case 'arc':
      return { kind: 'arc', axisHeightM: o.axisHeightM, radiusM: o.radiusM, fromDeg: o.fromDeg, toDeg: o.toDeg, slotWidthM: areaM2 / ((o.radiusM * (o.toDeg - o.fromDeg) * Math.PI) / 180) };
    case 'tower':
      return { kind: 'tower', fromHeightM: o.slotFromM, toHeightM: o.slotToM, offsetM: o.offsetM, slotWidthM: areaM2 / (o.slotToM - o.slotFromM) };
    case 'spouts':
      return {
        kind: 'spouts',
        diameterM: Math.sqrt((4 * areaM2) / (Math.PI * o.nozzlesPerSide)),
        spouts: Array.from({ length: o.nozzlesPerSide }, (_, i) => ({ heightM: placed(o, i), offsetM: o.offsetM, angleDeg: o.angleDeg }))
      };
  }
}

export function sprayCaseOf(more: Partial<Orchard> = {}): SprayCase {
  const o: Orchard = { ...APPLE, ...more };
  const sides = ['left', 'right'] as const;
  return {
    canopy: {
      rowSpacingM: o.rowSpacingM,
      outline: [{ heightM: o.skirtM, widthM: o.widthM }, { heightM: o.heightM, widthM: o.topWidthM ?? o.widthM }],
      ladM2PerM3: o.ladM2PerM3,
      filled: o.filled
    },
    outlet: outletOf(o),
    air: sides.map((side) => ({ side, flowM3PerS: o.airM3PerH / 7200, outletMPerS: o.outletMPerS })),
    nozzles: sides.flatMap((side) =>
      Array.from({ length: o.nozzlesPerSide }, (_, i) => {
        const deg = o.outlet === 'arc' ? placed(o, i) : o.angleDeg;
        const a = (deg * Math.PI) / 180;
        return {
          position: `${side === 'left' ? 'L' : 'R'}${i + 1}`,
          side,
          heightM: o.outlet === 'arc' ? o.axisHeightM + o.radiusM * Math.sin(a) : placed(o, i),
          offsetM: o.outlet === 'arc' ? o.radiusM * Math.cos(a) : o.offsetM,
          angleDeg: deg,
          coneDeg: o.coneDeg,
          flowLPerMin: 1,
          vmdUm: o.vmdUm,
          droplets: null
        };
      })
    ),
    vanes: o.outlet === 'arc' ? [] : Array.from({ length: o.nozzlesPerSide }, (_, i) => ({ heightM: placed(o, i), angleDeg: o.angleDeg })),
    anglesDeg: o.outlet === 'arc' ? [o.fromDeg, o.toDeg] : [o.angleDeg, o.angleDeg],
    volumeLPerHa: 500,
    constants: { ...CONSTANTS, ...o.constants },
    ladRange: [0.6 * o.ladM2PerM3, 1.5 * o.ladM2PerM3],
    stated: []
  };
}

/** Still in the air when the model ends. */
export const airborne = (s: Readonly<Record<Fate, number>>): number => s.over + s.through + s.dried;
