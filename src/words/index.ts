import './deep.ts';

/** All that is said of the engine's figures, in the language that is set. */
export { speak, language } from './language.ts';
export type { Language, StrategyWords, AssumptionWords } from './words.ts';
export { DASH, formatAmount, formatExact, formatFigure, formatNumber, formatPlain, formatRange, formatShare, formatUnit } from './format.ts';
export { list, nozzleNames } from './names.ts';
export {
  actWord,
  assumptionWords,
  certaintyWord,
  colourWord,
  dropletWord,
  fieldWord,
  formulaTitle,
  patternPhrase,
  severityWord,
  strategyWords,
  symbolName,
  validitySentence,
  verdictWord
} from './naming.ts';
export { findingSentence } from './advice.ts';
export { differenceLine, refusalSentence } from './sentences.ts';
export { optionSetTitle, optionWords, remarkSentence, type OptionWords } from './options.ts';
export { airLines, type AirLine } from './air.ts';
export { filledExpression, prettyExpression, prettySymbol } from './expression.ts';
export { workingLines, type WorkingLines } from './working.ts';
export { sourceLine } from './sources.ts';
