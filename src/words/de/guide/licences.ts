import type { licenceWords as EN } from '../../en/guide/licences.ts';
import type { Translated } from '../../translation.ts';

/** Worte um die Lizenzen; diese bleiben, wie sie geschrieben sind. */
export const licenceWords: Translated<typeof EN> = {
  title: 'Lizenzen',
  intro: 'Rowtailor ist freie Software unter der MIT-Lizenz. Sie enthält Arbeit anderer, deren Lizenzen hier folgen.',
  noText: 'Dem Paket lag kein Lizenztext bei.',
  notBuilt: 'Nur in der gebauten Seite zu sehen.',
  close: 'Schließen'
};
