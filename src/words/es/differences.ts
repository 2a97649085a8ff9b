import type { Language } from '../words.ts';

/** Put before the full stop where a percentage makes sense. */
export const DIFFERENCE_CHANGE = ', {change} {direction}';

export const DIFFERENCES: Language['differences'] = {
  'row-volume': 'Volumen de vegetación (TRV) {from} → {to}.',
  'leaf-area': 'Índice de área foliar {from} → {to}.',
  water: 'Agua deseada {from} → {to}.',
  volume: 'Volumen de aplicación {from} → {to}.',
  product: 'Producto {from} → {to}.',
  air: 'Aire necesario {from} → {to}.',
  speed: 'Velocidad {from} → {to}.',
  pressure: 'Presión {from} → {to}.',
  'nozzles-gain-leaf': '{nozzles} {nozzles#alcanza|alcanzan} ahora hoja.',
  'nozzles-lose-leaf': '{nozzles} ya no {nozzles#alcanza|alcanzan} hoja.'
};
