import type { Fate, Release, SideAir, SprayCase } from '#core/spray/types.ts';

/**
 * Oracle of the spray model: docs/methods/spray.md written out as plainly as can be, slow, without tables, approximations or shared code.
 * Only the types are the engine's. Its steps can be made finer, so that it also says how far the engine is from the limit.
 * What the engine does for the sake of its few rays and sizes (shares at the lines of time and at the block's edge, deposit shared with the heights
 * around) is not done here: more rays and sizes take its place.
 */

export interface Fineness {
  /** Factor on every step of a drop. */
  readonly step: number;
  readonly jetStepM: number;
  readonly sizes: number;
  /** Arc: most degrees between release rays. */
  readonly rayDeg: number;
  /** Tower: heights of the slot. */
  readonly heights: number;
  /** Tower and spouts: directions of drops around the air's. */
  readonly turnsDeg: readonly number[];
}
export const AS_WRITTEN: Fineness = { step: 1, jetStepM: 0.2, sizes: 10, rayDeg: 5, heights: 8, turnsDeg: [-15, 0, 15] };

export interface ReferenceBalance {
  readonly shares: Record<Fate, number>;
  readonly onTrees: number;
  readonly perNozzle: readonly { readonly position: string; readonly shares: Record<Fate, number> }[];
  /** Share of what is sprayed by height cell, skirt to top, all rows; and in the nearest row by depth. */
  readonly heights: readonly { readonly share: number; readonly byDepth: readonly number[] }[];
}

interface Point {
  readonly x: number;
  readonly z: number;
}
const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, z: a.z + b.z });
const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, z: a.z - b.z });
const times = (a: Point, f: number): Point => ({ x: a.x * f, z: a.z * f });
const dot = (a: Point, b: Point): number => a.x * b.x + a.z * b.z;
const size = (a: Point): number => Math.sqrt(dot(a, a));
/** How far b lies to the left of direction a. */
const left = (a: Point, b: Point): number => a.x * b.z - a.z * b.x;
const direction = (deg: number): Point => ({ x: Math.cos((deg * Math.PI) / 180), z: Math.sin((deg * Math.PI) / 180) });
const clamp = (v: number, low: number, high: number): number => Math.min(high, Math.max(low, v));

/** Water and air at 20 °C; SI. */
const WATER = 998.2;
const AIR = 1.204;
const VISCOSITY = 1.813e-5;
const GRAVITY = 9.81;
const HEIGHT_CELLS = 20;
const DEPTH_CELLS = 4;

// Wind

const top = (c: SprayCase): number => c.canopy.outline.at(-1)!.heightM;
const skirt = (c: SprayCase): number => c.canopy.outline[0]!.heightM;

/** Outward wind on a side, m/s. */
export function windAt(c: SprayCase, side: SideAir['side'], z: number): number {
  const H = top(c);
  const speed = c.constants.windMPerS * (side === 'right' ? 1 : -1);
  if (z <= H) return speed * Math.exp(-c.constants.windDecay * (1 - z / H));
  const d = 0.67 * H;
  const z0 = 0.1 * H;
  return (speed * Math.log((z - d) / z0)) / Math.log((H - d) / z0);
}

// Canopy

interface Here {
  /** Row: 0 and up outward on the side in hand, −1 and down on the other. */
  readonly row: number;
  readonly trunkM: number;
  readonly halfWidthM: number;
  readonly leaf: number;
  readonly wood: number;
}

function between(points: readonly (readonly [number, number])[], at: number): number {
  if (at <= points[0]![0]) return points[0]![1];
  for (let i = 1; i < points.length; i++) {
    const [a, va] = points[i - 1]!;
    const [b, vb] = points[i]!;
    if (at <= b) return b === a ? vb : va + ((vb - va) * (at - a)) / (b - a);
  }
  return points.at(-1)![1];
}

const halfWidth = (c: SprayCase, z: number): number => (z < skirt(c) || z > top(c) ? 0 : between(c.canopy.outline.map((w) => [w.heightM, w.widthM] as const), z) / 2);

