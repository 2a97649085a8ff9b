import type { glossary as EN, terms as TERMS } from '../../en/guide/glossary.ts';
import type { Translated } from '../../translation.ts';

/** Les symboles viennent des formules elles-mêmes ; les termes sont ceux du métier et les nôtres. */
export const glossary: Translated<typeof EN> = {
  title: 'Symboles et termes',
  find: 'Chercher un symbole, un mot ou une unité',
  found: (n) => (n === 1 ? '1 trouvé' : `${n} trouvés`),
  none: 'Rien trouvé. Essayer un mot plus court.',
  all: 'Tout montrer',
  symbols: 'Symboles',
  terms: 'Termes',
  more: (n) => `et ${n} autres`,
  same: 'Un symbole figure une fois pour chacun de ses sens. Les formules calculent dans les unités écrites ici, quoi que montre l’écran.',
  close: 'Fermer'
};

export const terms: Translated<typeof TERMS> = {
  alley: ['passage', 'Sol entre deux rangs d’arbres, où roule le pulvérisateur.'],
  skirt: ['bas du feuillage', 'Bord inférieur de la végétation : hauteur de la feuille la plus basse au-dessus du sol.'],
  trv: ['volume des rangs d’arbres, TRV', 'Volume que rempliraient les arbres d’un hectare, comme un mur aussi haut et large qu’eux.'],
  lwa: ['surface de haie foliaire, LWA', 'Surface des deux faces de la haie sur un hectare : hauteur du mur par longueur des rangs, deux fois.'],
  lad: ['densité de surface foliaire, LAD', 'Surface de feuille, d’une face, dans un mètre cube de végétation.'],
  bbch: ['stade de développement, BBCH', 'Deux chiffres qui disent où en est la culture, du bourgeon dormant à la chute des feuilles.'],
  ladder: ['étapes de la saison', 'Stades d’une parcelle dans leur ordre ; une étape pour chacun, avec sa végétation et son réglage.'],
  section: ['coupe', 'Dessin en travers du passage : la machine au milieu, un demi-rang de chaque côté.'],
  setting: ['réglage', 'Ce qui est réglé pour une parcelle à un stade : buses ouvertes, calibres, pression, vitesse, ventilateur.'],
  working: ['calcul', 'Comment un nombre a été obtenu : formule, valeurs, source, et sa sûreté.'],
  verdict: ['feuillage, par-dessus, par-dessous, fermée', 'Où vise la bouillie d’une buse : par la seule géométrie, sans vent ni gouttes.'],
  rate: ['volume d’application', 'Litres de bouillie sur un hectare.'],
  concentration: ['facteur de concentration', 'Combien de fois moins d’eau que le volume dilué de l’étiquette.'],
  load: ['remplissage', 'Une cuve pleine.'],
  headland: ['contrôle en tournière', 'Essais de vitesse, de remplissage et de débit qui prouvent un réglage.'],
  card: ['fiche de cabine', 'Une page imprimée avec le réglage, pour la cabine.'],
  strategies: ['tableau des stratégies', 'Façons publiées d’adapter l’eau et la dose à la végétation, côte à côte.'],
  vmd: ['classe de taille de gouttes', 'De fine à grossière, selon les gouttes que fait une buse à une pression.'],
  deltaT: ['delta T', 'Température sèche moins température humide : vitesse à laquelle sèchent les gouttes.'],
  buffer: ['zone non traitée', 'Bande le long de l’eau ou des voisins à ne pas traiter. Sa largeur est dite par l’étiquette et la loi locale.'],
  drift: ['dérive', 'Bouillie qui quitte par l’air le terrain traité.'],
  ucr: ['UCR', 'Unité d’une stratégie : un petit volume fixe de végétation le long du rang.']
};
