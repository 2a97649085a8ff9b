import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** What is said where strategies are compared. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'La formula di {name} qui non dà un numero: una divisione per 0, una radice o un logaritmo di qualcosa sotto 0, o un risultato sotto 0. Cambiare la formula.',
    'draws-out-of-range': 'Sono state chieste {value} estrazioni; se ne fanno da {least} a {most}. Chiedere un numero compreso tra questi.',
    'seed-not-whole': 'Il seme è {value}; serve un numero intero da 0 a 9 007 199 254 740 991. Scriverne uno.',
    'nothing-uncertain': 'Non è indicato alcun errore delle misure, quindi non c’è nulla da estrarre. Indicare gli errori standard di altezza, base della chioma, larghezza o distanza tra i filari, o rilevare le piante.',
    'draws-given-up': 'Gli errori sono così grandi che la maggior parte delle chiome estratte non può stare: {tries} di seguito non avevano larghezza o avevano la base sopra la cima. Misurare più piante.',
    'no-label-dose': 'L’appezzamento non ha etichetta, quindi non c’è dose. Sceglierne una.'
  },
  formulas: {
    'own-index': 'Indice di dose con una formula propria',
    'own-water': 'Acqua con una formula propria'
  },
  validity: {
    'own-formula': 'Una formula propria. Che le sue unità siano coerenti non è verificato.'
  }
};