/** Leaf density at a height over its mean over the section. */
const relativeAt = new WeakMap<SprayCase, (z: number) => number>();
function relative(c: SprayCase): (z: number) => number {
  const known = relativeAt.get(c);
  if (known) return known;
  const points = c.canopy.densityByHeight?.map((d) => [d.heightM, d.relative] as const) ?? [];
  let [leaf, section] = [0, 0];
  for (let i = 0; points.length > 0 && i < 2000; i++) {
    const z = skirt(c) + ((top(c) - skirt(c)) * (i + 0.5)) / 2000;
    section += halfWidth(c, z);
    leaf += halfWidth(c, z) * between(points, z);
  }
  const made = points.length > 0 ? (z: number) => (between(points, z) * section) / leaf : () => 1;
  relativeAt.set(c, made);
  return made;
}

/** Mean leaf and wood area density at a height, where there is canopy. */
function areas(c: SprayCase, z: number): { leaf: number; wood: number } {
  const lad = c.canopy.ladM2PerM3;
  return { leaf: lad * relative(c)(z), wood: c.constants.woodM2PerM3 * Math.max(0, 1 - lad / c.constants.fullLeafM2PerM3) };
}

/** The canopy that stands at a place, or nothing. */
function canopyAt(c: SprayCase, p: Point): Here | null {
  const R = c.canopy.rowSpacingM;
  const row = Math.floor(p.x / R);
  const trunkM = (row + 0.5) * R;
  const halfWidthM = halfWidth(c, p.z);
  const out = Math.abs(p.x - trunkM);
  if (row >= c.constants.rows || row < -c.constants.rows || halfWidthM <= 0 || out >= halfWidthM) return null;
  const { leaf, wood } = areas(c, p.z);
  const { shellShare: t, coreRatio } = c.constants;
  const shell = leaf / (t + coreRatio * (1 - t));
  return { row, trunkM, halfWidthM, leaf: out > (1 - t) * halfWidthM ? shell : coreRatio * shell, wood };
}

/** Distance from a place to the nearest canopy, no more than asked for: looked at on a ring of points. */
const near = (c: SprayCase, p: Point, m: number): boolean =>
  canopyAt(c, p) !== null || [0, 45, 90, 135, 180, 225, 270, 315].some((deg) => canopyAt(c, plus(p, times(direction(deg), m))) !== null);

// Jets

export interface Ray {
  readonly side: SideAir['side'];
  readonly origin: Point;
  /** Directions in which the air and the drops leave. */
  readonly deg: number;
  readonly dropDeg: number;
  /** Distance to the upper and lower end of the curtain, radians (arc) or metres (tower); a spout has none. */
  readonly toUpper: number;
  readonly toLower: number;
  readonly shape: { readonly kind: 'arc'; readonly radiusM: number } | { readonly kind: 'tower' } | { readonly kind: 'spout' };
  /** Width of the slot or diameter of the spout, m. */
  readonly openingM: number;
}
export interface JetPlace {
  readonly at: Point;
  readonly u: Point;
  readonly e: Point;
  readonly g: number;
  readonly b: number;
  readonly Q: number;
  readonly M: Point;
}

