import type { Canopy } from '#core/canopy/types.ts';
import { balance } from '#core/spray/balance.ts';
import { transport } from '#core/spray/transport.ts';
import type { Fate, SprayBalance, SprayCase } from '#core/spray/types.ts';
import type { Refused } from '#core/working/answer.ts';
import type { CanopyBatch } from '#job/csv/batch.ts';
import { inFrontOf, type Front } from './front.ts';

const share = (fate: Fate) => (b: SprayBalance) => percent(b.shares[fate]);

/** Columns behind the figures of a canopy, in this order. A figure that is not there is an empty cell. */
const COLUMNS: Readonly<Record<string, (b: SprayBalance, c: SprayCase) => number | null>> = {
  spray_volume_l_per_ha: (_, c) => rounded(c.volumeLPerHa),
  on_trees_percent: (b) => percent(b.onTrees),
  near_percent: share('near'),
  far_percent: share('far'),
  other_rows_percent: share('rows'),
  ground_inside_percent: share('ground-in'),
  ground_outside_percent: share('ground-out'),
  over_top_percent: share('over'),
  through_percent: share('through'),
  dried_percent: share('dried'),
  lost_percent: (b) => percent(b.lost),
  deposit_ul_per_cm2: (b) => rounded(b.depositUlPerCm2),
  deposit_cv: (b) => rounded(b.cv)
};

export const BALANCE_HEADER = Object.keys(COLUMNS).join(',');
export const NO_BALANCE = ','.repeat(Object.keys(COLUMNS).length - 1);
const VALUES = Object.values(COLUMNS);

/** More decimals than these would pretend: the model is uncertain by points. */
const DECIMALS = 2;
const DIGITS = 4;
function percent(value: number): number {
  return Number((value * 100).toFixed(DECIMALS));
}
function rounded(value: number | null): number | null {
  return value === null ? null : Number(value.toPrecision(DIGITS));
}

/** Canopy `i` of a batch as a document would have it; the outline is the default one, as in the other columns. */
export const canopyOf = (b: CanopyBatch, i: number): Canopy => ({
  heightM: b.treeHeightM[i]!,
  skirtM: b.skirtHeightM[i]!,
  widthM: b.canopyWidthM[i]!,
  filledFraction: b.filledFraction[i]!,
  ...(Number.isNaN(b.ladM2PerM3[i]!) ? {} : { ladM2PerM3: b.ladM2PerM3[i]! })
});

/** The balance columns of one canopy, or why there are none. */
export function balanceCells(front: Front, batch: CanopyBatch, i: number): string | Refused {
  const c = inFrontOf(front, canopyOf(batch, i), batch.rowSpacingM[i]!);
  if ('kind' in c) return c;
  const b = balance(c, transport(c));
  return VALUES.map((value) => value(b, c) ?? '').join(',');
}
