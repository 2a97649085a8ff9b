import type { Unit } from '#core/quantity/units.ts';

/** A unit of the engine, or one in which a number is only ever written down. */
export type FieldUnit = Unit | 'gal/1000 ft3';

/** What a number may be: `least` and `most` are allowed themselves. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly unit: FieldUnit;
  readonly whole?: true;
}

export const range = (least: number, most: number, unit: FieldUnit): Range => ({ least, most, unit });
export const whole = (least: number, most: number): Range => ({ least, most, unit: '1', whole: true });

export const PRESSURE = range(0.5, 60, 'bar');
export const SPEED = range(0.5, 20, 'km/h');
export const PTO = range(100, 1200, 'rpm');
export const WATER = range(1, 20_000, 'L/ha');
export const SHARE = range(0, 1, '1');
export const TREE_HEIGHT = range(0.2, 20, 'm');
export const TREE_WIDTH = range(0.1, 12, 'm');
export const TREE_SKIRT = range(0, 15, 'm');

/** What the first screen's fields may hold: they need not wait for the table of all. */
export const BLOCKS = {
  areaHa: range(0.001, 10_000, 'ha'),
  rowSpacingM: range(0.5, 20, 'm'),
  treeSpacingM: range(0.1, 20, 'm'),
  rows: whole(1, 10_000),
  rowLengthM: range(1, 10_000, 'm'),
  concentration: range(0.1, 100, '1'),
  ownWaterLPerHa: WATER
} as const;

export const CANOPY = {
  heightM: TREE_HEIGHT,
  widthM: TREE_WIDTH,
  skirtM: TREE_SKIRT,
  filledFraction: SHARE,
  missingFraction: SHARE,
  tallestTenthM: range(0.2, 25, 'm'),
  usDensityGalPer1000Ft3: range(0.1, 3, 'gal/1000 ft3'),
  ladM2PerM3: range(0.05, 15, 'm2/m3')
} as const;

export const SETTING = { speedKmH: SPEED, pressureBar: PRESSURE, ptoRpm: PTO } as const;
