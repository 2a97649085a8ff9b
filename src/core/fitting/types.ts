import type { DropletClass } from '../sprayer/types.ts';

/** A size that may be fitted. */
export interface StockItem {
  readonly table: string;
  readonly size: string;
  /** How many lie in the drawer; what is needed beyond them has to be bought. Unsaid: as many as needed. */
  readonly count?: number;
}

/** Weight of one position in the wanted profile, any positive scale. */
export interface OwnWeight {
  readonly position: string;
  readonly weight: number;
}

/** How the flow is to be spread over the open positions: as the canopy stands before each, alike, or by the user's own weights. */
export const WEIGHTINGS = ['canopy', 'uniform', 'own'] as const;

/** What the user wants of a fitting; everything unsaid is free. */
export interface Fitting {
  /** Sizes to choose from; without any, every size of the tables on the machine. */
  readonly stock?: readonly StockItem[];
  readonly weighting?: (typeof WEIGHTINGS)[number];
  readonly weights?: readonly OwnWeight[];
  /** Application volume to reach; unsaid, the wanted water. */
  readonly targetLPerHa?: number;
  readonly pressureMinBar?: number;
  readonly pressureMaxBar?: number;
  readonly speedMinKmH?: number;
  readonly speedMaxKmH?: number;
  readonly finestClass?: DropletClass;
  readonly coarsestClass?: DropletClass;
  /** Left and right alike. Default true. */
  readonly mirrored?: boolean;
  readonly mostChanges?: number;
}
