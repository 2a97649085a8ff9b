import type { AirState } from '../air/air.ts';
import type { CanopyState } from '../canopy/canopy.ts';
import type { Interval } from '../canopy/uncertainty.ts';
import type { Finding } from '../advice/finding.ts';
import type { StrategyAnswer } from '../dose/evaluate.ts';
import type { Product } from '../dose/product.ts';
import type { Water } from '../dose/water.ts';
import type { Option } from '../sprayer/options.ts';
import type { SprayerState } from '../sprayer/sprayer.ts';
import type { Machine, PassPattern, Setting } from '../sprayer/types.ts';
import type { Pass } from '../sprayer/volume.ts';
import type { WeatherState } from '../weather/weather.ts';
import type { Answer, Given } from '../working/answer.ts';
import type { Block, Rung } from './document.ts';

export interface ProductState extends Product {
  /** Dilute water over applied water; refused where the strategy knows no dilute volume. */
  readonly concentration: Answer;
  /** Product per 100 L of mix that gives the dose at the volume now set. */
  readonly strength: Answer;
  /** Product in one full tank of that mix. */
  readonly perTank: Answer;
}

/** What an option means for the product. */
export interface OptionRow {
  readonly option: Option;
  /** Product per hectare if the mix made for the target volume is kept. */
  readonly sameMix: Answer | null;
  /** Mix that would keep the dose at this option's volume. */
  readonly newMix: Answer | null;
  /**
   * How the kept mix stands to the dose: above it; below it, which the label was not said to allow; lowered, which it was; or fine.
   */
  readonly label: 'above' | 'below' | 'lowered' | 'fine' | null;
}

export interface OptionSet {
  /** Held: the volume of the saved setting, or the wanted water. */
  readonly against: 'saved' | 'wanted';
  readonly target: Answer;
  readonly rows: readonly OptionRow[];
}

/** One block at one stage with one setting: every figure, each with its working. */
export interface Result {
  readonly block: Block;
  readonly rung: Rung;
  readonly machine: Machine;
  readonly setting: Setting;
  readonly pattern: PassPattern;
  readonly pass: Pass;
  readonly canopy: CanopyState;
  readonly intervals: ReadonlyMap<string, Interval>;
  readonly strategy: StrategyAnswer;
  readonly strategies: readonly StrategyAnswer[];
  readonly water: Water & { readonly interval: Interval | null };
  readonly product: ProductState | null;
  readonly sprayer: SprayerState;
  /** The saved setting in front of the same canopy, where it differs from the present one. */
  readonly saved: SprayerState | null;
  readonly air: AirState;
  readonly weather: WeatherState | null;
  /** Assumptions that were used, by id. */
  readonly assumptions: ReadonlyMap<string, Given>;
}

/** A result with what follows from it for whoever sets the sprayer. */
export interface Advised extends Result {
  readonly options: readonly OptionSet[];
  /** Worst first. */
  readonly findings: readonly Finding[];
}
