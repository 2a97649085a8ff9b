const count = (n: number): string => n.toLocaleString('en-US');

/** What `rowtailor strategies` says. */
export const strategiesCli = {
  usage: `rowtailor strategies FILE [--block ID] [--rung ID] [--units SYSTEM] [--draws N [--seed S] [--assumptions]]
                     [--tornado STRATEGY [--of index|water|dose]] [--json | --csv | --methods | --bibtex | --csl] [--manifest FILE]

Sets every strategy side by side, for every rung of a document in the order of the file, those of its "ownStrategies" among them:
water, dose index and, with a label, the dose, each with its 95 % interval; why the others differ from the block's own strategy,
with what each reason makes. FILE - reads standard input.

  --block ID    only the block with this id
  --rung ID     only the rungs with this id
  --units       metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --draws N     draw N canopies from the errors of the measurements (100 to 100000), beside the analytic interval
  --seed S      with --draws: whole, from 0; default 1. The same seed draws the same
  --assumptions with --draws: draw the assumptions for which a range is stated as well, evenly over it
  --tornado STRATEGY  which input moves a figure of that strategy how far, one at a time
  --of          with --tornado: index (default), water or dose
  --json        everything with the working of every figure, in the engine's units:
                {"format": "rowtailor-strategies", "version": 1, "results": [...]}, one result per rung
  --csv         one line per rung and strategy, in the engine's units
  --methods     a text for a methods section: formulas, constants and how sure they are, label, draws; with keys of the works cited
  --bibtex      the works that the text cites, as BibTeX
  --csl         the same as CSL-JSON
  --manifest FILE  write there what this was made of and with: hash of the input, versions, options, constants, hash of the output
  -h, --help    this text

Intervals hold the errors of the measurements alone: neither the constants nor which strategy is right, which is usually more.

Exit codes
  0  done
  1  the file was refused, or what was asked for could not be worked out from it
  2  wrong usage, or no such block, rung or strategy
  3  the file cannot be read, or is no JSON
`,
  twoForms: (forms: readonly string[]) => `${forms.join(' and ')} do not go together; choose one.`,
  seedWithoutDraws: (option: string) => `${option} goes with --draws.`,
  ofWithoutTornado: '--of goes with --tornado.',
  notWhole: (option: string, text: string, least: number, most: number) => `${option} is "${text}"; a whole number, ${count(least)} to ${count(most)}, is needed.`,
  badOf: (text: string) => `--of is "${text}"; it must be index, water or dose.`,
  noStrategy: (id: string, known: readonly string[]) => `--tornado names "${id}"; there is no such strategy. There are: ${known.join(', ')}.`,
  sameManifest: '--manifest is the file that is read; name another.',

  headings: {
    table: 'Strategies',
    reasons: (name: string) => `Why they differ from ${name}, the strategy of the block`,
    own: 'Formulas of your own',
    draws: (draws: string, seed: number, assumptions: boolean) => `Draws: ${draws} canopies, seed ${seed}${assumptions ? ', assumptions with a stated range drawn as well' : ''}`,
    tornado: (name: string, quantity: string) => `What moves the ${quantity} by ${name}, one input at a time`
  },
  columns: { strategy: 'strategy', index: 'index', interval: '95 %', water: 'water', dilute: 'dilute', dose: 'product', rules: '' },
  drawColumns: { strategy: 'strategy', figure: 'figure', mean: 'mean', drawn: '95 % of draws', analytic: 'analytic', note: '' },
  tornadoColumns: { input: 'input', range: 'range', figure: 'figure', kind: '' },
  quantities: { index: 'dose index', water: 'water', dose: 'product' },
  kinds: { measured: 'measured, 95 %', assumed: 'assumed, stated range' },
  base: (value: string) => `As measured: ${value}.`,
  noBars: 'No input with a range moves it.',
  lost: (n: number) => `${count(n)} draws gave no figure`,
  redrawn: (n: number) => `${count(n)} canopies could not be and were drawn anew.`,
  alike: 'no difference here',
  indexNote: 'Index: 1 is the label dose on the strategy’s own reference canopy, before any rule of the label. Product: after adaptation, floor and maximum of the label.',
  intervalNote: 'Intervals hold the errors of the measurements alone: neither the constants nor which strategy is right.',
  ownNote: 'Whether the units of a formula go together is not checked.',
  closing: 'The product label and local law decide.'
} as const;
