import type { told as EN } from '../en/told.ts';
import type { Translated } from '../translation.ts';

/** O que ouve quem usa um leitor de ecrã quando uma alteração termina, com as unidades como se dizem. */
export const told: Translated<typeof EN> = {
  water: (is, wanted) => `Água ${is}, desejada ${wanted}.`,
  waterAlone: (is) => `Água ${is}.`,
  product: (name, dose) => `${name} ${dose}.`,
  aimed: (open, all, inLeaf) => `Bicos abertos: ${open} de ${all}, ${inLeaf} dirigido à folhagem.`,
  units: {
    'L/ha': 'litros por hectare',
    'L/ac': 'litros por acre',
    'gal/ac': 'galões por acre',
    'imp gal/ac': 'galões imperiais por acre',
    'kg/ha': 'quilogramas por hectare',
    'kg/ac': 'quilogramas por acre',
    'lb/ac': 'libras por acre',
    'fl oz/ac': 'onças líquidas por acre',
    'imp fl oz/ac': 'onças líquidas imperiais por acre'
  }
};
