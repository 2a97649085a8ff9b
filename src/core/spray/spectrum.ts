/** Grid of drop sizes, µm: equally spaced in the logarithm. A spectrum is a set of weights on it. */
const SIZES = 10;
const FINEST_UM = 40;
const COARSEST_UM = 900;

export const SIZE_GRID_UM: readonly number[] = Array.from({ length: SIZES }, (_, i) => FINEST_UM * (COARSEST_UM / FINEST_UM) ** (i / (SIZES - 1)));

/**
 * Share of the volume in drops below a size: Rosin–Rammler, F = 1 − exp(−(d/δ)^n), n = ln 0.1520 / ln(Dv0.1/Dv0.5), δ = Dv0.5/(ln 2)^(1/n).
 * @param d size, in the unit of @param dv50 @param finePart Dv0.1 over Dv0.5, between 0 and 1
 */
export function volumeBelow(d: number, dv50: number, finePart: number): number {
  const n = exponent(finePart);
  const delta = dv50 / Math.LN2 ** (1 / n);
  return 1 - Math.exp(-((d / delta) ** n));
}
const exponent = (finePart: number): number => Math.log(Math.log(1 / 0.9) / Math.LN2) / Math.log(finePart);

/** Weights of the grid's sizes for a spectrum, together 1: the volume between the geometric middles, the ends with their tails. */
export function sizeWeights(vmdUm: number, finePart: number): Float64Array {
  const weights = new Float64Array(SIZES);
  let below = 0;
  for (let i = 0; i < SIZES; i++) {
    const upTo = i === SIZES - 1 ? 1 : volumeBelow(Math.sqrt(SIZE_GRID_UM[i]! * SIZE_GRID_UM[i + 1]!), vmdUm, finePart);
    weights[i] = upTo - below;
    below = upTo;
  }
  return weights;
}
