import type { Language } from '../words.ts';

/** Why there is no figure, and what would bring one. */
export const REFUSALS: Language['refusals'] = {
  'input-out-of-range': '{symbol} : la valeur est {value} ; il faut {range}.',
  'not-a-number': 'Avec ces valeurs, pas de nombre fini : {formula}. Cherchez-y des valeurs extrêmes.',
  'no-dilute-water': 'La stratégie ne connaît pas d’eau à concentration simple, et il en faut ici. Choisissez-en une qui en connaît.',
  'no-reference-water': 'Le pourcentage de l’étiquette demande son eau de référence. Saisissez-la d’après l’étiquette.',
  'no-nozzle-open': 'Aucune buse n’est ouverte.',
  'no-pressure': 'Aucune pression ne donne ce débit avec ces tableaux de buses.',
  'no-outline': 'La végétation n’a pas de contour : son bas n’est pas au-dessous de sa cime.',
  'no-section': 'La végétation n’a pas de section : vérifiez hauteur, bas du feuillage et largeur.',
  'no-weather': 'La température et l’humidité sont nécessaires.',
  'skirt-above-top': 'Le bas du feuillage n’est pas au-dessous de la cime.',
  'strategy-without-water': 'La stratégie ne nomme pas d’eau. Saisissez la vôtre.',
  'unbound-symbol': 'Valeur manquante : {symbol}.',
  'unknown-block': 'Il n’y a pas de parcelle « {id} ».',
  'unknown-rung': 'Il n’y a pas d’étape « {id} ».',
  'unknown-machine': 'Il n’y a pas de machine « {id} ».',
  'unknown-strategy': 'Il n’y a pas de stratégie « {id} ».',
  'unknown-gear': 'La machine n’a pas de rapport de ventilateur « {gear} ».',
  'unknown-nozzle': 'Le tableau de buses « {table} » n’a pas de calibre « {size} ».'
};

export const REFUSED_PLAIN = 'Une valeur nécessaire est hors de sa plage.';

/** What a value must be. */
export const RANGES: Language['ranges'] = { above: 'plus que zéro', notNegative: 'zéro ou plus', between: 'de {least} à {most}', finite: 'un nombre fini' };

/** Fields that the engine names by path. */
export const FIELDS: Language['fields'] = {
  rowSpacingM: 'distance entre rangs',
  treeSpacingM: 'distance entre arbres',
  bbch: 'stade phénologique',
  pattern: 'mode de passage',
  concentration: 'concentration',
  ownWaterLPerHa: 'eau choisie',
  'canopy.heightM': 'hauteur de l’arbre',
  'canopy.widthM': 'largeur de végétation',
  'canopy.skirtM': 'bas du feuillage',
  'canopy.shape': 'contour de la végétation',
  'canopy.profile': 'profil de largeurs',
  'canopy.filledFraction': 'part occupée',
  'canopy.missingFraction': 'arbres manquants',
  'canopy.tallestTenthM': 'dixième le plus haut',
  'canopy.ladM2PerM3': 'densité foliaire',
  'canopy.usDensityGalPer1000Ft3': 'facteur de densité',
  'setting.speedKmH': 'vitesse',
  'setting.pressureBar': 'pression',
  'setting.ptoRpm': 'régime de prise de force',
  'setting.gear': 'rapport du ventilateur',
  'machine.tankL': 'cuve',
  'machine.outlet': 'sortie d’air',
  'label.rate': 'dose de l’étiquette',
  'label.floor': 'plancher de dose',
  'label.adaptation': 'adaptation selon l’étiquette',
  'label.maxPerHa': 'maximum de l’étiquette',
  'label.minWaterLPerHa': 'minimum d’eau de l’étiquette',
  'label.maxWaterLPerHa': 'maximum d’eau de l’étiquette',
  'label.referenceWaterLPerHa': 'eau de référence de l’étiquette',
  'day.temperatureC': 'température',
  'day.humidityPct': 'humidité',
  'day.windMPerS': 'vent',
  'day.altitudeM': 'altitude'
};