export function jetOf(c: SprayCase, ray: Ray, outletMPerS: number, stepM: number): JetPlace[] {
  const { canopyDrag, entrainment, roundEntrainment } = c.constants;
  const round = ray.shape.kind === 'spout';
  const spread = (sigma: number): number => (ray.shape.kind === 'arc' ? ray.shape.radiusM + sigma : 1);
  const Q0 = round ? (outletMPerS * Math.PI * ray.openingM ** 2) / 4 : outletMPerS * ray.openingM * spread(0);
  interface State {
    readonly Q: number;
    readonly M: Point;
    readonly at: Point;
    readonly sigma: number;
  }
  const wind = (s: State): Point => ({ x: windAt(c, ray.side, s.at.z), z: 0 });
  const speed = (s: State): Point => times(s.M, 1 / s.Q);
  const excess = (s: State): Point => minus(speed(s), wind(s));
  const start: State = { Q: Q0, M: times(direction(ray.deg), outletMPerS * Q0), at: ray.origin, sigma: 0 };
  const atOutlet = size(excess(start));
  const perMetre = (s: State): State => {
    const u = speed(s);
    const w = wind(s);
    const over = size(excess(s));
    const centre = Math.min((round ? 2 : Math.SQRT2) * over, atOutlet);
    const g = spread(s.sigma);
    const alpha = ray.shape.kind === 'arc' ? entrainment * (1 + s.sigma / g) : entrainment;
    const dQ = round ? roundEntrainment * Math.sqrt(over * s.Q) * Math.min(1, s.sigma / (6 * ray.openingM)) : 2 * g * alpha * centre;
    const here = canopyAt(c, s.at);
    const a = here ? (here.leaf + here.wood) * c.canopy.filled : 0;
    const drag = minus(times(u, size(u)), times(w, size(w)));
    return { Q: dQ, M: minus(times(w, dQ), times(drag, (canopyDrag * a * s.Q) / size(u))), at: times(u, 1 / size(u)), sigma: over / size(u) };
  };
  const go = (s: State, d: State, m: number): State => ({ Q: s.Q + d.Q * m, M: plus(s.M, times(d.M, m)), at: plus(s.at, times(d.at, m)), sigma: s.sigma + d.sigma * m });
  const places: JetPlace[] = [];
  let s = start;
  for (let n = 0; n <= Math.round(14 / stepM); n++) {
    const u = speed(s);
    const g = spread(s.sigma);
    const b = round ? Math.sqrt((Math.LN2 * s.Q) / (2 * Math.PI * size(u))) : s.Q / (3.011 * size(u) * g);
    places.push({ at: s.at, u, e: times(u, 1 / size(u)), g, b, Q: s.Q, M: s.M });
    if (size(excess(s)) < 0.3 || size(u) < 0.3 || s.at.z > 20) break;
    const first = perMetre(s);
    const second = perMetre(go(s, first, stepM));
    s = go(go(s, first, stepM / 2), second, stepM / 2);
    if (s.at.z < 0.1 && s.M.z < 0) s = { ...s, M: { x: s.M.x, z: 0 } };
    if (s.at.z < 0.05) s = { ...s, at: { x: s.at.x, z: 0.05 } };
  }
  return places;
}

// Drops

export const reynolds = (d: number, relative: number): number => (AIR * relative * d) / VISCOSITY;
export const relaxation = (d: number, relative: number): number => (WATER * d * d) / (18 * VISCOSITY * (1 + 0.15 * reynolds(d, relative) ** 0.687));

interface Catch {
  readonly row: number;
  readonly cell: number;
  readonly depth: number;
  readonly far: boolean;
  readonly share: number;
}
interface Flight {
  readonly caught: readonly Catch[];
  readonly end: Fate;
  /** What is left at the end; with all that was caught it is 1. */
  readonly left: number;
}

