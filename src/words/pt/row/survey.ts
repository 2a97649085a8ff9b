import type { Part } from '../../language.ts';

/** Why measured trees make no survey. */
export const SURVEY: Part = {
  refusals: {
    'survey-no-trees': 'Não resta nenhuma árvore na amostra. Meça uma, ou volte a incluir uma.',
    'survey-block-smaller': 'Mediram-se {trees} árvores, mas diz-se que a parcela tem {block}. Corrija o número de árvores da parcela.',
    'survey-group-unmeasured': 'Não se mediu nenhuma árvore de “{group}”. Meça uma, ou deixe o grupo de fora.',
    'survey-group-unsized': 'Não se indicou quantas árvores há em “{group}”. Indique-o para todos os grupos, ou para nenhum.',
    'survey-group-smaller': 'Mediram-se {trees} árvores de “{group}”, mas diz-se que tem {block}. Corrija o número.'
  }
};
