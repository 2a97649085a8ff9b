import type { Language } from '../words.ts';

const REFERENCE = 'Whole dose: the reference canopy among the assumptions.';

export const STRATEGIES: Language['strategies'] = {
  'ground-area': { name: 'Per ground hectare', line: 'The same on every hectare, whatever stands on it.', full: 'Whole dose: every hectare.' },
  'row-length': { name: 'Row length', line: 'In proportion to metres of row; height and width play no part.', full: 'Whole dose: the reference row spacing.' },
  'crown-height': { name: 'Crown height', line: 'In proportion to height from skirt to top; width and spacing play no part.', full: 'Whole dose: the reference crown height.' },
  'leaf-wall': { name: 'Leaf wall area', line: 'In proportion to the treated walls, skirt to top; width plays no part.', full: 'Whole dose: both walls of the reference canopy.' },
  'row-volume': { name: 'Tree-row volume', line: 'In proportion to the crown box: skirt to top, greatest width.', full: REFERENCE },
  'us-row-volume': { name: 'US tree-row volume', line: 'Box from the ground up, greatest width, times density and seasonal factor.', full: 'Whole dose: the standard orchard, 400 gal/acre dilute.' },
  'metric-multiplier': { name: 'Metric multiplier', line: 'Box from the ground up, greatest width, times a multiplier where 1 is dense.', full: 'Whole dose: the standard orchard in dense leaf.' },
  'swiss-affine': { name: 'Swiss straight line', line: 'Crown box, greatest width; the smallest tree keeps part of the dose.', full: 'Whole dose: the Swiss reference volume.' },
  'unit-canopy-row': { name: 'Unit canopy row', line: 'Rows 1 m high, 1 m wide and 100 m long, counted from skirt to top and greatest width.', full: REFERENCE },
  'row-distance': { name: 'Row distance and height', line: 'Litres per 100 m of row and metre of height, skirt to top; width plays no part.', full: 'Whole dose: the reference crown height and row spacing.' },
  'stage-volume': { name: 'Stage and density', line: 'What the canopy inside its outline holds at this stage and density.', full: 'Whole dose: the reference canopy at medium density.' },
  'occupied-volume': { name: 'Occupied canopy', line: 'Litres per cubic metre inside the true outline, gaps left out.', full: REFERENCE },
  'leaf-area': { name: 'Leaf area', line: 'A wanted deposit on the leaf that is there, over the share that stays.', full: 'Whole dose: the reference canopy with its leaf density.' }
};

export const ACTS: Language['acts'] = {
  'label-dose-kept': 'label dose per hectare kept',
  'scaled-to-canopy': 'follows the canopy',
  'not-above-label': 'held at the label dose',
  floored: 'held at your floor',
  'capped-at-label-maximum': 'label maximum acts',
  'raised-to-label-minimum-water': 'raised to the label’s least water',
  'capped-at-label-maximum-water': 'held at the label’s most water',
  'own-water': 'your own water'
};
