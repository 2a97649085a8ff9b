import type { Language } from '../words.ts';

const REFERENCE = 'Dose entière : la végétation de référence des hypothèses.';

export const STRATEGIES: Language['strategies'] = {
  'ground-area': { name: 'Par hectare de sol', line: 'La même sur chaque hectare, quoi qu’il y pousse.', full: 'Dose entière : chaque hectare.' },
  'row-length': { name: 'Longueur de rang', line: 'En proportion des mètres de rang ; hauteur et largeur ne comptent pas.', full: 'Dose entière : la distance entre rangs de référence.' },
  'crown-height': { name: 'Hauteur de haie foliaire', line: 'En proportion de la hauteur du bas du feuillage à la cime ; largeur et distance entre rangs ne comptent pas.', full: 'Dose entière : la hauteur de haie de référence.' },
  'leaf-wall': { name: 'Surface de haie foliaire', line: 'En proportion des parois traitées, du bas du feuillage à la cime ; la largeur ne compte pas.', full: 'Dose entière : les deux parois de la végétation de référence.' },
  'row-volume': { name: 'Volume de végétation', line: 'En proportion du bloc de végétation : du bas du feuillage à la cime, plus grande largeur.', full: REFERENCE },
  'us-row-volume': { name: 'Volume de végétation, É.-U.', line: 'Bloc depuis le sol, plus grande largeur, fois la densité et le facteur de saison.', full: 'Dose entière : le verger standard, 400 gal/acre à concentration simple.' },
  'metric-multiplier': { name: 'Multiplicateur métrique', line: 'Bloc depuis le sol, plus grande largeur, fois un multiplicateur où 1 est dense.', full: 'Dose entière : le verger standard en feuillage dense.' },
  'swiss-affine': { name: 'Droite suisse', line: 'Bloc de végétation, plus grande largeur ; le plus petit arbre garde une part de la dose.', full: 'Dose entière : le volume de référence suisse.' },
  'unit-canopy-row': { name: 'Rang unitaire de végétation', line: 'Rangs hauts de 1 m, larges de 1 m et longs de 100 m, comptés du bas du feuillage à la cime et sur la plus grande largeur.', full: REFERENCE },
  'row-distance': { name: 'Distance entre rangs et hauteur', line: 'Litres par 100 m de rang et mètre de hauteur, du bas du feuillage à la cime ; la largeur ne compte pas.', full: 'Dose entière : la hauteur de haie et la distance entre rangs de référence.' },
  'stage-volume': { name: 'Stade et densité', line: 'Ce que la végétation retient dans son contour à ce stade et à cette densité.', full: 'Dose entière : la végétation de référence à densité moyenne.' },
  'occupied-volume': { name: 'Végétation occupée', line: 'Litres par mètre cube dans le vrai contour, sans les vides.', full: REFERENCE },
  'leaf-area': { name: 'Surface foliaire', line: 'Un dépôt souhaité sur les feuilles présentes, divisé par la part qui reste.', full: 'Dose entière : la végétation de référence avec sa densité foliaire.' }
};

export const ACTS: Language['acts'] = {
  'label-dose-kept': 'dose par hectare de l’étiquette gardée',
  'scaled-to-canopy': 'suit la végétation',
  'not-above-label': 'retenue à la dose de l’étiquette',
  floored: 'retenue à votre plancher',
  'capped-at-label-maximum': 'le maximum de l’étiquette agit',
  'raised-to-label-minimum-water': 'relevée au minimum d’eau de l’étiquette',
  'capped-at-label-maximum-water': 'retenue au maximum d’eau de l’étiquette',
  'own-water': 'votre propre eau'
};
