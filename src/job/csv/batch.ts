import { ERROR_QUANTITIES, type ErrorQuantity, type Quantity } from './columns.ts';
import type { RowProblem } from './header.ts';

/** Rows as columns, `count` of them, each with its line (or row) of the file. */
export type Batch = Readonly<Pick<CanopyBatch, 'count' | 'block' | 'line' | 'errors' | Quantity>>;

export const BATCH_ROWS = 2048;
/** Problems after which a batch is handed on though it is not full. */
export const BATCH_PROBLEMS = 256;

/**
 * Rows as columns, `count` of them filled. One batch is used again and again: read it before asking for the next.
 * Where a row does not tell a density, NaN stands; skirt and filled fraction have their defaults, 0 and 1.
 */
export class CanopyBatch implements Readonly<Record<Quantity, Float64Array>> {
  count = 0;
  readonly block: string[] = [];
  readonly line = new Float64Array(BATCH_ROWS);
  readonly rowSpacingM = new Float64Array(BATCH_ROWS);
  readonly treeHeightM = new Float64Array(BATCH_ROWS);
  readonly skirtHeightM = new Float64Array(BATCH_ROWS);
  readonly canopyWidthM = new Float64Array(BATCH_ROWS);
  /** US gallons per 1000 ft³, or NaN. */
  readonly usDensityGalPer1000Ft3 = new Float64Array(BATCH_ROWS);
  /** m² per m³, or NaN. */
  readonly ladM2PerM3 = new Float64Array(BATCH_ROWS);
  readonly filledFraction = new Float64Array(BATCH_ROWS);
  /** How sure the means are, where that is read; NaN where a row does not tell. */
  readonly errors: Readonly<Record<ErrorQuantity, Float64Array>> | null;
  /** What was refused among and after these rows, in the order of the file. */
  readonly problems: RowProblem[] = [];

  constructor(withErrors = false) {
    this.errors = withErrors ? (Object.fromEntries(ERROR_QUANTITIES.map((q) => [q, new Float64Array(BATCH_ROWS)])) as Record<ErrorQuantity, Float64Array>) : null;
  }

  get full(): boolean {
    return this.count === BATCH_ROWS || this.problems.length >= BATCH_PROBLEMS;
  }

  clear(): void {
    this.count = 0;
    this.block.length = 0;
    this.problems.length = 0;
  }
}
