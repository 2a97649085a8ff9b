import { JET_STEP_M, type JetPath } from '../air/jet.ts';
import type { WindProfile } from '../air/wind.ts';
import { EASE_TABLE, GRAVITY, PER_SPEED, RELAX, SHRINK_M2_PER_S_K, tableIndex, VENTILATION_TABLE } from './drop.ts';
import type { CanopyField } from './field.ts';
import type { Ray } from './rays.ts';
import { DEPTHS, FATES, HEIGHTS, type SprayConstants } from './types.ts';

/** Cells of the nearest row: height by height, each by depth. */
export const CELLS = HEIGHTS * DEPTHS;
/** What is written of one parcel: its fates first, then the nearest row's cells, then the heights of the other rows. */
export const NEAR_CELLS = FATES.length;
export const OTHER_ROWS = NEAR_CELLS + CELLS;
export const PER_PARCEL = OTHER_ROWS + HEIGHTS;

const [NEAR, FAR, ROWS, GROUND_IN, GROUND_OUT, OVER, THROUGH, DRIED] = FATES.map((_, i) => i) as [number, number, number, number, number, number, number, number];

const PER_STEP = 1 / JET_STEP_M;
const MOST_STEPS = 1500;
const MOST_SECONDS = 20;
const MOST_X_M = 60;
const MOST_Z_M = 20;
/** What is left of a parcel when following it further is not worth while. */
const TRACE = 1e-4;
/** Steps: in and near leaf, in the alley, above and beyond, and there once the jet has ended. m; the longest in s. */
const NEAR_M = 0.15;
const ALLEY_M = 0.25;
const FREE_M = 0.4;
const STILL_M = 1;
const LONGEST_S = 0.4;
const LONGEST_STILL_S = 1;
const EDGE_M = 0.02;

/*
 * A parcel stands for the sizes up to the middles to its neighbours, squares of diameters from 1/√2 to √2 of its own: what takes time, to dry
 * or to fall, takes them as unequally, and so do their landing places. Without this one parcel too near a line would tip a share by points.
 */
/** Share of a parcel's drops that are past a line when the middle one is at `ratio` of the way to it. */
const past = (ratio: number): number => within01(0.5 + Math.log2(ratio));
/** Over how much of the distance landing places are spread. */
const LANDING_SPREAD = 0.3;
const within01 = (v: number): number => (v > 0 ? (v < 1 ? v : 1) : 0);

/** Listens to one parcel's way. */
export interface Recorder {
  /** A step: from where to where, m; its length, s; the parcel's mass at its beginning, of 1 at its start. */
  step(fromX: number, fromZ: number, toX: number, toZ: number, seconds: number, mass: number): void;
}

/**
 * Drops in the air of one side: x outward, z up. A parcel is drops of one size that start alike; it sheds mass to leaf and wood, or
 * ends on the ground or in the air. Equations in docs/methods/spray.md: local direction and edges of the curtain, drag by Schiller &
 * Naumann (1933) with an exponential step, d² evaporation down to the core, capture by Stokes number (Petroff et al. 2008, 2009).
 * No random numbers. One object flies parcel after parcel and keeps no memory of them.
 */
export class Flight {
  private field!: CanopyField;
  private wind!: WindProfile;
  private c!: SprayConstants;
  recorder: Recorder | null = null;

  /** Canopy, wind and constants of all parcels to come. */
  prepare(field: CanopyField, wind: WindProfile, c: SprayConstants): void {
    this.field = field;
    this.wind = wind;
    this.c = c;
  }

