const count = (n: number): string => n.toLocaleString('en-US');

/** What `rowtailor table --intervals` and `--manifest` say. */
export const intervalCli = {
  note: 'Intervals are 95 % and hold the errors of height, skirt, width and row spacing that the table states, nothing else: not the errors of density and gaps, not the assumptions, and not which strategy is right, which is usually more.',
  noErrors:
    '--intervals needs at least one column of standard errors: height_se_m, skirt_se_m, width_se_m or row_spacing_se_m (or the same in _ft). It is the error of the mean: the spread over the trees / √(trees measured). Beside it may stand height_width_correlation and trees.',
  withoutIntervals: (option: string) => `${option} goes with --intervals.`,
  seedWithoutDraws: '--seed goes with --draws: the analytic interval draws nothing.',
  notWhole: (option: string, text: string, least: number, most: number) => `${option} is "${text}"; a whole number, ${count(least)} to ${count(most)}, is needed.`,
  notWithSpray: (option: string) => `${option} does not go with --spray; run the table twice.`,
  sameManifest: '--manifest is a file that is read or written already; name another.',
  givenUp: (block: string) =>
    `block ${block}: a canopy was drawn 100 times and could not be each time (width or row spacing not above 0, skirt below the ground or not below the top); its columns of draws are empty. Check its errors: they are large against the measurements, or there are too few trees.`
} as const;
