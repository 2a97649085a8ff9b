import type { CanopyState } from '../canopy/canopy.ts';
import type { SourceId } from '../sources/bibliography.ts';
import type { Formula } from '../working/answer.ts';
import type { Assumption } from '../working/assumption.ts';
import type { StrategyId } from './types.ts';

/** Symbol of one canopy figure, or of one of the strategy's own constants. */
export type Symbol = string;

/**
 * One published way to let water and dose follow the canopy. All are declared alike: formulas over the symbols of the canopy
 * (`CanopyFigures`) and of the strategy's own constants; the engine binds them by symbol.
 */
export interface Strategy {
  /** Of one of the user's own, `own.` and its id in the document. */
  readonly id: StrategyId | `own.${string}`;
  /** Of one of the user's own. */
  readonly name?: string;
  /** Symbol of the canopy figure that it scales by; none for a strategy that does not scale. */
  readonly descriptor: 'RL' | 'h' | 'LWA' | 'TRVc' | 'TRVg' | 'TRVs' | 'UCR' | 'LAI' | null;
  /** Height convention: total height from the ground, crown from the skirt, or none. */
  readonly height: 'ground' | 'crown' | 'none';
  /** Width convention: greatest width, the outline's, or none. */
  readonly width: 'greatest' | 'outline' | 'none';
  /** Water that it names, L/ha; absent where it leaves water to the label or the user. */
  readonly water?: Formula;
  /** Whether that water is a dilute spray (to the point of run-off), or one meant for the sprayer as it is. */
  readonly waterKind?: 'dilute' | 'applied';
  /** Dilute water where `water` is a concentrate's. */
  readonly dilute?: Formula;
  /** Dose against the label's, 1 on the reference canopy. */
  readonly index: Formula;
  /** The canopy that means 1, and its descriptor's value; absent where the strategy needs none. */
  readonly reference?: Formula;
  /** Its constants, each under the symbol that the formulas use. */
  readonly constants: Readonly<Record<Symbol, Assumption>>;
  /** Constants that depend on what stands there: symbol → id of the assumption to take. */
  readonly choose?: (canopy: CanopyState) => Readonly<Record<Symbol, Assumption>>;
  /** Further assumptions that `choose` may take. */
  readonly choices?: readonly Assumption[];
  /** Where it holds, as codes for words. */
  readonly validity: readonly string[];
  readonly sources: readonly SourceId[];
}

/** Declares a constant of a strategy. */
export const constant = (
  id: string,
  value: number,
  unit: Assumption['unit'],
  [least, most]: readonly [number, number],
  certainty: Assumption['certainty'],
  ...sources: SourceId[]
): Assumption => ({ id, value, unit, least, most, certainty, sources });