function fly(c: SprayCase, ray: Ray, jet: readonly JetPlace[], dropM: number, fine: Fineness): Flight {
  const k = c.constants;
  const H = top(c);
  const R = c.canopy.rowSpacingM;
  const widest = Math.max(...c.canopy.outline.map((w) => w.widthM));
  const core = k.nonVolatile ** (2 / 3) * dropM ** 2;
  const caught: Catch[] = [];
  const last = jet.length - 1;

  let at = ray.origin;
  let v = times(direction(ray.dropDeg), k.releaseMPerS);
  let d2 = dropM ** 2;
  let segment = 0;
  let time = 0;
  let passed: 'over' | 'through' | null = null;
  // Within a row the mass that meets leaf and the mass in the gap are two.
  let row: number | null = null;
  let inLeaf = 0;
  let inGap = 1;

  for (;;) {
    // The air where the drop is.
    while (segment < last && dot(minus(at, jet[segment + 1]!.at), jet[segment + 1]!.e) > 0) segment++;
    while (segment > 0 && dot(minus(at, jet[segment]!.at), jet[segment]!.e) < 0) segment--;
    const ended = segment === last;
    const wind: Point = { x: windAt(c, ray.side, Math.max(0, at.z)), z: 0 };
    let air = wind;
    if (!ended) {
      const a = jet[segment]!;
      const b = jet[segment + 1]!;
      const f = clamp(dot(minus(at, a.at), a.e) / size(minus(b.at, a.at)), 0, 1);
      const mix = (from: number, to: number): number => from + f * (to - from);
      const n = left(a.e, minus(at, a.at));
      const g = mix(a.g, b.g);
      let j = minus(plus(a.u, times(minus(b.u, a.u), f)), wind);
      let e = Math.abs(n);
      if (ray.shape.kind === 'arc') {
        const turn = clamp(n / g, -0.5, 0.5);
        j = { x: j.x - turn * j.z, z: j.z + turn * j.x };
      }
      const upper = n - ray.toUpper * g;
      const lower = -n - ray.toLower * g;
      if (ray.shape.kind !== 'spout') e = ray.toUpper < 0 ? upper : ray.toLower < 0 ? lower : n > 0 ? upper : lower;
      if (e > 0) j = times(j, Math.exp(-Math.LN2 * (e / (mix(a.b, b.b) + 0.02)) ** 2));
      air = plus(wind, j);
    }
    // One step.
    const alley = at.z <= H && Math.abs(at.x) <= k.rows * R;
    const stepM = near(c, at, 0.1) ? Math.min(0.1, widest / 8) : alley ? 0.25 : ended ? 0.8 : 0.3;
    const dt = fine.step * Math.min(stepM / Math.max(size(v), 0.3), ended ? 0.8 : 0.4);
    const relative = size(minus(v, air));
    const d = Math.sqrt(d2);
    const tau = relaxation(d, relative);
    const decay = Math.exp(-dt / tau);
    const next = plus(plus(air, times(minus(v, air), decay)), { x: 0, z: -GRAVITY * tau * (1 - decay) });
    const mean = times(plus(v, next), 0.5);
    const middle = plus(at, times(mean, dt / 2));
    const there = plus(at, times(mean, dt));

    const here = canopyAt(c, middle);
    if (row !== null && here?.row !== row) {
      inGap += inLeaf;
      inLeaf = 0;
      row = null;
    }
    if (here && row === null) {
      row = here.row;
      inLeaf = inGap * c.canopy.filled;
      inGap -= inLeaf;
    }
    if (here) {
      const moved = size(mean);
      const meets = (beta: number, elementM: number): number => {
        const stokes = (tau * moved) / elementM;
        return (stokes / (stokes + beta)) ** 2 * moved + 0.5 * tau * GRAVITY;
      };
      const q = k.projection * dt * (here.leaf * meets(k.leafBeta, k.leafSizeM) + here.wood * meets(k.woodBeta, k.woodSizeM));
      const share = inLeaf * (1 - Math.exp(-q));
      inLeaf -= share;
      const cell = Math.floor(((middle.z - skirt(c)) / (H - skirt(c))) * HEIGHT_CELLS);
      const depth = Math.floor(((middle.x - here.trunkM + here.halfWidthM) / (2 * here.halfWidthM)) * DEPTH_CELLS);
      caught.push({ row: here.row, cell: clamp(cell, 0, HEIGHT_CELLS - 1), depth: clamp(depth, 0, DEPTH_CELLS - 1), far: middle.x > here.trunkM, share });
    }
    const remains = inLeaf + inGap;
    if (passed === null && at.x < R / 2 && there.x >= R / 2) passed = at.z + ((there.z - at.z) * (R / 2 - at.x)) / (there.x - at.x) > H ? 'over' : 'through';
    d2 = Math.max(core, d2 - 83e-12 * k.deltaTK * (1 + 0.27 * Math.sqrt(reynolds(d, relative))) * dt);
    time += dt;
    if (there.z <= 0) {
      const x = at.z <= 0 ? there.x : at.x + ((there.x - at.x) * at.z) / (at.z - there.z);
      return { caught, end: Math.abs(x) <= k.rows * R ? 'ground-in' : 'ground-out', left: remains };
    }
    if (remains < 1e-6) return { caught, end: 'ground-in', left: remains };
    if (time > 20 || Math.abs(there.x) > 60 || there.z > 20)
      return { caught, end: d2 <= core ? 'dried' : (passed ?? (there.z > H ? 'over' : 'through')), left: remains };
    at = there;
    v = next;
  }
}

