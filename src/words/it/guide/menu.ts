import type { guideMenu as EN } from '../../en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

/** Parole proprie del menù, accanto a quelle dello schermo. */
export const guideMenu: Translated<typeof EN> = {
  large: 'Cifre grandi, per il proiettore',
  unitsGuessed: (region) => `Unità secondo la regione del browser: ${region}.`,
  unitsUsual: 'Unità metriche: il browser non indica alcuna regione.',
  glossary: 'Simboli e termini',
  licences: 'Licenze'
};
