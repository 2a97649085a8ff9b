import type { keepBar as EN } from '../../en/keep/bar.ts';
import type { Translated } from '../../translation.ts';

/** How the open document is kept, and what stands in the way. */
export const keepBar: Translated<typeof EN> = {
  status: {
    fresh: '',
    saving: '',
    kept: 'guardado en este dispositivo',
    full: 'No queda espacio en este dispositivo: guarde el documento como archivo.',
    blocked: 'No se pudo guardar el documento en este dispositivo: guárdelo como archivo.',
    failed: 'No se pudo guardar el documento en este dispositivo: guárdelo como archivo.',
    newer: 'Otra página guardó esta plantación.',
    gone: 'Esta plantación ya no está guardada en este dispositivo.'
  },
  full: 'Los últimos cambios están solo en esta página. Guárdelos como archivo, o libere espacio eliminando plantaciones definitivamente; se vuelve a intentar por sí solo.',
  blocked: 'Este navegador no deja que ninguna página guarde datos, como en una ventana privada o por un ajuste. El trabajo está solo en esta página y desaparece al cerrarla.',
  failed: 'Los últimos cambios están solo en esta página. Se vuelve a intentar por sí solo.',
  newer: (at) => `Hay guardada una versión más nueva, de ${at}. No se sobrescribió nada.`,
  newerUnkept: 'Lo que usted ha cambiado aquí desde entonces está solo en esta página.',
  takeNewer: 'Tomar la más nueva',
  dropMine: 'Tomar la más nueva, descartar la mía',
  keepCopy: 'Guardar la mía como copia',
  gone: 'Se eliminó en otra página, o se borraron los datos de este sitio, mientras estaba abierta aquí. El trabajo está solo en esta página.',
  keepAnew: 'Guardarla de nuevo',
  saveFile: 'Guardar como archivo',
  orchards: 'Plantaciones guardadas aquí',
  clock: (span) => `El reloj de este dispositivo va ${span} por detrás de la última vez que se guardó. Las horas de lo guardado y de los registros pueden estar desordenadas; no se pierde nada. Un cronómetro que estuviera en marcha es erróneo: cronometre de nuevo la pasada.`,
  rescued: (names) => `El trabajo que no se guardó al cerrar una página está en una plantación propia: ${names}.`,
  version: 'Hay una versión nueva de esta página. Se carga al recargar.',
  reload: 'Recargar',
  close: 'Cerrar',
  later: 'Más tarde',
  fault: 'Algo falló en esta página.',
  faultKept: 'Su trabajo sigue aquí y está guardado en este dispositivo.',
  faultUnkept: 'Su trabajo sigue aquí, pero los últimos cambios no están guardados en este dispositivo: guárdelo como archivo antes de recargar.',
  faultMore: (n) => `${n} más después.`,
  faultDetails: 'Lo que dice el navegador',
  faultNote: 'No se envió nada a ninguna parte. Copie este texto si quiere comunicarlo.',
  goOn: 'Seguir',
  broken: 'Esta parte de la página no se puede dibujar.',
  stepBack: 'Deshacer el último cambio',
  drawAgain: 'Dibujarla de nuevo'
};