  /**
   * Flies one parcel of drops of `diameterM` and adds where it ends, as shares of 1, to `ends` from place `at` on: fates, cells of the nearest row
   * height by height, heights of the other rows (`PER_PARCEL` in all).
   */
  fly(path: JetPath, ray: Ray, diameterM: number, ends: Float64Array, at: number): void {
    const { field, c, recorder } = this;
    const { half, shell, core, stepM, skirtM, topM, reachM, filled, wood, coreShare } = field;
    const R = field.rowSpacingM;
    const edgeX = c.rows * R;
    const wv = this.wind.values;
    const perWind = 1 / this.wind.stepM;
    const mostWind = wv.length - 2;
    const radial = path.kind === 'radial';
    const { x: px, z: pz, ux: pux, uz: puz, ex: pex, ez: pez, g: pg, b: pb } = path;
    const last = path.count - 1;
    const shrink = SHRINK_M2_PER_S_K * c.deltaTK;
    const coreD2 = diameterM * diameterM * c.nonVolatile ** (2 / 3);
    const nearStep = Math.min(NEAR_M, reachM / 4);
    const perCell = HEIGHTS / (topM - skirtM);
    const { projection: G, leafBeta, woodBeta } = c;
    const perLeaf = 1 / c.leafSizeM;
    const perWood = 1 / c.woodSizeM;

    const nearAt = at + NEAR_CELLS;
    const rowsAt = at + OTHER_ROWS;

    const a = (ray.dropDeg * Math.PI) / 180;
    let x = ray.jet.xM;
    let z = ray.jet.zM;
    let vx = Math.cos(a) * c.releaseMPerS;
    let vz = Math.sin(a) * c.releaseMPerS;
    let d2 = diameterM * diameterM;
    let d = diameterM;
    // Mass that meets leaf in the row in hand, and mass that passes it in a gap.
    let m = 1;
    let gap = 0;
    let row = NaN;
    let k = 0;
    let t = 0;
    let passedOver = -1;
    let driedAt = 0;
    // Where it lands, m, and what of it is still in the air when the time is up.
    let landsAt = 0;
    let aloft = 1;
    const perR = 1 / R;
    const { above, below } = ray;
    // The segment of the path in hand, node k and its way to the next.
    let seg = -1;
    let x0 = 0, z0 = 0, ex0 = 0, ez0 = 0, x1 = 0, z1 = 0, ex1 = 0, ez1 = 0;
    let jx0 = 0, jz0 = 0, djx = 0, djz = 0, g0 = 1, dg = 0, b0 = 0;

    for (let n = 0; n < MOST_STEPS; n++) {
      // Where it is: in which row's reach, how near to leaf, and whether its jet has ended.
      const dx = x - Math.floor(x * perR) * R - R / 2;
      const adx = dx < 0 ? -dx : dx;
      const inBlock = x < edgeX && x > -edgeX;
      for (;;) {
        if (seg !== k) {
          seg = k;
          const next = k < last ? k + 1 : k;
          x0 = px[k]!;
          z0 = pz[k]!;
          ex0 = pex[k]!;
          ez0 = pez[k]!;
          x1 = px[next]!;
          z1 = pz[next]!;
          ex1 = pex[next]!;
          ez1 = pez[next]!;
          jx0 = pux[k]!;
          jz0 = puz[k]!;
          djx = pux[next]! - jx0;
          djz = puz[next]! - jz0;
          g0 = pg[k]!;
          dg = pg[next]! - g0;
          b0 = pb[k]!;
        }
        if (k < last && (x - x1) * ex1 + (z - z1) * ez1 > 0) k++;
        else if (k > 0 && (x - x0) * ex0 + (z - z0) * ez0 < 0) k--;
        else break;
      }
      const ended = k >= last;
      let step: number;
      if (inBlock && adx < reachM + 0.1 && z < topM + 0.1 && z > skirtM - 0.1) step = nearStep;
      else if (z > topM + 0.3 || x > R || x < 0) step = ended ? STILL_M : FREE_M;
      else step = ALLEY_M;
      if (step > nearStep && inBlock && z < topM + 0.1 && z > skirtM - 0.1 && adx - reachM < step) step = adx - reachM > nearStep ? adx - reachM : nearStep;
      const v0 = Math.sqrt(vx * vx + vz * vz);
      let dt = step / (v0 > 0.3 ? v0 : 0.3);
      const longest = ended ? LONGEST_STILL_S : LONGEST_S;
      if (dt > longest) dt = longest;

      // Air: wind, and the jet in its local direction, fading beyond the curtain's edges.
      const wAt = z <= 0 ? 0 : z * perWind > mostWind ? mostWind : z * perWind;
      const wi = wAt | 0;
      const uw = wv[wi]! + (wAt - wi) * (wv[wi + 1]! - wv[wi]!);
      let ax = uw;
      let az = 0;
      if (!ended) {
        const rx = x - x0;
        const rz = z - z0;
        let f = (rx * ex0 + rz * ez0) * PER_STEP;
        if (f < 0) f = 0;
        else if (f > 1) f = 1;
        let jx = jx0 + f * djx - uw;
        let jz = jz0 + f * djz;
        const off = rz * ex0 - rx * ez0;
        const g = g0 + f * dg;
        let beyond: number;
        if (radial) {
          let turn = off / g;
          if (turn > 0.5) turn = 0.5;
          else if (turn < -0.5) turn = -0.5;
          const turned = jx - turn * jz;
          jz += turn * jx;
          jx = turned;
          beyond = off > 0 ? off - above * g : -off - below * g;
          // A ray outside the curtain is beyond its edge wherever it goes.
          if (above < 0) beyond = off - above * g;
          else if (below < 0) beyond = -off - below * g;
        } else beyond = off > 0 ? off - above : -off - below;
        if (beyond > 0) {
          const r = beyond / (b0 + EDGE_M);
          const fade = r > 6 ? 0 : Math.exp(-Math.LN2 * r * r);
          jx *= fade;
          jz *= fade;
        }
        ax += jx;
        az = jz;
      }

      // The drop: drag with an exponential step, gravity, evaporation.
      const sx = vx - ax;
      const sz = vz - az;
      const re = PER_SPEED * d * Math.sqrt(sx * sx + sz * sz);
      const ri = tableIndex(re);
      const tau = RELAX * d2 * EASE_TABLE[ri]!;
      const y = dt / tau;
      const decay = y > 40 ? 0 : 1 / (1 + y * (1 + y * (1 / 2 + y * (1 / 6 + y / 24))));
      const nx = ax + sx * decay;
      const nz = az + sz * decay - GRAVITY * tau * (1 - decay);
      const mx = (vx + nx) / 2;
      const mz = (vz + nz) / 2;
      const hx = x + (mx * dt) / 2;
      const hz = z + (mz * dt) / 2;
      const fromX = x;
      const fromZ = z;
      x += mx * dt;
      z += mz * dt;
      vx = nx;
      vz = nz;
      t += dt;
      if (recorder) recorder.step(fromX, fromZ, x, z, dt, m + gap);
      if (d2 > coreD2) {
        d2 -= shrink * VENTILATION_TABLE[ri]! * dt;
        if (d2 < coreD2) {
          d2 = coreD2;
          driedAt = t;
        }
        d = Math.sqrt(d2);
      }
      if (passedOver < 0 && fromX < R / 2 && x >= R / 2) passedOver = fromZ + ((z - fromZ) * (R / 2 - fromX)) / (x - fromX) > topM ? 1 : 0;

      // Leaf and wood at the height of the step's middle, over the part of the step that lies within the outline.
      let caughtIn = false;
      if (hz > skirtM && hz < topM && hx < edgeX && hx > -edgeX) {
        const r = Math.floor(hx * perR);
        const cx = hx - r * R - R / 2;
        const h = half[(hz / stepM) | 0]!;
        // Never nothing: a drop may fall straight down.
        const reach = ((mx < 0 ? -mx : mx) * dt) / 2 + 1e-9;
        const low = cx - reach > -h ? cx - reach : -h;
        const high = cx + reach < h ? cx + reach : h;
        if (high > low) {
          caughtIn = true;
          if (row !== r) {
            // Gaps: of what enters a row, the filled share of its length meets leaf.
            const all = m + gap;
            m = all * filled;
            gap = all - m;
            row = r;
          }
          const zi = (hz / stepM) | 0;
          const deep = (low + high) / 2;
          const leaf = deep > coreShare * h || deep < -coreShare * h ? shell[zi]! : core[zi]!;
          const speed = Math.sqrt(mx * mx + mz * mz);
          const st = tau * speed;
          const stLeaf = st * perLeaf;
          const eLeaf = stLeaf / (stLeaf + leafBeta);
          const settle = 0.5 * tau * GRAVITY;
          let q = leaf * (eLeaf * eLeaf * speed + settle);
          if (wood > 0) {
            const stWood = st * perWood;
            const eWood = stWood / (stWood + woodBeta);
            q += wood * (eWood * eWood * speed + settle);
          }
          q *= (G * dt * (high - low)) / (2 * reach);
          const caught = (m * q) / (1 + q / 2 + (q * q) / 12);
          m -= caught;
          let cell = ((hz - skirtM) * perCell) | 0;
          if (cell >= HEIGHTS) cell = HEIGHTS - 1;
          if (r === 0) {
            // Shared out over the trunk line where the step crosses it.
            const nearPart = high <= 0 ? 1 : low >= 0 ? 0 : -low / (high - low);
            ends[at + NEAR]! += caught * nearPart;
            ends[at + FAR]! += caught * (1 - nearPart);
            if (nearPart > 0 && nearPart < 1) {
              ends[nearAt + cell * DEPTHS + DEPTHS / 2 - 1]! += caught * nearPart;
              ends[nearAt + cell * DEPTHS + DEPTHS / 2]! += caught * (1 - nearPart);
            } else ends[nearAt + cell * DEPTHS + ((((deep / h + 1) / 2) * DEPTHS) | 0)]! += caught;
          } else {
            ends[rowsAt + cell]! += caught;
            ends[at + ROWS]! += caught;
          }
        }
      }
      if (!caughtIn && row === row) {
        m += gap;
        gap = 0;
        row = NaN;
      }

      if (z <= 0) {
        // Where it met the ground within the step.
        landsAt = fromZ > 0 ? fromX + ((x - fromX) * fromZ) / (fromZ - z) : x;
        aloft = past(t / MOST_SECONDS);
        break;
      }
      if (m + gap < TRACE) {
        ends[at + GROUND_IN]! += m + gap;
        return;
      }
      if (x > MOST_X_M || x < -MOST_X_M || z > MOST_Z_M) break;
      if (t > MOST_SECONDS) {
        const fall = z / (GRAVITY * tau);
        landsAt = x + uw * fall;
        aloft = past((t + fall) / MOST_SECONDS);
        break;
      }
    }
    const left = m + gap;
    const onGround = left * (1 - aloft);
    const out = within01(0.5 + (Math.abs(landsAt) / edgeX - 1) / LANDING_SPREAD);
    ends[at + GROUND_IN]! += onGround * (1 - out);
    ends[at + GROUND_OUT]! += onGround * out;
    const d2Start = diameterM * diameterM;
    const dry = past(driedAt > 0 ? t / driedAt : (d2Start - d2) / (d2Start - coreD2));
    const over = passedOver < 0 ? z > topM : passedOver === 1;
    ends[at + DRIED]! += left * aloft * dry;
    ends[at + (over ? OVER : THROUGH)]! += left * aloft * (1 - dry);
  }
}
