import type { demoCrops as CROPS, demoNames as NAMES } from '../en/demo.ts';
import type { Translated } from '../translation.ts';

/** Nombres de la demostración, inventados como todo en ella. */
export const demoNames: Translated<typeof NAMES> = {
  orchard: 'Plantación de la Terraza',
  'lower-bench': 'Terraza baja',
  'upper-shelf': 'Terraza alta',
  'mouse-ear': 'Oreja de ratón',
  'petal-fall': 'Caída de pétalos',
  'full-leaf': 'Plena hoja',
  'arc-8': 'Axial de arco, 8 + 8',
  'tower-8': 'Axial con torre, 8 + 8',
  low: 'Marcha corta',
  high: 'Marcha larga',
  one: 'Marcha única',
  'scab-cover': 'Fungicida protector (inventado)',
  'calcium-feed': 'Abono foliar de calcio (inventado)'
};

export const demoCrops: Translated<typeof CROPS> = { 'lower-bench': 'Manzano, huso esbelto', 'upper-shelf': 'Manzano, plantación joven en alambres' };
