import type { guideMenu as en } from '#words/en/guide/menu.ts';
import type { Translated } from '../../translation.ts';

export const guideMenu: Translated<typeof en> = {
  large: 'Cifras grandes, para el proyector',
  glossary: 'Símbolos y términos',
  licences: 'Licencias',
  marks: 'Mostrar otra vez los primeros pasos'
};
