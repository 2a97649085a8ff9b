import type { firstSteps as EN } from '../../en/guide/first.ts';
import type { Translated } from '../../translation.ts';

/** Lo que puede probar quien llega por primera vez al bloque de ejemplo; cada línea se va cuando está hecha. */
export const firstSteps: Translated<typeof EN> = {
  name: 'Tres cosas para probar',
  steps: {
    top: 'Arrastre la cima de la copa o escriba su altura: el agua la sigue.',
    shut: 'Cierre una boquilla que pulveriza por encima de los árboles.',
    why: 'Lea cómo se calculó el agua.'
  },
  done: (line) => `Hecho: ${line}`,
  away: 'Ocultar'
};
