/** Wind across the rows by height, tabulated: the flight of drops asks for it at every step. */
export interface WindProfile {
  /** m/s every `stepM` from the ground up; positive with x. */
  readonly values: Float64Array;
  readonly stepM: number;
}

const STEP_M = 0.05;
const TOP_M = 21;

/**
 * Above the canopy the logarithmic profile over a rough surface, d = 0.67 H (Katul et al. 2004), z0 = 0.1 H (from memory); inside
 * exponential, u(H)·exp(−n(1 − z/H)) (Cionco 1978, n from memory).
 * @param topM height of the canopy H, m, > 0 @param atTopMPerS wind at H, m/s @param decay n
 */
export function windProfile(topM: number, atTopMPerS: number, decay: number): WindProfile {
  const values = new Float64Array(Math.ceil(TOP_M / STEP_M) + 2);
  const d = 0.67 * topM;
  const z0 = 0.1 * topM;
  const atTop = Math.log((topM - d) / z0);
  for (let i = 0; i < values.length; i++) {
    const z = i * STEP_M;
    values[i] = z >= topM ? (atTopMPerS * Math.log((z - d) / z0)) / atTop : atTopMPerS * Math.exp(-decay * (1 - z / topM));
  }
  return { values, stepM: STEP_M };
}

/** Wind at a height, m/s, straight between the table's heights. */
export function windAt({ values, stepM }: WindProfile, zM: number): number {
  const at = zM <= 0 ? 0 : Math.min(zM / stepM, values.length - 2);
  const i = at | 0;
  return values[i]! + (at - i) * (values[i + 1]! - values[i]!);
}
