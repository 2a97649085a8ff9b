import type { demoCrops as CROPS, demoNames as NAMES } from '../en/demo.ts';
import type { Translated } from '../translation.ts';

/** Nomes da demonstração, inventados como tudo nela. */
export const demoNames: Translated<typeof NAMES> = {
  orchard: 'Pomar do Socalco',
  'lower-bench': 'Socalco de baixo',
  'upper-shelf': 'Socalco de cima',
  'mouse-ear': 'Orelha de rato',
  'petal-fall': 'Queda das pétalas',
  'full-leaf': 'Plena folha',
  'arc-8': 'Axial em arco, 8 + 8',
  'tower-8': 'Axial com torre, 8 + 8',
  low: 'Marcha baixa',
  high: 'Marcha alta',
  one: 'Marcha única',
  'scab-cover': 'Fungicida protetor (inventado)',
  'calcium-feed': 'Adubo foliar de cálcio (inventado)'
};

export const demoCrops: Translated<typeof CROPS> = { 'lower-bench': 'Macieira, fuso esguio', 'upper-shelf': 'Macieira, plantação jovem em arames' };
