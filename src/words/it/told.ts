import type { told as EN } from '../en/told.ts';
import type { Translated } from '../translation.ts';

/** Ciò che sente chi usa un lettore di schermo quando una modifica è finita, con le unità come si dicono. */
export const told: Translated<typeof EN> = {
  water: (is, wanted) => `Acqua ${is}, voluta ${wanted}.`,
  waterAlone: (is) => `Acqua ${is}.`,
  product: (name, dose) => `${name} ${dose}.`,
  aimed: (open, all, inLeaf) => `Ugelli aperti: ${open} su ${all}, ${inLeaf} diretto alle foglie.`,
  units: {
    'L/ha': 'litri per ettaro',
    'L/ac': 'litri per acro',
    'gal/ac': 'galloni per acro',
    'imp gal/ac': 'galloni imperiali per acro',
    'kg/ha': 'chilogrammi per ettaro',
    'kg/ac': 'chilogrammi per acro',
    'lb/ac': 'libbre per acro',
    'fl oz/ac': 'once liquide per acro',
    'imp fl oz/ac': 'once liquide imperiali per acro'
  }
};
