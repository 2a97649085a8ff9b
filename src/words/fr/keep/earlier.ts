import type { earlierWords as EN } from '../../en/keep/earlier.ts';
import type { Translated } from '../../translation.ts';

/** Settings that were saved for a rung before. */
export const earlierWords: Translated<typeof EN> = {
  title: 'Réglages enregistrés auparavant',
  line: (n) => String(n),
  at: (moment) => `enregistré le ${moment}`,
  back: 'Y revenir',
  backTo: (moment) => `Revenir au réglage du ${moment}`,
  same: 'réglé maintenant',
  unordered: 'L’horloge de cet appareil a été retardée entre certains d’entre eux : l’ordre est bon, les heures peuvent ne pas l’être.',
  nozzlesShut: (n) => (n === 0 ? 'toutes les buses ouvertes' : n === 1 ? '1 buse fermée' : `${n} buses fermées`)
};
