import type { METHODS as EN } from '../../en/strategies/methods.ts';
import type { Translated } from '../../translation.ts';

/** Sentences of the methods text. */
export const METHODS: Translated<typeof EN> = {
  opening: (strategies, measurements) =>
    `L’eau et la dose ont été calculées avec Rowtailor pour une végétation (${measurements}) par ${strategies === 1 ? 'une stratégie' : `${strategies} stratégies`}. Toutes les valeurs sont métriques ; chaque formule figure telle qu’elle a été calculée.`,
  canopy: (formulas) => `Chiffres de la végétation : ${formulas}.`,
  strategy: (name, cited, formulas, constants) => `${name}${cited} : ${formulas}${constants ? ` ; avec ${constants}` : ''}.`,
  own: 'une formule propre dont la dimension n’a pas été vérifiée',
  refused: (name) => `${name} ne donne pas de chiffre sur cette végétation.`,
  label: (name, rate, rules, formulas) => `L’étiquette de ${name} indique ${rate}. ${rules}${formulas ? ` Produit : ${formulas}.` : ''}`,
  bases: {
    'per-hectare': 'un hectare de sol',
    'per-100-l-dilute': '100 L de bouillie à concentration simple',
    'per-leaf-wall': '10 000 m² de haie foliaire',
    'per-crown-height': 'un hectare et un mètre de hauteur de haie foliaire',
    'per-row-volume': '10 000 m³ de végétation',
    'percent-of-water': 'l’eau de référence, en pour cent de celle-ci'
  },
  /** "2 kg pour un hectare de sol" */
  rate: (amount, basis) => `${amount} pour ${basis}`,
  adaptations: {
    none: 'La dose n’a pas été adaptée à la végétation.',
    downward: 'La dose a été abaissée avec l’indice de dose, jamais augmentée.',
    required: 'La dose a été adaptée à l’indice de dose, vers le haut et vers le bas.',
    byItself: 'La base de l’étiquette suit elle-même la végétation.'
  },
  floor: (share) => ` Elle n’a pas été abaissée sous ${share} de la dose de l’étiquette, un plancher propre.`,
  most: (amount) => ` Elle n’est jamais au-dessus du maximum de l’étiquette, ${amount} par hectare.`,
  analytic: (errors, coverage, cited) =>
    `Les intervalles sont à 95 %, par propagation au premier ordre des erreurs types (${errors})${cited}, un demi-intervalle valant ${coverage} erreurs types. Ils ne contiennent rien d’autre : ni les constantes ni le choix de la stratégie.`,
  student: (nu) => `t de Student à ${nu} ${nu < 2 ? 'degré' : 'degrés'} de liberté`,
  normal: 'de la loi normale',
  /** "2,09 (t de Student …)" */
  coverage: (factor, of) => `${factor} (${of})`,
  correlation: (r) => `corrélation de la hauteur et de la largeur ${r}`,
  draws: (draws, seed, distribution, cited) =>
    `À côté, ${draws} végétations ont été tirées des mêmes erreurs, ${distribution}, avec le générateur Philox 4×32-10 et la graine ${seed}${cited} ; leurs intervalles sont ceux à 95 %, symétriques en probabilité, des tirages. Les végétations impossibles ont été tirées de nouveau.`,
  drawnNormal: 'selon la loi normale',
  drawnStudent: (nu) => `selon la loi de Student à ${nu} ${nu < 2 ? 'degré' : 'degrés'} de liberté`,
  drawnAssumptions: (ranges) => `Les constantes dont une plage est indiquée ont été tirées avec elles, uniformément sur celle-ci : ${ranges}.`,
  range: (name, low, high) => `${name} de ${low} à ${high}`,
  closing: 'Les valeurs et formules marquées « de mémoire » sont à vérifier dans l’ouvrage avant d’être citées. L’étiquette du produit prime dans tous les cas.',
  certainties: {
    exact: 'exact',
    measured: 'mesuré',
    stated: 'déclaré par l’utilisateur',
    published: 'publié',
    derived: 'déduit de chiffres publiés',
    practice: 'pratique courante',
    memory: 'de mémoire',
    assumed: 'supposé'
  },
  notWorks: { habit: 'pratique courante', arithmetic: 'par définition', geometry: 'géométrie', 'sqrt-law': 'hydraulique', 'fan-laws': 'lois des ventilateurs' }
};
