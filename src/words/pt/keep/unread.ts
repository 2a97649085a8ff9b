import type { unreadWords as EN } from '../../en/keep/unread.ts';
import type { Translated } from '../../translation.ts';

/** What could not be opened. */
export const unreadWords: Translated<typeof EN> = {
  file: 'Este ficheiro não foi aberto; o que estava aberto mantém-se.',
  link: 'A ligação não foi aberta; o que estava aberto mantém-se.',
  kept: 'Não foi possível ler o que está guardado neste dispositivo. Fica como está; guarde-o como ficheiro para o examinar.'
};
