import type { RuleReport } from '#core/fitting/rules.ts';
import type { RowName } from '#core/fitting/row.ts';
import type { Fitting } from '#core/fitting/types.ts';

/** Names that the screen and the command line share. */
export const fittingWords = {
  names: { 'no-change': 'No change of nozzles', 'few-changes': 'Few changes', 'best-match': 'Best match' } satisfies Record<RowName, string>,
  weightings: { canopy: 'as the canopy stands', uniform: 'all alike', own: 'my own weights' } satisfies Record<NonNullable<Fitting['weighting']>, string>,
  rules: {
    'upper-large': 'large trees: 65 to 80 % through the upper half',
    'upper-low-machine': 'low machine, trees of 6 to 7.6 m: about 70 % from the top',
    'two-thirds': 'two thirds through the upper half',
    'middle-heavy': 'citrus: largest nozzles in the middle',
    proportional: 'tower: 50 to 60 % through the upper half'
  } satisfies Record<RuleReport['rule'], string>,
  limits: 'Straight spray and table flows: air bends spray and worn nozzles give more. Catch every nozzle and hang paper before you rely on it.',
  rounded: (step: string) => `The tables share no common step: flows were counted in steps of ${step}, far finer than any jug.`,
  bent: 'Some tables print flows at several pressures: sizes were chosen by the flow at the present pressure, then the pressure was solved by the table. There the choice is approximate.'
} as const;
