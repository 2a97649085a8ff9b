import { emptyPath, jetPath, type JetKind, type JetPath } from '#core/air/jet.ts';
import { windAt, windProfile } from '#core/air/wind.ts';
import { balance } from '#core/spray/balance.ts';
import { GRAVITY, impaction, lifetimeS, relaxation, reynolds, SHRINK_M2_PER_S_K, terminalSpeed, ventilation } from '#core/spray/drop.ts';
import { volumeBelow } from '#core/spray/spectrum.ts';
import { transport } from '#core/spray/transport.ts';
import { CONSTANTS, sprayCaseOf } from '../../support/spray.ts';
import type { Call, Inputs } from '../../support/published.ts';

const given = (i: Inputs, name: string): number => {
  const v = i[name];
  if (typeof v !== 'number') throw new Error(`the case gives no ${name}`);
  return v;
};
const or = (i: Inputs, name: string, value: number): number => (i[name] === undefined ? value : given(i, name));
const drop = (i: Inputs): number => given(i, 'diameter_um') * 1e-6;

/** A jet at 2 m height, level unless told otherwise, free or in leaf of one density everywhere. */
function jet(i: Inputs): JetPath {
  const kind = i.kind as JetKind;
  const wind = windProfile(or(i, 'canopy_top_m', 3), or(i, 'wind_m_per_s', 0), CONSTANTS.windDecay);
  const angleDeg = or(i, 'angle_deg', 0);
  const radiusM = or(i, 'radius_m', 0);
  const a = (angleDeg * Math.PI) / 180;
  const start = { kind, xM: radiusM * Math.cos(a), zM: or(i, 'axis_height_m', 2) + radiusM * Math.sin(a), angleDeg, speedMPerS: given(i, 'speed_m_per_s'), widthM: given(i, 'width_m'), radiusM };
  const rows = sprayCaseOf().canopy;
  const density = (x: number, z: number): number => {
    if (i.apple === undefined) return or(i, 'area_m2_per_m3', 0);
    const off = Math.abs(x - rows.rowSpacingM * Math.floor(x / rows.rowSpacingM) - rows.rowSpacingM / 2);
    return z > 0.5 && z < 3 && off < 0.6 ? rows.ladM2PerM3 : 0;
  };
  return jetPath(emptyPath(kind), start, wind, density, CONSTANTS);
}
/** A column of a path at so many metres, or widths of its opening, from the outlet: nodes stand every 0.2 m. */
function along(i: Inputs, column: (p: JetPath, node: number) => number): number {
  const p = jet(i);
  const at = (i.at_m === undefined ? given(i, 'at_widths') * given(i, 'width_m') : given(i, 'at_m')) / 0.2;
  const k = Math.min(Math.floor(at + 1e-9), p.count - 2);
  const here = column(p, k);
  return here + (at - k) * (column(p, k + 1) - here);
}
const flux = (p: JetPath, k: number): number => Math.hypot(p.ux[k]!, p.uz[k]!);
const metres = (i: Inputs): number => (i.at_m === undefined ? given(i, 'at_widths') * given(i, 'width_m') : given(i, 'at_m'));

export const spray: Record<string, Call> = {
  terminal_speed: (i) => terminalSpeed(drop(i)),
  relaxation_ms: (i) => 1000 * relaxation(drop(i), terminalSpeed(drop(i))),
  fall_is_balanced: (i) => (GRAVITY * relaxation(drop(i), given(i, 'speed_m_per_s'))) / given(i, 'speed_m_per_s'),
  reynolds: (i) => reynolds(drop(i), given(i, 'speed_m_per_s')),
  lifetime: (i) => lifetimeS(drop(i), given(i, 'delta_t_K')),
  shrinking: () => SHRINK_M2_PER_S_K * 1e12,
  ventilation: (i) => ventilation(given(i, 'reynolds')),
  impaction: (i) => impaction(given(i, 'stokes'), i.element === 'wood' ? CONSTANTS.woodBeta : CONSTANTS.leafBeta),
  /** At a speed, on the default leaf, of a drop that keeps its terminal speed's drag. */
  impaction_of_drop: (i) => impaction((relaxation(drop(i), 0) * given(i, 'speed_m_per_s')) / CONSTANTS.leafSizeM, CONSTANTS.leafBeta),
  jet_speed: (i) => along(i, (p, k) => p.speed[k]!),
  jet_speed_ratio: (i) => along(i, (p, k) => p.speed[k]!) / given(i, 'speed_m_per_s'),
  jet_width_over_distance: (i) => along(i, (p, k) => p.b[k]!) / metres(i),
  /** In still air without leaf momentum stays, so flow goes as the inverse of the flux-mean speed. */
  jet_flow_ratio: (i) => given(i, 'speed_m_per_s') / along(i, flux),
  /** Plane: flow from the width, times flux-mean speed. */
  jet_momentum_ratio: (i) => along(i, (p, k) => 3.011 * p.b[k]! * flux(p, k) ** 2) / (given(i, 'width_m') * given(i, 'speed_m_per_s') ** 2),
  jet_inclination: (i) => {
    const p = jet(i);
    const node = Array.from(p.z.subarray(0, p.count)).findIndex((z) => z >= given(i, 'height_m'));
    return (Math.atan2(p.uz[node]!, p.ux[node]!) * 180) / Math.PI;
  },
  wind_ratio: (i) => {
    const profile = windProfile(given(i, 'canopy_top_m'), 1, CONSTANTS.windDecay);
    return windAt(profile, given(i, 'upper_m')) / windAt(profile, given(i, 'lower_m'));
  },
  volume_below: (i) => volumeBelow(given(i, 'diameter_um'), given(i, 'dv50_um'), or(i, 'fine_part', 0.45)),
  times_finer: (i) => volumeBelow(given(i, 'diameter_um'), given(i, 'dv50_um'), 0.45) / volumeBelow(given(i, 'diameter_um'), given(i, 'coarser_um'), 0.45),
  /** What the screen shows: speed where the air meets the leaf over that where it leaves it, mean of the paths that pass through. */
  front_to_back: (i) => {
    const c = sprayCaseOf({
      outlet: 'tower', rowSpacingM: given(i, 'row_spacing_m'), heightM: 3, skirtM: 0.4, widthM: given(i, 'width_m'), ladM2PerM3: given(i, 'leaf_path') / given(i, 'width_m'),
      slotFromM: 0.8, slotToM: 2.4, airM3PerH: given(i, 'air_m3_per_h'), outletMPerS: given(i, 'speed_m_per_s'), constants: { windMPerS: 0 }
    });
    const through = balance(c, transport(c)).faces.filter((f) => f.outMPerS !== null);
    return through.reduce((a, f) => a + f.inMPerS / f.outMPerS!, 0) / through.length;
  }
};
