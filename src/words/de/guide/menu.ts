import type { guideMenu as EN } from '../../en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

/** Eigene Worte des Menüs, neben denen des Bildschirms. */
export const guideMenu: Translated<typeof EN> = {
  large: 'Große Zahlen, für den Beamer',
  unitsGuessed: (region) => `Einheiten nach der Region des Browsers: ${region}.`,
  unitsUsual: 'Metrische Einheiten: Der Browser nennt keine Region.',
  glossary: 'Formelzeichen und Begriffe',
  licences: 'Lizenzen'
};
