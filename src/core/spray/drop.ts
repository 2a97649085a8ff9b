/** Drops of water in air at 20 °C: drag (Schiller & Naumann 1933), evaporation by the d² law with ventilation, capture by impaction. */

const AIR_KG_PER_M3 = 1.204;
const AIR_PA_S = 1.813e-5;
const WATER_KG_PER_M3 = 998;
export const GRAVITY = 9.81;
/** d(D²)/dt of a drop at rest, m²/s per K of wet-bulb depression: 8·k·ΔT/(ρ·L), computed at 20 °C. */
export const SHRINK_M2_PER_S_K = 83e-12;

/** Reynolds number of a drop. @param d m @param speed against the air, m/s */
export const reynolds = (d: number, speed: number): number => (AIR_KG_PER_M3 * speed * d) / AIR_PA_S;
/** Drag over Stokes' drag; Re < 1000. */
export const dragFactor = (re: number): number => 1 + 0.15 * re ** 0.687;
/** Ventilation: how much faster a moving drop shrinks; 0.3·Pr^⅓ of air = 0.27. */
export const ventilation = (re: number): number => 1 + 0.27 * Math.sqrt(re);
/** Relaxation time in Stokes' flow over D², s/m². */
export const RELAX = WATER_KG_PER_M3 / (18 * AIR_PA_S);
/** Reynolds number over speed × diameter, s/m². */
export const PER_SPEED = AIR_KG_PER_M3 / AIR_PA_S;

/** Relaxation time, drag-corrected, s. */
export const relaxation = (d: number, speed: number): number => (RELAX * d * d) / dragFactor(reynolds(d, speed));

/** Terminal speed of fall in still air, m/s. @param d m, 1 µm to 1 mm */
export function terminalSpeed(d: number): number {
  let v = 0;
  // v = g·τ(v): a shrinking map, which halving makes fast.
  for (let i = 0; i < 100; i++) v = (v + GRAVITY * relaxation(d, v)) / 2;
  return v;
}

/** Life of a drop of water at rest, s. @param d m @param deltaTK wet-bulb depression, K */
export const lifetimeS = (d: number, deltaTK: number): number => (d * d) / (SHRINK_M2_PER_S_K * deltaTK);

/** Impaction efficiency (St/(St + β))²: Petroff et al. 2009 (leaves), 2008 (twigs). St with the drag-corrected relaxation time and the element's size. */
export const impaction = (st: number, beta: number): number => (st / (st + beta)) ** 2;

/** One over the drag factor, and ventilation, over √Re, tabulated: they are asked for at every step. */
const PER_ROOT = 32;
const ENTRIES = 70 * PER_ROOT;
export const EASE_TABLE = Float64Array.from({ length: ENTRIES }, (_, i) => 1 / dragFactor((i / PER_ROOT) ** 2));
export const VENTILATION_TABLE = Float64Array.from({ length: ENTRIES }, (_, i) => ventilation((i / PER_ROOT) ** 2));
/** Place of a Reynolds number in the table; beyond its end the last entry stands. */
export const tableIndex = (re: number): number => {
  const i = (Math.sqrt(re) * PER_ROOT + 0.5) | 0;
  return i < ENTRIES ? i : ENTRIES - 1;
};
