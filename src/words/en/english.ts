import type { Language } from '../words.ts';
import { DIFFERENCE_CHANGE, DIFFERENCES } from './differences.ts';
import { FIELDS, FINDINGS, SEVERITIES } from './findings.ts';
import { CERTAINTIES, SYMBOLS, WORKING } from './formulas.ts';
import { ACTS, OPTION_SETS, OPTION_TEXT, OPTIONS, REMARKS, STANDINGS } from './options.ts';
import { RANGES, REFUSALS, REFUSED_PLAIN } from './refusals.ts';
import { AIR, COLOURS, DROPLETS, PATTERNS, SIDES, VERDICTS } from './sprayer.ts';
import { STRATEGIES } from './strategies.ts';

/** The first screen's words; `words/deep.ts` and the stations join theirs. */
export const ENGLISH: Language = {
  code: 'en',
  decimalMark: '.',
  and: 'and',
  noLimit: 'no limit',
  up: 'up',
  down: 'down',
  more: 'more',
  less: 'less',
  findings: FINDINGS,
  refusals: REFUSALS,
  refusedPlain: REFUSED_PLAIN,
  ranges: RANGES,
  severities: SEVERITIES,
  differences: DIFFERENCES,
  differenceChange: DIFFERENCE_CHANGE,
  fields: FIELDS,
  formulas: {},
  symbols: SYMBOLS,
  certainties: CERTAINTIES,
  working: WORKING,
  assumptions: {},
  strategies: STRATEGIES,
  validity: {},
  options: OPTIONS,
  optionSets: OPTION_SETS,
  ...OPTION_TEXT,
  remarks: REMARKS,
  standings: STANDINGS,
  acts: ACTS,
  verdicts: VERDICTS,
  sides: SIDES,
  patterns: PATTERNS,
  droplets: DROPLETS,
  colours: COLOURS,
  air: AIR
};
