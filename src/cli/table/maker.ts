import type { Batch } from '#job/csv/batch.ts';
import type { RowProblem } from '#job/csv/header.ts';

/** What is wrong with a row: a code of the reader, or a sentence of what else has looked at it. */
export type Told = RowProblem | { readonly line: number; readonly text: string };

/** Columns that are made of a batch. They are filled anew for the next. */
export interface Made {
  /** A number for every canopy of the batch; NaN is an empty cell. */
  readonly columns: readonly Float64Array[];
  /** What is to be told of some canopies beside what the reader tells. */
  readonly told: readonly Told[];
}

/** Makes the columns of a table, batch by batch. */
export interface Maker {
  readonly names: readonly string[];
  /** Whether a column may have empty cells. */
  readonly mayLack: readonly boolean[];
  make(batch: Batch): Made;
}

/** The columns of several, one behind the other. */
export function sideBySide(makers: readonly Maker[]): Maker {
  if (makers.length === 1) return makers[0]!;
  return {
    names: makers.flatMap((m) => m.names),
    mayLack: makers.flatMap((m) => m.mayLack),
    make(batch) {
      const made = makers.map((m) => m.make(batch));
      return { columns: made.flatMap((m) => m.columns), told: made.flatMap((m) => m.told) };
    }
  };
}
