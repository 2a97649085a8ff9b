import type { licenceWords as EN } from '../../en/guide/licences.ts';
import type { Translated } from '../../translation.ts';

/** Parole intorno alle licenze, che restano come furono scritte. */
export const licenceWords: Translated<typeof EN> = {
  title: 'Licenze',
  intro: 'Rowtailor è software libero con licenza MIT. Contiene lavoro di altri, le cui licenze seguono.',
  noText: 'Il pacchetto non aveva testo di licenza.',
  notBuilt: 'Si vede solo nella pagina costruita.',
  close: 'Chiudi'
};
