import type { Language } from '../words.ts';

/** Warum es keinen Wert gibt, und was einen brächte. */
export const REFUSALS: Language['refusals'] = {
  'input-out-of-range': '{symbol} ist {value}; zulässig ist {range}.',
  'not-a-number': 'Diese Werte ergeben keine endliche Zahl für: {formula}. Auf Ausreißer prüfen.',
  'no-dilute-water': 'Die Strategie kennt keinen Wasseraufwand bei einfacher Konzentration, der hier nötig ist. Eine wählen, die ihn kennt.',
  'no-reference-water': 'Der Prozentwert der Gebrauchsanleitung braucht sein Bezugswasser. Aus der Gebrauchsanleitung eingeben.',
  'no-nozzle-open': 'Keine Düse ist offen.',
  'no-pressure': 'Kein Druck ergibt diesen Ausstoß mit diesen Düsentabellen.',
  'no-outline': 'Die Krone hat keinen Umriss: Ihr Ansatz liegt nicht unter ihrer Spitze.',
  'no-section': 'Die Krone hat keinen Querschnitt: Höhe, Ansatz und Breite prüfen.',
  'no-weather': 'Temperatur und Luftfeuchte sind nötig.',
  'skirt-above-top': 'Der Kronenansatz liegt nicht unter der Spitze.',
  'strategy-without-water': 'Die Strategie nennt keinen Wasseraufwand. Einen eigenen eingeben.',
  'unbound-symbol': 'Der Wert von {symbol} fehlt.',
  'unknown-block': 'Es gibt keine Anlage „{id}“.',
  'unknown-rung': 'Es gibt keine Stufe „{id}“.',
  'unknown-machine': 'Es gibt kein Gerät „{id}“.',
  'unknown-strategy': 'Es gibt keine Strategie „{id}“.',
  'unknown-gear': 'Das Gerät hat keine Gebläsestufe „{gear}“.',
  'unknown-nozzle': 'Die Düsentabelle „{table}“ hat keine Größe „{size}“.'
};

export const REFUSED_PLAIN = 'Ein Wert, der dafür nötig ist, liegt außerhalb seines Bereichs.';

/** Was ein Wert sein muss. */
export const RANGES: Language['ranges'] = { above: 'mehr als null', notNegative: 'null oder mehr', between: '{least} bis {most}', finite: 'eine endliche Zahl' };

/** Felder, die die Rechnung mit ihrem Pfad nennt. */
export const FIELDS: Language['fields'] = {
  rowSpacingM: 'Reihenabstand',
  treeSpacingM: 'Baumabstand',
  bbch: 'Entwicklungsstadium',
  pattern: 'Fahrweise',
  concentration: 'Konzentration',
  ownWaterLPerHa: 'eigener Wasseraufwand',
  'canopy.heightM': 'Baumhöhe',
  'canopy.widthM': 'Kronenbreite',
  'canopy.skirtM': 'Höhe des Kronenansatzes',
  'canopy.shape': 'Kronenform',
  'canopy.profile': 'Breitenprofil',
  'canopy.filledFraction': 'gefüllter Anteil',
  'canopy.missingFraction': 'fehlende Bäume',
  'canopy.tallestTenthM': 'höchstes Zehntel',
  'canopy.ladM2PerM3': 'Blattflächendichte',
  'canopy.usDensityGalPer1000Ft3': 'Dichtefaktor',
  'setting.speedKmH': 'Geschwindigkeit',
  'setting.pressureBar': 'Druck',
  'setting.ptoRpm': 'Zapfwellendrehzahl',
  'setting.gear': 'Gebläsestufe',
  'machine.tankL': 'Behälter',
  'machine.outlet': 'Luftauslass',
  'label.rate': 'Aufwandmenge laut Gebrauchsanleitung',
  'label.floor': 'Untergrenze der Dosis',
  'label.adaptation': 'Anpassung laut Gebrauchsanleitung',
  'label.maxPerHa': 'Höchstmenge laut Gebrauchsanleitung',
  'label.minWaterLPerHa': 'Mindestwasseraufwand laut Gebrauchsanleitung',
  'label.maxWaterLPerHa': 'höchster Wasseraufwand laut Gebrauchsanleitung',
  'label.referenceWaterLPerHa': 'Bezugswasser der Gebrauchsanleitung',
  'day.temperatureC': 'Temperatur',
  'day.humidityPct': 'Luftfeuchte',
  'day.windMPerS': 'Wind',
  'day.altitudeM': 'Höhe über Meer'
};
