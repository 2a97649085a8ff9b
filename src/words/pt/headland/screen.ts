import type { headlandScreen as EN } from '../../en/headland/screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Headland station's frame. Each step brings its own. */
export const headlandScreen: Translated<typeof EN> = {
  steps: {
    before: 'Antes de começar',
    speed: 'Velocidade',
    output: 'Caudal',
    result: 'Resultado',
    fitting: 'Escolha dos bicos',
    loads: 'Cargas',
    record: 'Registo',
    card: 'Ficha da cabina'
  },
  step: 'Passo',
  place: (n, all) => `passo ${n} de ${all}`,
  option: (n, name) => `${n}  ${name}`,
  back: 'Anterior',
  next: 'Seguinte',
  loading: 'A carregar …',
  failed: 'Não foi possível carregar este passo. Carregue a página de novo.'
};
