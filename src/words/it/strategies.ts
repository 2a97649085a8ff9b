import type { Language } from '../words.ts';

const REFERENCE = 'Dose intera: la chioma di riferimento tra le ipotesi.';

export const STRATEGIES: Language['strategies'] = {
  'ground-area': { name: 'Per ettaro di terreno', line: 'Uguale su ogni ettaro, qualunque cosa vi stia.', full: 'Dose intera: ogni ettaro.' },
  'row-length': { name: 'Lunghezza di filare', line: 'In proporzione ai metri di filare; altezza e larghezza non contano.', full: 'Dose intera: la distanza tra i filari di riferimento.' },
  'crown-height': { name: 'Altezza della chioma', line: 'In proporzione all’altezza dalla base alla cima; larghezza e distanza tra i filari non contano.', full: 'Dose intera: l’altezza della chioma di riferimento.' },
  'leaf-wall': { name: 'Parete fogliare (LWA)', line: 'In proporzione alle pareti trattate, dalla base alla cima; la larghezza non conta.', full: 'Dose intera: entrambe le pareti della chioma di riferimento.' },
  'row-volume': { name: 'Volume di vegetazione (TRV)', line: 'In proporzione al parallelepipedo della chioma: dalla base alla cima, larghezza massima.', full: REFERENCE },
  'us-row-volume': { name: 'TRV degli Stati Uniti', line: 'Parallelepipedo da terra, larghezza massima, per densità e fattore stagionale.', full: 'Dose intera: il frutteto standard, 400 gal/acre a volume normale.' },
  'metric-multiplier': { name: 'Moltiplicatore metrico', line: 'Parallelepipedo da terra, larghezza massima, per un moltiplicatore in cui 1 è denso.', full: 'Dose intera: il frutteto standard con foglie dense.' },
  'swiss-affine': { name: 'Retta svizzera', line: 'Parallelepipedo della chioma, larghezza massima; la pianta più piccola conserva parte della dose.', full: 'Dose intera: il volume di riferimento svizzero.' },
  'unit-canopy-row': { name: 'Filare unitario (UCR)', line: 'Filari alti 1 m, larghi 1 m e lunghi 100 m, contati dalla base alla cima e con la larghezza massima.', full: REFERENCE },
  'row-distance': { name: 'Distanza tra i filari e altezza', line: 'Litri per 100 m di filare e metro di altezza, dalla base alla cima; la larghezza non conta.', full: 'Dose intera: altezza della chioma e distanza tra i filari di riferimento.' },
  'stage-volume': { name: 'Fase e densità', line: 'Quanto la chioma dentro il suo contorno trattiene in questa fase e con questa densità.', full: 'Dose intera: la chioma di riferimento con densità media.' },
  'occupied-volume': { name: 'Chioma occupata', line: 'Litri per metro cubo dentro il contorno reale, esclusi i vuoti.', full: REFERENCE },
  'leaf-area': { name: 'Area fogliare', line: 'Un deposito voluto sulle foglie presenti, diviso per la parte che resta.', full: 'Dose intera: la chioma di riferimento con la sua densità fogliare.' }
};

export const ACTS: Language['acts'] = {
  'label-dose-kept': 'resta la dose per ettaro di etichetta',
  'scaled-to-canopy': 'segue la chioma',
  'not-above-label': 'limitata alla dose di etichetta',
  floored: 'tenuta al minimo proprio',
  'capped-at-label-maximum': 'agisce il massimo di etichetta',
  'raised-to-label-minimum-water': 'portata all’acqua minima di etichetta',
  'capped-at-label-maximum-water': 'limitata all’acqua massima di etichetta',
  'own-water': 'acqua propria'
};
