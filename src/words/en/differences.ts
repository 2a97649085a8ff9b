import type { Language } from '../words.ts';

/** Put before the full stop where a percentage makes sense. */
export const DIFFERENCE_CHANGE = ', {change} {direction}';

export const DIFFERENCES: Language['differences'] = {
  'row-volume': 'Tree-row volume {from} → {to}.',
  'leaf-area': 'Leaf area index {from} → {to}.',
  water: 'Wanted water {from} → {to}.',
  volume: 'Application volume {from} → {to}.',
  product: 'Product {from} → {to}.',
  air: 'Air needed {from} → {to}.',
  speed: 'Speed {from} → {to}.',
  pressure: 'Pressure {from} → {to}.',
  'nozzles-gain-leaf': '{nozzles} now {nozzles#meets|meet} leaf.',
  'nozzles-lose-leaf': '{nozzles} no longer {nozzles#meets|meet} leaf.'
};
