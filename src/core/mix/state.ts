import type { Finding } from '../advice/finding.ts';
import type { Product } from '../dose/product.ts';
import type { Label } from '../dose/types.ts';
import type { Answer, Given } from '../working/answer.ts';
import type { MixGroup, OrderStep } from './order.ts';
import type { Passes } from './passes.ts';
import type { PutIn } from './types.ts';

/** Product of one partner for one load, in the label's unit. */
export interface LoadProduct {
  readonly label: Label;
  /** What the area of the load takes, before rounding. */
  readonly exact: Answer;
  /** The same in amounts that a person can weigh; 0 where `exact` is refused. */
  readonly amount: number;
  /** For the mix that stays behind: in the first load alone. */
  readonly forResidual: number;
  /** What is weighed out. */
  readonly total: number;
}

/** One tank fill. */
export interface Load {
  /** Counted from 1. */
  readonly number: number;
  /** Mix that is sprayed from it, L. */
  readonly mix: Answer;
  /** What is filled in: the mix, and in the first load what stays behind as well, L. */
  readonly fill: Answer;
  readonly area: Answer;
  /** Rows that it treats, where the block's rows are known. */
  readonly rows: number | null;
  readonly products: readonly LoadProduct[];
}

/** One product of the mix over all loads. */
export interface PartnerState extends Product {
  readonly group: MixGroup;
  /** Product per 100 L of mix. */
  readonly strength: Answer;
  /** Dilute water over applied water; refused where no dilute water is known. */
  readonly concentration: Answer;
  /** Dose × area. */
  readonly exact: Answer;
  /** In the mix that stays behind. */
  readonly left: Answer;
  /** Sum of the loads' amounts, exact, without what is for the residual. */
  readonly forArea: number;
  readonly forResidual: number;
  readonly total: number;
  /** What the amounts are rounded to. */
  readonly step: number;
  readonly ordered: number | undefined;
  readonly putIn: readonly PutIn[];
}

/** How the rows are met, and what meets no row on the outer passes. */
export interface RowPasses {
  readonly passes: Passes;
  readonly outer: 'one-sided' | 'two-sided';
  readonly way: Answer;
  readonly faceFlow: Answer;
  /** Mix on all faces: what the area says, by another way. */
  readonly mix: Answer;
  /** Mix that meets no row if nothing is shut on the outer passes. */
  readonly spare: Answer;
  readonly spareShare: Answer;
}

export interface Rinse {
  readonly tenfold: Answer;
  readonly tenth: Answer;
  /** Water to take: tenfold where the residual is known, a tenth of the tank where it is not. */
  readonly water: Answer;
  /** Strength left after rinsing with it at once, and in three parts. */
  readonly once: Answer;
  readonly thrice: Answer;
}

export interface Work {
  readonly theoretical: Answer;
  readonly spraying: Answer;
  readonly outer: Answer;
  readonly turning: Answer;
  readonly filling: Answer;
  readonly total: Answer;
  readonly effective: Answer;
  readonly efficiency: Answer;
}

/** Loads, products, order of mixing and work of one treatment; every figure with its working. */
export interface LoadsState {
  readonly area: Answer;
  readonly areaFrom: 'mix' | 'block' | 'rows';
  /** Area of the whole block by its rows. */
  readonly rowsArea: Answer;
  readonly volume: Answer;
  readonly volumeFrom: 'check' | 'setting';
  readonly tank: Given;
  readonly residual: Given;
  readonly usable: Answer;
  readonly areaPerTank: Answer;
  readonly sprayed: Answer;
  readonly prepared: Answer;
  readonly overOrdered: Answer;
  readonly fills: 'full' | 'equal';
  readonly count: Answer;
  readonly loads: readonly Load[];
  readonly partners: readonly PartnerState[];
  readonly order: readonly OrderStep[];
  /** Share of the water that is in the tank before the first product. */
  readonly firstWater: Given;
  readonly rows: RowPasses | null;
  readonly rinse: Rinse;
  readonly work: Work;
  readonly assumptions: ReadonlyMap<string, Given>;
  readonly findings: readonly Finding[];
}
