import type { mixText as EN } from '../../en/headland/mix-text.ts';
import type { Translated } from '../../translation.ts';

/** What the Loads step says of the mix. */
export const mixText: Translated<typeof EN> = {
  areaFrom: { mix: 'comme saisi pour ce traitement', block: 'de la parcelle', rows: 'par les rangs, leur longueur et leur distance' },
  volumeFrom: { check: 'comme mesuré en tournière', setting: 'selon le réglage, pas encore mesuré' },
  groups: {
    conditioners: 'correcteur d’eau',
    'soluble-powders': 'poudre ou granulé soluble',
    'dry-powders': 'poudre ou granulé sec',
    'liquid-flowables': 'suspension liquide',
    emulsifiables: 'émulsionnable',
    solutions: 'solution',
    adjuvants: 'adjuvant',
    unknown: 'type inconnu'
  },
  formulations: {
    WP: 'WP, poudre mouillable',
    WG: 'WG, granulés dispersables',
    DF: 'DF, granulé fluide sec',
    SG: 'SG, granulés solubles dans l’eau',
    SP: 'SP, poudre soluble dans l’eau',
    SC: 'SC, suspension concentrée',
    SE: 'SE, suspo-émulsion',
    F: 'F, suspension fluide',
    ME: 'ME, micro-émulsion',
    CS: 'CS, suspension de capsules',
    EC: 'EC, concentré émulsionnable',
    EW: 'EW, émulsion aqueuse',
    OD: 'OD, dispersion huileuse',
    SL: 'SL, concentré soluble',
    adjuvant: 'adjuvant',
    conditioner: 'correcteur d’eau',
    other: 'autre, non cité'
  },
  order: {
    water: (share) => `Eau : au moins ${share} avant le premier produit.`,
    agitate: 'Agitation en marche, et laissée en marche jusqu’à ce que la cuve soit vide.',
    product: (name, group) => `${name} (${group}). Laissez-le se disperser entièrement avant le suivant.`,
    one: (name, group) => `${name} (${group}).`,
    'fill-up': 'Complétez avec de l’eau à ce que prend le remplissage, puis allez traiter : ne laissez pas reposer une bouillie.'
  },
  labelFirst: 'L’ordre des étiquettes passe d’abord ; cherchez-le sur chacune. Là où elles ne disent rien, dans cet ordre :',
  orderNotes: [
    'Ordre par type de produit : North Dakota State University, 2021. Correcteurs d’abord, part d’eau et adjuvants en dernier sont de pratique courante.',
    'Un autre ordre en usage agite après les produits mouillables et finit par les tensioactifs ; certains remplissent la cuve à moitié avant de préparer.',
    'Avant un mélange que vous n’avez jamais fait : un essai en bocal avec la même eau, et vérifier si le mélange est autorisé.'
  ],
  cautions: [
    'Manipuler le concentré est l’étape la plus risquée de la journée : équipement de protection comme le dit chaque étiquette, eau propre à portée, personne d’autre à proximité.',
    'Remplissez par un tuyau qui ne peut pas réaspirer. Ne quittez jamais une cuve qui se remplit.',
    'Pesez à la balance, mesurez au pot gradué : bouchons et repères de cuve peuvent être faux d’un dixième.'
  ],
  rinse: {
    tenfold: (water, residual) => `Rincez avec ${water} : dix fois les ${residual} du fond de cuve.`,
    tenth: (water) => `Rincez avec ${water} : un dixième de la cuve, puisque le fond de cuve n’est pas connu.`,
    left: (once, thrice) => `En une fois, il reste ${once} de la concentration ; en trois parts, chacune pulvérisée, ${thrice}.`,
    out: 'Pulvérisez l’eau de rinçage sur la culture, diluée et en roulant, comme l’étiquette et la loi locale le permettent ; jamais en un seul endroit ni dans un égout.'
  },
  hours: (h, min) => (h === 0 ? `${min} min` : `${h} h ${min.padStart(2, '0')} min`)
};
