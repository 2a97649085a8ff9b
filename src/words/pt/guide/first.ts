import type { firstSteps as EN } from '../../en/guide/first.ts';
import type { Translated } from '../../translation.ts';

/** O que pode experimentar quem vem pela primeira vez; cada linha vai-se quando está feita. */
export const firstSteps: Translated<typeof EN> = {
  name: 'Três coisas a experimentar',
  steps: {
    top: 'Arrastar o topo da copa ou escrever a sua altura: a água segue-o.',
    shut: 'Fechar um bico que pulveriza por cima das árvores.',
    why: 'Ler como se calculou a água.'
  },
  done: (line) => `Feito: ${line}`,
  away: 'Ocultar'
};
