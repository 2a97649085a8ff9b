/** What the command line says: help, headings and complaints. English, apart from the catalogue, so that the screen does not carry it. */

export const USAGE = {
  main: `Rowtailor: fit the dose, the nozzles and the air to the row.

rowtailor VERB ...

  advise FILE   the setting for each block and rung of a document, and what to do about it
  loads FILE    the tank loads of a treatment: water and product for each, order of mixing, hours
  check FILE    the headland checks of a document: measured against wanted, and what to correct
  fit FILE      nozzle sizes, pressure and speed for each block and rung of a document
  season FILE   the season of each block: rung against rung, totals adapted against one setting, growth between rungs
  strategies FILE  every strategy side by side, those of your own among them: why they differ, draws, what moves them, citations
  spray FILE    where the spray goes, for each block and rung of a document, with what that rests on
  laser FILE    a canopy from the points of a laser scanner
  survey FILE   a canopy from the measurements of many trees
  table FILE    canopy figures and strategies for a table of blocks, CSV or Parquet
  sql           the same table as one SQL statement, for a database

rowtailor VERB --help tells more of one verb.
Exit codes: 0 done, 1 some input refused, 2 wrong usage, 3 unreadable.
`,
  advise: `rowtailor advise FILE [--block ID] [--rung ID] [--units SYSTEM] [--json]

Works out every rung of every block of a document, in the order of the file; FILE - reads standard input.

  --block ID    only the block with this id
  --rung ID     only the rungs with this id
  --units       metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json        the whole result with the working of every figure, in the engine's units:
                {"format": "rowtailor-advice", "version": 1, "results": [...]}, one result per rung
  -h, --help    this text

Exit codes
  0  done
  1  the file was refused, or some figure could not be worked out from it
  2  wrong usage, or no such block or rung
  3  the file cannot be read, or is no JSON
`,
  loads: `rowtailor loads FILE [--block ID] [--rung ID] [--units SYSTEM] [--json]

Works out the loads of every rung's mix (without one, of the block's own label) for its area: litres, land, rows and product of each
load, the last one included, the order of mixing, what stays in the tank, passes over the rows, hours with turns and fills. Water per
hectare is the measured one where a headland check in the document holds for the setting. FILE - reads standard input.

  --block ID    only the block with this id
  --rung ID     only the rungs with this id
  --units       metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json        everything with the working of every figure, in the engine's units, products in the label's unit:
                {"format": "rowtailor-loads", "version": 1, "results": [...]}, one result per rung
  -h, --help    this text

Exit codes
  0  done
  1  the file was refused, or the loads could not be worked out from it
  2  wrong usage, or no such block or rung
  3  the file cannot be read, or is no JSON
`,
  fit: `rowtailor fit FILE [--block ID] [--rung ID] [--units SYSTEM] [--json]

Fits nozzle sizes to every rung of a document, in the order of the file; FILE - reads standard input. All combinations are
searched; the list holds those that no other beats on nozzles changed, profile match and keeping the present speed.
What is wanted stands in the rung's "fitting": sizes to choose from, target, weights, pressures, speeds, droplet classes,
left and right alike, most changes. All of it may be left out.

  --block ID    only the block with this id
  --rung ID     only the rungs with this id
  --units       metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json        the whole list, its figures with their working, in the engine's units:
                {"format": "rowtailor-fitting", "version": 1, "fittings": [...]}, one per rung
  -h, --help    this text

Exit codes
  0  done
  1  the file was refused, or nothing fits in some rung
  2  wrong usage, or no such block or rung
  3  the file cannot be read, or is no JSON
`,
  spray: `rowtailor spray FILE [--block ID] [--rung ID] [--units SYSTEM] [--json]

Works out for every rung of a document, in the order of the file, where the spray goes: shares on the trees, on the ground, over
the top and through the row, each with its band; the same by nozzle; deposit by height and how uneven it is; the air where it meets
the row and where it leaves it; what moves the answer most; the limits; every assumption with how sure it is. FILE - reads
standard input.
It ranks settings. It predicts neither residues nor legal drift, and nothing in it was validated.

  --block ID    only the block with this id
  --rung ID     only the rungs with this id
  --units       metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json        the balance, its band, and all that the model was told, in the engine's units:
                {"format": "rowtailor-spray", "version": 1, "results": [...]}, one result per rung
  -h, --help    this text

Exit codes
  0  done
  1  the file was refused, or some rung gives no balance
  2  wrong usage, or no such block or rung
  3  the file cannot be read, or is no JSON
`,
  table: `rowtailor table FILE [--out FILE] [--format csv|parquet] [--manifest FILE] [--threads N]
                [--strategies [--label NAME]] [--intervals [--draws N [--seed S]]]
                [--spray] [--setting FILE [--block ID] [--rung ID]]

Reads one canopy per line from a CSV file (comma, semicolon or tab; - reads standard input), or one per row from a Parquet file, and
writes one line or row per canopy. A file is Parquet by its name, .parquet, or by its first bytes. In it columns of numbers may be of
any type of number, the name is text or whole numbers, NULL is an empty cell.

Columns read, in any order; a column's suffix is its unit, one of the two where there are two:
  block                                       name of the canopy
  row_spacing_m | row_spacing_ft
  tree_height_m | tree_height_ft              from the ground
  skirt_height_m | skirt_height_ft            lowest foliage; default 0
  canopy_width_m | canopy_width_ft            greatest width across the row
  density_gal_per_1000ft3                     US density factor; default 0.70
  lad_m2_per_m3                               leaf area density; default 2
  filled_fraction                             share of the row that holds canopy, 0 to 1; default 1
  note_...                                    passed over
Read with --intervals, passed over without:
  height_se_m | height_se_ft                  standard error of the mean tree height: spread / √trees
  skirt_se_m | skirt_se_ft                    of the skirt height
  width_se_m | width_se_ft                    of the canopy width
  row_spacing_se_m | row_spacing_se_ft        of the row spacing
  height_width_correlation                    of height and width over the trees, -1 to 1; default 0
  trees                                       trees measured; with it Student's t, without it the normal distribution

Volumes, leaf wall and unit canopy rows count the filled fraction. Ground means height from the ground, crown from the
skirt. Columns of the outline (stage-volume, occupied-volume, leaf-area) assume a trimmed wall's outline, as a document
without measured widths does. Dose indices are before any label rule; the label and local law decide.

  --out FILE    write there instead of standard output (-); another file than the one that is read
  --format      csv or parquet: how it is written; by default as the name of --out ends, else csv. Parquet comes in row groups of
                32768, figures as DOUBLE, an empty cell as NULL
  --strategies  in the place of the usual columns: figures of the canopy in metric units, then of every strategy its water, its
                dilute water (to the point of run-off) where it knows one, and its dose index. With --setting also of the user's own
                strategies in the document, with its assumptions; the dose per hectare by the label, after adaptation, floor and
                maximum; and the concentration factor, dilute water over the water that the setting applies at each row spacing
  --label NAME  with --strategies: the product, by its id or name in the document; by default the block's own
  --intervals   add the 95 % interval of every figure, behind the figures: NAME_low and NAME_high by first-order propagation
  --draws N     with --intervals: NAME_mc_low and NAME_mc_high as well, from N drawn canopies (100 to 100000), and draws_redrawn:
                how many were drawn anew because such a canopy cannot be. A thousand leave an end uncertain by some 4 % of the
                half interval
  --seed S      with --draws: whole, from 0; default 1. Draws depend on the seed and on the line of the file, on nothing else
  --manifest FILE  write there what the table was made of and with: hash of the input and of the document, versions, options,
                columns, constants, product, and the hash of the output. The same manifest means the same bytes, with however many
                threads
  --threads N   at most so many threads, 1 to 64; by default as many as there are processors, up to 4
  --spray       add where the spray goes, behind the other columns
  --setting FILE  with --spray or --strategies: a document; its machine and setting stand in front of every canopy, with its nozzle
                tables, pass pattern, weather and assumptions. - reads standard input
  --block ID, --rung ID  with --setting: which one, where the document has several
  -h, --help    this text

Intervals hold the errors that the table states, nothing else: not the assumptions, and not which strategy is right. A cell is
empty where nothing that its figure rests on has an error; an error of 0 gives an interval without width.

Columns of --spray: application volume (L/ha); percent of all that is sprayed, on the trees (near half and far half of the nearest
row, other rows), on the ground in the block and beyond it, in the air over the top, through the row and dried up, and lost from the
block (all but trees and ground in the block); mean deposit on leaf area, one side counted (µL/cm²), and its unevenness by height
(CV). They take skirt, leaf area density and filled fraction of each line (a line without density is in full leaf) and a trimmed
wall's outline. They rank; they are uncertain by at least ±15 points on the trees, and validated by nothing. A canopy that the model
refuses is told, and its cells stay empty. A line takes some milliseconds.

Names are written as they are read. A spreadsheet may take a name that begins with =, +, - or @ for a formula: import the
column block as text.

Lines that cannot be used are told on standard error with line, column, value and reason; the others are still written.
Exit codes: 0 done, 1 some lines refused, 2 wrong usage, 3 unreadable.
`,
  sql: `rowtailor sql --dialect duckdb|spark [--from NAME] [--columns NAME,NAME,...]

Prints what \`rowtailor table\` computes as one SQL statement, made from the same formulas, constants and ranges. Run it where the
canopies are: a file on a laptop, or a table on a cluster. It reads nothing itself.

  --dialect      duckdb or spark
  --from NAME    the relation with one canopy a row; default canopies. SCHEMA.NAME and CATALOGUE.SCHEMA.NAME too
  --columns      its columns that are read, as the header of a CSV file for \`rowtailor table\`; a column's suffix is its unit.
                 Default: every column in metres. Leave out what the relation does not have:
                 block,row_spacing_ft,tree_height_ft,canopy_width_ft
  -h, --help     this text

NULL is what was not told, and gets the same default as an empty cell. A row that \`rowtailor table\` would refuse (out of range, no
number, skirt not below the top, nothing where something must be) is left out, and nobody is told: compare the counts.
The result has the columns of \`rowtailor table\`, in no order of rows.

Every constant is a line of the statement with its unit, its source and how sure it is, yours to change there. Dose indices are
before any label rule; the label and local law decide.
Exit codes: 0 done, 2 wrong usage.
`
} as const;

