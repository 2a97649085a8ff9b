import type { mixScreen as EN } from '../../en/headland/mix-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Loads step. */
export const mixScreen: Translated<typeof EN> = {
  title: 'Remplissages à faire',
  answer: (count, amount) => `${count} × ${amount}`,
  last: (amount) => `et un dernier de ${amount}`,
  each: { one: (area) => `pour ${area}`, many: (area) => `chacun ${area}` },
  eachRows: { one: (area, rows) => `pour ${area}, environ ${rows} rangs`, many: (area, rows) => `chacun ${area}, environ ${rows} rangs` },
  extra: { one: (amount) => `Il contient ${amount} de plus : ce qui reste en fond de cuve.`, many: (amount) => `Le premier contient ${amount} de plus : ce qui reste en fond de cuve.` },
  basis: (area, from, volume, by) => `${area} ${from} ; ${volume} ${by}.`,
  noLoads: 'Pas encore de remplissages',
  answers: {
    count: 'Remplissages',
    load: 'Bouillie d’un remplissage',
    area: 'Surface d’un remplissage',
    volume: 'Eau par surface',
    strength: (name) => `Concentration de la bouillie, ${name}`,
    product: (name) => `${name}, chaque remplissage`,
    beyond: 'Au-delà de la surface'
  },

  products: 'Dans la cuve',
  product: (n) => `produit ${n}`,
  kindLabel: 'type de produit',
  kindUnknown: 'inconnu',
  atHand: 'disponible',
  needed: (amount) => `${amount} en tout`,
  dose: (dose) => `dose ${dose}`,
  add: 'Ajouter un produit',
  allIn: 'Toutes les étiquettes du document sont dans la cuve. Faites-en une autre au poste Rang.',
  noLabel: 'Pas encore d’étiquette. Faites-en une au poste Rang : dose, maximum et eau comme imprimés.',
  remove: (name) => `Retirer ${name}`,

  ground: 'Surface et cuve',
  area: 'surface traitée',
  rows: 'rangs de la parcelle',
  rowLength: 'longueur de rang',
  fillsName: 'Comment les remplissages sont découpés',
  fills: { equal: 'tous égaux', full: 'pleins, dernier plus petit' },
  outerName: 'Passages de bordure',
  outer: { 'one-sided': 'côté extérieur fermé', 'two-sided': 'deux côtés ouverts' },
  turn: 'un demi-tour',
  fill: 'un remplissage, trajet compris',

  order: 'Ordre de préparation',
  cards: 'Au poste de remplissage',
  progress: (done, all) => `${done} sur ${all} ${done < 2 ? 'fait' : 'faits'}`,
  load: (n) => `Remplissage ${n}`,
  fillIn: 'verser',
  landRows: (area, rows) => `${area}, environ ${rows} rangs`,
  ofWhich: (amount) => `dont ${amount} pour le fond de cuve`,
  filled: 'fait',
  markFilled: (n) => `Remplissage ${n} fait`,
  putInOf: (n, name) => `versé au remplissage ${n}, ${name}`,
  more: (n) => (n < 2 ? `${n} autre remplissage apparaît quand ceux-ci sont faits` : `${n} autres remplissages apparaissent quand ceux-ci sont faits`),

  work: 'Travail',
  parts: { spraying: 'pulvérisation', outer: 'passages de bordure', turning: 'demi-tours', filling: 'remplissages' },
  inAll: 'en tout',
  effective: (rate, share) => `${rate} avec demi-tours et remplissages, ${share} du débit de chantier en pulvérisant`,
  passes: (passes, way) => `${passes} passages, ${way} le long des rangs`,
  workAnswers: { total: 'Temps en tout', effective: 'Débit de chantier avec demi-tours et remplissages', efficiency: 'Rendement de chantier', faces: 'Bouillie selon les faces de rang', spare: 'Au-delà des rangs de bordure' },

  rinse: 'Ce qui reste en fond de cuve',
  cautions: 'Avant de préparer',
  active: {
    open: 'L’étiquette donne la substance active ?',
    rate: 'substance active',
    percent: 'dans le produit, en masse',
    result: (amount) => `${amount} de produit`,
    use: 'Prendre comme dose de l’étiquette'
  }
};
