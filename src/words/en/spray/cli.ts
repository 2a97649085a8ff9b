import type { Fate } from '#core/spray/types.ts';
import type { PlanName } from '#core/spray/advice/types.ts';

/** What `rowtailor spray` and `rowtailor table --spray` say beside the words that the panel has. */
export const sprayCli = {
  headings: {
    ends: 'Where the spray goes, of all that is sprayed in one pass through an alley',
    nozzles: 'By nozzle, each of its own spray',
    heights: { leaf: 'Deposit on leaf by height, all rows', wood: 'Deposit on wood by height, all rows' },
    air: 'Air where it meets the nearest row and where it leaves it',
    told: 'What the model was told',
    moving: 'What moves the share on the trees most, each alone over its plausible range',
    advice: 'Settings that do better in something, at the same litres per hectare or fewer',
    limits: 'Limits',
    assumptions: 'Assumptions used'
  },

  deposit: { leaf: 'mean deposit on leaf, one side counted', wood: 'mean deposit on the silhouette of the wood' },
  cv: 'unevenness by height (CV)',
  bandLost: 'The share lost from the block is never given to less than ±10 points.',

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

  volume: 'application volume',
  leafDensity: 'leaf area density',
  filled: 'share of the row that holds canopy',
  outlet: { left: 'air at the left outlet', right: 'air at the right outlet' },
  perMetre: 'air per metre of row',

  movingColumns: { constant: '', from: 'from', to: 'to', onTrees: 'on the trees' },
  change: (from: string, to: string) => `${from} to ${to}`,
  movingRest: 'Each of the others moves it by less than one point.',
  plausible: (range: string) => `plausible ${range}`,

  adviceColumns: { name: '', trees: 'on the trees', lost: 'lost', cv: 'CV', rate: 'work rate', water: 'water', drops: 'drops' },
  today: 'today',
  plan: (n: number) => `(${n})`,
  planNames: { 'most-on-trees': 'most on the trees', 'least-lost': 'least lost', 'most-even': 'most even', fastest: 'fastest', 'fewest-changes': 'fewest changes' } satisfies Record<PlanName, string> as Record<PlanName, string>,
  noClear: 'no clear difference',
  looked: (settings: string, airs: string) => `Looked at ${settings} settings with ${airs} kinds of air.`,

  table: {
    whichRung: (rungs: readonly string[]) => `The document has ${rungs.length} settings; name one with --block and --rung: ${rungs.join(', ')}.`,
    refused: (where: string, why: string) => `${where}: nothing can be worked out with this setting. ${why}`,
    line: (block: string, why: string) => `block ${block}: no balance, its columns are empty. ${why}`,
    note: 'The balance ranks canopies and settings. It predicts neither residues nor legal drift, is not validated, and is uncertain by at least ±15 points on the trees; in full leaf that share is 5 to 10 points too high. Bands and limits: rowtailor spray FILE.'
  }
} as const;
