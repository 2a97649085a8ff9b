import type { Language } from '../words.ts';
import { ASSUMPTIONS } from './assumptions.ts';
import { DIFFERENCE_CHANGE, DIFFERENCES } from './differences.ts';
import { FIELDS, FINDINGS, SEVERITIES } from './findings.ts';
import { CERTAINTIES, FORMULAS, SYMBOLS, WORKING } from './formulas.ts';
import { ACTS, OPTION_SETS, OPTION_TEXT, OPTIONS, REMARKS, STANDINGS } from './options.ts';
import { RANGES, REFUSALS, REFUSED_PLAIN } from './refusals.ts';
import { AIR, COLOURS, DROPLETS, PATTERNS, SIDES, VERDICTS } from './sprayer.ts';
import { STRATEGIES, VALIDITY } from './strategies.ts';

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
  formulas: FORMULAS,
  symbols: SYMBOLS,
  certainties: CERTAINTIES,
  working: WORKING,
  assumptions: ASSUMPTIONS,
  strategies: STRATEGIES,
  validity: VALIDITY,
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
