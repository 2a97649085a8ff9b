import type { Part } from '../../language.ts';

/** Why measured trees make no survey. */
export const SURVEY: Part = {
  refusals: {
    'survey-no-trees': 'Il ne reste aucun arbre à relever. Mesurez-en un, ou reprenez-en un.',
    'survey-block-smaller': 'Arbres mesurés : {trees} ; mais la parcelle est dite en contenir {block}. Corrigez le nombre d’arbres de la parcelle.',
    'survey-group-unmeasured': 'Aucun arbre de « {group} » n’a été mesuré. Mesurez-en un, ou laissez le groupe de côté.',
    'survey-group-unsized': 'Combien d’arbres il y a dans « {group} » n’a pas été dit. Dites-le pour chaque groupe, ou pour aucun.',
    'survey-group-smaller': 'Arbres de « {group} » mesurés : {trees} ; mais il est dit en contenir {block}. Corrigez le nombre.'
  }
};
