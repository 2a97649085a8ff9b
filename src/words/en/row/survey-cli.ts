import type { Grouping, Measured, Survey } from '#core/canopy/survey/types.ts';

/** What `rowtailor survey` says, in English. */
export const surveyCli = {
  usage: `rowtailor survey FILE [--block-trees N] [--by row|variety [--group-trees NAME=N,...]] [--leave-out TREE,...]
                      [--row-spacing M,ERROR] [--units SYSTEM] [--json]

Turns the measurements of many trees into one canopy: means with their 95 % intervals, the tallest tenth, the product height × width
of each tree before averaging, trees that stand out, how many more trees are needed, and which measurement spreads most.
FILE is a CSV table (comma, semicolon or tab; - reads standard input), one tree a line, columns in any order:
  height_m | height_ft      from the ground
  width_m | width_ft        greatest width across the row; or widths by height, any number of them:
  width_m_at_1.5 | width_ft_at_5
  skirt_m | skirt_ft        lowest foliage; may be left out
  tree, row, variety        names; may be left out
  note_...                  passed over

  --block-trees N       trees that stand in the block: the interval narrows as they are measured
  --by                  means of each row, or of each variety; trees are then judged among their own
  --group-trees NAME=N  with --by: trees that stand in each; the whole is then weighted by them
  --leave-out TREE,...  trees that count in nothing, by name, or by their place among the trees that are read, as #3
  --row-spacing M,ERROR mean row spacing and its standard error in metres, as 4,0.05: set beside height and width
  --units               metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json                everything in metres: {"format": "rowtailor-survey", "version": 1, "canopy": {...}, ...}
  -h, --help            this text

The canopy is printed as it stands in a document, to be put in a rung's "canopy". A tree that stands out is named and still counts:
whether to measure it again or to leave it out is yours to decide.

Lines that cannot be used are told on standard error with line, column, value and reason; the others are still used.
Exit codes: 0 done, 1 some lines refused, or no survey can be made of the trees, 2 wrong usage, 3 unreadable.
`,
  noFile: 'Name one CSV file of trees, or - for standard input.',
  tooManyFiles: (found: number) => `One file of trees at a time, not ${found}.`,
  badBlockTrees: (value: string) => `--block-trees is "${value}"; a whole number, 1 to 1,000,000, is needed.`,
  badBy: (value: string) => `--by is "${value}"; it must be row or variety.`,
  badGroupTrees: (value: string) => `--group-trees is "${value}"; write names and numbers of trees, as Early=400,Late=600, each name once.`,
  groupsAlone: '--group-trees goes with --by row or --by variety.',
  twoBlocks: '--group-trees tells the trees of the block already; leave out --block-trees.',
  badRowSpacing: (value: string, least: number, most: number) => `--row-spacing is "${value}"; write the mean, ${least} to ${most} m, and its standard error, 0 to 5 m, as 4,0.05.`,
  noSuchTree: (name: string) => `--leave-out names "${name}"; there is no such tree. Write its name, or its place as #3.`,

  title: (file: string) => `Survey of trees: ${file}`,
  headings: {
    trees: 'Trees',
    means: 'Means, with their 95 % intervals',
    volume: 'Row volume',
    needed: 'How sure',
    outliers: 'Trees that stand out; they still count',
    groups: { row: 'By row', variety: 'By variety' } satisfies Record<Grouping, string>,
    rules: 'How it is worked out',
    document: 'For the rung’s canopy, in a document'
  },
  measured: 'measured',
  leftOut: 'left out by you',
  inBlock: 'in the block',
  notTold: 'not told',
  columns: { what: '', trees: 'trees', mean: 'mean', deviation: 'SD', cv: 'CV', interval: '95 %', block: 'of', weight: 'weight' },
  what: { height: 'height', width: 'width', skirt: 'skirt', product: 'height × width' },
  tallest: 'tallest tenth',
  tallestOf: (trees: number) => (trees === 1 ? 'height of the tallest tree' : `mean height of the ${trees} tallest`),
  products: 'mean of products',
  ofMeans: 'product of means',
  excess: 'first over second',
  correlation: 'correlation of height and width',
  needed: (wanted: string) => `trees for ±${wanted} of the row volume`,
  more: (more: number) => (more === 0 ? 'enough are measured' : `${more} more`),
  shares: 'what spreads',
  share: { height: 'height', width: 'width', rowSpacing: 'row spacing' } satisfies Record<Survey['shares'][number]['what'], string>,
  together: (part: string) => `height and width going together add ${part} of that`,
  apart: (part: string) => `tall trees being narrow takes ${part} of that away`,
  outlier: (what: Measured, value: string, median: string, score: string) => `${surveyCli.what[what]} ${value}, median ${median}: ${score} deviations off`,
  treeAt: (place: number) => `#${place}`,
  unnamed: '(not told)',
  rules: (s: Survey): string[] => [
    'Intervals: Student’s t (from memory)' + (s.blockTrees === null ? '; give --block-trees if you know how many stand in the block.' : ', in a block of known size, √(1 − n/N).'),
    ...(s.groups?.weighted ? ['Weighted means: errors and correlation are those within the groups; degrees of freedom after Satterthwaite (Cochran 1977, from memory).'] : []),
    'Row volume: height × width of each tree, then the mean. Means multiplied say less where tall trees are wide.',
    'A tree stands out where it lies more than 3.5 scaled median absolute deviations from the median of five trees or more (Iglewicz & Hoaglin 1993, from memory). Measure it again; a wrong figure is corrected, a true one stays.',
    'Trees needed: the same spread is assumed in the trees still to be measured, taken at random over the block and not from its edges.',
    ...(s.groups && !s.groups.weighted ? ['The whole is the mean of the trees measured; with --group-trees it is weighted by what stands in the block.'] : [])
  ]
} as const;
