import type { seasonText as EN } from '../../en/season/text.ts';
import type { Translated } from '../../translation.ts';

/** What is said of a season. */
export const seasonText: Translated<typeof EN> = {
  kinds: { water: 'eau par surface', mix: 'bouillie sur la parcelle', loads: 'remplissages', 'dose-kg': 'par surface', 'dose-L': 'par surface', 'product-kg': 'sur la parcelle', 'product-L': 'sur la parcelle' },
  ofProduct: (product, what) => `${product}, ${what}`,
  opened: (nozzles, several) => `${nozzles} ${several ? 's’ouvrent' : 's’ouvre'}.`,
  shut: (nozzles, several) => `${nozzles} ${several ? 'se ferment' : 'se ferme'}.`,
  same: 'Rien ne change de plus de 1 %.',
  fields: { heightM: 'hauteur', widthM: 'largeur', skirtM: 'bas du feuillage', ladM2PerM3: 'densité foliaire' },
  volume: 'volume de végétation (contour)',
  by: {
    stage: (from) => `d’après ${from}, par le stade phénologique`,
    'degree-days': (from, to) => `entre ${from} et ${to}, par degrés-jours`
  },
  limits: {
    'apple-shares': 'Feuilles : 10 % de leur surface à la pleine floraison, 23 % à la chute des pétales (Forshey et al. 1987, pommier McIntosh) ; huit fois la floraison quatre semaines plus tard, placé à BBCH 73 de mémoire. D’autres arbres diffèrent.',
    'volume-range': 'Contour : le volume du rang croît de 20 à 30 % du printemps à l’été, de 50 % au plus (BBZ Arenenberg, d’après un résumé).',
    'one-stage': 'La plage contient 20 à 30 % de croissance et un stade lu avec un d’écart. Ce n’est pas un intervalle de confiance.',
    alike: 'Hauteur et largeur sont supposées croître pareillement, à mesure que les feuilles s’étalent, et le bas du feuillage rester : supposé, sans source.',
    pruning: 'Taille, rognage, charge en fruits et branches qui ploient n’y sont pas. Mesurez le rang avant de vous y fier.',
    'straight-between': 'La surface foliaire suit les degrés-jours au-dessus de la base (Litschmann et al. 2016, d’après un résumé) ; que le contour le fasse aussi est supposé. Sur un long chemin, les feuilles ne s’étalent pas régulièrement : là où les deux voies diffèrent, mesurez.',
    'a-week': 'La plage est la même date une semaine plus tôt et une semaine plus tard.',
    'density-left': 'Aucune densité foliaire n’y a été mesurée, ou il en reste trop peu pour l’écrire : la valeur par défaut du stade reste.',
    'from-bare': 'D’après une végétation nue, aucun feuillage ne peut être calculé : la valeur par défaut du stade reste.',
    'typical-year': 'Le fichier météo va par mois et jour : une année type ou une autre année tient lieu de celle-ci.',
    bridged: 'Les jours qui manquent au fichier météo sont comblés d’après leurs voisins.'
  },
  methods: {
    readings: 'La moyenne, sur les relevés, des degrés au-dessus de la base, aucun au-dessous (pratique courante, sans source).',
    extremes: 'La moyenne du minimum et du maximum du jour moins la base, rien au-dessous (McMaster & Wilhelm 1997, de mémoire).',
    mean: 'La moyenne du jour moins la base, rien au-dessous (pratique courante, sans source).'
  },
  weather: (days, from, to, readings) => `${days} ${days < 2 ? 'jour' : 'jours'}, du ${from} au ${to}, ${readings > 1 ? `${readings} relevés par jour` : 'une ligne par jour'}.`,
  joined: (days, years, readings) => `${days} ${days < 2 ? 'jour' : 'jours'}, une année composée de mois de ${years} années, ${readings > 1 ? `${readings} relevés par jour` : 'une ligne par jour'}. Elle va par mois et jour.`,
  base: (base) => `Base ${base}.`,
  thin: (n) => (n < 2 ? `${n} jour a trop peu de relevés et compte comme manquant.` : `${n} jours ont trop peu de relevés et comptent comme manquants.`),
  missing: (n) => (n < 2 ? `${n} jour manque entre-temps.` : `${n} jours manquent entre-temps.`),
  between: (from, to, sum, how) => `Du ${from} au ${to} : ${sum}${how}`,
  byMonthDay: (years) => (years === 1 ? ', par mois et jour' : `, par mois et jour, moyenne de ${years} années`),
  bridgedDays: (n) => (n < 2 ? ` ; ${n} jour manquant comblé` : ` ; ${n} jours manquants comblés`),
  stop: (rung, finding) => `${rung} : ${finding}`,
  way: (share) => `${share} du chemin`,
  reached: (rung, date) => `${rung} d’après ses feuilles : vers le ${date}`,
  treatmentsAssumed: 'Un traitement est supposé là où aucun n’a été saisi.',
  fixedAbove: (rung, product, fixed) => `À ${rung}, le réglage unique apporterait ${fixed} de ${product}, plus que son étiquette ne donne pour cette végétation : il est là pour comparer, pas pour traiter.`,
  usesPassed: (product, uses, most) => `${product} : ${uses} traitements sont prévus ; son étiquette en autorise ${most} par saison. Prévoyez-en moins.`,
  fixedIs: (rung) => `Un seul réglage toute la saison : celui de ${rung}.`,
  adaptedIs: 'Adapté : le réglage propre à chaque étape, le produit comme son étiquette le permet.',
  label: 'Les économies sont celles de ces plans, pas de vos factures. L’étiquette prime : adapter réduit l’eau ; le produit ne suit qu’autant que l’étiquette et la loi locale le permettent.'
};
