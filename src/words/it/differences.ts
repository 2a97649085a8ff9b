import type { Language } from '../words.ts';

/** Put before the full stop where a percentage makes sense. */
export const DIFFERENCE_CHANGE = ', {change} {direction}';

export const DIFFERENCES: Language['differences'] = {
  'row-volume': 'Volume di vegetazione {from} → {to}.',
  'leaf-area': 'Indice di area fogliare {from} → {to}.',
  water: 'Acqua voluta {from} → {to}.',
  volume: 'Volume di distribuzione {from} → {to}.',
  product: 'Prodotto {from} → {to}.',
  air: 'Aria necessaria {from} → {to}.',
  speed: 'Velocità {from} → {to}.',
  pressure: 'Pressione {from} → {to}.',
  'nozzles-gain-leaf': '{nozzles} ora {nozzles#raggiunge|raggiungono} le foglie.',
  'nozzles-lose-leaf': '{nozzles} non {nozzles#raggiunge|raggiungono} più le foglie.'
};
