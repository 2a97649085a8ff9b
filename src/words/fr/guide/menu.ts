import type { guideMenu as EN } from '../../en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

/** Paroles propres au menu, à côté de celles de l’écran. */
export const guideMenu: Translated<typeof EN> = {
  large: 'Grands chiffres, pour le projecteur',
  unitsGuessed: (region) => `Unités d’après la région du navigateur : ${region}.`,
  unitsUsual: 'Unités métriques : le navigateur n’indique aucune région.',
  glossary: 'Symboles et termes',
  licences: 'Licences'
};
