import type { guideMenu as EN } from '../../en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

/** Palavras próprias do menu, ao lado das do ecrã. */
export const guideMenu: Translated<typeof EN> = {
  large: 'Algarismos grandes, para o projetor',
  unitsGuessed: (region) => `Unidades segundo a região do navegador: ${region}.`,
  unitsUsual: 'Unidades métricas: o navegador não indica nenhuma região.',
  glossary: 'Símbolos e termos',
  licences: 'Licenças'
};
