import type { Certainty } from '#core/working/answer.ts';
import type { Severity } from '#core/advice/finding.ts';
import type { Act } from '#core/dose/product.ts';
import type { StrategyId } from '#core/dose/types.ts';
import type { OptionRow, OptionSet } from '#core/setting/result.ts';
import type { Verdict } from '#core/sprayer/aim.ts';
import type { Option } from '#core/sprayer/options.ts';
import type { DropletClass, PassPattern, Side } from '#core/sprayer/types.ts';
import type { FindingCode, RefusalCode } from './codes.ts';

/**
 * A sentence with places for values: `{name}` takes the value of that name; `{name#one|more}` takes the first word where the list
 * of that name has one member, the second where it has more. See `fill.ts`.
 */
export type Template = string;

export interface StrategyWords {
  readonly name: string;
  /** How it scales, with which height and width. */
  readonly line: string;
  /** The canopy that stands for the whole label dose. */
  readonly full: string;
}

export interface AssumptionWords {
  readonly label: string;
  readonly meaning: string;
}

/**
 * One language: data alone, so that another is a folder beside `en/`. Symbols of formulas, units and source titles are the same in
 * every language and are not here.
 */
export interface Language {
  /** BCP 47. */
  readonly code: string;
  readonly decimalMark: string;
  /** "L7 and R7" */
  readonly and: string;
  readonly noLimit: string;
  readonly up: string;
  readonly down: string;
  readonly more: string;
  readonly less: string;

  readonly findings: Readonly<Record<FindingCode, Template>>;
  readonly refusals: Readonly<Record<RefusalCode, Template>>;
  /** For a refusal whose values are not at hand. */
  readonly refusedPlain: string;
  readonly ranges: Readonly<Record<'above' | 'notNegative' | 'between' | 'finite', Template>>;
  readonly severities: Readonly<Record<Severity, string>>;
  readonly differences: Readonly<Record<string, Template>>;
  /** How much more or less, put before the full stop of a difference. */
  readonly differenceChange: Template;
  /** Fields of the document, by the engine's path. */
  readonly fields: Readonly<Record<string, string>>;

  /** By formula id, without the `-kg` or `-L` of the twins. */
  readonly formulas: Readonly<Record<string, string>>;
  /** By symbol, or by `formula.symbol` where a symbol means something else there. */
  readonly symbols: Readonly<Record<string, string>>;
  readonly certainties: Readonly<Record<Certainty, string>>;
  readonly working: {
    readonly extrapolated: string;
    /** Metric value in its formula, and as shown in the other system. */
    readonly metricFormula: Template;
    readonly squareLaw: Template;
    readonly squareLawCase: Template;
    readonly high: string;
    readonly low: string;
    /** Of a figure, one of whose inputs is weaker than its formula. */
    readonly restsOn: Template;
    readonly sum: string;
    readonly nozzle: Template;
    readonly own: string;
    readonly readFrom: Readonly<Record<'work' | 'summary' | 'memory', string>>;
  };

  readonly assumptions: Readonly<Record<string, AssumptionWords>>;
  readonly strategies: Readonly<Record<StrategyId, StrategyWords>>;
  readonly validity: Readonly<Record<string, string>>;

  readonly options: Readonly<Record<Option['kind'], { readonly title: Template; readonly plain: string }>>;
  readonly optionSets: Readonly<Record<OptionSet['against'], Template>>;
  readonly optionLine: Template;
  readonly optionProduct: Template;
  readonly optionSizes: Template;
  readonly optionRefused: Template;
  readonly remarks: Readonly<Record<string, Template>>;
  readonly standings: Readonly<Record<NonNullable<OptionRow['label']>, string>>;
  readonly acts: Readonly<Record<Act, string>>;

  readonly verdicts: Readonly<Record<Verdict, string>>;
  readonly sides: Readonly<Record<Side, string>>;
  readonly patterns: Readonly<Record<PassPattern['kind'], Template>>;
  readonly droplets: Readonly<Record<DropletClass, string>>;
  readonly colours: Readonly<Record<string, string>>;
  readonly air: Readonly<Record<string, Template>>;
}

/** What only advice says: `advice.ts` and `options.ts` join it. */
export type AdviceWords = Pick<Language, 'findings' | 'severities' | 'options' | 'optionSets' | 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused' | 'remarks' | 'standings'>;
export type FirstWords = Omit<Language, keyof AdviceWords>;
