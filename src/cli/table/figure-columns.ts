import { figuresOf, type Applied, type SheetOptions } from '#core/dose/table/columns.ts';
import { ownStrategies } from '#core/dose/own/own.ts';
import type { OwnStrategy } from '#core/dose/own/types.ts';
import { OUTPUTS, strategyOutputs, type Output, type SaidOutput } from '#core/dose/table/plan.ts';
import { SHEET_ROWS } from '#core/dose/table/sheet.ts';
import type { Label } from '#core/dose/types.ts';
import type { AssumptionValues } from '#core/working/assumption.ts';
import { BATCH_ROWS } from '#job/csv/batch.ts';
import type { Maker } from './maker.ts';

/** What figures a table has, and what they are worked out with. */
export interface Figures {
  readonly outputs: readonly (Output | SaidOutput)[];
  readonly options: SheetOptions;
}
export const USUAL: Figures = { outputs: OUTPUTS, options: {} };

/** What every strategy says, and with what. Plain data, for threads and the manifest. */
export interface StrategiesWish {
  readonly label?: Label;
  readonly applied?: Applied;
  readonly assumptions?: AssumptionValues;
  readonly faces?: number;
  readonly own?: readonly OwnStrategy[];
}

export function figuresFor(wish: StrategiesWish | null): Figures {
  if (!wish) return USUAL;
  const { label, applied, assumptions, faces } = wish;
  const options = { label, appliedLPerHa: applied, assumptions, faces };
  return { outputs: strategyOutputs({ ...options, own: ownStrategies(wish.own) }), options };
}

/** The figures of every canopy. */
export function figureColumns({ outputs, options }: Figures): Maker {
  if (BATCH_ROWS > SHEET_ROWS) throw new Error('a batch is larger than a sheet');
  const { columns, take } = figuresOf(outputs, options);
  return {
    names: outputs.map((o) => o.name),
    // Canopies that the reader lets in have every figure of ours; a formula of the user may have none.
    mayLack: outputs.map((o) => o.strategy?.id.startsWith('own.') ?? false),
    make(batch) {
      take(batch);
      return { columns, told: [] };
    }
  };
}
