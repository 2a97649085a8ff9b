import type { METHODS as EN } from '../../en/strategies/methods.ts';
import type { Translated } from '../../translation.ts';

/** Sentences of the methods text. */
export const METHODS: Translated<typeof EN> = {
  opening: (strategies, measurements) =>
    `Acqua e dose sono state calcolate con Rowtailor per una chioma (${measurements}) con ${strategies === 1 ? 'una strategia' : `${strategies} strategie`}. Tutti i valori sono metrici; ogni formula sta come è stata calcolata.`,
  canopy: (formulas) => `Valori della chioma: ${formulas}.`,
  strategy: (name, cited, formulas, constants) => `${name}${cited}: ${formulas}${constants ? `; con ${constants}` : ''}.`,
  own: 'una formula propria di cui non è stata verificata la dimensione',
  refused: (name) => `${name} non dà alcun valore su questa chioma.`,
  label: (name, rate, rules, formulas) => `L’etichetta di ${name} indica ${rate}. ${rules}${formulas ? ` Prodotto: ${formulas}.` : ''}`,
  bases: {
    'per-hectare': 'un ettaro di terreno',
    'per-100-l-dilute': '100 L di miscela a volume normale',
    'per-leaf-wall': '10 000 m² di parete fogliare',
    'per-crown-height': 'un ettaro e un metro di altezza della chioma',
    'per-row-volume': '10 000 m³ di volume di vegetazione',
    'percent-of-water': 'l’acqua di riferimento, in percentuale di essa'
  },
  /** "2 kg per un ettaro di terreno" */
  rate: (amount, basis) => `${amount} per ${basis}`,
  adaptations: {
    none: 'La dose non è stata adattata alla chioma.',
    downward: 'La dose è stata abbassata con l’indice di dose, mai alzata.',
    required: 'La dose è stata adattata all’indice di dose, verso l’alto e verso il basso.',
    byItself: 'La base stessa dell’etichetta segue la chioma.'
  },
  floor: (share) => ` Non è stata abbassata sotto ${share} della dose di etichetta, un minimo proprio.`,
  most: (amount) => ` Non supera mai il massimo di etichetta di ${amount} per ettaro.`,
  analytic: (errors, coverage, cited) =>
    `Gli intervalli sono al 95 %, per propagazione al primo ordine degli errori standard (${errors})${cited}; metà di un intervallo corrisponde a ${coverage} errori standard. Non contengono altro: né le costanti né la scelta della strategia.`,
  student: (nu) => `t di Student con ${nu} ${nu === 1 ? 'grado' : 'gradi'} di libertà`,
  normal: 'della distribuzione normale',
  /** "2,09 (t di Student …)" */
  coverage: (factor, of) => `${factor} (${of})`,
  correlation: (r) => `correlazione di altezza e larghezza ${r}`,
  draws: (draws, seed, distribution, cited) =>
    `Accanto sono state estratte ${draws} chiome dagli stessi errori, ${distribution}, con il generatore Philox 4×32-10 e il seme ${seed}${cited}; i loro intervalli sono il 95 % probabilisticamente simmetrico delle estrazioni. Le chiome che non possono stare sono state estratte di nuovo.`,
  drawnNormal: 'con distribuzione normale',
  drawnStudent: (nu) => `con distribuzione t di Student con ${nu} ${nu === 1 ? 'grado' : 'gradi'} di libertà`,
  drawnAssumptions: (ranges) => `Con esse sono state estratte le costanti per cui è indicato un campo, in modo uniforme su di esso: ${ranges}.`,
  range: (name, low, high) => `${name} da ${low} a ${high}`,
  closing: 'I valori e le formule segnati «a memoria» vanno verificati sull’opera prima di citarli. In ogni caso prevale l’etichetta del prodotto.',
  certainties: {
    exact: 'esatto',
    measured: 'misurato',
    stated: 'dichiarato dall’utente',
    published: 'pubblicato',
    derived: 'ricavato da valori pubblicati',
    practice: 'pratica comune',
    memory: 'a memoria',
    assumed: 'ipotizzato'
  },
  notWorks: { habit: 'pratica comune', arithmetic: 'per definizione', geometry: 'geometria', 'sqrt-law': 'idraulica', 'fan-laws': 'leggi dei ventilatori' }
};
