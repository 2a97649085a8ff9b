import type { Part } from '../../language.ts';

/** What a season adds up, by the family of its formulas. */
const KINDS = { water: 'acqua', mix: 'miscela', loads: 'carichi', dose: 'prodotto per superficie', product: 'prodotto sull’appezzamento' } as const;
const each = (make: (kind: string, what: string) => readonly (readonly [string, string])[]): Record<string, string> => Object.fromEntries(Object.entries(KINDS).flatMap(([kind, what]) => make(kind, what)));

/** Words of the season. */
export const SEASON: Part = {
  refusals: {
    'season-rung-refused': '{rung} non si può calcolare: {reason} Correggerla, o mettere a 0 i suoi trattamenti.',
    'season-above-label': '{product}: i trattamenti previsti arrivano a {planned} nella stagione; la sua etichetta consente {most}. Prevederne meno.',
    'growth-evergreen': 'Qui le foglie ci sono tutto l’anno; le parti pubblicate sono di una pianta che le perde. Misurare il filare.',
    'growth-not-measured': '{rung} è essa stessa una proposta. Misurarla, o scegliere una tappa misurata.',
    'growth-no-stage': '{rung} non ha fase fenologica. Inserire il suo BBCH.',
    'growth-from-bare': '{rung} non ha quasi foglie; dal nulla non si possono calcolare foglie. Scegliere una tappa con foglie.',
    'growth-no-date': '{rung} non ha data. Inserirla.',
    'growth-no-neighbours': 'Servono una tappa misurata con una data prima di {rung}, e una dopo.',
    'growth-no-warmth': 'Tra {from} e {to} il file meteo non ha gradi giorno sopra la base.',
    'dates-not-rising': '{to} non è dopo {from}.',
    'dates-far-apart': '{from} e {to} distano più di un anno.',
    'weather-gap': 'Nel file meteo mancano {days} giorni di seguito, da {from} a {to}. Se ne colmano al massimo 7.'
  },
  formulas: {
    'growth-volume-ratio': 'Crescita del volume di vegetazione',
    'growth-height': 'Altezza dopo la crescita',
    'growth-width': 'Larghezza dopo la crescita',
    'growth-leaf-density': 'Densità di area fogliare dopo la crescita',
    'growth-way': 'Quanto del percorso con i gradi giorno',
    'growth-length-between': 'Lunghezza tra due tappe',
    'growth-leaf-between': 'Indice di area fogliare tra due tappe',
    'growth-density-of-leaf': 'Densità di area fogliare di questa area fogliare',
    ...each((kind, what) => [
      [`treatments-${kind}`, `Trattamenti di una tappa: ${what}`],
      [`season-${kind}`, `Stagione: ${what}`],
      [`season-saving-${kind}`, `Risparmio nella stagione: ${what}`],
      [`season-share-${kind}`, `Risparmio come parte: ${what}`]
    ]),
    'sum-of-stages': 'somma sulle tappe'
  },
  symbols: {
    Gv: 'crescita del volume di vegetazione',
    gv: 'crescita dalla primavera all’estate',
    sa: 'parte della crescita compiuta nella tappa di partenza',
    sb: 'parte della crescita compiuta in questa tappa',
    Ha: 'altezza nella tappa di partenza',
    Wa: 'larghezza nella tappa di partenza',
    LADa: 'densità di area fogliare nella tappa di partenza',
    ua: 'parte delle foglie dispiegata nella tappa di partenza',
    ub: 'parte delle foglie dispiegata in questa tappa',
    DDx: 'gradi giorno fino a questa data',
    DDt: 'gradi giorno di tutto il percorso',
    fw: 'parte del percorso',
    La: 'lunghezza nella tappa precedente',
    Lb: 'lunghezza nella tappa successiva',
    L: 'lunghezza lungo il percorso',
    LAIa: 'indice di area fogliare nella tappa precedente',
    LAIb: 'indice di area fogliare nella tappa successiva',
    X: 'un trattamento',
    Xn: 'trattamenti di una tappa',
    Xs: 'stagione',
    Xd: 'risparmio',
    Xf: 'stagione con regolazione unica',
    Xa: 'stagione adattata',
    ...each((kind) => [
      [`treatments-${kind}.n`, 'trattamenti'],
      [`season-share-${kind}.S`, 'risparmio']
    ])
  },
  assumptions: {
    'growth.volume': { label: 'Crescita del volume di vegetazione', meaning: 'Dalla primavera all’estate; pubblicata come dal 20 al 30 %, 50 % al massimo. Si prende il valore medio.' },
    'growth.base-temperature': { label: 'Base dei gradi giorno', meaning: 'L’area fogliare segue i gradi giorno sopra questa temperatura.' }
  },
  fields: {
    treatments: 'trattamenti',
    date: 'data',
    evergreen: 'sempreverde',
    weather: 'gradi giorno del file meteo',
    'canopy.proposed': 'chioma proposta',
    'label.maxPerSeason': 'massimo di etichetta per stagione'
  }
};
