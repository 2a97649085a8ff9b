import { windAt, type WindProfile } from './wind.ts';

/** One path of a jet, node by node, as the drops of the model read it. */
export interface JetPath {
  readonly kind: JetKind;
  /** Nodes in use; the arrays may be longer. */
  count: number;
  readonly x: Float64Array;
  readonly z: Float64Array;
  /** Flux-mean velocity, momentum over flow, m/s. */
  readonly ux: Float64Array;
  readonly uz: Float64Array;
  /** Unit tangent. */
  readonly ex: Float64Array;
  readonly ez: Float64Array;
  /** How far apart neighbouring paths stand: the radius at which this one stands, of an arc's jet; 1 otherwise. m */
  readonly g: Float64Array;
  /** Half-velocity half width, m. */
  readonly b: Float64Array;
  /** Speed at the middle, m/s: for display. */
  readonly speed: Float64Array;
}

/** A slot around an axis, an upright slot, a round spout. */
export type JetKind = 'radial' | 'plane' | 'round';

export interface JetStart {
  readonly kind: JetKind;
  readonly xM: number;
  readonly zM: number;
  readonly angleDeg: number;
  readonly speedMPerS: number;
  /** Width of the slot, or diameter of the spout, m. */
  readonly widthM: number;
  /** Radius of an arc's outlet, m. */
  readonly radiusM: number;
}

export interface JetConstants {
  readonly entrainment: number;
  readonly roundEntrainment: number;
  readonly canopyDrag: number;
}

const STEP_M = 0.2;
const LENGTH_M = 14;
export const MOST_NODES = LENGTH_M / STEP_M + 1;
/** Below this the air of a jet is lost in the wind, m/s. */
const LEAST_MPERS = 0.3;
const CEILING_M = 20;
/** A round jet takes up air fully only beyond its core, some six diameters long (from memory). */
const CORE_DIAMETERS = 6;

export const emptyPath = (kind: JetKind): JetPath => {
  const column = () => new Float64Array(MOST_NODES);
  return { kind, count: 0, x: column(), z: column(), ux: column(), uz: column(), ex: column(), ez: column(), g: column(), b: column(), speed: column() };
};

/** Leaf and wood in the way of the air at a place, m²/m³. */
export type Density = (xM: number, zM: number) => number;

/**
 * An integral jet in cross wind with canopy drag: flow and vector momentum are marched along the path (Heun, 0.2 m), the air that is
 * taken up brings the wind's momentum. Entrainment α of a plane jet (Rajaratnam 1976; Pope 2000), corrected by 1 + σ/g where a radial
 * jet diverges (spread 0.10, Witze & Dwyer 1976); 0.32/D of a round jet (Ricou & Spalding 1961); momentum sink Cd·a·|u|u (Katul 2004).
 * Steady, in the plane across the row, trees at rest; no swirl, no wall but a ground that lets the air slide. Good to some 15–25 % in speed.
 *
 * @param path is filled and returned @param wind across the row, positive with x
 */
export function jetPath(path: JetPath, start: JetStart, wind: WindProfile, density: Density, c: JetConstants): JetPath {
  const march = new March(path.kind, start, wind, density, c);
  path.count = 0;
  for (let i = 0; i < MOST_NODES; i++) {
    march.note(path, i);
    path.count = i + 1;
    if (march.excess < LEAST_MPERS || march.speed < LEAST_MPERS || march.z > CEILING_M) break;
    march.advance();
  }
  return path;
}

/** State of a jet on its way: flow, momentum, place, and the path in the moving air. Plain fields, for it is marched at every frame of a drag. */
class March {
  private q: number;
  private mx: number;
  private mz: number;
  private x: number;
  z: number;
  private sigma = 0;
  /** Flux-mean speed, and speed against the wind, where it was last noted. */
  speed = 0;
  excess = 0;
  private readonly outletExcess: number;
  private readonly radial: boolean;
  private readonly round: boolean;
  private readonly coreM: number;
  private readonly r0: number;
  private readonly start: JetStart;
  private readonly wind: WindProfile;
  private readonly density: Density;
  private readonly c: JetConstants;
  // Rates of change per metre of path.
  private dq = 0;
  private dmx = 0;
  private dmz = 0;
  private dx = 0;
  private dz = 0;
  private dsigma = 0;

