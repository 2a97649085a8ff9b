import type { Part } from '../../language.ts';

/** Why measured trees make no survey. */
export const SURVEY: Part = {
  refusals: {
    'survey-no-trees': 'Non resta alcuna pianta da rilevare. Misurarne una, o riprenderne una.',
    'survey-block-smaller': 'Sono state misurate {trees} piante, ma dell’appezzamento è detto che ne ha {block}. Correggere il numero di piante nell’appezzamento.',
    'survey-group-unmeasured': 'Nessuna pianta di «{group}» è stata misurata. Misurarne una, o escludere il gruppo.',
    'survey-group-unsized': 'Non è indicato quante piante ci sono in «{group}». Indicarlo per ogni gruppo, o per nessuno.',
    'survey-group-smaller': 'Sono state misurate {trees} piante di «{group}», ma è detto che ne ha {block}. Correggere il numero.'
  }
};