// Nozzles

/** Cumulative share of volume below a diameter, µm (Rosin–Rammler). */
export function below(d: number, vmdUm: number, finePart: number): number {
  const n = Math.log(0.152) / Math.log(finePart);
  const delta = vmdUm / Math.LN2 ** (1 / n);
  return 1 - Math.exp(-((d / delta) ** n));
}

/** Drop sizes with their shares, µm. */
function spectrum(vmdUm: number, finePart: number, sizes: number): { d: number; share: number }[] {
  const d = Array.from({ length: sizes }, (_, i) => 40 * (900 / 40) ** (i / (sizes - 1)));
  const upTo = d.map((v, i) => (i === sizes - 1 ? 1 : below(Math.sqrt(v * d[i + 1]!), vmdUm, finePart)));
  return d.map((v, i) => ({ d: v, share: upTo[i]! - (upTo[i - 1] ?? 0) }));
}

/** Direction of a tower's air at a height: straight between the vanes. */
const vane = (c: SprayCase, z: number): number => (c.vanes.length === 0 ? 0 : between(c.vanes.map((v) => [v.heightM, v.angleDeg] as const), z));

/** Release rays of a nozzle with their weights, summing to 1. */
function raysOf(c: SprayCase, nozzle: Release, fine: Fineness): { ray: Ray; weight: number }[] {
  const o = c.outlet;
  const spreadDeg = Math.max(4, c.constants.plumeSpread * nozzle.coneDeg);
  const gauss = (deg: number): number => Math.exp(-0.5 * (deg / spreadDeg) ** 2);
  const rays: { ray: Ray; weight: number }[] = [];
  if (o.kind === 'arc') {
    const from = Math.max(Math.min(o.fromDeg, c.anglesDeg[0]) - 6, o.fromDeg - 15);
    const to = Math.min(Math.max(o.toDeg, c.anglesDeg[1]) + 6, o.toDeg + 15);
    const gaps = Math.ceil((to - from) / fine.rayDeg);
    for (let i = 0; i <= gaps; i++) {
      const deg = from + ((to - from) * i) / gaps;
      const ray: Ray = {
        side: nozzle.side,
        origin: plus({ x: 0, z: o.axisHeightM }, times(direction(deg), o.radiusM)),
        deg,
        dropDeg: deg,
        toUpper: ((o.toDeg - deg) * Math.PI) / 180,
        toLower: ((deg - o.fromDeg) * Math.PI) / 180,
        shape: { kind: 'arc', radiusM: o.radiusM },
        openingM: o.slotWidthM
      };
      rays.push({ ray, weight: gauss(deg - nozzle.angleDeg) });
    }
  } else {
    // Mouths by height, each with its drops in three directions.
    const mouths: readonly Omit<Ray, 'dropDeg'>[] =
      o.kind === 'tower'
        ? Array.from({ length: fine.heights }, (_, i) => {
            const z = o.fromHeightM + ((o.toHeightM - o.fromHeightM) * (i + 0.5)) / fine.heights;
            return { side: nozzle.side, origin: { x: o.offsetM, z }, deg: vane(c, z), toUpper: o.toHeightM - z, toLower: z - o.fromHeightM, shape: { kind: 'tower' }, openingM: o.slotWidthM };
          })
        : o.spouts
            .toSorted((a, b) => a.heightM - b.heightM)
            .map((s) => ({ side: nozzle.side, origin: { x: s.offsetM, z: s.heightM }, deg: s.angleDeg, toUpper: 0, toLower: 0, shape: { kind: 'spout' }, openingM: o.diameterM }));
    const byNearness = mouths.toSorted((a, b) => Math.abs(a.origin.z - nozzle.heightM) - Math.abs(b.origin.z - nozzle.heightM));
    const turned = nozzle.angleDeg - (o.kind === 'tower' ? vane(c, nozzle.heightM) : byNearness[0]!.deg);
    for (const [i, mouth] of mouths.entries()) {
      // Straight from 1 here to 0 at the neighbours; beyond the ends all of it.
      const hat = between([[mouths[i - 1]?.origin.z ?? -Infinity, i === 0 ? 1 : 0], [mouth.origin.z, 1], [mouths[i + 1]?.origin.z ?? Infinity, i === mouths.length - 1 ? 1 : 0]].filter(([z]) => Number.isFinite(z)) as [number, number][], nozzle.heightM);
      for (const turn of fine.turnsDeg) rays.push({ ray: { ...mouth, dropDeg: mouth.deg + turn }, weight: hat * gauss(turn - turned) });
    }
  }
  const sum = rays.reduce((s, r) => s + r.weight, 0);
  return rays.map((r) => ({ ...r, weight: r.weight / sum }));
}

