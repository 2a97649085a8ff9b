import type { sendWords as EN } from '../../en/keep/send.ts';
import type { Translated } from '../../translation.ts';

/** An orchard as a file, by the share sheet, or as a link; and one that comes by a link. */
export const sendWords: Translated<typeof EN> = {
  title: (name) => `Enviar ${name}`,
  file: 'Como archivo',
  fileNote: 'Todo, con los registros. Quien lo abra obtiene una plantación propia.',
  share: 'Compartir archivo',
  save: 'Guardar archivo',
  shareFailed: 'No se pudo abrir el menú de compartir: guarde en su lugar el archivo.',
  link: 'Como enlace',
  linkNote: 'El enlace contiene la plantación misma, detrás del signo #: ningún servidor llega a verla. Quien tenga el enlace puede leerla, y un enlace no se puede retirar.',
  records: (n) => (n === 1 ? 'con el registro y los nombres que contiene' : `con los ${n} registros y los nombres que contienen`),
  copy: 'Copiar enlace',
  copied: 'Copiado.',
  copyByHand: 'Copie a mano el texto seleccionado.',
  linkName: 'Enlace',
  characters: (n) => `${n} caracteres. Algunos programas de correo cortan los enlaces de más de 2 000; envíe entonces el archivo.`,
  close: 'Cerrar',
  faults: {
    'other-version': 'Este enlace lo hizo otra versión de este programa y no se puede leer aquí. Recargue la página para tener una versión más nueva, o pida un archivo.',
    'too-long': 'Esta plantación es demasiado grande para un enlace: envíela como archivo.',
    damaged: 'Este enlace está dañado, probablemente cortado por el camino. Pídalo de nuevo, o pida un archivo.',
    'unfolds-too-far': 'Este enlace, desplegado, es más de lo que puede contener una plantación y no se siguió leyendo.',
    'no-means': 'Este navegador no tiene medios para leer o hacer estos enlaces: use un archivo.'
  },
  tooLongToRead: 'Este enlace es más largo que cualquiera de los que hace este programa y no se leyó.',
  offer: 'Una plantación de un enlace',
  offerNote: 'Se abre como una plantación propia. No se sustituye nada de lo guardado aquí.',
  holds: (blocks, machines, records) => `Parcelas: ${blocks}. Máquinas: ${machines}. Registros: ${records}.`,
  more: (n) => `y ${n} más`,
  take: 'Abrirla',
  leave: 'Dejarla',
  refused: 'El enlace no se abrió; lo que estaba abierto se mantiene.'
};
