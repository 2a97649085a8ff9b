import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** What is said where strategies are compared. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'La formule de {name} ne donne pas de nombre ici : une division par 0, une racine ou un logarithme d’une valeur au-dessous de 0, ou un résultat au-dessous de 0. Changez la formule.',
    'draws-out-of-range': 'Tirages demandés : {value} ; on en fait de {least} à {most}. Demandez un nombre entre les deux.',
    'seed-not-whole': 'La graine est {value} ; il faut un nombre entier de 0 à 9 007 199 254 740 991. Écrivez-en un.',
    'nothing-uncertain': 'Aucune erreur des mesures n’a été dite, il n’y a donc rien à tirer. Dites les erreurs types de la hauteur, du bas du feuillage, de la largeur ou de la distance entre rangs, ou relevez les arbres.',
    'draws-given-up': 'Les erreurs sont si grandes que la plupart des végétations tirées sont impossibles : {tries} de suite n’avaient pas de largeur, ou le bas du feuillage au-dessus de la cime. Mesurez plus d’arbres.',
    'no-label-dose': 'La parcelle n’a pas d’étiquette, il n’y a donc pas de dose. Choisissez-en une.'
  },
  formulas: {
    'own-index': 'Indice de dose par une formule propre',
    'own-water': 'Eau par une formule propre'
  },
  validity: {
    'own-formula': 'Une formule propre. Si ses unités vont ensemble n’est pas vérifié.'
  }
};
