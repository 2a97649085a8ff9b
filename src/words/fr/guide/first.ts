import type { firstSteps as EN } from '../../en/guide/first.ts';
import type { Translated } from '../../translation.ts';

/** Ce que peut essayer qui vient pour la première fois ; chaque ligne s’en va une fois faite. */
export const firstSteps: Translated<typeof EN> = {
  name: 'Trois choses à essayer',
  steps: {
    top: 'Tirer la cime ou en taper la hauteur : l’eau suit.',
    shut: 'Fermer une buse qui pulvérise par-dessus les arbres.',
    why: 'Lire comment l’eau a été calculée.'
  },
  done: (line) => `Fait : ${line}`,
  away: 'Masquer'
};
