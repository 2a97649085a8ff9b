import type { Language } from '../words.ts';

export const OPTIONS: Language['options'] = {
  keep: { title: 'Einstellung lassen', plain: 'Einstellung lassen' },
  speed: { title: 'Geschwindigkeit: {speed}', plain: 'Geschwindigkeit' },
  pressure: { title: 'Druck: {pressure}', plain: 'Druck' },
  size: { title: 'Düsengröße, bei {pressure}', plain: 'Düsengröße' }
};

export const OPTION_SETS: Language['optionSets'] = {
  saved: 'Um die gespeicherten {target} zu halten',
  wanted: 'Um das Soll von {target} zu erreichen'
};

export const OPTION_TEXT: Pick<Language, 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused'> = {
  optionLine: '{volume}, {rate}.',
  optionProduct: 'Eine Brühe, die für {target} angesetzt ist, bringt {same} aus; eine Brühe mit {mix} hält die Dosis.',
  optionSizes: '{nozzles}: von {from} auf {to}.',
  optionRefused: 'Nicht möglich: {reason}'
};

/** Was gegen einen Weg steht oder mit ihm kommt. */
export const REMARKS: Language['remarks'] = {
  'below-speed-range': 'Langsamer als die {limit} des Geräts.',
  'above-speed-range': 'Schneller als die {limit} des Geräts.',
  'air-per-metre': 'Die Luft je Meter Reihe ändert sich um {change}: Bändchen prüfen.',
  'below-pressure-range': 'Unter dem kleinsten Druck von Gerät oder Düsen, {limit}.',
  'above-pressure-range': 'Über dem höchsten Druck von Gerät oder Düsen, {limit}.',
  'coarse-for-pressure': 'Eine Änderung des Ausstoßes um {change} ist für den Druck zu groß: Geschwindigkeit oder Düsengröße nehmen.',
  'no-size': 'Keine Größe dieser Tabellen kommt nahe genug.'
};

export const STANDINGS: Language['standings'] = {
  above: 'Diese Brühe würde die Dosis überschreiten: eine neue ansetzen, nie über der Gebrauchsanleitung.',
  below: 'Diese Brühe gibt weniger als die Dosis; dass Gebrauchsanleitung oder Recht so wenig zulassen, ist nicht angegeben. Eine neue ansetzen.',
  lowered: 'Diese Brühe gibt weniger als die Dosis: nur so weit, wie Gebrauchsanleitung oder Recht sie sinken lassen.',
  fine: 'Diese Brühe hält die Dosis.'
};
