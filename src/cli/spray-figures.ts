import { display, shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import type { Range } from '#core/spray/types.ts';
import { formatNumber, formatUnit } from '#words/index.ts';

/** Figures of the spray model: in whole points, since it is uncertain by many. */

const FIXED_SPACE = '\u00a0';
export const percent = (share: number): string => formatNumber(share * 100, 0);
export const percents = ([least, most]: Range): string => `${percent(least)}–${percent(most)}${FIXED_SPACE}%`;

const NOTHING = 0.0005;
const TEN = 0.0995;
/** A share to a whole point, below ten to a tenth; what is less than that is nothing. */
export const part = (share: number): string => `${share < NOTHING ? '0' : formatNumber(share * 100, share < TEN ? 1 : 0)}${FIXED_SPACE}%`;

/** A figure in its unit's usual decimals, however small, so that a column stands in line. */
export const inLine = (value: number, unit: Unit, system: UnitSystem): string => {
  const there = shown(value, unit, system);
  const { decimals } = display(unit, system);
  return formatNumber(Math.abs(there) < 0.5 * 10 ** -decimals ? 0 : there, decimals, system);
};
export const withUnit = (figure: string, unit: Unit, system: UnitSystem): string => `${figure}${FIXED_SPACE}${formatUnit(unit, system)}`;
