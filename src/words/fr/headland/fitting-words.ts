import type { fittingWords as EN } from '../../en/headland/fitting-words.ts';
import type { Translated } from '../../translation.ts';

/** Names of fittings, ways of weighing and published rules. */
export const fittingWords: Translated<typeof EN> = {
  names: { 'no-change': 'Aucun changement de buses', 'few-changes': 'Peu de changements', 'best-match': 'Meilleure concordance' },
  weightings: { canopy: 'selon la végétation', uniform: 'toutes égales', own: 'mes propres poids' },
  rules: {
    'upper-large': 'grands arbres : 65 à 80 % par la moitié supérieure',
    'upper-low-machine': 'machine basse, arbres de 6 à 7,6 m : environ 70 % par le haut',
    'two-thirds': 'deux tiers par la moitié supérieure',
    'middle-heavy': 'agrumes : plus grosses buses au milieu',
    proportional: 'tour : 50 à 60 % par la moitié supérieure'
  },
  limits: 'Bouillie en ligne droite et débits des tableaux : l’air dévie la bouillie et des buses usées donnent plus. Mesurez le débit de chaque buse et posez du papier avant de vous y fier.',
  rounded: (step) => `Les tableaux n’ont pas de pas commun : les débits ont été comptés par pas de ${step}, bien plus fin que tout pot gradué.`,
  bent: 'Certains tableaux impriment des débits à plusieurs pressions : les calibres ont été choisis au débit de la pression actuelle, puis la pression a été calculée par le tableau. Là, le choix est approché.'
};
