import type { Frame } from './frame.ts';

/** Left and right edge of the area that spray and air are drawn in, px: from the height rule to the fields. */
export const edgesOf = (frame: Frame, outerM: number): readonly [left: number, right: number] =>
  frame.compact ? [frame.left, frame.width] : [frame.x(-outerM) - 16, frame.width - 132];
