import type { unreadWords as EN } from '../../en/keep/unread.ts';
import type { Translated } from '../../translation.ts';

/** What could not be opened. */
export const unreadWords: Translated<typeof EN> = {
  file: 'Este archivo no se abrió; lo que estaba abierto se mantiene.',
  link: 'El enlace no se abrió; lo que estaba abierto se mantiene.',
  kept: 'No se pudo leer lo guardado en este dispositivo. Se queda como está; guárdelo como archivo para examinarlo.'
};
