import type { Fate } from '#core/spray/types.ts';

/** What `rowtailor spray` says around its figures. What must stand beside them, and what must not be shown, is told in docs/methods/spray.md. */
export const sprayCli = {
  headings: {
    ends: 'Where the spray goes, of all that is sprayed in one pass through an alley',
    nozzles: 'By nozzle, each of its own spray',
    heights: { leaf: 'Deposit on leaf by height, all rows', wood: 'Deposit on wood by height, all rows' },
    air: 'Air where it meets the nearest row and where it leaves it',
    told: 'What the model was told',
    moving: 'What moves the share on the trees most',
    limits: 'Limits',
    assumptions: 'Assumptions used'
  },

  columns: { share: 'share', band: 'band' },
  onTrees: 'on the trees',
  lost: 'lost from the block',
  fates: {
    near: 'nearest row, near half',
    far: 'nearest row, far half',
    rows: 'other rows',
    'ground-in': 'ground in the block',
    'ground-out': 'ground beyond the last row',
    over: 'in the air, over the top',
    through: 'in the air, through the row',
    dried: 'in the air, dried up'
  } satisfies Record<Fate, string> as Record<Fate, string>,
  all: 'all that is sprayed',
  deposit: { leaf: 'mean deposit on leaf, one side counted', wood: 'mean deposit on the silhouette of the wood' },
  cv: 'unevenness by height (CV)',
  bare: 'Bare trees: wood alone catches.',
  ranks: 'This ranks settings. It predicts neither residues nor legal drift, and nothing in it was validated against a full published case. The ribbon and water-sensitive paper are the judge.',
  band: 'Band: every constant run over its plausible range, and never narrower than ±15 points on the trees and ±10 points lost.',
  noDose: 'What is in the air when the model ends is no drift dose and has no distance. For drift, follow the label and local rules.',

  nozzleColumns: {
    nozzle: 'nozzle',
    drops: 'drops',
    flow: 'flow',
    trees: 'on trees',
    near: 'near half',
    far: 'far half',
    rows: 'other rows',
    'ground-in': 'ground in block',
    'ground-out': 'beyond',
    over: 'over top',
    through: 'through row',
    dried: 'dried up'
  } satisfies Record<Fate, string> & Record<string, string>,

  heightColumns: { height: 'height', deposit: 'deposit', ofMean: 'of the mean', share: 'share', near: 'near half', far: 'far half', rows: 'other rows' },
  heightNote: 'Share of all that is sprayed; of it in the near half of the nearest row, in its far half and in other rows.',

  faceColumns: { height: 'height', meets: 'meets leaf', leaves: 'leaves' },
  sides: { left: 'left:', right: 'right:' },
  airNote: 'Speed in the middle of the air, ±15 to 25 %. A dash: the air stops within the row.',
  airRule: (meets: string, leaves: string, thin: string) => `Rule of thumb, from memory: ${meets} where it meets a full canopy, ${leaves} where it leaves it; ${thin} is enough behind a thin one. The ribbon is the judge.`,

  volume: 'application volume',
  leafDensity: 'leaf area density',
  filled: 'share of the row that holds canopy',
  outlet: { left: 'air at the left outlet', right: 'air at the right outlet' },
  perMetre: 'air per metre of row',

  leafDensityHere: 'Leaf area density here',
  movingColumns: { constant: 'each alone over its plausible range', from: 'from', to: 'to', onTrees: 'on the trees' },
  change: (from: string, to: string) => `${from} to ${to}`,
  movingRest: 'Each of the others moves it by less than one point.',
  plausible: (range: string) => `plausible ${range}`,

  limits: [
    'A steady slice across the rows, the same in every row: no difference from tree to tree, no gusts, no swirl behind the tractor.',
    'No bounce, no run-off: in full leaf the share on the trees is about 5 to 10 points too high, more with high volumes, and the share on the ground too low.',
    'Swirl of the fan and its difference from left to right are left out unless the machine’s data tell them. Neighbouring jets do not act on each other.',
    'What wind and travel speed do to the deposit is not shown: trials in wind lost up to half the cover, and the model does not reproduce that. Travel speed acts through the litres and the air per metre of row.',
    'What less air saves is understated: here about 25 to 40 %, in published trials 55 to 93 %.',
    'Droplet classes compare nozzles; they have no bounds in µm.'
  ],

  table: {
    whichRung: (rungs: readonly string[]) => `The document has ${rungs.length} settings; name one with --block and --rung: ${rungs.join(', ')}.`,
    refused: (where: string, why: string) => `${where} gives no balance. ${why}`,
    line: (line: number, block: string, why: string) => `Line ${line}, block ${block}: no balance, its columns are empty. ${why}`,
    note: 'The balance ranks canopies and settings. It predicts neither residues nor legal drift, is not validated, and is uncertain by at least ±15 points on the trees; in full leaf that share is 5 to 10 points too high. Bands and limits: rowtailor spray FILE.'
  }
} as const;
