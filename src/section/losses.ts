import { widthAt } from '#core/canopy/outline.ts';
import type { WidthAt } from '#core/canopy/types.ts';
import type { Fate, Shares8 } from '#core/spray/types.ts';
import type { Frame } from './frame.ts';
import { besideMachine } from './on-trees.ts';
import { group, label, mark, px, type Mark } from './scene.ts';

/** What does not stay on the trees. */
export const LOSSES = ['over', 'dried', 'through', 'ground-in', 'ground-out'] as const satisfies readonly Fate[];
export type Loss = (typeof LOSSES)[number];

export interface LossWords {
  /** Where it goes; short on a phone. */
  readonly loss: (loss: Loss, short: boolean) => string;
  readonly share: (share: number) => string;
}

export interface Place {
  readonly outline: readonly WidthAt[];
  readonly trunkX: number;
  /** Half of the machine's body, m: arrows keep clear of its wheels. */
  readonly bodyM: number;
  readonly machineTopM: number;
  /** Highest of canopy and tallest tenth, m. */
  readonly topM: number;
}

type Point = readonly [x: number, y: number];
interface Laid {
  readonly tail: Point;
  readonly head: Point;
  readonly text: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Name and figure on two lines. */
  readonly tall: boolean;
}

/** Width of an arrow, px for the whole of what is sprayed. */
const WHOLE = { wide: 62, compact: 44 } as const;
/** Above the trees an arrow is no longer than this, px, however much sky there is. */
const SKY = 62;

/** From the middle to a trunk line, px: with less room than this the names are short. */
const NARROW = 150;

/** Losses as arrows whose width is the share, each with its name and its percent; those of nothing are left out. */
export function losses(shares: Shares8, place: Place, words: LossWords, frame: Frame): Mark {
  const at = layOut(place, frame);
  const whole = frame.compact ? WHOLE.compact : WHOLE.wide;
  const short = place.trunkX * frame.scale < NARROW;
  return group(
    'losses',
    LOSSES.filter((loss) => shares[loss] >= 0.0005).map((loss) => {
      const { tail, head, text, anchor, tall } = at[loss];
      const [name, share] = [words.loss(loss, short), words.share(shares[loss])];
      const width = Math.max(shares[loss] * whole, 1.2);
      // What stands beside an upright arrow keeps clear of its shaft.
      const clear = loss === 'over' || loss === 'dried' ? (anchor === 'start' ? width : frame.compact ? 0 : -width) / 2 : 0;
      const [x, y] = [text[0] + clear, text[1]];
      return group(
        `loss loss-${loss}`,
        [
          arrow(tail, head, width),
          ...(tall
            ? [label('loss-name', x, y, name, { 'text-anchor': anchor }), label('loss-share', x, y + 15, share, { 'text-anchor': anchor })]
            : [label('loss-name', x, y, `${name} ${share}`, { 'text-anchor': anchor })])
        ],
        {},
        `loss-${loss}`
      );
    }),
    {},
    'losses'
  );
}

/** Where each stands: above the trees, behind the row, at the ground of the alley and past the row. */
function layOut({ outline, trunkX, bodyM, machineTopM, topM }: Place, frame: Frame): Readonly<Record<Loss, Laid>> {
  const { compact, groundY } = frame;
  const [left, right] = [frame.x(-trunkX), frame.x(trunkX)];
  const foot = outline[0]?.heightM ?? 0;
  const crownTop = outline.at(-1)?.heightM ?? topM;
  const half = (zM: number) => (widthAt(outline, zM) / 2) * frame.scale;
  const widest = (Math.max(0, ...outline.map((p) => p.widthM)) / 2) * frame.scale;
  const treeY = frame.z(topM) - 6;
  const skyY = Math.max(frame.top - 12, treeY - SKY);
  const behindM = foot + (crownTop - foot) * (compact ? 0.84 : 0.66);
  const behindY = frame.z(behindM);
  const fieldsX = frame.width - 132;
  const alleyX = (left + Math.min(widest * 0.5, 20) + frame.x(-bodyM)) / 2;
  const pastX = compact ? frame.width - 26 : Math.min(right + widest + 10, fieldsX - 24);
  return {
    over: compact
      ? { tail: [right - 28, treeY], head: [right - 12, skyY], text: [frame.width - 3, skyY + 10], anchor: 'end', tall: true }
      : { tail: [right - 16, treeY], head: [right + 2, skyY], text: [right + 16, skyY + 10], anchor: 'start', tall: true },
    dried: besideMachine(machineTopM, frame)
      ? { tail: [left - 8, treeY], head: [left - 8, skyY], text: [left - 18, skyY + 10], anchor: 'end', tall: true }
      : { tail: [left + 8, treeY], head: [left + 8, skyY], text: [left + 18, skyY + 10], anchor: 'start', tall: true },
    through: compact
      ? { tail: [Math.max(left - half(behindM) + 4, frame.left + 22), behindY], head: [frame.left + 2, behindY], text: [frame.left + 3, behindY - 24], anchor: 'start', tall: true }
      : { tail: [Math.min(right + half(behindM) - 6, fieldsX - 40), behindY], head: [fieldsX, behindY], text: [fieldsX, behindY - 30], anchor: 'end', tall: true },
    'ground-in': { tail: [alleyX, groundY - (compact ? 42 : 46)], head: [alleyX, groundY - (compact ? 17 : 2)], text: compact ? [alleyX, groundY - 4] : [frame.x(0) - 64, groundY + 21], anchor: compact ? 'middle' : 'end', tall: false },
    'ground-out': {
      tail: [pastX, groundY - (compact ? 42 : 46)],
      head: [pastX + 14, groundY - (compact ? 17 : 2)],
      text: compact ? [frame.width - 4, groundY - 4] : [Math.min(pastX + 62, fieldsX + 40), groundY + 21],
      anchor: compact ? 'end' : 'middle',
      tall: false
    }
  };
}

/** Between hatch strokes, px. */
const HATCH = 5;

/** A straight arrow with hatch across its shaft: lost spray is hatched wherever it is drawn. */
export function arrow([x1, y1]: Point, [x2, y2]: Point, width: number): Mark {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [ex, ey] = [(x2 - x1) / length, (y2 - y1) / length];
  const wing = width / 2 + 4;
  const neck = Math.max(length - Math.min(wing * 1.5, length * 0.6), 0);
  /** Along the arrow and across it, in pixels of the drawing. */
  const at = (along: number, across: number) => `${px(x1 + ex * along - ey * across)} ${px(y1 + ey * along + ex * across)}`;
  const h = width / 2;
  let hatch = '';
  // Aslant across the shaft, cut off where it begins and ends.
  for (let s = HATCH - width; s < neck && width > 3; s += HATCH) {
    const [from, to] = [Math.max(0, -s), Math.min(width, neck - s)];
    if (to > from) hatch += `M${at(s + from, from - h)}L${at(s + to, to - h)}`;
  }
  return group('arrow-of-loss', [
    mark('path', 'arrow-shape', { d: `M${at(0, -h)}L${at(neck, -h)}L${at(neck, -wing)}L${at(length, 0)}L${at(neck, wing)}L${at(neck, h)}L${at(0, h)}Z` }),
    mark('path', 'arrow-hatch', { d: hatch })
  ]);
}
