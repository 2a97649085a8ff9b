import { FOOT_M } from '#core/quantity/constants.ts';
import type { Range } from '../limits.ts';

/** The numbers of a point. */
export const COORDINATES = ['lateralM', 'alongM', 'heightM'] as const;
export type Coordinate = (typeof COORDINATES)[number];

/** What a coordinate may be, and whether each point must tell it. Along the row may be counted from anywhere, as maps do. */
export const POINT_RANGES: Readonly<Record<Coordinate, Range & { readonly needed: boolean }>> = {
  lateralM: { least: -100, most: 100, unit: 'm', needed: true },
  alongM: { least: -1e7, most: 1e7, unit: 'm', needed: false },
  heightM: { least: -20, most: 60, unit: 'm', needed: true }
};

export interface PointColumn {
  readonly coordinate: Coordinate;
  /** Metres in one of the column's unit. */
  readonly factor: number;
  readonly unit: 'm' | 'ft';
}

const metre = (coordinate: Coordinate): PointColumn => ({ coordinate, factor: 1, unit: 'm' });
const foot = (coordinate: Coordinate): PointColumn => ({ coordinate, factor: FOOT_M, unit: 'ft' });

/** Every column of numbers by its name: the suffix is the unit. */
export const POINT_COLUMNS: ReadonlyMap<string, PointColumn> = new Map([
  ['lateral_m', metre('lateralM')],
  ['lateral_ft', foot('lateralM')],
  ['along_m', metre('alongM')],
  ['along_ft', foot('alongM')],
  ['height_m', metre('heightM')],
  ['height_ft', foot('heightM')]
]);

/** Columns that scanners write and that nothing here needs; like those that begin with `note_`, they are passed over. */
export const PASSED_OVER: ReadonlySet<string> = new Set(['intensity', 'time', 'ring', 'return']);

export const columnsOf = (coordinate: Coordinate): string[] => [...POINT_COLUMNS].filter(([, c]) => c.coordinate === coordinate).map(([name]) => name);
