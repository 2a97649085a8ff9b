import { FOOT_M } from '#core/quantity/constants.ts';
import { RANGES, type FieldUnit, type Range } from '../limits.ts';

/** The numbers of a row, in the engine's units. */
export const QUANTITIES = [
  'rowSpacingM',
  'treeHeightM',
  'skirtHeightM',
  'canopyWidthM',
  'usDensityGalPer1000Ft3',
  'ladM2PerM3',
  'filledFraction'
] as const;
export type Quantity = (typeof QUANTITIES)[number];

/** How sure the means of a row are; read only where intervals are asked for. NaN stands where a row does not tell. */
export const ERROR_QUANTITIES = ['heightSeM', 'skirtSeM', 'widthSeM', 'rowSpacingSeM', 'heightWidthCorrelation', 'trees'] as const;
export type ErrorQuantity = (typeof ERROR_QUANTITIES)[number];

/** What a quantity may be and what stands for it where nothing was written; `undefined` where something must be. */
export const ROW_RANGES: Readonly<Record<Quantity, Range & { readonly absent: number | undefined }>> = {
  rowSpacingM: { ...RANGES.blocks.rowSpacingM, absent: undefined },
  treeHeightM: { ...RANGES.canopy.heightM, absent: undefined },
  skirtHeightM: { ...RANGES.canopy.skirtM, absent: 0 },
  canopyWidthM: { ...RANGES.canopy.widthM, absent: undefined },
  usDensityGalPer1000Ft3: { ...RANGES.canopy.usDensityGalPer1000Ft3, absent: NaN },
  ladM2PerM3: { ...RANGES.canopy.ladM2PerM3, absent: NaN },
  filledFraction: { ...RANGES.canopy.filledFraction, absent: 1 }
};

/** The same for every number that a row may hold. */
export const ALL_RANGES: Readonly<Record<Quantity | ErrorQuantity, Range & { readonly absent: number | undefined }>> = {
  ...ROW_RANGES,
  ...(Object.fromEntries(ERROR_QUANTITIES.map((q) => [q, { ...RANGES.errors[q], absent: NaN }])) as Record<ErrorQuantity, Range & { readonly absent: number }>)
};

export interface Column {
  readonly quantity: Quantity | ErrorQuantity;
  /** Engine's unit in one of the column's. */
  readonly factor: number;
  readonly unit: FieldUnit | 'ft';
}

export const BLOCK = 'block';
/** Columns of this beginning are the writer's own and are passed over. */
export const NOTE = 'note_';

const metre = (quantity: Column['quantity']): Column => ({ quantity, factor: 1, unit: 'm' });
const foot = (quantity: Column['quantity']): Column => ({ quantity, factor: FOOT_M, unit: 'ft' });
const plain = (quantity: Column['quantity']): Column => ({ quantity, factor: 1, unit: ALL_RANGES[quantity].unit });

/** Every column of numbers by its name: the suffix is the unit. */
export const COLUMNS: ReadonlyMap<string, Column> = new Map([
  ['row_spacing_m', metre('rowSpacingM')],
  ['row_spacing_ft', foot('rowSpacingM')],
  ['tree_height_m', metre('treeHeightM')],
  ['tree_height_ft', foot('treeHeightM')],
  ['skirt_height_m', metre('skirtHeightM')],
  ['skirt_height_ft', foot('skirtHeightM')],
  ['canopy_width_m', metre('canopyWidthM')],
  ['canopy_width_ft', foot('canopyWidthM')],
  ['density_gal_per_1000ft3', plain('usDensityGalPer1000Ft3')],
  ['lad_m2_per_m3', plain('ladM2PerM3')],
  ['filled_fraction', plain('filledFraction')],
  ['height_se_m', metre('heightSeM')],
  ['height_se_ft', foot('heightSeM')],
  ['skirt_se_m', metre('skirtSeM')],
  ['skirt_se_ft', foot('skirtSeM')],
  ['width_se_m', metre('widthSeM')],
  ['width_se_ft', foot('widthSeM')],
  ['row_spacing_se_m', metre('rowSpacingSeM')],
  ['row_spacing_se_ft', foot('rowSpacingSeM')],
  ['height_width_correlation', plain('heightWidthCorrelation')],
  ['trees', plain('trees')]
]);

export const namesOf = (quantity: Column['quantity']): string[] => [...COLUMNS].filter(([, c]) => c.quantity === quantity).map(([name]) => name);
