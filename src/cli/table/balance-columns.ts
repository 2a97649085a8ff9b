import type { Canopy } from '#core/canopy/types.ts';
import { balance } from '#core/spray/balance.ts';
import { transport } from '#core/spray/transport.ts';
import type { Fate, SprayBalance, SprayCase } from '#core/spray/types.ts';
import { BATCH_ROWS, type Batch } from '#job/csv/batch.ts';
import { shortened } from '#job/problem.ts';
import { sprayCli as words } from '#words/en/spray/cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/spray/join.ts';
import { inFrontOf, type Front } from './front.ts';
import type { Maker, Told } from './maker.ts';

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

export const BALANCE_NAMES = Object.keys(COLUMNS);
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
export const canopyOf = (b: Batch, i: number): Canopy => ({
  heightM: b.treeHeightM[i]!,
  skirtM: b.skirtHeightM[i]!,
  widthM: b.canopyWidthM[i]!,
  filledFraction: b.filledFraction[i]!,
  ...(Number.isNaN(b.ladM2PerM3[i]!) ? {} : { ladM2PerM3: b.ladM2PerM3[i]! })
});

/** Where the spray goes in front of every canopy; why there is no balance of one is told, and its cells stay empty. */
export function balanceColumns(front: Front): Maker {
  const columns = VALUES.map(() => new Float64Array(BATCH_ROWS));
  return {
    names: BALANCE_NAMES,
    mayLack: BALANCE_NAMES.map(() => true),
    make(batch) {
      const told: Told[] = [];
      for (let i = 0; i < batch.count; i++) {
        const c = inFrontOf(front, canopyOf(batch, i), batch.rowSpacingM[i]!);
        if ('kind' in c) {
          told.push({ line: batch.line[i]!, text: words.table.line(shortened(batch.block[i]!), refusalSentence(c, 'metric')) });
          for (const column of columns) column[i] = NaN;
          continue;
        }
        const b = balance(c, transport(c));
        VALUES.forEach((value, k) => (columns[k]![i] = value(b, c) ?? NaN));
      }
      return { columns, told };
    }
  };
}
