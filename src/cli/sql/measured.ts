import { QUANTITIES, ROW_RANGES, type Column, type Quantity } from '#job/csv/columns.ts';
import type { Header } from '#job/csv/header.ts';
import { LONGEST_NAME } from '#job/csv/name.ts';
import { identifier, type Dialect } from './dialect.ts';
import { literal } from './expression.ts';

/** Under what name a quantity goes on, in the engine's unit (the density's is the column's). */
export const NAMES: Readonly<Record<Quantity, string>> = {
  rowSpacingM: 'row_spacing_m',
  treeHeightM: 'tree_height_m',
  skirtHeightM: 'skirt_height_m',
  canopyWidthM: 'canopy_width_m',
  usDensityGalPer1000Ft3: 'density_gal_per_1000ft3',
  ladM2PerM3: 'lad_m2_per_m3',
  filledFraction: 'filled_fraction'
};

export interface Measured {
  /** Items of the list behind SELECT. */
  readonly select: readonly string[];
  /** Conditions that a row meets, or `table` would refuse it. */
  readonly where: readonly string[];
}

/** Name of the relation within the statement. */
export const ALIAS = 'c';

/** The relation's columns as quantities: converted exactly, with the defaults of what was not told; what `table` refuses is left out. */
export function measured(header: Header, dialect: Dialect): Measured {
  const raw = (i: number): string => `${ALIAS}.${identifier(dialect, header.names[i]!)}`;
  const block = `CAST(${raw(header.columns.indexOf('block'))} AS STRING)`;
  const select = [`${block} AS block`];
  const where = [`TRIM(${block}) <> ''`, `LENGTH(${block}) <= ${LONGEST_NAME}`];
  const value: Partial<Record<Quantity, string>> = {};
  for (const quantity of QUANTITIES) {
    const { least, most, absent } = ROW_RANGES[quantity];
    const at = header.columns.findIndex((c) => typeof c === 'object' && c.quantity === quantity);
    // What has no number to stand for it stays NULL.
    const standing = absent === undefined || Number.isNaN(absent) ? 'CAST(NULL AS DOUBLE)' : literal(absent);
    if (at < 0) value[quantity] = standing;
    else {
      const { factor } = header.columns[at] as Column;
      const written = `TRY_CAST(${raw(at)} AS DOUBLE)${factor === 1 ? '' : ` * ${literal(factor)}`}`;
      const allowed = `${written} BETWEEN ${literal(least)} AND ${literal(most)}`;
      value[quantity] = absent === undefined || Number.isNaN(absent) ? written : `COALESCE(${written}, ${standing})`;
      // A text that is no number becomes NULL, and must not pass for something that was not told.
      where.push(absent === undefined ? allowed : `(${raw(at)} IS NULL OR ${allowed})`);
    }
    select.push(`${value[quantity]} AS ${NAMES[quantity]}`);
  }
  where.push(`${value.skirtHeightM} < ${value.treeHeightM}`);
  return { select, where };
}
