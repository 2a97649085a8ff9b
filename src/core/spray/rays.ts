import type { JetKind, JetStart } from '../air/jet.ts';
import type { Release, SideAir, SprayCase } from './types.ts';

/** One release ray of a side: where its jet and its drops begin, and how far the curtain of air reaches on both sides of it. */
export interface Ray {
  readonly jet: JetStart;
  /** Direction in which drops start, degrees. */
  readonly dropDeg: number;
  /** Turn against the air's own direction, degrees; 0 for an arc. */
  readonly turnDeg: number;
  /** Room to the curtain's upper and lower edge: as an angle (rad) of an arc, m of a tower; 0 of a spout. */
  readonly above: number;
  readonly below: number;
}

/** Widest spacing of an arc's rays, and how far the fan reaches beyond the outlet where nozzles may point there. */
const SPACING_DEG = 6;
const BEYOND_DEG = 15;
const MARGIN_DEG = 6;
const TOWER_HEIGHTS = 8;
/** Directions of a tower's and a spout's drops around the air's own. */
export const TURNS_DEG = [-15, 0, 15] as const;
const LEAST_SPREAD_DEG = 4;

const RAD = Math.PI / 180;

/** The fixed fan of release rays of one side: nozzles act as weights on it, and shutting one leaves the air as it is. */
export function raysOf(c: SprayCase, air: SideAir): readonly Ray[] {
  const { outlet } = c;
  const speedMPerS = air.outletMPerS;
  const start = (kind: JetKind, xM: number, zM: number, angleDeg: number, widthM: number, radiusM = 0): JetStart => ({ kind, xM, zM, angleDeg, speedMPerS, widthM, radiusM });
  switch (outlet.kind) {
    case 'arc': {
      const low = Math.max(Math.min(outlet.fromDeg, c.anglesDeg[0]) - MARGIN_DEG, outlet.fromDeg - BEYOND_DEG);
      const high = Math.min(Math.max(outlet.toDeg, c.anglesDeg[1]) + MARGIN_DEG, outlet.toDeg + BEYOND_DEG);
      const steps = Math.ceil((high - low) / SPACING_DEG);
      return Array.from({ length: steps + 1 }, (_, i) => {
        const deg = low + ((high - low) * i) / steps;
        const r = outlet.radiusM;
        const jet = start('radial', r * Math.cos(deg * RAD), outlet.axisHeightM + r * Math.sin(deg * RAD), deg, outlet.slotWidthM, r);
        return { jet, dropDeg: deg, turnDeg: 0, above: (outlet.toDeg - deg) * RAD, below: (deg - outlet.fromDeg) * RAD };
      });
    }
    case 'tower':
      return Array.from({ length: TOWER_HEIGHTS }, (_, i) => {
        const z = outlet.fromHeightM + ((outlet.toHeightM - outlet.fromHeightM) * (i + 0.5)) / TOWER_HEIGHTS;
        const jet = start('plane', outlet.offsetM, z, vaneAt(c, z), outlet.slotWidthM);
        return TURNS_DEG.map((turnDeg) => ({ jet, dropDeg: jet.angleDeg + turnDeg, turnDeg, above: outlet.toHeightM - z, below: z - outlet.fromHeightM }));
      }).flat();
    case 'spouts':
      return outlet.spouts.flatMap((s) => {
        const jet = start('round', s.offsetM, s.heightM, s.angleDeg, outlet.diameterM);
        return TURNS_DEG.map((turnDeg) => ({ jet, dropDeg: s.angleDeg + turnDeg, turnDeg, above: 0, below: 0 }));
      });
  }
}

/** How far apart neighbouring rays of a side stand at the nearest trunk line, m. */
export function pitchM(c: SprayCase, rays: readonly Ray[]): number {
  const trunk = c.canopy.rowSpacingM / 2;
  const [a, b] = rays;
  if (!a || !b) return trunk;
  return Math.tan(Math.abs(b.dropDeg - a.dropDeg) * RAD) * Math.max(trunk - (c.outlet.kind === 'arc' ? 0 : a.jet.xM), 0.1);
}

/** Direction of a tower's air at a height: its vanes follow the nozzles as the machine was built, straight between them. */
export function vaneAt({ vanes }: SprayCase, zM: number): number {
  let before = vanes[0];
  if (!before || zM <= before.heightM) return before?.angleDeg ?? 0;
  for (const v of vanes) {
    if (zM <= v.heightM) return v.heightM === before.heightM ? v.angleDeg : before.angleDeg + ((v.angleDeg - before.angleDeg) * (zM - before.heightM)) / (v.heightM - before.heightM);
    before = v;
  }
  return before.angleDeg;
}

/**
 * Weights of one nozzle on the rays of its side, together 1. Arc: by angle, a Gaussian whose spread follows the cone. Tower and
 * spouts: straight between the two nearest heights, times the Gaussian over the three directions.
 */
export function rayWeights(c: SprayCase, rays: readonly Ray[], n: Release): Float64Array {
  const weights = new Float64Array(rays.length);
  const spread = Math.max(c.constants.plumeSpread * n.coneDeg, LEAST_SPREAD_DEG);
  const gauss = (deg: number) => Math.exp(-0.5 * (deg / spread) ** 2);
  if (c.outlet.kind === 'arc') rays.forEach((r, j) => (weights[j] = gauss(r.jet.angleDeg - n.angleDeg)));
  else {
    const heights = [...new Set(rays.map((r) => r.jet.zM))].toSorted((a, b) => a - b);
    // Against the air where the nozzle stands.
    const turn = n.angleDeg - airAngle(c, n);
    rays.forEach((r, j) => (weights[j] = between(heights, r.jet.zM, n.heightM) * gauss(r.turnDeg - turn)));
  }
  const sum = weights.reduce((a, b) => a + b, 0);
  if (sum > 0) for (let j = 0; j < weights.length; j++) weights[j] = weights[j]! / sum;
  // Pointed far away from every ray: the nearest takes it all.
  else weights[rays.reduce((best, r, j) => (Math.abs(r.dropDeg - n.angleDeg) < Math.abs(rays[best]!.dropDeg - n.angleDeg) ? j : best), 0)] = 1;
  return weights;
}

const airAngle = (c: SprayCase, n: Release): number =>
  c.outlet.kind === 'spouts' ? c.outlet.spouts.reduce((a, b) => (Math.abs(b.heightM - n.heightM) < Math.abs(a.heightM - n.heightM) ? b : a)).angleDeg : vaneAt(c, n.heightM);

/** Share that a node at `at` has of a point at `z` between the two nodes nearest to it. */
function between(nodes: readonly number[], at: number, z: number): number {
  const i = nodes.indexOf(at);
  const below = nodes[i - 1];
  const above = nodes[i + 1];
  if (z === at || (z < at && below === undefined) || (z > at && above === undefined)) return 1;
  if (z < at) return Math.max(0, (z - below!) / (at - below!));
  return Math.max(0, (above! - z) / (above! - at));
}
