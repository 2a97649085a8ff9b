import type { Part } from '../../language.ts';

/** Why measured trees make no survey, in English. */
export const SURVEY: Part = {
  refusals: {
    'survey-no-trees': 'No tree is left to survey. Measure one, or take one back in.',
    'survey-block-smaller': '{trees} trees were measured, but the block is said to hold {block}. Correct the number of trees in the block.',
    'survey-group-unmeasured': 'No tree of “{group}” was measured. Measure one, or leave the group out.',
    'survey-group-unsized': 'How many trees stand in “{group}” was not told. Tell it for every group, or for none.',
    'survey-group-smaller': '{trees} trees of “{group}” were measured, but it is said to hold {block}. Correct the number.'
  }
};
