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

/** State of a jet: flow, momentum, place, and the path in the moving air. */
interface State {
  q: number;
  mx: number;
  mz: number;
  x: number;
  z: number;
  sigma: number;
}
const state = (): State => ({ q: 0, mx: 0, mz: 0, x: 0, z: 0, sigma: 0 });
const [now, slope, ahead, after] = [state(), state(), state(), state()];

/**
 * An integral jet in cross wind with canopy drag: flow and vector momentum are marched along the path (Heun, 0.2 m), the air that is
 * taken up brings the wind's momentum. Entrainment α of a plane jet (Rajaratnam 1976; Pope 2000), corrected by 1 + σ/g where a radial
 * jet diverges (spread 0.10, Witze & Dwyer 1976); 0.32/D of a round jet (Ricou & Spalding 1961); momentum sink Cd·a·|u|u (Katul 2004).
 * Steady, in the plane across the row, trees at rest; no swirl, no wall but a ground that lets the air slide. Good to some 15–25 % in speed.
 *
 * @param path is filled and returned @param wind across the row, positive with x
 */
export function jetPath(path: JetPath, start: JetStart, wind: WindProfile, density: Density, c: JetConstants): JetPath {
  const angle = (start.angleDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { kind, speedMPerS: u0, widthM: w, radiusM: r0 } = start;
  const g0 = kind === 'radial' ? r0 : 1;
  const q0 = kind === 'round' ? (u0 * Math.PI * w * w) / 4 : u0 * w * g0;
  Object.assign(now, { q: q0, mx: u0 * cos * q0, mz: u0 * sin * q0, x: start.xM, z: start.zM, sigma: 0 });
  const outletExcess = Math.hypot(u0 * cos - windAt(wind, start.zM), u0 * sin);
  const spread = (sigma: number) => (kind === 'radial' ? r0 + sigma : 1);

  const rate = (s: State, out: State): void => {
    const ux = s.mx / s.q;
    const uz = s.mz / s.q;
    const u = Math.sqrt(ux * ux + uz * uz) || 1e-9;
    const uw = windAt(wind, s.z);
    const excess = Math.sqrt((ux - uw) * (ux - uw) + uz * uz);
    const g = spread(s.sigma);
    if (kind === 'round') out.q = c.roundEntrainment * Math.sqrt(excess * s.q) * Math.min(1, s.sigma / (CORE_DIAMETERS * w));
    else out.q = 2 * g * c.entrainment * (kind === 'radial' ? 1 + s.sigma / g : 1) * Math.min(Math.SQRT2 * excess, outletExcess);
    const drag = (c.canopyDrag * density(s.x, s.z) * s.q) / u;
    out.mx = uw * out.q - drag * (u * ux - Math.abs(uw) * uw);
    out.mz = -drag * u * uz;
    out.x = ux / u;
    out.z = uz / u;
    out.sigma = excess / u;
  };

  path.count = 0;
  for (let i = 0; i < MOST_NODES; i++) {
    const ux = now.mx / now.q;
    const uz = now.mz / now.q;
    const u = Math.sqrt(ux * ux + uz * uz);
    const uw = windAt(wind, now.z);
    const excess = Math.sqrt((ux - uw) * (ux - uw) + uz * uz);
    const g = spread(now.sigma);
    path.x[i] = now.x;
    path.z[i] = now.z;
    path.ux[i] = ux;
    path.uz[i] = uz;
    path.ex[i] = u > 0 ? ux / u : cos;
    path.ez[i] = u > 0 ? uz / u : sin;
    path.g[i] = g;
    path.b[i] = kind === 'round' ? Math.sqrt((Math.LN2 * now.q) / (2 * Math.PI * Math.max(u, 1e-6))) : now.q / (3.011 * Math.max(u, 1e-6) * g);
    const peak = Math.min((kind === 'round' ? 2 : Math.SQRT2) * excess, outletExcess);
    const k = excess > 0 ? peak / excess : 0;
    path.speed[i] = Math.hypot(uw + k * (ux - uw), k * uz);
    path.count = i + 1;
    if (excess < LEAST_MPERS || u < LEAST_MPERS || now.z > CEILING_M) break;

    rate(now, slope);
    for (const key of KEYS) ahead[key] = now[key] + STEP_M * slope[key];
    rate(ahead, after);
    for (const key of KEYS) now[key] += (STEP_M / 2) * (slope[key] + after[key]);
    if (now.z < 0.1 && now.mz < 0) now.mz = 0;
    if (now.z < 0.05) now.z = 0.05;
  }
  return path;
}
const KEYS = ['q', 'mx', 'mz', 'x', 'z', 'sigma'] as const;

/** Length of a step along a path, m. */
export const JET_STEP_M = STEP_M;
