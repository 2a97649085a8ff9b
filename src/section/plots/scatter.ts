import { contourDensity } from 'd3-contour';
import { ringsPath } from './rings.ts';
import { group, label, mark, px, type Mark, type Scene } from '../scene.ts';
import { axes, plot, scale, textWidth, type AxisWords, type Room, type Scale } from './axes.ts';

/** More points than these are drawn as lines of equal crowding: points on points hide each other. */
export const MOST_POINTS = 10_000;
/** Up to so many points are drawn large. */
const MANY_POINTS = 300;

export interface ScatterInput {
  readonly width: number;
  readonly height: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Rows that are drawn, by their numbers. */
  readonly rows: Uint32Array;
  readonly words: { readonly x: AxisWords; readonly y: AxisWords };
}
export interface ScatterLayout {
  readonly x: Scale;
  readonly y: Scale;
  readonly room: Room;
}

export function scatterLayout({ width, height, x, y, rows }: ScatterInput): ScatterLayout {
  const room: Room = { left: 52, top: 34, right: width - 18, bottom: height - 44 };
  let [x0, x1, y0, y1] = [Infinity, -Infinity, 0, -Infinity];
  for (const i of rows) {
    const [a, b] = [x[i]!, y[i]!];
    if (!Number.isFinite(a) || !Number.isFinite(b)) continue;
    if (a < x0) x0 = a;
    if (a > x1) x1 = a;
    if (b < y0) y0 = b;
    if (b > y1) y1 = b;
  }
  if (!(x1 >= x0)) [x0, x1, y0, y1] = [0, 1, 0, 1];
  return { x: scale(x0, x1, room.left, room.right), y: scale(y0, Math.max(y1, 1), room.bottom, room.top), room };
}

/** Every block a point; from `MOST_POINTS` on, lines of equal crowding. */
export function scatterScene(input: ScatterInput, layout = scatterLayout(input)): Scene {
  const { x, y, rows, width, height, words } = input;
  return plot(width, height, [
    axes(layout.x, layout.y, words, layout.room),
    mark('line', 'whole-dose', { x1: px(layout.room.left), y1: px(layout.y(1)), x2: px(layout.room.right), y2: px(layout.y(1)) }, { key: 'whole' }),
    rows.length > MOST_POINTS ? crowding(x, y, rows, layout) : mark('path', rows.length > MANY_POINTS ? 'points' : 'points few', { d: dots(x, y, rows, layout) }, { key: 'points' })
  ]);
}

/** All points as one path of lines without length: round ends make dots of them, and one element is drawn in one go. */
function dots(x: Float64Array, y: Float64Array, rows: Uint32Array, layout: ScatterLayout): string {
  const parts: string[] = [];
  const seen = new Set<number>();
  for (const i of rows) {
    const [cx, cy] = [Math.round(layout.x(x[i]!) * 2), Math.round(layout.y(y[i]!) * 2)];
    // NaN fails; what falls on the same half pixel is drawn once.
    if (!(cx === cx && cy === cy)) continue;
    const key = cx * 65536 + cy;
    if (seen.has(key)) continue;
    seen.add(key);
    parts.push(`M${cx / 2} ${cy / 2}h0`);
  }
  return parts.join('');
}

const LEVELS = 8;
function crowding(x: Float64Array, y: Float64Array, rows: Uint32Array, layout: ScatterLayout): Mark {
  const { room } = layout;
  const lines = contourDensity<number>()
    .x((i) => layout.x(x[i]!) - room.left)
    .y((i) => layout.y(y[i]!) - room.top)
    .size([room.right - room.left, room.bottom - room.top])
    .bandwidth(9)
    .thresholds(LEVELS)(Array.from(rows).filter((i) => Number.isFinite(x[i]!) && Number.isFinite(y[i]!)));
  return group('crowding', lines.map((c, n) => mark('path', `crowd crowd-${Math.min(n, LEVELS)}`, { d: ringsPath(c.coordinates, room.left, room.top) }, { key: String(n) })), {}, 'crowding');
}

/** The point of the row that is looked at, ringed and named. */
export function scatterPick({ x, y, width }: ScatterInput, layout: ScatterLayout, row: number, text: string): Mark | null {
  const [cx, cy] = [layout.x(x[row]!), layout.y(y[row]!)];
  if (!Number.isFinite(cx) || !Number.isFinite(cy)) return null;
  const wide = textWidth(text) + 14;
  const left = Math.min(Math.max(cx - wide / 2, 2), Math.max(width - wide - 2, 2));
  const top = cy - 42 > 0 ? cy - 42 : cy + 16;
  return group('reading', [
    mark('circle', 'reading-ring', { cx: px(cx), cy: px(cy), r: 8 }, { key: 'ring' }),
    mark('rect', 'reading-card', { x: px(left), y: px(top), width: px(wide), height: 24 }, { key: 'card' }),
    label('reading-text', left + 7, top + 17, text, {}, 'text')
  ], {}, 'reading');
}

/** The row whose point is nearest to a place of the drawing, within `reach` px; null where there is none. */
export function nearestRow({ x, y, rows }: ScatterInput, layout: ScatterLayout, atX: number, atY: number, reach = 24): number | null {
  let best: number | null = null;
  let far = reach * reach;
  for (const i of rows) {
    const dx = layout.x(x[i]!) - atX;
    const dy = layout.y(y[i]!) - atY;
    const d = dx * dx + dy * dy;
    if (d <= far) [best, far] = [i, d];
  }
  return best;
}
