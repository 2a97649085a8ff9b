import type { Language } from '../words.ts';

export const VALIDITY: Language['validity'] = {
  'blind-to-canopy': 'Ne tient pas compte de la végétation.',
  'blind-to-height-and-width': 'Ne tient pas compte de la hauteur ni de la largeur.',
  'blind-to-row-spacing': 'Ne tient pas compte de la distance entre rangs ni de la largeur.',
  'retired-for-new-labels': 'Anciennes étiquettes seulement ; les nouvelles utilisent la haie foliaire.',
  'blind-to-width-and-density': 'Ne tient pas compte de la largeur ni de la densité.',
  'suits-narrow-walls': 'Faite pour des haies étroites, pas pour des arbres ronds ou larges.',
  'under-doses-small-trees': 'En proportion du volume, les plus petits arbres ont reçu trop peu en essais.',
  'box-volume': 'Un bloc contient plus que la végétation qu’il entoure ; n’y mettez pas de vrais volumes.',
  'early-rate-disputed': 'Les sources ne s’accordent pas sur des doses plus basses en début de saison.',
  'memory-law': 'La droite est de mémoire : vérifiez-la dans le registre en vigueur.',
  'swiss-labels-only': 'Pour les étiquettes suisses seulement.',
  'volume-by-crop': 'Les litres par rang unitaire dépendent de la culture, de 9 à 50.',
  'run-off-judged-in-field': 'Le point de ruissellement se juge au verger.',
  'measured-in-citrus': 'Mesurée sur agrumes.',
  'outline-volume': 'Pour le volume dans le vrai contour, jamais pour le bloc.',
  'sensor-coefficient': 'Faite pour un pulvérisateur qui détecte les vides.',
  'leaf-density-rarely-known': 'La densité foliaire est rarement mesurée ; la valeur par défaut est une estimation.',
  'recovery-uncertain': 'La part qui reste varie beaucoup.'
};
