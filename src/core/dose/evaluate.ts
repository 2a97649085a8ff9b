import type { CanopyState } from '../canopy/canopy.ts';
import type { Assumptions } from '../working/assumption.ts';
import { refused, type Answer, type Formula } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import type { Strategy } from './strategy.ts';

/** What one strategy says of one canopy. */
export interface StrategyAnswer {
  readonly strategy: Strategy;
  readonly descriptor: Answer | null;
  readonly water: Answer | null;
  /** Dilute water, to the point of run-off; null where the strategy knows none. */
  readonly dilute: Answer | null;
  /** Dose against the label's, before any cap or floor. */
  readonly index: Answer;
}

/** Binds a strategy's formulas by symbol to the canopy's figures and its own constants. */
export function evaluateStrategy(strategy: Strategy, canopy: CanopyState, assumptions: Assumptions): StrategyAnswer {
  const symbols: Record<string, Answer> = { ...canopy.figures };
  for (const [symbol, a] of Object.entries({ ...strategy.constants, ...strategy.choose?.(canopy) })) symbols[symbol] = assumptions.take(a.id);
  const answer = (formula: Formula): Answer => {
    const inputs: Record<string, Answer> = {};
    for (const symbol in formula.inputs) inputs[symbol] = symbols[symbol] ?? refused('unbound-symbol', strategy.id, { symbol });
    return derive(formula, inputs);
  };
  if (strategy.reference) symbols[strategy.reference.symbol] = answer(strategy.reference);
  const water = strategy.water ? answer(strategy.water) : null;
  return {
    strategy,
    descriptor: strategy.descriptor ? (symbols[strategy.descriptor] ?? null) : null,
    water,
    dilute: strategy.dilute ? answer(strategy.dilute) : strategy.waterKind === 'dilute' ? water : null,
    index: answer(strategy.index)
  };
}
