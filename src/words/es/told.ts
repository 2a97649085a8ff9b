import type { told as EN } from '../en/told.ts';
import type { Translated } from '../translation.ts';

/** Lo que oye quien usa un lector de pantalla cuando un cambio ha terminado, con las unidades tal como se dicen. */
export const told: Translated<typeof EN> = {
  water: (is, wanted) => `Agua ${is}, deseada ${wanted}.`,
  waterAlone: (is) => `Agua ${is}.`,
  product: (name, dose) => `${name} ${dose}.`,
  aimed: (open, all, inLeaf) => `${open} de ${all} boquillas abiertas, ${inLeaf} dirigido a la hoja.`,
  units: {
    'L/ha': 'litros por hectárea',
    'L/ac': 'litros por acre',
    'gal/ac': 'galones por acre',
    'imp gal/ac': 'galones imperiales por acre',
    'kg/ha': 'kilogramos por hectárea',
    'kg/ac': 'kilogramos por acre',
    'lb/ac': 'libras por acre',
    'fl oz/ac': 'onzas líquidas por acre',
    'imp fl oz/ac': 'onzas líquidas imperiales por acre'
  }
};
