import { contours } from 'd3-contour';
import type { SprayPicture } from '#core/spray/types.ts';
import { edgesOf } from './edges.ts';
import type { Frame } from './frame.ts';
import { group, mark, px, type Mark } from './scene.ts';

type Field = SprayPicture['map'];

/** Shares of the densest place from which each step is drawn. */
export const STEPS = [0.08, 0.15, 0.25, 0.4, 0.6, 0.8] as const;
/** The model softens its picture over half a metre: every other cell says the same in a quarter of the time. */
const EVERY = 2;

/** Columns of a field that are drawn, and where the first of them begins. */
interface Window {
  readonly from: number;
  readonly columns: number;
}
const worked = new WeakMap<Field, Window & { readonly steps: readonly Mark[] }>();

/**
 * Spray in the air as soft shading: one area a step, each on top of the one before, so that where more passes the paper is covered more
 * often. The areas are in cells and scaled as a whole: they are worked out once for a picture, however often the drawing changes.
 * @param outerM outer side of the crown, from the middle of the machine, m
 */
export function sprayMap(field: Field, outerM: number, frame: Frame): Mark {
  const cellM = field.cellM * EVERY;
  const columnAt = (x: number) => ((x - frame.x(0)) / frame.scale - field.xM) / cellM;
  const [left, right] = edgesOf(frame, outerM);
  const all = Math.floor(field.columns / EVERY);
  const from = Math.min(Math.max(Math.round(columnAt(left)), 0), all);
  const columns = Math.max(Math.min(Math.round(columnAt(right)), all) - from, 0);
  let known = worked.get(field);
  if (known?.from !== from || known.columns !== columns) worked.set(field, (known = { from, columns, steps: shapes(field, { from, columns }) }));
  const scale = px(cellM * frame.scale * 100) / 100;
  return group('spray-map', known.steps, { transform: `translate(${px(frame.x(field.xM + from * cellM))} ${px(frame.z(field.zM))}) scale(${scale} ${-scale})` }, 'spray-map');
}

function shapes(field: Field, { from, columns }: Window): Mark[] {
  const rows = Math.floor(field.rows / EVERY);
  if (columns < 2 || rows < 2) return [];
  const coarse = new Array<number>(columns * rows);
  for (let r = 0; r < rows; r++) for (let c = 0; c < columns; c++) coarse[r * columns + c] = meanOf(field, (from + c) * EVERY, r * EVERY);
  return contours()
    .size([columns, rows])
    .smooth(true)
    .thresholds([...STEPS])(coarse)
    .map(({ coordinates }, i) => {
      let d = '';
      for (const polygon of coordinates) for (const ring of polygon) d += ringPath(ring as [number, number][]);
      return mark('path', `spray-step spray-step-${i}`, { d }, { key: `step-${i}` });
    });
}

function meanOf({ density, columns }: Field, column: number, row: number): number {
  let sum = 0;
  for (let r = row; r < row + EVERY; r++) for (let c = column; c < column + EVERY; c++) sum += density[r * columns + c]!;
  return sum / EVERY ** 2;
}

/** The last point of a ring is its first. */
function ringPath(ring: readonly (readonly [number, number])[]): string {
  let d = '';
  for (let i = 0; i < ring.length - 1; i++) d += `${i === 0 ? 'M' : 'L'}${px(ring[i]![0])} ${px(ring[i]![1])}`;
  return `${d}Z`;
}