export const cli = {
  noTable: 'Name one CSV file to read, or - for standard input.',
  sameFile: '--out is the file that is read; name another.',
  noSetting: '--spray needs --setting FILE: the document whose machine and setting stand in front of every canopy.',
  twoFromInput: 'The table and the setting cannot both come from standard input; name a file for one of them.',
  sameSetting: '--out is the file of the setting; name another.',
  unwritable: (file: string, why: string) => `${file} cannot be written: ${why}`,
  unknownVerb: (verb: string, verbs: readonly string[]) => `There is no verb "${verb}". Verbs: ${verbs.join(', ')}.`,
  tryHelp: (verb?: string) => `See: rowtailor ${verb ? `${verb} ` : ''}--help`,
  noFile: 'Name one document to read, or - for standard input.',
  tooManyFiles: (found: number) => `One document at a time, not ${found}.`,
  badUnits: (units: string) => `--units is "${units}"; it must be metric, metric-psi, metric-mph, acres, imperial or us.`,
  noBlock: (id: string, known: readonly string[]) => `There is no block "${id}". Blocks: ${known.join(', ')}.`,
  noRung: (id: string, known: readonly string[]) => `There is no rung "${id}" there. Rungs: ${known.join(', ')}.`,
  unreadable: (file: string, why: string) => `${file} cannot be read: ${why}`,
  why: { missing: 'there is no such file.', folder: 'it is a folder.', denied: 'reading it is not allowed.', tooLarge: (most: number) => `it is larger than ${most / 1e6} MB.`, encoding: 'it is not UTF-8 text.' },
  whyUnwritable: { noFolder: 'there is no such folder.', folder: 'it is a folder.', denied: 'writing there is not allowed.', full: 'there is no room left.' },
  standardOutput: 'Standard output',
  sql: {
    noFile: (found: string) => `sql reads no file, but was given "${found}"; name the relation with --from.`,
    noDialect: (known: readonly string[]) => `Name the database with --dialect: ${known.join(' or ')}.`,
    badDialect: (dialect: string, known: readonly string[]) => `--dialect is "${dialect}"; it must be ${known.join(' or ')}.`,
    badFrom: (name: string, parts: number, most: number) => `--from is "${name}"; a name of 1 to ${most} printable characters is needed, or up to ${parts} of them with points between, as survey.canopies.`,
    ownName: (name: string, own: string) => `--from is "${name}"; the statement's own steps begin with ${own}. Give the relation another name, or put its schema before it.`,
    badColumns: (reasons: readonly string[]) => `--columns is no header that a table can have. ${reasons.join(' ')}`,
    head: [
      'Rowtailor: canopy figures, water and dose index by strategy, one row a canopy. Volumes count the filled fraction.',
      'Dose indices are before any label rule; the label and local law decide. Works behind the formulas: docs/generated/sources.md.'
    ],
    constant: (unit: string, certainty: string, sources: readonly string[]) => `${unit}; ${certainty}; ${sources.join(', ')}`,
    formula: (symbol: string, expression: string, certainty: string, sources: readonly string[]) => `${symbol} = ${expression}; ${certainty}; ${sources.join(', ')}`,
    told: (unit: string) => `${unit}; as told, else the default`,
    faces: '1; both faces of the row are treated',
    fill: "1; share of the box that a trimmed wall's outline fills; assumed, as for a document without measured widths"
  },
  refusedIn: (where: string, reasons: readonly string[]) => `${where}: some figures could not be worked out. ${reasons.join(' ')}`,

  headings: {
    canopy: 'Canopy',
    water: 'Water',
    product: (name: string) => `Product: ${name}`,
    setting: 'Setting',
    nozzles: 'Nozzles',
    options: 'Options',
    air: 'Air',
    weather: 'Weather',
    findings: 'Findings, worst first',
    difference: (name: string) => `Against the rung before, ${name}`,
    assumptions: 'Assumptions used'
  },
  rows: (amount: string) => `rows ${amount} apart`,
  trees: (amount: string) => `trees ${amount} apart`,
  bbch: (stage: number) => `BBCH ${String(stage).padStart(2, '0')}`,
  interval: (range: string) => `95 %: ${range}`,
  strategy: 'strategy',
  wantedWater: 'water wanted',
  dilute: 'dilute water',
  setWater: 'water as set',
  concentration: 'concentration factor',
  labelDose: 'label dose',
  dose: 'dose',
  index: 'dose index by canopy',
  mix: 'mix strength',
  perTank: (tank: string) => `in a full tank of ${tank}`,
  speed: 'speed',
  pressure: 'pressure',
  gear: 'fan gear',
  pto: 'PTO speed',
  open: 'open nozzles',
  openOf: (open: number, all: number) => `${open} of ${all}`,
  flow: 'total flow',
  volume: 'application volume',
  per100m: 'per 100 m of row',
  workRate: 'work rate, spraying',
  inLeaf: 'aimed in leaf',
  overTop: 'over the top',
  underSkirt: 'under the skirt',
  columns: { nozzle: 'nozzle', size: 'size', colour: 'colour', flow: 'flow', angle: 'angle', inLeaf: 'in leaf', overTop: 'over top', underSkirt: 'under skirt', drops: 'drops', verdict: 'verdict' },
  aimLimits: 'Straight spray, geometry alone: air bends and spreads it. Check with paper.',
  optionColumns: { volume: 'volume', rate: 'work rate', sameMix: 'product, mix kept', newMix: 'mix for the dose' },
  possible: 'possible',
  notPossible: 'not possible',
  perMetre: 'air per metre of row',
  outlet: 'air at the outlet',
  deltaT: 'delta T',
  limitOf: { 'delta-t': 'delta T', wind: 'wind', temperature: 'temperature', humidity: 'humidity' },
  side: { inside: 'inside', below: 'below', above: 'above' },
  atLeast: (amount: string) => `at least ${amount}`,
  atMost: (amount: string) => `at most ${amount}`,
  closing: 'The label and local law rule over every figure here. Prove the setting on the headland before you spray.'
} as const;
