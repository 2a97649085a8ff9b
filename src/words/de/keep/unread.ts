import type { unreadWords as EN } from '../../en/keep/unread.ts';
import type { Translated } from '../../translation.ts';

/** Was nicht geöffnet werden konnte. */
export const unreadWords: Translated<typeof EN> = {
  file: 'Diese Datei wurde nicht geöffnet; was offen war, bleibt.',
  link: 'Der Link wurde nicht geöffnet; was offen war, bleibt.',
  kept: 'Was auf diesem Gerät gespeichert ist, konnte nicht gelesen werden. Es bleibt, wie es ist; als Datei speichern, um hineinzusehen.'
};
