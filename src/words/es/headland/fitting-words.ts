import type { fittingWords as EN } from '../../en/headland/fitting-words.ts';
import type { Translated } from '../../translation.ts';

/** Names of fittings, ways of weighing and published rules. */
export const fittingWords: Translated<typeof EN> = {
  names: { 'no-change': 'Sin cambio de boquillas', 'few-changes': 'Pocos cambios', 'best-match': 'Mejor concordancia' },
  weightings: { canopy: 'según la copa', uniform: 'todas igual', own: 'mis propios pesos' },
  rules: {
    'upper-large': 'árboles grandes: del 65 al 80 % por la mitad superior',
    'upper-low-machine': 'máquina baja, árboles de 6 a 7,6 m: alrededor del 70 % desde arriba',
    'two-thirds': 'dos tercios por la mitad superior',
    'middle-heavy': 'cítricos: las boquillas mayores en el centro',
    proportional: 'torre: del 50 al 60 % por la mitad superior'
  },
  limits: 'Chorro recto y caudales de tabla: el aire desvía el caldo y las boquillas desgastadas dan más. Recoja el caudal de cada boquilla y cuelgue papel antes de fiarse.',
  rounded: (step) => `Las tablas no tienen un escalón común: los caudales se contaron en escalones de ${step}, mucho más finos que cualquier jarra.`,
  bent: 'Algunas tablas imprimen caudales a varias presiones: los calibres se eligieron por el caudal a la presión actual, y después se resolvió la presión con la tabla. Ahí la elección es aproximada.'
};
