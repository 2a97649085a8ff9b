import { COMPARISON_SOURCES } from '#core/sources/comparison.ts';
import { STRATEGY_PART } from '../en/strategies/strategies.ts';
import { extend } from '../language.ts';

/** Joins the words of the comparison of strategies to the language: to be imported for its effect by whatever speaks of it. */
extend(STRATEGY_PART, COMPARISON_SOURCES);
