import type { guideMenu as EN } from '../../en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

/** Palabras propias del menú, junto a las de la pantalla. */
export const guideMenu: Translated<typeof EN> = {
  large: 'Cifras grandes, para el proyector',
  unitsGuessed: (region) => `Unidades según la región del navegador: ${region}.`,
  unitsUsual: 'Unidades métricas: el navegador no indica ninguna región.',
  glossary: 'Símbolos y términos',
  licences: 'Licencias'
};
