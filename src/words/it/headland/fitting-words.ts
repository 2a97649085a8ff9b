import type { fittingWords as EN } from '../../en/headland/fitting-words.ts';
import type { Translated } from '../../translation.ts';

/** Names of the fitting step. */
export const fittingWords: Translated<typeof EN> = {
  names: { 'no-change': 'Nessun cambio di ugelli', 'few-changes': 'Pochi cambi', 'best-match': 'Migliore accordo' },
  weightings: { canopy: 'secondo la chioma', uniform: 'tutti uguali', own: 'pesi propri' },
  rules: {
    'upper-large': 'piante grandi: dal 65 all’80 % nella metà superiore',
    'upper-low-machine': 'macchina bassa, piante da 6 a 7,6 m: circa il 70 % dall’alto',
    'two-thirds': 'due terzi nella metà superiore',
    'middle-heavy': 'agrumi: gli ugelli più grandi al centro',
    proportional: 'torre: dal 50 al 60 % nella metà superiore'
  },
  limits: 'Getti diritti e portate di tabella: l’aria piega i getti e gli ugelli usurati danno di più. Misurare ogni ugello e appendere cartine prima di farvi affidamento.',
  rounded: (step) => `Le tabelle non hanno un passo comune: le portate sono state contate a passi di ${step}, molto più fini di qualsiasi caraffa.`,
  bent: 'Alcune tabelle stampano portate a più pressioni: le misure sono state scelte con la portata alla pressione attuale, poi la pressione è stata calcolata con la tabella. Lì la scelta è approssimata.'
};
