import type { demoCrops as CROPS, demoNames as NAMES } from '../en/demo.ts';
import type { Translated } from '../translation.ts';

/** Noms de la démonstration, inventés comme tout ce qu’elle contient. */
export const demoNames: Translated<typeof NAMES> = {
  orchard: 'Verger de la Terrasse',
  'lower-bench': 'Terrasse basse',
  'upper-shelf': 'Terrasse haute',
  'mouse-ear': 'Oreille de souris',
  'petal-fall': 'Chute des pétales',
  'full-leaf': 'Pleine feuille',
  'arc-8': 'Axial à arc, 8 + 8',
  'tower-8': 'Axial à tour, 8 + 8',
  low: 'Petit rapport',
  high: 'Grand rapport',
  one: 'Rapport unique',
  'scab-cover': 'Fongicide protecteur (inventé)',
  'calcium-feed': 'Engrais foliaire au calcium (inventé)'
};

export const demoCrops: Translated<typeof CROPS> = { 'lower-bench': 'Pommier, fuseau élancé', 'upper-shelf': 'Pommier, jeune plantation sur fils' };
