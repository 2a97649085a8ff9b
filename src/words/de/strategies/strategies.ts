import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** Was gesagt wird, wo Strategien verglichen werden. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'Die Formel von {name} ergibt hier keine Zahl: eine Division durch 0, eine Wurzel oder ein Logarithmus von etwas unter 0, oder ein Ergebnis unter 0. Die Formel ändern.',
    'draws-out-of-range': '{value} Ziehungen waren verlangt; gemacht werden {least} bis {most}. Eine Zahl dazwischen verlangen.',
    'seed-not-whole': 'Der Startwert ist {value}; nötig ist eine ganze Zahl von 0 bis 9 007 199 254 740 991. Eine schreiben.',
    'nothing-uncertain': 'Kein Fehler der Messungen wurde angegeben, also gibt es nichts zu ziehen. Die Standardfehler von Höhe, Ansatz, Breite oder Reihenabstand angeben, oder die Bäume aufnehmen.',
    'draws-given-up': 'Die Fehler sind so groß, dass die meisten daraus gezogenen Kronen nicht stehen können: {tries} hintereinander hatten keine Breite oder den Ansatz über der Spitze. Mehr Bäume messen.',
    'no-label-dose': 'Die Anlage hat keine Gebrauchsanleitung, also gibt es keine Dosis. Eine wählen.'
  },
  formulas: {
    'own-index': 'Dosisindex nach eigener Formel',
    'own-water': 'Wasser nach eigener Formel'
  },
  validity: {
    'own-formula': 'Eine eigene Formel. Ob ihre Einheiten zusammenpassen, wird nicht geprüft.'
  }
};
