/** Amounts of one product, one for each load, that a person can weigh and that add up exactly. */
export interface Portions {
  /** In the label's unit; the last one carries what rounding left. */
  readonly loads: readonly number[];
  /** Their exact sum. */
  readonly total: number;
  /** What they are rounded to, in the label's unit: a gram or a millilitre, less where the loads are small. */
  readonly step: number;
}

/** Grams of a kg, millilitres of a litre. */
const PER_UNIT = 1000;
/** Rounding may move a load's dose by this share; beyond it the step is made finer. */
const MOST_OFF = 0.02;
const FINEST = 1e6;
/** What binary arithmetic leaves of a whole step. */
const HAIR = 1e-6;

/**
 * Shares `perHa × area` out over the loads in whole steps. All but the last are rounded by themselves, the last takes the rest, so that the sum
 * is area × dose to the step. No load passes `mostPerHa` on its land, and so neither does the sum: what that cuts off is missing from it.
 * @param perHa kg/ha or L/ha, 0 or above
 * @param areas ha of each load, above 0
 */
export function portions(perHa: number, areas: readonly number[], mostPerHa = Infinity): Portions {
  const exact = areas.map((a) => perHa * a);
  const least = Math.min(...exact);
  let k = PER_UNIT;
  while (least > 0 && k < FINEST && areas.length / 2 > MOST_OFF * least * k) k *= 10;
  const cap = (area: number): number => Math.floor(mostPerHa * area * k + HAIR);
  let left = Math.round(exact.reduce((a, b) => a + b, 0) * k);
  const steps = exact.map((amount, i) => {
    const mine = i === exact.length - 1 ? left : Math.round(amount * k);
    const put = Math.min(mine, left, cap(areas[i]!));
    left -= put;
    return put;
  });
  return { loads: steps.map((s) => s / k), total: steps.reduce((a, b) => a + b, 0) / k, step: 1 / k };
}

/** To whole steps, without what binary arithmetic leaves behind. */
export const rounded = (amount: number, step: number): number => {
  const k = Math.round(1 / step);
  return Math.round(amount * k) / k;
};