  constructor(kind: JetKind, start: JetStart, wind: WindProfile, density: Density, c: JetConstants) {
    this.start = start;
    this.wind = wind;
    this.density = density;
    this.c = c;
    this.radial = kind === 'radial';
    this.round = kind === 'round';
    const { speedMPerS: u0, widthM: w, radiusM, angleDeg, xM, zM } = start;
    const angle = (angleDeg * Math.PI) / 180;
    const [ux, uz] = [u0 * Math.cos(angle), u0 * Math.sin(angle)];
    this.r0 = radiusM;
    this.coreM = CORE_DIAMETERS * w;
    this.q = this.round ? (u0 * Math.PI * w * w) / 4 : u0 * w * (this.radial ? radiusM : 1);
    this.mx = ux * this.q;
    this.mz = uz * this.q;
    this.x = xM;
    this.z = zM;
    const dx = ux - windAt(wind, zM);
    this.outletExcess = Math.sqrt(dx * dx + uz * uz);
  }

  /** Writes the state as node `i` of a path. */
  note(path: JetPath, i: number): void {
    const { q, x, z } = this;
    const ux = this.mx / q;
    const uz = this.mz / q;
    const u = Math.sqrt(ux * ux + uz * uz);
    const uw = windAt(this.wind, z);
    const excess = Math.sqrt((ux - uw) * (ux - uw) + uz * uz);
    const g = this.radial ? this.r0 + this.sigma : 1;
    path.x[i] = x;
    path.z[i] = z;
    path.ux[i] = ux;
    path.uz[i] = uz;
    const angle = (this.start.angleDeg * Math.PI) / 180;
    path.ex[i] = u > 0 ? ux / u : Math.cos(angle);
    path.ez[i] = u > 0 ? uz / u : Math.sin(angle);
    path.g[i] = g;
    path.b[i] = this.round ? Math.sqrt((Math.LN2 * q) / (2 * Math.PI * Math.max(u, 1e-6))) : q / (3.011 * Math.max(u, 1e-6) * g);
    const peak = Math.min((this.round ? 2 : Math.SQRT2) * excess, this.outletExcess);
    const k = excess > 0 ? peak / excess : 0;
    const px = uw + k * (ux - uw);
    const pz = k * uz;
    path.speed[i] = Math.sqrt(px * px + pz * pz);
    this.speed = u;
    this.excess = excess;
  }

  private rates(q: number, mx: number, mz: number, x: number, z: number, sigma: number): void {
    const { c } = this;
    const ux = mx / q;
    const uz = mz / q;
    const u = Math.sqrt(ux * ux + uz * uz) || 1e-9;
    const uw = windAt(this.wind, z);
    const excess = Math.sqrt((ux - uw) * (ux - uw) + uz * uz);
    if (this.round) this.dq = c.roundEntrainment * Math.sqrt(excess * q) * Math.min(1, sigma / this.coreM);
    else {
      const g = this.radial ? this.r0 + sigma : 1;
      this.dq = 2 * g * c.entrainment * (this.radial ? 1 + sigma / g : 1) * Math.min(Math.SQRT2 * excess, this.outletExcess);
    }
    const drag = (c.canopyDrag * this.density(x, z) * q) / u;
    this.dmx = uw * this.dq - drag * (u * ux - Math.abs(uw) * uw);
    this.dmz = -drag * u * uz;
    this.dx = ux / u;
    this.dz = uz / u;
    this.dsigma = excess / u;
  }

  /** One step of Heun's method. */
  advance(): void {
    const { q, mx, mz, x, z, sigma } = this;
    this.rates(q, mx, mz, x, z, sigma);
    const { dq, dmx, dmz, dx, dz, dsigma } = this;
    this.rates(q + STEP_M * dq, mx + STEP_M * dmx, mz + STEP_M * dmz, x + STEP_M * dx, z + STEP_M * dz, sigma + STEP_M * dsigma);
    const half = STEP_M / 2;
    this.q = q + half * (dq + this.dq);
    this.mx = mx + half * (dmx + this.dmx);
    this.mz = mz + half * (dmz + this.dmz);
    this.x = x + half * (dx + this.dx);
    this.z = z + half * (dz + this.dz);
    this.sigma = sigma + half * (dsigma + this.dsigma);
    if (this.z < 0.1 && this.mz < 0) this.mz = 0;
    if (this.z < 0.05) this.z = 0.05;
  }
}

/** Length of a step along a path, m. */
export const JET_STEP_M = STEP_M;
