/** Inputs are made so many at a time. */
export const LOT = 500;

export interface Lot {
  readonly door: string;
  readonly seed: number;
  readonly lot: number;
  /** Inputs of the lot that were given already. */
  readonly from: number;
  /** Inputs of the door in all. */
  readonly runs: number;
}

export interface LotDone {
  readonly given: number;
  readonly taken: number;
  readonly slowestMs: number;
  readonly wrong: readonly string[];
}
