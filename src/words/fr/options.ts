import type { Language } from '../words.ts';

export const OPTIONS: Language['options'] = {
  keep: { title: 'Garder le réglage', plain: 'Garder le réglage' },
  speed: { title: 'Par la vitesse : {speed}', plain: 'Par la vitesse' },
  pressure: { title: 'Par la pression : {pressure}', plain: 'Par la pression' },
  size: { title: 'Par le calibre des buses, à {pressure}', plain: 'Par le calibre des buses' }
};

export const OPTION_SETS: Language['optionSets'] = {
  saved: 'Pour tenir les {target} enregistrés',
  wanted: 'Pour atteindre les {target} souhaités'
};

export const OPTION_TEXT: Pick<Language, 'optionLine' | 'optionProduct' | 'optionSizes' | 'optionRefused'> = {
  optionLine: '{volume}, {rate}.',
  optionProduct: 'Une bouillie préparée pour {target} laisse {same} ; une bouillie de {mix} garde la dose.',
  optionSizes: '{nozzles} : de {from} à {to}.',
  optionRefused: 'Impossible : {reason}'
};

/** What stands against an option, or comes with it. */
export const REMARKS: Language['remarks'] = {
  'below-speed-range': 'Plus lent que la limite de la machine, {limit}.',
  'above-speed-range': 'Plus rapide que la limite de la machine, {limit}.',
  'air-per-metre': 'L’air par mètre de rang change de {change} : vérifiez le ruban.',
  'below-pressure-range': 'Au-dessous de la pression minimale de la machine ou des buses, {limit}.',
  'above-pressure-range': 'Au-dessus de la pression maximale de la machine ou des buses, {limit}.',
  'coarse-for-pressure': 'Changer le débit de {change}, c’est trop pour la pression : agissez sur la vitesse ou le calibre des buses.',
  'no-size': 'Aucun calibre de ces tableaux n’approche assez.'
};

export const STANDINGS: Language['standings'] = {
  above: 'Cette bouillie dépasserait la dose : préparez-en une nouvelle, jamais au-dessus de l’étiquette.',
  below: 'Cette bouillie donne moins que la dose ; vous n’avez pas déclaré que l’étiquette ou la loi permet si peu. Préparez-en une nouvelle.',
  lowered: 'Cette bouillie donne moins que la dose : seulement autant que l’étiquette ou la loi permet de la baisser.',
  fine: 'Cette bouillie garde la dose.'
};
