import type { FirstWords } from '../words.ts';
import { CERTAINTIES, SYMBOLS, WORKING } from './formulas.ts';
import { DIFFERENCE_CHANGE, DIFFERENCES } from './differences.ts';
import { FIELDS, RANGES, REFUSALS, REFUSED_PLAIN } from './refusals.ts';
import { AIR, COLOURS, DROPLETS, PATTERNS, SIDES, VERDICTS } from './sprayer.ts';
import { ACTS, STRATEGIES } from './strategies.ts';

/** What drawing and setting say; advice, workings and stations join their words. */
export const ENGLISH: FirstWords = {
  code: 'en',
  decimalMark: '.',
  and: 'and',
  noLimit: 'no limit',
  up: 'up',
  down: 'down',
  more: 'more',
  less: 'less',
  refusals: REFUSALS,
  refusedPlain: REFUSED_PLAIN,
  ranges: RANGES,
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
  acts: ACTS,
  verdicts: VERDICTS,
  sides: SIDES,
  patterns: PATTERNS,
  droplets: DROPLETS,
  colours: COLOURS,
  air: AIR
};
