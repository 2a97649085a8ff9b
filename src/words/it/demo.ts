import type { demoCrops as CROPS, demoNames as NAMES } from '../en/demo.ts';
import type { Translated } from '../translation.ts';

/** Nomi della dimostrazione, inventati come tutto il resto. */
export const demoNames: Translated<typeof NAMES> = {
  orchard: 'Frutteto della Terrazza',
  'lower-bench': 'Terrazza bassa',
  'upper-shelf': 'Terrazza alta',
  'mouse-ear': 'Orecchiette di topo',
  'petal-fall': 'Caduta petali',
  'full-leaf': 'Piena vegetazione',
  'arc-8': 'Assiale ad arco, 8 + 8',
  'tower-8': 'Assiale con torretta, 8 + 8',
  low: 'Marcia bassa',
  high: 'Marcia alta',
  one: 'Marcia unica',
  'scab-cover': 'Fungicida di copertura (inventato)',
  'calcium-feed': 'Concime fogliare al calcio (inventato)'
};

export const demoCrops: Translated<typeof CROPS> = { 'lower-bench': 'Melo, fusetto snello', 'upper-shelf': 'Melo, giovane impianto su fili' };
