import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** What is said where strategies are compared, in English. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'The formula of {name} gives no number here: a division by 0, a root or logarithm of something below 0, or a result below 0. Change the formula.'
  },
  formulas: {
    'own-index': 'Dose index by a formula of your own',
    'own-water': 'Water by a formula of your own'
  },
  validity: {
    'own-formula': 'A formula of your own. Whether its units go together is not checked.'
  }
};
