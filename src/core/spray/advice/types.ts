import type { Finding } from '../../advice/finding.ts';
import type { DropletClass, Setting } from '../../sprayer/types.ts';
import type { Range } from '../types.ts';

/** What settings are compared by. Shares are of what is sprayed, 0 to 1. */
export interface Objectives {
  /** More is better. */
  readonly onTrees: number;
  /** Unevenness of the deposit by height, standard deviation over mean: less is better. Null where nothing grows. */
  readonly cv: number | null;
  /** Less is better. */
  readonly lost: number;
  /** While spraying, ha/h: more is better. */
  readonly workRateHaPerH: number;
}

/** A setting and what the model says of it. */
export interface Judged {
  /** Complete: it replaces the rung's setting as it is. */
  readonly setting: Setting;
  readonly objectives: Objectives;
  readonly volumeLPerHa: number;
  /** Droplet classes of the nozzles that spray, without repeats; empty where no table tells. */
  readonly droplets: readonly DropletClass[];
  /** Air given over air needed by the alley rule; null where the rule has no answer. */
  readonly airRatio: number | null;
}

/** A change of one objective, positive where it is better, with its range over the plausible constants: the same constants before and after. */
export interface Gain {
  readonly value: number;
  readonly range: Range;
  /** Better or worse by at least `LEAST_GAIN`, with a range that leaves no doubt which. Otherwise: no clear difference. */
  readonly clear: boolean;
}

/** The three objectives that the model predicts, and what follows from arithmetic. */
export interface Gains {
  readonly onTrees: Gain;
  /** Less lost. */
  readonly lost: Gain;
  /** Lower CV; null where nothing grows. */
  readonly evenness: Gain | null;
  /** Change of what stays on the trees over what stayed before, less 1: "9 % more of what is sprayed". */
  readonly onTreesRelative: number;
  /** Change of work rate over the work rate before. */
  readonly workRateRelative: number;
  /** Change of litres on a hectare. */
  readonly volumeLPerHa: number;
}

/** One single change. */
export type Change =
  | { readonly code: 'shut' | 'open'; readonly nozzles: readonly string[] }
  /** Turned to `toDeg` from `fromDeg`, both from the position's own angle, up positive. */
  | { readonly code: 'swivel'; readonly nozzles: readonly string[]; readonly fromDeg: number; readonly toDeg: number }
  /** Another size of nearly the same flow that makes other drops. */
  | { readonly code: 'size'; readonly nozzles: readonly string[]; readonly from: string; readonly to: string; readonly fromClass: DropletClass; readonly toClass: DropletClass }
  /** The drops follow from the table; classes of all spraying nozzles before and after, empty where no table tells. */
  | { readonly code: 'pressure'; readonly fromBar: number; readonly toBar: number; readonly fromClasses: readonly DropletClass[]; readonly toClasses: readonly DropletClass[] }
  | { readonly code: 'gear'; readonly from: string; readonly to: string }
  | { readonly code: 'pto'; readonly fromRpm: number; readonly toRpm: number }
  | { readonly code: 'gear-and-pto'; readonly from: string; readonly to: string; readonly fromRpm: number; readonly toRpm: number }
  | { readonly code: 'speed'; readonly fromKmH: number; readonly toKmH: number };

export type ChangeCode = Change['code'];

/** A change with what it brings when it is made after those before it. Gains of all steps add up to those of the plan. */
export interface Step {
  readonly change: Change;
  readonly gains: Gains;
  /** Something gets clearly better by it. A change of speed alone moves work rate and litres, which need no model. */
  readonly clear: boolean;
  readonly remarks: readonly Finding[];
}

export const PLAN_NAMES = ['most-on-trees', 'least-lost', 'most-even', 'fastest', 'fewest-changes'] as const;
export type PlanName = (typeof PLAN_NAMES)[number];

/** A setting that is offered, taken apart. */
export interface Plan extends Judged {
  /** What it is the best at among the plans; may be none. */
  readonly names: readonly PlanName[];
  readonly gains: Gains;
  /** Something gets clearly better by the whole of it. */
  readonly clear: boolean;
  readonly steps: readonly Step[];
  /**
   * `spray-advice-…` findings: remix (litres change), check-pressure (PTO changes), ribbon-decides (less air than the alley rule), understated (gains from
   * less air), thinner (a part of the crown gets clearly less), no-clear-difference.
   */
  readonly remarks: readonly Finding[];
}

/** What the search has found: plain data, so that it can come out of a worker. */
export interface SprayAdvice {
  readonly today: Judged & {
    /** Some plan is clearly better in something and worse in nothing. */
    readonly beaten: boolean;
  };
  /** At most `MOST_PLANS`, none dominated by another or by today's setting; most on the trees first. Empty where today's stands. */
  readonly plans: readonly Plan[];
  readonly searched: {
    /** Air settings, each with its own jets. */
    readonly airs: number;
    /** Settings that were judged. */
    readonly settings: number;
    /** Of the assumptions, those that the ranges were run over. */
    readonly constants: readonly string[];
  };
  /** What to know of the whole: today's setting stands, no clear difference anywhere, what the judge is. */
  readonly findings: readonly Finding[];
}

export const MOST_PLANS = 8;
/** Gains under 2 points are no gains: numerical noise and what a headland can see are of that size. */
export const LEAST_GAIN = 0.02;
