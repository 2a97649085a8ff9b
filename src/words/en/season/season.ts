import type { Part } from '../../language.ts';

/** What a season adds up, by the family of its formulas. */
const KINDS = { water: 'water', mix: 'mix', loads: 'loads', dose: 'product by area', product: 'product on the block' } as const;
const each = (make: (kind: string, what: string) => readonly (readonly [string, string])[]): Record<string, string> => Object.fromEntries(Object.entries(KINDS).flatMap(([kind, what]) => make(kind, what)));

/** Words of the season, in English. */
export const SEASON: Part = {
  refusals: {
    'season-rung-refused': '{rung} cannot be worked out: {reason} Correct it, or set its treatments to 0.',
    'season-above-label': '{product}: the treatments planned come to {planned} in the season; its label allows {most}. Plan fewer.',
    'growth-evergreen': 'Leaf stands all year here; the published shares are of a tree that drops it. Measure the row.',
    'growth-not-measured': '{rung} is itself a proposal. Measure it, or choose a rung that was measured.',
    'growth-no-stage': '{rung} has no growth stage. Enter its BBCH.',
    'growth-from-bare': '{rung} has next to no leaf; from nothing no leaf can be worked out. Choose a rung in leaf.',
    'growth-no-date': '{rung} has no date. Enter it.',
    'growth-no-neighbours': 'A measured rung with a date before {rung}, and one after it, are needed.',
    'growth-no-warmth': 'Between {from} and {to} the weather file has no degree-days above the base.',
    'dates-not-rising': '{to} is not after {from}.',
    'dates-far-apart': '{from} and {to} lie more than a year apart.',
    'weather-gap': 'The weather file misses {days} days in a row, {from} to {to}. At most 7 are bridged.'
  },
  formulas: {
    'growth-volume-ratio': 'Growth of the row’s volume',
    'growth-height': 'Height after growth',
    'growth-width': 'Width after growth',
    'growth-leaf-density': 'Leaf area density after growth',
    'growth-way': 'How far on the way by degree-days',
    'growth-length-between': 'Length between two rungs',
    'growth-leaf-between': 'Leaf area index between two rungs',
    'growth-density-of-leaf': 'Leaf area density of this leaf area',
    ...each((kind, what) => [
      [`treatments-${kind}`, `Treatments of one rung: ${what}`],
      [`season-${kind}`, `Season: ${what}`],
      [`season-saving-${kind}`, `Saving in the season: ${what}`],
      [`season-share-${kind}`, `Saving as a share: ${what}`]
    ]),
    'sum-of-stages': 'sum over the rungs'
  },
  symbols: {
    Gv: 'growth of the row’s volume',
    gv: 'growth from spring to summer',
    sa: 'share of the growth done at the rung it comes from',
    sb: 'share of the growth done at this rung',
    Ha: 'height at the rung it comes from',
    Wa: 'width at the rung it comes from',
    LADa: 'leaf area density at the rung it comes from',
    ua: 'share of leaf unfolded at the rung it comes from',
    ub: 'share of leaf unfolded at this rung',
    DDx: 'degree-days up to this date',
    DDt: 'degree-days of the whole way',
    fw: 'share of the way',
    La: 'length at the rung before',
    Lb: 'length at the rung after',
    L: 'length on the way',
    LAIa: 'leaf area index at the rung before',
    LAIb: 'leaf area index at the rung after',
    X: 'one treatment',
    Xn: 'treatments of a rung',
    Xs: 'season',
    Xd: 'saving',
    Xf: 'season with one setting',
    Xa: 'season adapted',
    ...each((kind) => [
      [`treatments-${kind}.n`, 'treatments'],
      [`season-share-${kind}.S`, 'saving']
    ])
  },
  assumptions: {
    'growth.volume': { label: 'Growth of the row’s volume', meaning: 'From spring to summer; published as 20 to 30 %, 50 % at the most. The middle is taken.' },
    'growth.base-temperature': { label: 'Base of degree-days', meaning: 'Leaf area goes with degree-days above this temperature.' }
  },
  fields: {
    treatments: 'treatments',
    date: 'date',
    evergreen: 'evergreen',
    weather: 'degree-days of the weather file',
    'canopy.proposed': 'proposed canopy',
    'label.maxPerSeason': 'label season maximum'
  }
};
