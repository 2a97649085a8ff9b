import type { unreadWords as EN } from '../../en/keep/unread.ts';
import type { Translated } from '../../translation.ts';

/** What could not be opened. */
export const unreadWords: Translated<typeof EN> = {
  file: 'Questo file non è stato aperto; resta ciò che era aperto.',
  link: 'Il link non è stato aperto; resta ciò che era aperto.',
  kept: 'Impossibile leggere ciò che è conservato su questo dispositivo. Resta com’è; salvarlo come file per guardarci dentro.'
};
