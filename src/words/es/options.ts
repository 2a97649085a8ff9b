import type { Language } from '../words.ts';

export const OPTIONS: Language['options'] = {
  keep: { title: 'Mantener el ajuste', plain: 'Mantener el ajuste' },
  speed: { title: 'Por velocidad: {speed}', plain: 'Por velocidad' },
  pressure: { title: 'Por presión: {pressure}', plain: 'Por presión' },
  size: { title: 'Por calibre de boquilla, a {pressure}', plain: 'Por calibre de boquilla' }
};

export const OPTION_SETS: Language['optionSets'] = {
  saved: 'Para mantener los {target} guardados',
  wanted: 'Para alcanzar los {target} deseados'
};

export const OPTION_TEXT: Pick<Language, 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused'> = {
  optionLine: '{volume}, {rate}.',
  optionProduct: 'Un caldo hecho para {target} deja {same}; un caldo de {mix} mantiene la dosis.',
  optionSizes: '{nozzles}: de {from} a {to}.',
  optionRefused: 'No es posible: {reason}'
};

/** What stands against an option, or comes with it. */
export const REMARKS: Language['remarks'] = {
  'below-speed-range': 'Más lento que los {limit} de la máquina.',
  'above-speed-range': 'Más rápido que los {limit} de la máquina.',
  'air-per-metre': 'El aire por metro de fila cambia en {change}: compruebe la cinta.',
  'below-pressure-range': 'Por debajo de la presión mínima de la máquina o de las boquillas, {limit}.',
  'above-pressure-range': 'Por encima de la presión máxima de la máquina o de las boquillas, {limit}.',
  'coarse-for-pressure': 'Un cambio de caudal de {change} es demasiado para la presión: use la velocidad o el calibre de las boquillas.',
  'no-size': 'Ningún calibre de estas tablas se acerca lo suficiente.'
};

export const STANDINGS: Language['standings'] = {
  above: 'Ese caldo superaría la dosis: prepare uno nuevo, nunca por encima de la etiqueta.',
  below: 'Ese caldo da menos que la dosis; usted no ha declarado que la etiqueta o la ley permitan tan poco. Prepare uno nuevo.',
  lowered: 'Ese caldo da menos que la dosis: solo hasta donde la etiqueta o la ley dejen bajarla.',
  fine: 'Ese caldo mantiene la dosis.'
};
