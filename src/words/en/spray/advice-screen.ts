import type { PlanName } from '#core/spray/advice/types.ts';

/** Labels of the search for better settings, in English. */
export const adviceScreen = {
  title: 'Better settings?',
  line: 'Nozzles, their turn, drops, air and speed within the machine’s limits',
  intro: 'Looks for settings of this machine that put more on the trees, more evenly, with less lost, at today’s litres per hectare or fewer. Nothing is changed before you say so.',
  start: 'Look for better settings',
  again: 'Look again',
  searching: 'Looking …',
  part: (done: string) => `${done} done`,
  stop: 'Stop',
  stopped: 'Stopped.',
  failed: 'The search could not be run here. Load the page again.',
  outdated: 'The setting has changed since: what stands here is of the earlier one.',
  looked: (settings: string) => `${settings} settings looked at.`,
  front: 'What can be had',
  frontNote: 'None of these is better in everything than another. Under each figure its change from today’s; ≈ is no clear difference.',
  today: 'today',
  columns: { setting: 'setting', trees: 'on the trees', lost: 'lost', cv: 'CV', rate: 'work rate' },
  plotTrees: 'on the trees →',
  plotLost: 'lost ↑',
  noClear: 'no clear difference',
  plan: (n: number, names: string) => (names ? `Setting ${n}: ${names}` : `Setting ${n}`),
  names: {
    'most-on-trees': 'most on the trees',
    'least-lost': 'least lost',
    'most-even': 'most even',
    fastest: 'fastest',
    'fewest-changes': 'fewest changes'
  } satisfies Record<PlanName, string> as Record<PlanName, string>,
  all: (effects: string) => `All together ${effects}.`,
  steps: 'Step by step',
  volume: (litres: string) => `Sprays ${litres}.`,
  use: 'Use this setting',
  useOf: (name: string) => `Use: ${name}`,
  inUse: 'This is set now',
  used: (name: string) => `Set: ${name}. Check ribbons and paper before you spray a block with it.`,
  undo: 'Undo'
} as const;
