import type { Language } from '../words.ts';

export const OPTIONS: Language['options'] = {
  keep: { title: 'Keep the setting', plain: 'Keep the setting' },
  speed: { title: 'By speed: {speed}', plain: 'By speed' },
  pressure: { title: 'By pressure: {pressure}', plain: 'By pressure' },
  size: { title: 'By nozzle size, at {pressure}', plain: 'By nozzle size' }
};

export const OPTION_SETS: Language['optionSets'] = {
  saved: 'To hold the saved {target}',
  wanted: 'To reach the wanted {target}'
};

export const OPTION_TEXT: Pick<Language, 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused'> = {
  optionLine: '{volume}, {rate}.',
  optionProduct: 'A mix made for the {target} leaves {same}; a mix of {mix} keeps the dose.',
  optionSizes: '{nozzles}: from {from} to {to}.',
  optionRefused: 'Not possible: {reason}'
};

/** What stands against an option, or comes with it. */
export const REMARKS: Language['remarks'] = {
  'below-speed-range': 'Slower than the machine’s {limit}.',
  'above-speed-range': 'Faster than the machine’s {limit}.',
  'air-per-metre': 'Air per metre of row changes by {change}: check the ribbon.',
  'below-pressure-range': 'Below the least pressure of machine or nozzles, {limit}.',
  'above-pressure-range': 'Above the most pressure of machine or nozzles, {limit}.',
  'coarse-for-pressure': 'A flow change of {change} is too large for pressure: use speed or nozzle size.',
  'no-size': 'No size of these tables comes near enough.'
};

export const STANDINGS: Language['standings'] = {
  above: 'That mix would exceed the dose: make a new one, never above the label.',
  below: 'That mix gives less than the dose; you have not stated that label or law allow so little. Make a new one.',
  lowered: 'That mix gives less than the dose: only as far as label or law lets it go down.',
  fine: 'That mix keeps the dose.'
};
