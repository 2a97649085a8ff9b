import type { guideMenu as en } from '#words/en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

export const guideMenu: Translated<typeof en> = {
  large: 'Große Zahlen, für den Beamer',
  glossary: 'Formelzeichen und Begriffe',
  licences: 'Lizenzen',
  marks: 'Erste Schritte wieder zeigen'
};
