import type { ProposedField, GrowthLimit } from '#core/canopy/growth/propose.ts';
import type { SeasonKind } from '#core/season/formulas.ts';
import type { DayKind } from '#core/weather/days.ts';

/** What screen and command line both say of a season, in English. */
export const seasonText = {
  kinds: { water: 'water by area', mix: 'mix on the block', loads: 'tank fills', 'dose-kg': 'by area', 'dose-L': 'by area', 'product-kg': 'on the block', 'product-L': 'on the block' } satisfies Record<SeasonKind, string>,
  ofProduct: (product: string, what: string) => `${product}, ${what}`,
  opened: (nozzles: string, several: boolean) => `${nozzles} ${several ? 'open' : 'opens'}.`,
  shut: (nozzles: string, several: boolean) => `${nozzles} ${several ? 'are' : 'is'} shut.`,
  same: 'Nothing changes by more than 1 %.',
  fields: { heightM: 'height', widthM: 'width', skirtM: 'lowest foliage', ladM2PerM3: 'leaf area density' } satisfies Record<ProposedField, string>,
  volume: 'row volume (outline)',
  by: {
    stage: (from: string) => `from ${from}, by growth stage`,
    'degree-days': (from: string, to: string) => `between ${from} and ${to}, by degree-days`
  },
  limits: {
    'apple-shares': 'Leaf: 10 % of its area at full bloom, 23 % at petal fall (Forshey et al. 1987, McIntosh apple); eight times bloom four weeks later, placed at BBCH 73 from memory. Other trees differ.',
    'volume-range': 'Outline: the row’s volume grows by 20 to 30 % from spring to summer, by 50 % at the most (BBZ Arenenberg, from a summary).',
    'one-stage': 'The range holds 20 to 30 % of growth and a stage read one off. It is no interval of confidence.',
    alike: 'Height and width are taken to grow alike, as the leaf unfolds, and the lowest foliage to stay: assumed, no source.',
    pruning: 'Pruning, hedging, crop load and sagging limbs are not in it. Measure the row before you rely on it.',
    'straight-between': 'Leaf area goes with degree-days above the base (Litschmann et al. 2016, from a summary); that the outline does too is assumed. Over a long way leaf does not unfold evenly: where the two ways differ, measure.',
    'a-week': 'The range is the same date a week earlier and a week later.',
    'density-left': 'No leaf area density was measured there, or too little is left to be written: the stage’s own default stands.',
    'from-bare': 'From a bare canopy no leaf can be worked out: the stage’s own default stands.',
    'typical-year': 'The weather file goes by month and day: a typical or another year stands for this one.',
    bridged: 'Days that the weather file misses are bridged from their neighbours.'
  } satisfies Record<GrowthLimit, string>,
  methods: {
    readings: 'The mean of each reading’s degrees above the base, none below it (common practice, no source).',
    extremes: 'The mean of the day’s lowest and highest less the base, nothing below it (McMaster & Wilhelm 1997, from memory).',
    mean: 'The day’s mean less the base, nothing below it (common practice, no source).'
  } satisfies Record<DayKind, string>,
  weather: (days: number, from: string, to: string, readings: number) => `${days} days, ${from} to ${to}, ${readings > 1 ? `${readings} readings a day` : 'one line a day'}.`,
  joined: (days: number, years: number, readings: number) => `${days} days, a year put together from months of ${years} years, ${readings > 1 ? `${readings} readings a day` : 'one line a day'}. It goes by month and day.`,
  base: (base: string) => `Base ${base}.`,
  thin: (n: number) => (n === 1 ? '1 day has too few readings and counts as missing.' : `${n} days have too few readings and count as missing.`),
  missing: (n: number) => (n === 1 ? '1 day in between is missing.' : `${n} days in between are missing.`),
  between: (from: string, to: string, sum: string, how: string) => `${from} to ${to}: ${sum}${how}`,
  byMonthDay: (years: number) => (years === 1 ? ', by month and day' : `, by month and day, the mean of ${years} years`),
  bridgedDays: (n: number) => (n === 1 ? '; 1 missing day bridged' : `; ${n} missing days bridged`),
  stop: (rung: string, finding: string) => `${rung}: ${finding}`,
  way: (share: string) => `${share} of the way`,
  reached: (rung: string, date: string) => `${rung} by its leaf: about ${date}`,
  treatmentsAssumed: 'One treatment is assumed where none was entered.',
  fixedAbove: (rung: string, product: string, fixed: string) => `At ${rung} the one setting would put on ${fixed} of ${product}, more than its label gives for that canopy: it is there to compare with, not to spray.`,
  usesPassed: (product: string, uses: number, most: number) => `${product}: ${uses} treatments are planned; its label allows ${most} in a season. Plan fewer.`,
  fixedIs: (rung: string) => `One setting all season: that of ${rung}.`,
  adaptedIs: 'Adapted: each rung’s own setting, product as its label allows.',
  label: 'Savings are of these plans, not of your bills. The label rules: adapting lowers water; product follows only as far as label and local law allow.'
} as const;
