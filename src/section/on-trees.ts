import { LEAST_BAND, type Range } from '#core/spray/types.ts';
import type { Frame } from './frame.ts';
import { group, label, type Mark } from './scene.ts';

export interface OnTreesWords {
  readonly onTrees: string;
  /** The nozzle that is shown alone. */
  readonly alone: (position: string) => string;
  /** Of all nozzles, under that of one. */
  readonly all: (share: string) => string;
  readonly band: (range: Range) => string;
  /** While the band is being worked out. */
  readonly atLeast: (points: number) => string;
  readonly share: (share: number) => string;
}

export interface OnTrees {
  readonly share: number;
  readonly band: Range | null;
  readonly alone: { readonly position: string; readonly share: number } | null;
}

const sizes = (frame: Frame) => ({ top: frame.top + (frame.compact ? 8 : 4), size: frame.compact ? 26 : 34 });
/** A tall machine leaves no room above itself: the figure stands in the left alley beside it. */
export const besideMachine = (machineTopM: number, frame: Frame): boolean => {
  const { top, size } = sizes(frame);
  return frame.z(machineTopM) - 10 < top + size + 40;
};

/** The share on the trees, large and with its band, over the machine. One nozzle's own stands in its place while that is shown alone. */
export function onTrees({ share, band, alone }: OnTrees, machineTopM: number, trunkX: number, words: OnTreesWords, frame: Frame): Mark {
  const within = band ? words.band(band) : words.atLeast(LEAST_BAND);
  const { top, size } = sizes(frame);
  const x = besideMachine(machineTopM, frame) ? frame.x(-trunkX * 0.5) : frame.x(0);
  const middle = { 'text-anchor': 'middle' };
  return group(
    'on-trees',
    [
      label('on-trees-name', x, top, alone ? words.alone(alone.position) : words.onTrees, middle, 'name'),
      label('on-trees-share', x, top + size, words.share(alone ? alone.share : share), middle, 'share'),
      ...(alone ? [label('on-trees-all', x, top + size + 18, words.all(words.share(share)), middle, 'all')] : []),
      label('on-trees-band', x, top + size + (alone ? 34 : 18), within, middle, 'band')
    ],
    {},
    'on-trees'
  );
}
