import type { told as EN } from '../en/told.ts';
import type { Translated } from '../translation.ts';

/** Ce qu’entend l’usager d’un lecteur d’écran quand un changement est terminé, avec les unités telles qu’on les dit. */
export const told: Translated<typeof EN> = {
  water: (is, wanted) => `Eau ${is}, souhaitée ${wanted}.`,
  waterAlone: (is) => `Eau ${is}.`,
  product: (name, dose) => `${name} ${dose}.`,
  aimed: (open, all, inLeaf) => `Buses ouvertes : ${open} sur ${all}, ${inLeaf} dirigés vers les feuilles.`,
  units: {
    'L/ha': 'litres par hectare',
    'L/ac': 'litres par acre',
    'gal/ac': 'gallons par acre',
    'imp gal/ac': 'gallons impériaux par acre',
    'kg/ha': 'kilogrammes par hectare',
    'kg/ac': 'kilogrammes par acre',
    'lb/ac': 'livres par acre',
    'fl oz/ac': 'onces liquides par acre',
    'imp fl oz/ac': 'onces liquides impériales par acre'
  }
};