const none = (): Record<Fate, number> => ({ near: 0, far: 0, rows: 0, 'ground-in': 0, 'ground-out': 0, over: 0, through: 0, dried: 0 });

export function referenceBalance(c: SprayCase, fine: Fineness = AS_WRITTEN): ReferenceBalance {
  const total = c.nozzles.reduce((s, n) => s + n.flowLPerMin, 0);
  const flights = new Map<string, Flight>();
  const flight = (ray: Ray, dropUm: number): Flight => {
    const name = [ray.side, ray.origin.x, ray.origin.z, ray.deg, ray.dropDeg, dropUm].join(' ');
    const known = flights.get(name);
    if (known) return known;
    const air = c.air.find((a) => a.side === ray.side)!;
    const made = fly(c, ray, jetOf(c, ray, air.outletMPerS, fine.jetStepM), dropUm * 1e-6, fine);
    flights.set(name, made);
    return made;
  };
  const heights = Array.from({ length: HEIGHT_CELLS }, () => ({ share: 0, byDepth: Array.from({ length: DEPTH_CELLS }, () => 0) }));
  const perNozzle = c.nozzles.map((nozzle) => {
    const shares = none();
    for (const { ray, weight } of raysOf(c, nozzle, fine))
      for (const { d, share } of spectrum(nozzle.vmdUm, c.constants.finePart, fine.sizes)) {
        // Too little to see: filed without being flown.
        if (weight * share < 1e-7) {
          shares['ground-in'] += weight * share;
          continue;
        }
        const f = flight(ray, d);
        shares[f.end] += weight * share * f.left;
        for (const one of f.caught) {
          const part = weight * share * one.share;
          shares[one.row !== 0 ? 'rows' : one.far ? 'far' : 'near'] += part;
          const cell = heights[one.cell]!;
          cell.share += (part * nozzle.flowLPerMin) / total;
          if (one.row === 0) cell.byDepth[one.depth]! += (part * nozzle.flowLPerMin) / total;
        }
      }
    return { position: nozzle.position, shares };
  });
  const shares = none();
  for (const [i, n] of c.nozzles.entries())
    for (const fate of Object.keys(shares) as Fate[]) shares[fate] += (perNozzle[i]!.shares[fate] * n.flowLPerMin) / total;
  return { shares, onTrees: shares.near + shares.far + shares.rows, perNozzle, heights };
}
