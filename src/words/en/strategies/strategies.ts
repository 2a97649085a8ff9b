import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** What is said where strategies are compared, in English. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'The formula of {name} gives no number here: a division by 0, a root or logarithm of something below 0, or a result below 0. Change the formula.',
    'draws-out-of-range': '{value} draws were asked for; {least} to {most} are made. Ask for a number between.',
    'seed-not-whole': 'The seed is {value}; a whole number from 0 to 9 007 199 254 740 991 is needed. Write one.',
    'nothing-uncertain': 'No error of the measurements was told, so there is nothing to draw. Tell the standard errors of height, skirt, width or row spacing, or survey the trees.',
    'draws-given-up': 'The errors are so great that most canopies drawn from them cannot stand: {tries} in a row had no width or the skirt above the top. Measure more trees.',
    'no-label-dose': 'The block has no label, so there is no dose. Choose one.'
  },
  formulas: {
    'own-index': 'Dose index by a formula of your own',
    'own-water': 'Water by a formula of your own'
  },
  validity: {
    'own-formula': 'A formula of your own. Whether its units go together is not checked.'
  }
};
