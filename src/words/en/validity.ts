import type { Language } from '../words.ts';

export const VALIDITY: Language['validity'] = {
  'blind-to-canopy': 'Takes no notice of the canopy.',
  'blind-to-height-and-width': 'Takes no notice of height and width.',
  'blind-to-row-spacing': 'Takes no notice of row spacing and width.',
  'retired-for-new-labels': 'Older labels only; newer ones use the leaf wall.',
  'blind-to-width-and-density': 'Takes no notice of width and density.',
  'suits-narrow-walls': 'Made for narrow walls, not for round or wide trees.',
  'under-doses-small-trees': 'In proportion to volume the smallest trees got too little in trials.',
  'box-volume': 'A box holds more than the crown inside it; do not put true volumes in.',
  'early-rate-disputed': 'Sources disagree on lower rates early in the season.',
  'memory-law': 'The line is from memory: check it against the current register.',
  'swiss-labels-only': 'For Swiss labels only.',
  'volume-by-crop': 'Litres per row unit differ by crop, from 9 to 50.',
  'run-off-judged-in-field': 'Judge the point of run-off in the field.',
  'measured-in-citrus': 'Measured in citrus.',
  'outline-volume': 'For the volume inside the true outline, never for the box.',
  'sensor-coefficient': 'Made for a sprayer that senses gaps.',
  'leaf-density-rarely-known': 'Leaf density is rarely measured; the default is a guess.',
  'recovery-uncertain': 'The share that stays varies widely.'
};
