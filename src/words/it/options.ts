import type { Language } from '../words.ts';

export const OPTIONS: Language['options'] = {
  keep: { title: 'Mantenere la regolazione', plain: 'Mantenere la regolazione' },
  speed: { title: 'Con la velocità: {speed}', plain: 'Con la velocità' },
  pressure: { title: 'Con la pressione: {pressure}', plain: 'Con la pressione' },
  size: { title: 'Con la misura degli ugelli, a {pressure}', plain: 'Con la misura degli ugelli' }
};

export const OPTION_SETS: Language['optionSets'] = {
  saved: 'Per mantenere il valore salvato, {target}',
  wanted: 'Per raggiungere il valore voluto, {target}'
};

export const OPTION_TEXT: Pick<Language, 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused'> = {
  optionLine: '{volume}, {rate}.',
  optionProduct: 'Una miscela preparata per {target} lascia {same}; una miscela di {mix} mantiene la dose.',
  optionSizes: '{nozzles}: da {from} a {to}.',
  optionRefused: 'Non possibile: {reason}'
};

/** What stands against an option, or comes with it. */
export const REMARKS: Language['remarks'] = {
  'below-speed-range': 'Più lento del limite della macchina, {limit}.',
  'above-speed-range': 'Più veloce del limite della macchina, {limit}.',
  'air-per-metre': 'L’aria per metro di filare cambia di {change}: verificare il nastro.',
  'below-pressure-range': 'Sotto la pressione minima di macchina o ugelli, {limit}.',
  'above-pressure-range': 'Sopra la pressione massima di macchina o ugelli, {limit}.',
  'coarse-for-pressure': 'Un cambio di portata di {change} è troppo per la pressione: usare la velocità o la misura degli ugelli.',
  'no-size': 'Nessuna misura di queste tabelle si avvicina abbastanza.'
};

export const STANDINGS: Language['standings'] = {
  above: 'Quella miscela supererebbe la dose: prepararne una nuova, mai oltre l’etichetta.',
  below: 'Quella miscela dà meno della dose; non è stato dichiarato che etichetta o legge consentano così poco. Prepararne una nuova.',
  lowered: 'Quella miscela dà meno della dose: solo fin dove etichetta o legge lasciano scendere.',
  fine: 'Quella miscela mantiene la dose.'
};
