import { job, type Call } from '../../support/published.ts';
import { refused } from '#core/working/answer.ts';
import { STRATEGY_IDS } from '#core/dose/types.ts';

const none = refused('absent', '');
const of = (pick: 'index' | 'water', id: (typeof STRATEGY_IDS)[number]): Call => (i) => job(i).strategies.find((s) => s.strategy.id === id)?.[pick] ?? none;

/** Index and water of every strategy on one canopy, side by side. */
export const strategies: Record<string, Call> = Object.fromEntries([
  ...STRATEGY_IDS.map((id) => [`${id} index`, of('index', id)] as const),
  ...STRATEGY_IDS.map((id) => [`${id} water`, of('water', id)] as const),
  ['trv', (i) => job(i).canopy.figures.TRVc],
  ['lwa', (i) => job(i).canopy.figures.LWA],
  ['lai', (i) => job(i).canopy.figures.LAI],
  ['ucr', (i) => job(i).canopy.figures.UCR]
] as [string, Call][]);
