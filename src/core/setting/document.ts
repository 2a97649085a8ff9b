import type { Check } from '../check/types.ts';
import type { CanopyPhoto } from '../canopy/photo/types.ts';
import type { TreeSurvey } from '../canopy/survey/types.ts';
import type { Canopy } from '../canopy/types.ts';
import type { OwnStrategy } from '../dose/own/types.ts';
import type { Label, StrategyId } from '../dose/types.ts';
import type { Fitting } from '../fitting/types.ts';
import type { Mix } from '../mix/types.ts';
import type { ChosenRules } from '../record/rules.ts';
import type { WorkRecord } from '../record/types.ts';
import type { Seen } from '../spray/seen.ts';
import type { Machine, NozzleTable, PassPattern, Setting } from '../sprayer/types.ts';
import type { Day } from '../weather/types.ts';
import type { AssumptionValues } from '../working/assumption.ts';

export const FORMAT = 'rowtailor';
export const VERSION = 1;

/** One stage of the season: the canopy that stands then and the setting for it. */
export interface Rung {
  readonly id: string;
  readonly name: string;
  /** Growth stage, BBCH 00–99. */
  readonly bbch?: number;
  /** ISO date. */
  readonly date?: string;
  /** How many times the block is treated with this setting. Default 1. */
  readonly treatments?: number;
  readonly canopy: Canopy;
  /** The trees that were measured for it. */
  readonly survey?: TreeSurvey;
  /** Gaps that were counted in a photograph of it. */
  readonly photo?: CanopyPhoto;
  readonly setting: Setting;
  /** The last setting that was saved: what a change is compared with. */
  readonly saved?: Setting;
  /** How the setting was proved on the headland. */
  readonly check?: Check;
  /** What a fitting of nozzles is to reach. */
  readonly fitting?: Fitting;
  /** The treatment: products, loads, work. */
  readonly mix?: Mix;
  /** Ribbons and papers, to be set beside where the spray is said to go. */
  readonly seen?: Seen;
}

export interface Block {
  readonly id: string;
  readonly name: string;
  readonly crop?: string;
  /** Leaf stands all year: growth stages change neither leaf density nor the water of the season. */
  readonly evergreen?: boolean;
  readonly areaHa?: number;
  readonly rowSpacingM: number;
  readonly treeSpacingM?: number;
  /** Rows of the block, and how long each is. */
  readonly rows?: number;
  readonly rowLengthM?: number;
  readonly machine: string;
  readonly label?: string;
  /** Default every alley, both sides on. */
  readonly pattern?: PassPattern;
  /** How water (and, where the label lets it, dose) follows the canopy. */
  readonly strategy: StrategyId;
  /** How many times the dilute strength the mix is wanted, where the strategy names a dilute volume. Default 1. */
  readonly concentration?: number;
  /** The water that the user wants instead of the strategy's, L/ha. */
  readonly ownWaterLPerHa?: number;
  readonly rungs: readonly Rung[];
}

/** A whole file. */
export interface Document {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  readonly name: string;
  readonly blocks: readonly Block[];
  readonly machines: readonly Machine[];
  readonly nozzleTables: readonly NozzleTable[];
  readonly labels: readonly Label[];
  readonly day?: Day;
  readonly assumptions?: AssumptionValues;
  /** Strategies of the user's own, to be compared with the others. A block follows one of the others. */
  readonly ownStrategies?: readonly OwnStrategy[];
  /** Whose lists records are looked through with. */
  readonly recordRules?: readonly ChosenRules[];
  /** What was done, in the order in which it was written down. Outside undo. */
  readonly records?: readonly WorkRecord[];
}
