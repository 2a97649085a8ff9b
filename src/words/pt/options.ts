import type { Language } from '../words.ts';

export const OPTIONS: Language['options'] = {
  keep: { title: 'Manter a regulação', plain: 'Manter a regulação' },
  speed: { title: 'Pela velocidade: {speed}', plain: 'Pela velocidade' },
  pressure: { title: 'Pela pressão: {pressure}', plain: 'Pela pressão' },
  size: { title: 'Pelo calibre dos bicos, a {pressure}', plain: 'Pelo calibre dos bicos' }
};

export const OPTION_SETS: Language['optionSets'] = {
  saved: 'Para manter os {target} guardados',
  wanted: 'Para chegar aos {target} pretendidos'
};

export const OPTION_TEXT: Pick<Language, 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused'> = {
  optionLine: '{volume}, {rate}.',
  optionProduct: 'Uma calda feita para os {target} deixa {same}; uma calda de {mix} mantém a dose.',
  optionSizes: '{nozzles}: de {from} para {to}.',
  optionRefused: 'Não é possível: {reason}'
};

/** What stands against an option, or comes with it. */
export const REMARKS: Language['remarks'] = {
  'below-speed-range': 'Mais lento do que o limite da máquina, {limit}.',
  'above-speed-range': 'Mais rápido do que o limite da máquina, {limit}.',
  'air-per-metre': 'O ar por metro de linha muda {change}: verifique a fita.',
  'below-pressure-range': 'Abaixo da pressão mínima da máquina ou dos bicos, {limit}.',
  'above-pressure-range': 'Acima da pressão máxima da máquina ou dos bicos, {limit}.',
  'coarse-for-pressure': 'Uma mudança de caudal de {change} é demasiada para a pressão: use a velocidade ou o calibre dos bicos.',
  'no-size': 'Nenhum calibre destas tabelas fica suficientemente perto.'
};

export const STANDINGS: Language['standings'] = {
  above: 'Essa calda excederia a dose: prepare uma nova, nunca acima do rótulo.',
  below: 'Essa calda dá menos do que a dose; não declarou que o rótulo ou a lei permite tão pouco. Prepare uma nova.',
  lowered: 'Essa calda dá menos do que a dose: só até onde o rótulo ou a lei permite baixá-la.',
  fine: 'Essa calda mantém a dose.'
};
