import { figuresOf, type SheetOptions } from '#core/dose/table/columns.ts';
import { OUTPUTS, type Output, type SaidOutput } from '#core/dose/table/plan.ts';
import { SHEET_ROWS } from '#core/dose/table/sheet.ts';
import { BATCH_ROWS } from '#job/csv/batch.ts';
import type { Maker } from './maker.ts';

/** What figures a table has, and what they are worked out with. */
export interface Figures {
  readonly outputs: readonly (Output | SaidOutput)[];
  readonly options: SheetOptions;
}
export const USUAL: Figures = { outputs: OUTPUTS, options: {} };

/** The figures of every canopy. */
export function figureColumns({ outputs, options }: Figures): Maker {
  if (BATCH_ROWS > SHEET_ROWS) throw new Error('a batch is larger than a sheet');
  const { columns, take } = figuresOf(outputs, options);
  return {
    names: outputs.map((o) => o.name),
    make(batch) {
      take(batch);
      return { columns, told: [] };
    }
  };
}
