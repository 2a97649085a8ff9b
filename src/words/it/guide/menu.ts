import type { guideMenu as EN } from '../../en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

/** Parole proprie del menù, accanto a quelle dello schermo. */
export const guideMenu: Translated<typeof EN> = {
  large: 'Cifre grandi, per il proiettore',
  glossary: 'Simboli e termini',
  licences: 'Licenze'
};
