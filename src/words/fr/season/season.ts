import type { Part } from '../../language.ts';

/** What a season adds up, by the family of its formulas. */
const KINDS = { water: 'eau', mix: 'bouillie', loads: 'remplissages', dose: 'produit par surface', product: 'produit sur la parcelle' } as const;
const each = (make: (kind: string, what: string) => readonly (readonly [string, string])[]): Record<string, string> => Object.fromEntries(Object.entries(KINDS).flatMap(([kind, what]) => make(kind, what)));

/** Words of the season. */
export const SEASON: Part = {
  refusals: {
    'season-rung-refused': '{rung} ne peut pas être calculé : {reason} Corrigez, ou mettez ses traitements à 0.',
    'season-above-label': '{product} : les traitements prévus font {planned} dans la saison ; son étiquette autorise {most}. Prévoyez-en moins.',
    'growth-evergreen': 'Les feuilles tiennent ici toute l’année ; les parts publiées sont d’un arbre qui les perd. Mesurez le rang.',
    'growth-not-measured': '{rung} est lui-même une proposition. Mesurez-le, ou choisissez une étape mesurée.',
    'growth-no-stage': '{rung} n’a pas de stade phénologique. Saisissez son BBCH.',
    'growth-from-bare': '{rung} n’a presque pas de feuilles ; à partir de rien, aucun feuillage ne peut être calculé. Choisissez une étape en feuilles.',
    'growth-no-date': '{rung} n’a pas de date. Saisissez-la.',
    'growth-no-neighbours': 'Il faut une étape mesurée et datée avant {rung}, et une après.',
    'growth-no-warmth': 'Entre {from} et {to}, le fichier météo n’a pas de degrés-jours au-dessus de la base.',
    'dates-not-rising': '{to} n’est pas après {from}.',
    'dates-far-apart': '{from} et {to} sont à plus d’un an d’écart.',
    'weather-gap': 'Il manque au fichier météo {days} jours de suite, du {from} au {to}. 7 au plus sont comblés.'
  },
  formulas: {
    'growth-volume-ratio': 'Croissance du volume du rang',
    'growth-height': 'Hauteur après croissance',
    'growth-width': 'Largeur après croissance',
    'growth-leaf-density': 'Densité foliaire après croissance',
    'growth-way': 'Avancement par degrés-jours',
    'growth-length-between': 'Longueur entre deux étapes',
    'growth-leaf-between': 'Indice foliaire entre deux étapes',
    'growth-density-of-leaf': 'Densité foliaire de cette surface de feuilles',
    ...each((kind, what) => [
      [`treatments-${kind}`, `Traitements d’une étape : ${what}`],
      [`season-${kind}`, `Saison : ${what}`],
      [`season-saving-${kind}`, `Économie dans la saison : ${what}`],
      [`season-share-${kind}`, `Économie en part : ${what}`]
    ]),
    'sum-of-stages': 'somme sur les étapes'
  },
  symbols: {
    Gv: 'croissance du volume du rang',
    gv: 'croissance du printemps à l’été',
    sa: 'part de la croissance faite à l’étape de départ',
    sb: 'part de la croissance faite à cette étape',
    Ha: 'hauteur à l’étape de départ',
    Wa: 'largeur à l’étape de départ',
    LADa: 'densité foliaire à l’étape de départ',
    ua: 'part des feuilles étalées à l’étape de départ',
    ub: 'part des feuilles étalées à cette étape',
    DDx: 'degrés-jours jusqu’à cette date',
    DDt: 'degrés-jours de tout le chemin',
    fw: 'part du chemin',
    La: 'longueur à l’étape précédente',
    Lb: 'longueur à l’étape suivante',
    L: 'longueur en chemin',
    LAIa: 'indice foliaire à l’étape précédente',
    LAIb: 'indice foliaire à l’étape suivante',
    X: 'un traitement',
    Xn: 'traitements d’une étape',
    Xs: 'saison',
    Xd: 'économie',
    Xf: 'saison avec un seul réglage',
    Xa: 'saison adaptée',
    ...each((kind) => [
      [`treatments-${kind}.n`, 'traitements'],
      [`season-share-${kind}.S`, 'économie']
    ])
  },
  assumptions: {
    'growth.volume': { label: 'Croissance du volume du rang', meaning: 'Du printemps à l’été ; publiée de 20 à 30 %, 50 % au plus. Le milieu est pris.' },
    'growth.base-temperature': { label: 'Base des degrés-jours', meaning: 'La surface foliaire suit les degrés-jours au-dessus de cette température.' }
  },
  fields: {
    treatments: 'traitements',
    date: 'date',
    evergreen: 'persistant',
    weather: 'degrés-jours du fichier météo',
    'canopy.proposed': 'végétation proposée',
    'label.maxPerSeason': 'maximum par saison de l’étiquette'
  }
};
