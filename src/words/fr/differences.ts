import type { Language } from '../words.ts';

/** Put before the full stop where a percentage makes sense. */
export const DIFFERENCE_CHANGE = ', {change} {direction}';

export const DIFFERENCES: Language['differences'] = {
  'row-volume': 'Volume de végétation (TRV) {from} → {to}.',
  'leaf-area': 'Indice foliaire {from} → {to}.',
  water: 'Eau souhaitée {from} → {to}.',
  volume: 'Volume de bouillie {from} → {to}.',
  product: 'Produit {from} → {to}.',
  air: 'Air nécessaire {from} → {to}.',
  speed: 'Vitesse {from} → {to}.',
  pressure: 'Pression {from} → {to}.',
  'nozzles-gain-leaf': '{nozzles} {nozzles#atteint|atteignent} maintenant le feuillage.',
  'nozzles-lose-leaf': '{nozzles} {nozzles#n’atteint|n’atteignent} plus le feuillage.'
};
