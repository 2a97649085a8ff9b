import type { unreadWords as EN } from '../../en/keep/unread.ts';
import type { Translated } from '../../translation.ts';

/** What could not be opened. */
export const unreadWords: Translated<typeof EN> = {
  file: 'Ce fichier n’a pas été ouvert ; ce qui était ouvert reste.',
  link: 'Le lien n’a pas été ouvert ; ce qui était ouvert reste.',
  kept: 'Ce qui est gardé sur cet appareil n’a pas pu être lu. Cela reste tel quel ; enregistrez-le comme fichier pour l’examiner.'
};
