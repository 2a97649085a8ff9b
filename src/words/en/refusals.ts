import type { Language } from '../words.ts';

/** Why there is no figure, and what would bring one. */
export const REFUSALS: Language['refusals'] = {
  'input-out-of-range': '{symbol} is {value}; it must be {range}.',
  'not-a-number': 'These values give no finite {formula}. Check them for extremes.',
  'no-dilute-water': 'The strategy knows no dilute water, which this needs. Choose one that does.',
  'no-reference-water': 'The label’s percentage needs its reference water. Enter it from the label.',
  'no-nozzle-open': 'No nozzle is open.',
  'no-pressure': 'No pressure gives that flow with these nozzle tables.',
  'no-outline': 'The canopy has no outline: its skirt is not below its top.',
  'no-section': 'The canopy has no section: check height, skirt and width.',
  'no-weather': 'Temperature and humidity are needed.',
  'skirt-above-top': 'The skirt is not below the top.',
  'strategy-without-water': 'The strategy names no water. Enter your own.',
  'unbound-symbol': 'The value of {symbol} is missing.',
  'unknown-block': 'There is no block “{id}”.',
  'unknown-rung': 'There is no rung “{id}”.',
  'unknown-machine': 'There is no machine “{id}”.',
  'unknown-strategy': 'There is no strategy “{id}”.',
  'unknown-gear': 'The machine has no fan gear “{gear}”.',
  'unknown-nozzle': 'Nozzle table “{table}” has no size “{size}”.'
};

export const REFUSED_PLAIN = 'A value that it needs is out of range.';

/** What a value must be. */
export const RANGES: Language['ranges'] = { above: 'above zero', notNegative: 'zero or more', between: '{least} to {most}', finite: 'a finite number' };

/** Fields that the engine names by path. */
export const FIELDS: Language['fields'] = {
  rowSpacingM: 'row spacing',
  treeSpacingM: 'tree spacing',
  bbch: 'growth stage',
  pattern: 'pass pattern',
  concentration: 'concentration',
  ownWaterLPerHa: 'own water',
  'canopy.heightM': 'canopy height',
  'canopy.widthM': 'canopy width',
  'canopy.skirtM': 'skirt height',
  'canopy.shape': 'canopy shape',
  'canopy.profile': 'width profile',
  'canopy.filledFraction': 'filled share',
  'canopy.missingFraction': 'missing trees',
  'canopy.tallestTenthM': 'tallest tenth',
  'canopy.ladM2PerM3': 'leaf area density',
  'canopy.usDensityGalPer1000Ft3': 'density factor',
  'setting.speedKmH': 'speed',
  'setting.pressureBar': 'pressure',
  'setting.ptoRpm': 'PTO speed',
  'setting.gear': 'fan gear',
  'machine.tankL': 'tank',
  'machine.outlet': 'air outlet',
  'label.rate': 'label rate',
  'label.floor': 'dose floor',
  'label.adaptation': 'label adaptation',
  'label.maxPerHa': 'label maximum',
  'label.minWaterLPerHa': 'label least water',
  'label.maxWaterLPerHa': 'label most water',
  'label.referenceWaterLPerHa': 'label reference water',
  'day.temperatureC': 'temperature',
  'day.humidityPct': 'humidity',
  'day.windMPerS': 'wind',
  'day.altitudeM': 'altitude'
};
