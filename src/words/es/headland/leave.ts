import type { leaveWords as EN } from '../../en/headland/leave.ts';
import type { Translated } from '../../translation.ts';

/** Asked before a file is opened in the place of a document that holds records. */
export const leaveWords: Translated<typeof EN> = {
  records: (n) =>
    `El documento abierto contiene ${n} ${n === 1 ? 'registro que no está' : 'registros que no están'} en este archivo. Al abrir el archivo, este ocupa el lugar del documento en este dispositivo. ` +
    'Guarde antes el documento o exporte sus registros. ¿Abrir el archivo de todos modos?'
};
