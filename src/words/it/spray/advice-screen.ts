import type { adviceScreen as EN } from '../../en/spray/advice-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the search for better settings. */
export const adviceScreen: Translated<typeof EN> = {
  title: 'Regolazioni migliori?',
  line: 'Ugelli, loro orientamento, gocce, aria e velocità entro i limiti della macchina',
  intro: 'Cerca regolazioni di questa macchina che portino di più sulle piante, in modo più uniforme, con meno perdite, con i litri per ettaro di oggi o meno. Nulla cambia senza conferma.',
  start: 'Cerca regolazioni migliori',
  again: 'Cerca di nuovo',
  searching: 'Ricerca …',
  part: (done) => `${done} fatto`,
  stop: 'Ferma',
  stopped: 'Fermata.',
  failed: 'Impossibile eseguire qui la ricerca. Ricaricare la pagina.',
  outdated: 'La regolazione nel frattempo è cambiata: ciò che sta qui è di quella precedente.',
  looked: (settings) => `${settings} regolazioni esaminate.`,
  front: 'Che cosa si può avere',
  frontNote: 'Nessuna di queste è migliore di un’altra in tutto. Sotto ogni valore il cambio rispetto a oggi; ≈ è nessuna differenza chiara.',
  today: 'oggi',
  columns: { setting: 'regolazione', trees: 'sulle piante', lost: 'perso', cv: 'CV', rate: 'capacità di lavoro' },
  plotTrees: 'sulle piante →',
  plotLost: 'perso ↑',
  noClear: 'nessuna differenza chiara',
  plan: (n, names) => (names ? `Regolazione ${n}: ${names}` : `Regolazione ${n}`),
  names: {
    'most-on-trees': 'più sulle piante',
    'least-lost': 'meno perdite',
    'most-even': 'più uniforme',
    fastest: 'più veloce',
    'fewest-changes': 'meno cambi'
  },
  all: (effects) => `Tutto insieme ${effects}.`,
  steps: 'Passo per passo',
  volume: (litres) => `Distribuisce ${litres}.`,
  use: 'Usa questa regolazione',
  useOf: (name) => `Usa: ${name}`,
  inUse: 'È quella attuale',
  used: (name) => `Impostata: ${name}. Verificare nastri e cartine prima di irrorarvi un appezzamento.`,
  undo: 'Annulla'
};
