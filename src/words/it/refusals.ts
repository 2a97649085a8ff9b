import type { Language } from '../words.ts';

/** Why there is no figure, and what would bring one. */
export const REFUSALS: Language['refusals'] = {
  'input-out-of-range': '{symbol} è {value}; deve essere {range}.',
  'not-a-number': 'Questi valori non danno alcun risultato finito per {formula}. Cercare valori estremi.',
  'no-dilute-water': 'La strategia non conosce l’acqua a volume normale, che qui serve. Sceglierne una che la conosce.',
  'no-reference-water': 'La percentuale di etichetta richiede la sua acqua di riferimento. Inserirla dall’etichetta.',
  'no-nozzle-open': 'Nessun ugello è aperto.',
  'no-pressure': 'Con queste tabelle degli ugelli nessuna pressione dà quella portata.',
  'no-outline': 'La chioma non ha contorno: la sua base non è sotto la cima.',
  'no-section': 'La chioma non ha sezione: verificare altezza, base e larghezza.',
  'no-weather': 'Servono temperatura e umidità.',
  'skirt-above-top': 'La base della chioma non è sotto la cima.',
  'strategy-without-water': 'La strategia non indica l’acqua. Inserire la propria.',
  'unbound-symbol': 'Manca il valore di {symbol}.',
  'unknown-block': 'L’appezzamento «{id}» non esiste.',
  'unknown-rung': 'La tappa «{id}» non esiste.',
  'unknown-machine': 'La macchina «{id}» non esiste.',
  'unknown-strategy': 'La strategia «{id}» non esiste.',
  'unknown-gear': 'La macchina non ha la marcia del ventilatore «{gear}».',
  'unknown-nozzle': 'La tabella degli ugelli «{table}» non ha la misura «{size}».'
};

export const REFUSED_PLAIN = 'Un valore necessario è fuori dal campo ammesso.';

/** What a value must be. */
export const RANGES: Language['ranges'] = { above: 'maggiore di zero', notNegative: 'zero o più', between: 'da {least} a {most}', finite: 'un numero finito' };

/** Fields that the engine names by path. */
export const FIELDS: Language['fields'] = {
  rowSpacingM: 'distanza tra i filari',
  treeSpacingM: 'distanza sul filare',
  bbch: 'fase fenologica',
  pattern: 'schema delle passate',
  concentration: 'concentrazione',
  ownWaterLPerHa: 'acqua propria',
  'canopy.heightM': 'altezza della pianta',
  'canopy.widthM': 'larghezza della chioma',
  'canopy.skirtM': 'base della chioma',
  'canopy.shape': 'forma della chioma',
  'canopy.profile': 'profilo delle larghezze',
  'canopy.filledFraction': 'parte piena',
  'canopy.missingFraction': 'piante mancanti',
  'canopy.tallestTenthM': 'decimo più alto',
  'canopy.ladM2PerM3': 'densità di area fogliare',
  'canopy.usDensityGalPer1000Ft3': 'fattore di densità',
  'setting.speedKmH': 'velocità',
  'setting.pressureBar': 'pressione',
  'setting.ptoRpm': 'regime della presa di potenza',
  'setting.gear': 'marcia del ventilatore',
  'machine.tankL': 'serbatoio',
  'machine.outlet': 'uscita dell’aria',
  'label.rate': 'dose di etichetta',
  'label.floor': 'minimo della dose',
  'label.adaptation': 'adattamento di etichetta',
  'label.maxPerHa': 'massimo di etichetta',
  'label.minWaterLPerHa': 'acqua minima di etichetta',
  'label.maxWaterLPerHa': 'acqua massima di etichetta',
  'label.referenceWaterLPerHa': 'acqua di riferimento di etichetta',
  'day.temperatureC': 'temperatura',
  'day.humidityPct': 'umidità',
  'day.windMPerS': 'vento',
  'day.altitudeM': 'altitudine'
};
