import type { licenceWords as EN } from '../../en/guide/licences.ts';
import type { Translated } from '../../translation.ts';

/** Palabras en torno a las licencias, que quedan como fueron escritas. */
export const licenceWords: Translated<typeof EN> = {
  title: 'Licencias',
  intro: 'Rowtailor es software libre bajo la licencia MIT. Contiene trabajo de otros, cuyas licencias siguen.',
  noText: 'El paquete no traía texto de licencia.',
  notBuilt: 'Solo se muestra en la página construida.',
  close: 'Cerrar'
};
