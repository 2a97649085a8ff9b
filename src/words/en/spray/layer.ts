import { shown, type UnitSystem } from '#core/quantity/units.ts';
import type { Fate, Range } from '#core/spray/types.ts';
import { formatNumber, formatUnit } from '../../format.ts';

/** Shares are good to some fifteen points: nobody reads a decimal. */
const percent = (share: number): string => (share > 0 && share < 0.005 ? 'under 1\u00a0%' : `${formatNumber(share * 100, 0)}\u00a0%`);
const band = ([least, most]: Range): string => `${formatNumber(least * 100, 0)} to ${percent(most)}`;

/** What does not stay on the trees, by where it ends. */
const LOSS: Readonly<Partial<Record<Fate, readonly [whole: string, short: string]>>> = {
  over: ['over the top', 'over top'],
  through: ['through the row', 'through'],
  'ground-in': ['ground in the block', 'ground'],
  'ground-out': ['ground outside', 'outside'],
  dried: ['dried in the air', 'dried']
};

/** Words of the spray in the drawing, in English. */
export const layerWords = (system: UnitSystem) => ({
  onTrees: 'on the trees',
  alone: (position: string) => `${position} alone, on the trees`,
  all: (share: string) => `all nozzles ${share}`,
  band,
  atLeast: (points: number) => `at least ± ${formatNumber(points * 100, 0)}`,
  share: percent,
  loss: (loss: Fate, short: boolean) => LOSS[loss]?.[short ? 1 : 0] ?? loss,
  axis: (bare: boolean) => `deposit on ${bare ? 'wood' : 'leaf'}`,
  mean: (mean: string, spread: string, short: boolean) => (short ? `${mean} ${formatUnit('uL/cm2', system)}` : `${mean} ± ${spread} ${formatUnit('uL/cm2', system)}`),
  deposit: (ulPerCm2: number) => formatNumber(ulPerCm2, ulPerCm2 < 9.995 ? 2 : 1),
  // A tenth is finer than the model.
  speed: (mPerS: number) => `${formatNumber(shown(mPerS, 'm/s', system), 0)}\u00a0${formatUnit('m/s', system)}`
});

/** Of the controls under the drawing. */
export const layerScreen = {
  controls: 'Spray in the drawing',
  play: 'Play one pass slowly',
  stop: 'Stop',
  still: 'Show drops',
  hideStill: 'Hide drops',
  files: { svg: 'Save SVG', png: 'Save PNG' },
  spoken: (share: string, within: string) => `On the trees: ${share}, ${within}.`,
  spokenAlone: (position: string, share: string) => `${position} alone: ${share} on the trees.`,
  legend: {
    title: 'How to read it',
    shading: 'spray in the air, thin to dense',
    air: 'air: the thicker the faster; none drawn below',
    deposit: 'deposit by height, mean of both sides, and its spread',
    depositGhost: 'deposit by height, mean of both sides, and its spread; thin dashes: what it is compared with',
    losses: 'lost: arrow as wide as its share'
  },
  limits: 'A model. It ranks settings; it predicts neither residues nor legal drift. Paper and ribbon judge.',
  failed: 'The spray model failed on this setting.',
  retry: 'Try again',
  pngFailed: 'This browser could not draw the picture; save it as SVG.',
  slow: (times: number) => `${times} times slower than it is`
} as const;

/** Of the sheet that is saved as a picture. */
export const sheetWords = {
  measures: { height: 'canopy top', width: 'canopy width', skirt: 'skirt', spacing: 'row spacing' },
  setting: (s: { readonly open: number; readonly nozzles: number; readonly pressure: string; readonly speed: string; readonly volume: string; readonly gear: string; readonly pto: string }) =>
    `${s.open} of ${s.nozzles} nozzles spray, ${s.pressure}, ${s.speed}, ${s.volume}, ${s.gear} at ${s.pto}`,
  model: (share: string, within: string, alone: string | null) =>
    `Model; on the trees ${share}, band ${within}.${alone === null ? '' : ` Shading and arrows: ${alone} alone.`} It ranks settings; it predicts neither residues nor legal drift.`,
  rules: 'Comparison of settings, not a recommendation. The product label, local law and licensed advice rule over every figure here.'
} as const;
