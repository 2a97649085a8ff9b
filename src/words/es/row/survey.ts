import type { Part } from '../../language.ts';

/** Why measured trees make no survey. */
export const SURVEY: Part = {
  refusals: {
    'survey-no-trees': 'No queda ningún árbol para el muestreo. Mida uno, o vuelva a incluir alguno.',
    'survey-block-smaller': 'Se midieron {trees} árboles, pero se ha indicado que la parcela tiene {block}. Corrija el número de árboles de la parcela.',
    'survey-group-unmeasured': 'No se midió ningún árbol de «{group}». Mida uno, o deje fuera el grupo.',
    'survey-group-unsized': 'No se indicó cuántos árboles hay en «{group}». Indíquelo para todos los grupos o para ninguno.',
    'survey-group-smaller': 'Se midieron {trees} árboles de «{group}», pero se ha indicado que tiene {block}. Corrija el número.'
  }
};
