import { TRACK_STEP_S, type DropTrack } from '#core/spray/types.ts';
import { edgesOf } from './edges.ts';
import type { Frame } from './frame.ts';
import { px } from './scene.ts';

/** Drops below these diameters, µm, share a size of dot; the rest has the largest. */
export const DOT_SIZES = [120, 250] as const;
/** A nozzle sprays on: drops leave again and again, this long apart and so many times, s. */
const APART_S = 0.08;
const TRAIN = 6;
/** Of a still picture, s after the drops left. */
export const STILLS = [0.04, 0.12, 0.24, 0.4, 0.7] as const;

/** How long until the last of them has landed or left, s. */
export const passSeconds = (tracks: readonly DropTrack[]): number => Math.max(0, ...tracks.map((t) => (t.points.length / 2 - 1) * TRACK_STEP_S)) + (TRAIN - 1) * APART_S;

/** Dots of one size as one path of points; round caps make them dots. */
type Paths = readonly string[];

/** The drops of one pass, `seconds` after the first left the nozzles. */
export const dropsAt = (tracks: readonly DropTrack[], seconds: number, outerM: number, frame: Frame): Paths =>
  dots(tracks, Array.from({ length: TRAIN }, (_, i) => seconds - i * APART_S), outerM, frame);

/** The same drops at a few instants, for those who want nothing to move. */
export const stillDrops = (tracks: readonly DropTrack[], outerM: number, frame: Frame): Paths => dots(tracks, STILLS, outerM, frame);

function dots(tracks: readonly DropTrack[], instants: readonly number[], outerM: number, frame: Frame): Paths {
  const [left, right] = edgesOf(frame, outerM);
  const out = Array.from({ length: DOT_SIZES.length + 1 }, () => '');
  for (const { points, dropUm } of tracks) {
    const found = DOT_SIZES.findIndex((most) => dropUm < most);
    const size = found < 0 ? DOT_SIZES.length : found;
    for (const t of instants) {
      const k = t / TRACK_STEP_S;
      const i = Math.floor(k);
      if (!(k >= 0) || 2 * i + 3 >= points.length) continue;
      const f = k - i;
      const x = frame.x(points[2 * i]! + f * (points[2 * i + 2]! - points[2 * i]!));
      const y = frame.z(points[2 * i + 1]! + f * (points[2 * i + 3]! - points[2 * i + 1]!));
      if (x >= left && x <= right && y >= 0) out[size] += `M${px(x)} ${px(y)}h0`;
    }
  }
  return out;
}
