import type { HeightCell, SprayBalance } from '#core/spray/types.ts';
import type { Frame } from './frame.ts';
import { group, label, line as straight, mark, px, type Mark } from './scene.ts';
import { smoothPath } from './smooth.ts';

export interface ProfileWords {
  /** What the profile shows. */
  readonly axis: (bare: boolean) => string;
  /** Mean and spread with their unit; short on a phone. */
  readonly mean: (mean: string, spread: string, short: boolean) => string;
  /** A deposit as a figure without its unit. */
  readonly deposit: (ulPerCm2: number) => string;
}

/** How far the scale reaches, px: most of the half crown that it stands on. */
const LEAST_PX = 40;
const MOST_PX = 104;
/** Ends of a scale that read well. */
const ROUND = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];
/** Cells that are drawn as one: from one to the next the model's rays show, not the tree. */
const TOGETHER = 2;

/**
 * Deposit on leaf by height, on the drawing's own heights, outward from the right-hand trunk line; the mean of both sides. With it the
 * mean and the band of one standard deviation to each side, by height and weighted by leaf area. Another balance's profile is dashed.
 */
export function depositProfile(balance: SprayBalance, other: SprayBalance | null, trunkX: number, halfWidthM: number, words: ProfileWords, frame: Frame): Mark {
  const { depositUlPerCm2: mean, cv } = balance;
  const cells = gathered(balance.heights);
  const [first, last] = [cells[0], cells.at(-1)];
  if (mean === null || !first || !last) return group('deposit', [], {}, 'deposit');
  const reach = Math.min(Math.max(halfWidthM * frame.scale * 0.96, LEAST_PX), MOST_PX);
  const spread = (cv ?? 0) * mean;
  const end = roundUp(Math.max(mean + spread, ...cells.map((c) => c.ul)));
  const beside = comparable(balance, other, end);
  const x0 = frame.x(trunkX);
  const x = (ul: number) => x0 + (ul / end) * reach;
  const [top, foot] = [frame.z(last.toM), frame.z(first.fromM)];
  // On a phone what is lost stands at the foot: the scale is at the top.
  const axisY = frame.compact ? top : foot;
  const scaleEnd = frame.compact ? ([Math.min(x(end) + 8, frame.width - 3), top - 6] as const) : ([x(end) + 3, foot + 4] as const);
  // The words stand under the skirt in the alley, where there is room, or else right above the ground.
  const textY = Math.min(foot + 17, frame.groundY - 23);
  const alley = { 'text-anchor': 'end' };
  const left = Math.max(x(mean - spread), x0);
  return group(
    'deposit',
    [
      mark('rect', 'deposit-band', { x: px(left), y: px(top), width: px(x(mean + spread) - left), height: px(foot - top) }, { key: 'band' }),
      straight('deposit-mean', x(mean), top, x(mean), foot, 'mean'),
      mark('path', 'deposit-area', { d: `${outline(cells, x, frame)}L${px(x0)} ${px(top)}L${px(x0)} ${px(foot)}Z` }, { key: 'area' }),
      ...(beside ? [mark('path', 'deposit-other', { d: outline(beside, x, frame) }, { key: 'other' })] : []),
      mark('path', 'deposit-line', { d: outline(cells, x, frame) }, { key: 'line' }),
      mark('path', 'deposit-axis', { d: `M${px(x0)} ${px(axisY)}h${px(reach)}M${px(x(end / 2))} ${px(axisY - 3)}v6M${px(x(end))} ${px(axisY - 3)}v6` }, { key: 'axis' }),
      label('deposit-figure', ...scaleEnd, words.deposit(end), frame.compact ? alley : {}, 'end'),
      ...(frame.compact ? [] : [label('deposit-words', x0 - 13, textY, words.axis(balance.bare), alley, 'words')]),
      label('deposit-words', x0 - 13, frame.compact ? textY + 6 : textY + 15, words.mean(words.deposit(mean), words.deposit(spread), frame.compact), alley, 'spread')
    ],
    {},
    'deposit'
  );
}

/** Cells of the other balance that fit on this one's scale: a bare tree's wood is no measure for leaf. */
function comparable(balance: SprayBalance, other: SprayBalance | null, end: number): readonly Cell[] | null {
  const cells = gathered(other?.heights ?? []);
  return other?.bare === balance.bare && cells.length > 0 && cells.every((c) => c.ul <= end * 1.15) ? cells : null;
}

interface Cell {
  readonly fromM: number;
  readonly toM: number;
  readonly ul: number;
}

/** Neighbours as one, weighted by the area that the deposit is on; where nothing grows nothing is drawn. */
function gathered(heights: readonly HeightCell[]): Cell[] {
  const out: Cell[] = [];
  for (let i = 0; i < heights.length; i += TOGETHER) {
    const some = heights.slice(i, i + TOGETHER).filter((c) => c.depositUlPerCm2 !== null);
    const area = some.reduce((sum, c) => sum + c.areaIndex, 0);
    if (area > 0) out.push({ fromM: some[0]!.fromM, toM: some.at(-1)!.toM, ul: some.reduce((sum, c) => sum + c.areaIndex * c.depositUlPerCm2!, 0) / area });
  }
  return out;
}

/** Through the middles of the cells, and straight on to the ends of the crown. */
function outline(cells: readonly Cell[], x: (ul: number) => number, frame: Frame): string {
  const [first, last] = [cells[0], cells.at(-1)];
  if (!first || !last) return '';
  const all = [{ ul: first.ul, zM: first.fromM }, ...cells.map((c) => ({ ul: c.ul, zM: (c.fromM + c.toM) / 2 })), { ul: last.ul, zM: last.toM }];
  return smoothPath(all.map((p) => [px(x(p.ul)), px(frame.z(p.zM))]));
}

/** The next figure that reads well, for the end of a scale. */
function roundUp(v: number): number {
  if (!(v > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(v));
  return power * (ROUND.find((r) => r * power >= v * (1 - 1e-9)) ?? 10);
}
