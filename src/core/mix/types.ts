/** Kinds of product by the usual two-letter codes, in no order. */
export const FORMULATIONS = ['WP', 'WG', 'DF', 'SG', 'SP', 'SC', 'SE', 'F', 'ME', 'CS', 'EC', 'EW', 'OD', 'SL', 'adjuvant', 'conditioner', 'other'] as const;
export type Formulation = (typeof FORMULATIONS)[number];

/** One product of the mix. */
export interface Partner {
  /** Id of its label. */
  readonly label: string;
  /** What was bought or set aside, in the label's unit. */
  readonly orderedAmount?: number;
  /** What really went into a load; loads that are not named are not known. */
  readonly putIn?: readonly PutIn[];
}

/** What was weighed or measured out for one load, in the label's unit. */
export interface PutIn {
  /** Counted from 1. */
  readonly load: number;
  readonly amount: number;
}

/** What goes into the tank for one treatment, and how the work goes. */
export interface Mix {
  /** Products together in the tank; without any, the block's own label. */
  readonly partners?: readonly Partner[];
  /** Full loads and a last one of what is left, or all loads alike. Default equal. */
  readonly fills?: 'full' | 'equal';
  /** Area treated where it is not the whole block. */
  readonly areaHa?: number;
  /** How the two outer rows are done: their outer faces in passes of one side, or with both sides on. Default one-sided. */
  readonly outerPasses?: 'one-sided' | 'two-sided';
  /** One turn on the headland. */
  readonly turnSeconds?: number;
  /** One load: drive to the water, fill, mix, drive back. */
  readonly fillMinutes?: number;
  /** Loads that are filled already, counted from the first. */
  readonly filled?: number;
  /** Mix that was really used on the area, once it is done. */
  readonly usedL?: number;
}
