import { LEVELS } from './types.ts';

/** The part of a picture that holds the canopy, as shares of its width and height from its upper left corner, 0…1. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Histograms of equal bands of a frame, from the lowest band up, in one array of `bands` times `LEVELS`.
 * @param levels brightness of each pixel, row by row from the top
 */
export function histogramsOf(levels: Uint8Array, width: number, height: number, frame: Frame, bands: number): Uint32Array {
  const [x0, x1] = [Math.round(frame.left * width), Math.round(frame.right * width)];
  const [y0, y1] = [Math.round(frame.top * height), Math.round(frame.bottom * height)];
  const all = new Uint32Array(bands * LEVELS);
  for (let y = y0; y < y1; y++) {
    // The middle of the row of pixels decides.
    const band = Math.min(bands - 1, Math.floor(((y1 - y - 0.5) / (y1 - y0)) * bands));
    const into = band * LEVELS;
    for (let i = y * width + x0, end = y * width + x1; i < end; i++) all[into + levels[i]!]!++;
  }
  return all;
}
