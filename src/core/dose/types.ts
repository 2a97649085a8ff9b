import type { Formulation } from '../mix/types.ts';

/**
 * What a label's rate counts: a hectare of ground; 100 L of a dilute spray; 10 000 m² of leaf wall; a hectare and a
 * metre of crown height; 10 000 m³ of tree-row volume; percent of a reference water.
 */
export type LabelBasis =
  | 'per-hectare'
  | 'per-100-l-dilute'
  | 'per-leaf-wall'
  | 'per-crown-height'
  | 'per-row-volume'
  | 'percent-of-water';

/** What the label or the law lets the dose do with the canopy. Stated by the user; `none` until they do. */
export type Adaptation = 'none' | 'downward' | 'required';

export interface Label {
  readonly id: string;
  /** The user's own name for the product. */
  readonly name: string;
  readonly unit: 'kg' | 'L';
  /** Decides its place in the order of mixing, unless the label says otherwise. */
  readonly formulation?: Formulation;
  readonly basis: LabelBasis;
  /** In `unit` by the basis; percent for `percent-of-water`. */
  readonly rate: number;
  /** `percent-of-water`: the water that the percentage is meant for, L/ha. */
  readonly referenceWaterLPerHa?: number;
  /** Most product on a hectare of ground in one treatment, in `unit`. */
  readonly maxPerHa?: number;
  /** Most product on a hectare of ground in one season, in `unit`. */
  readonly maxPerSeason?: number;
  /** Most treatments in one season. */
  readonly maxUses?: number;
  readonly minWaterLPerHa?: number;
  readonly maxWaterLPerHa?: number;
  /** How strong the mix may be against the dilute one. */
  readonly maxConcentration?: number;
  readonly adaptation?: Adaptation;
  /** The user's own floor under an adapted dose, share of the label dose 0…1. */
  readonly floor?: number;
  /** Smallest air-carried drops that the label allows, as a droplet class; none stated when absent. */
  readonly finestClass?: 'VF' | 'F' | 'M' | 'C' | 'VC' | 'XC' | 'UC';
}

export const STRATEGY_IDS = [
  'ground-area',
  'row-length',
  'crown-height',
  'leaf-wall',
  'row-volume',
  'us-row-volume',
  'metric-multiplier',
  'swiss-affine',
  'unit-canopy-row',
  'row-distance',
  'stage-volume',
  'occupied-volume',
  'leaf-area'
] as const;
export type StrategyId = (typeof STRATEGY_IDS)[number];
