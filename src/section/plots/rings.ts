import { px } from '../scene.ts';

/** Rings of polygons as one path, moved to where they belong. */
export const ringsPath = (polygons: readonly (readonly (readonly number[][])[])[] | number[][][][], dx: number, dy: number): string =>
  (polygons as number[][][][]).map((rings) => rings.map((ring) => `M${ring.map(([x, y]) => `${px(x! + dx)} ${px(y! + dy)}`).join('L')}Z`).join('')).join('');
