import type { demoCrops as CROPS, demoNames as NAMES } from '../en/demo.ts';
import type { Translated } from '../translation.ts';

/** Namen im Beispielbetrieb, erfunden wie alles darin. */
export const demoNames: Translated<typeof NAMES> = {
  orchard: 'Terrassenhof',
  'lower-bench': 'Untere Terrasse',
  'upper-shelf': 'Obere Terrasse',
  'mouse-ear': 'Mausohr',
  'petal-fall': 'Abgehende Blüte',
  'full-leaf': 'Volles Laub',
  'arc-8': 'Axialgebläse mit Bogen, 8 + 8',
  'tower-8': 'Axialgebläse mit Turm, 8 + 8',
  low: 'Kleine Stufe',
  high: 'Große Stufe',
  one: 'Einzige Stufe',
  'scab-cover': 'Belagsfungizid (erfunden)',
  'calcium-feed': 'Calcium-Blattdünger (erfunden)'
};

export const demoCrops: Translated<typeof CROPS> = { 'lower-bench': 'Apfel, schlanke Spindel', 'upper-shelf': 'Apfel, Junganlage am Draht' };
