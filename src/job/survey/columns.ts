import type { Measured } from '#core/canopy/survey/types.ts';
import { FOOT_M } from '#core/quantity/constants.ts';
import { RANGES, type Range } from '../limits.ts';

/** What may name a tree and its group. */
export const TREE_TEXTS = ['tree', 'row', 'variety'] as const;
export type TreeText = (typeof TREE_TEXTS)[number];

export const TREE_RANGES: Readonly<Record<Measured, Range>> = { height: RANGES.trees.heightM, skirt: RANGES.trees.skirtM, width: RANGES.trees.widthM };

/** A column of lengths: its unit, and for one of several widths the height at which they were measured. */
export interface TreeColumn {
  readonly name: string;
  readonly what: Measured;
  readonly unit: 'm' | 'ft';
  readonly atM?: number;
}

export const FACTOR = { m: 1, ft: FOOT_M } as const;

/** Columns by name, but for widths at a height, which are named by it. */
export const TREE_COLUMNS: readonly string[] = [...TREE_TEXTS, 'height_m', 'height_ft', 'skirt_m', 'skirt_ft', 'width_m', 'width_ft'];
/** How widths at a height are called, for people. */
export const WIDTHS_AT = ['width_m_at_1.5', 'width_ft_at_5'];

const LENGTH = /^(height|skirt|width)_(m|ft)$/;
const WIDTH_AT = /^width_(m|ft)_at_(\d{1,3}(?:[.,]\d{1,6})?)$/;

/** The column of lengths with this name, or null. */
export function lengthColumn(name: string): TreeColumn | null {
  const plain = LENGTH.exec(name);
  if (plain) return { name, what: plain[1] as Measured, unit: plain[2] as 'm' };
  const at = WIDTH_AT.exec(name);
  if (!at) return null;
  const unit = at[1] as 'm';
  return { name, what: 'width', unit, atM: Number((Number(at[2]!.replace(',', '.')) * FACTOR[unit]).toFixed(9)) };
}
