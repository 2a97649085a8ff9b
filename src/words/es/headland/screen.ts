import type { headlandScreen as EN } from '../../en/headland/screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Headland station's frame. Each step brings its own. */
export const headlandScreen: Translated<typeof EN> = {
  steps: {
    before: 'Antes de empezar',
    speed: 'Velocidad',
    output: 'Caudal',
    result: 'Resultado',
    fitting: 'Juego de boquillas',
    loads: 'Cargas',
    record: 'Registro',
    card: 'Ficha de cabina'
  },
  step: 'Paso',
  place: (n, all) => `paso ${n} de ${all}`,
  option: (n, name) => `${n}  ${name}`,
  back: 'Atrás',
  next: 'Siguiente',
  loading: 'Cargando …',
  failed: 'No se pudo cargar este paso. Vuelva a cargar la página.'
};
