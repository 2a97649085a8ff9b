import type { Language } from '../words.ts';

/** Put before the full stop where a percentage makes sense. */
export const DIFFERENCE_CHANGE = ', {change} {direction}';

export const DIFFERENCES: Language['differences'] = {
  'row-volume': 'Volume de vegetação (TRV) {from} → {to}.',
  'leaf-area': 'Índice de área foliar {from} → {to}.',
  water: 'Água pretendida {from} → {to}.',
  volume: 'Volume de calda {from} → {to}.',
  product: 'Produto {from} → {to}.',
  air: 'Ar necessário {from} → {to}.',
  speed: 'Velocidade {from} → {to}.',
  pressure: 'Pressão {from} → {to}.',
  'nozzles-gain-leaf': '{nozzles} {nozzles#atinge|atingem} agora folha.',
  'nozzles-lose-leaf': '{nozzles} já não {nozzles#atinge|atingem} folha.'
};
