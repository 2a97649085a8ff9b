import { line as through } from 'd3-shape';
import { group, label, line, mark, px, type Mark, type Scene } from '../scene.ts';
import { axes, plot, rhomb, scale, textWidth, type AxisWords, type Room, type Scale } from './axes.ts';
import { dodged } from './dodge.ts';

/** By what a strategy scales: told apart by the stroke of its curve. */
export type Family = 'none' | 'height' | 'wall' | 'volume' | 'leaf';

export interface PlotPoint {
  readonly x: number;
  /** null where the strategy has no answer. */
  readonly y: number | null;
}
/** One strategy's curve, in the units shown. */
export interface PlotCurve {
  readonly id: string;
  readonly name: string;
  readonly family: Family;
  readonly chosen: boolean;
  readonly own: boolean;
  readonly points: readonly PlotPoint[];
  /** Where the block itself stands; null where there is no answer. */
  readonly here: number | null;
}
export interface Picked {
  readonly id: string;
  readonly index: number;
}

export interface CurvesInput {
  readonly width: number;
  readonly height: number;
  readonly curves: readonly PlotCurve[];
  /** The block's own place along x, and what is written at it. */
  readonly here: { readonly x: number; readonly label: string };
  readonly words: { readonly x: AxisWords; readonly y: AxisWords };
  /** The point that is read, and what is said of it. */
  readonly picked: (Picked & { readonly text: string }) | null;
}

export interface CurvesLayout {
  readonly x: Scale;
  readonly y: Scale;
  readonly room: Room;
  readonly labelled: boolean;
}

const MARGIN = { left: 46, top: 34, bottom: 44 };
/** Labels stand so far from where the curves end. */
const LEADER = 22;
const LABEL_GAP = 15;
/** A plot narrower than this leaves the names to its table and to the reading. */
const LEAST_PLOT = 130;

const finite = (c: PlotCurve): PlotPoint[] => c.points.filter((p) => p.y !== null);

export function curvesLayout({ width, height, curves, here }: CurvesInput): CurvesLayout {
  const all = curves.flatMap(finite);
  const names = Math.max(...curves.map((c) => textWidth(c.name)), 0) + LEADER + 8;
  const labelled = width - MARGIN.left - names >= LEAST_PLOT;
  const room: Room = { left: MARGIN.left, top: MARGIN.top, right: width - (labelled ? names : 12), bottom: height - MARGIN.bottom };
  const xs = [...all.map((p) => p.x), here.x];
  const ys = [...all.map((p) => p.y!), ...curves.flatMap((c) => (c.here === null ? [] : [c.here]))];
  return {
    x: scale(Math.min(...xs), Math.max(...xs), room.left, room.right, false),
    // From nothing on: half the dose is to look like half of it.
    y: scale(Math.min(0, ...ys), Math.max(...ys, 1), room.bottom, room.top),
    room,
    labelled
  };
}

/** Dose index of every strategy, each curve named where it ends, the block's own place as an upright line. */
export function curvesScene(input: CurvesInput): Scene {
  const { curves, here, words, picked, width, height } = input;
  const layout = curvesLayout(input);
  const { x, y, room } = layout;
  const draw = through<PlotPoint>()
    .defined((p) => p.y !== null)
    .x((p) => px(x(p.x)))
    .y((p) => px(y(p.y!)));
  const kind = (c: PlotCurve) => `${c.family}${c.chosen ? ' chosen' : ''}${c.own ? ' own' : ''}${picked?.id === c.id ? ' picked' : ''}`;
  // The chosen one on top of the others.
  const ordered = [...curves].sort((a, b) => Number(a.chosen) - Number(b.chosen));
  const anchor = x(here.x) > (room.left + room.right) / 2 ? 'end' : 'start';
  return plot(width, height, [
    axes(x, y, words, room),
    line('whole-dose', room.left, y(1), room.right, y(1), 'whole'),
    group('here', [
      line('here-line', x(here.x), room.top - 4, x(here.x), room.bottom, 'line'),
      label('here-label', x(here.x) + (anchor === 'end' ? -5 : 5), room.top + 4, here.label, { 'text-anchor': anchor }, 'label')
    ], {}, 'here'),
    ...ordered.map((c) =>
      group(`curve ${kind(c)}`, [
        mark('path', 'curve-line', { d: draw(c.points) ?? '' }, { key: 'line' }),
        ...(c.here === null ? [] : [c.own ? rhomb('here-dot', x(here.x), y(c.here), 5, 'dot') : mark('circle', 'here-dot', { cx: px(x(here.x)), cy: px(y(c.here)), r: c.chosen ? 5 : 3.2 }, { key: 'dot' })])
      ], {}, c.id)
    ),
    ...(layout.labelled ? [names(curves, layout, kind)] : []),
    ...reading(input, layout)
  ]);
}

/** Names at the ends of the curves, moved apart, each led to its own end. */
function names(curves: readonly PlotCurve[], { x, y, room }: CurvesLayout, kind: (c: PlotCurve) => string): Mark {
  const ends = curves.flatMap((c) => {
    // The end that lies furthest to the right: along some measurements a curve runs leftwards.
    const end = finite(c).reduce<PlotPoint | null>((far, p) => (far === null || p.x > far.x ? p : far), null);
    return end ? [{ c, end }] : [];
  });
  const places = dodged(ends.map(({ end }) => y(end.y!)), LABEL_GAP, room.top, room.bottom);
  return group('curve-names', ends.map(({ c, end }, i) => {
    const at = places[i]!;
    return group(`curve-name ${kind(c)}`, [
      mark('path', 'name-leader', { d: `M${px(x(end.x))} ${px(y(end.y!))}L${px(room.right + LEADER - 12)} ${px(at)}h8` }, { key: 'leader' }),
      label('name', room.right + LEADER, at + 4, c.name, {}, 'name')
    ], {}, c.id);
  }), {}, 'names');
}

function reading({ picked, curves, width }: CurvesInput, { x, y, room }: CurvesLayout): Mark[] {
  const point = picked && curves.find((c) => c.id === picked.id)?.points[picked.index];
  if (!picked || !point || point.y === null) return [];
  const [cx, cy] = [x(point.x), y(point.y)];
  const wide = textWidth(picked.text) + 14;
  const left = Math.min(Math.max(cx - wide / 2, 2), Math.max(width - wide - 2, 2));
  // Above the point, or below it where there is no room above.
  const top = cy - 40 > room.top - 30 ? cy - 40 : cy + 14;
  return [
    group('reading', [
      mark('circle', 'reading-ring', { cx: px(cx), cy: px(cy), r: 7 }, { key: 'ring' }),
      mark('rect', 'reading-card', { x: px(left), y: px(top), width: px(wide), height: 24 }, { key: 'card' }),
      label('reading-text', left + 7, top + 17, picked.text, {}, 'text')
    ], {}, 'reading')
  ];
}

/** The point of a curve that is nearest to a place of the drawing; null where nothing is drawn. */
export function nearestPoint({ x, y }: CurvesLayout, curves: readonly PlotCurve[], atX: number, atY: number): Picked | null {
  let best: (Picked & { far: number }) | null = null;
  for (const c of curves)
    c.points.forEach((p, index) => {
      if (p.y === null) return;
      const far = Math.hypot(x(p.x) - atX, y(p.y) - atY);
      if (best === null || far < best.far) best = { id: c.id, index, far };
    });
  const found = best as (Picked & { far: number }) | null;
  return found && { id: found.id, index: found.index };
}

/** The curve above or below another at the same step, by its value there; the same where there is none further. */
export function neighbourCurve(curves: readonly PlotCurve[], { id, index }: Picked, up: boolean): Picked {
  const there = curves.flatMap((c) => {
    const y = c.points[index]?.y;
    return y === null || y === undefined ? [] : [{ id: c.id, y }];
  });
  // Curves that lie on each other are passed one by one, in the order of the table.
  const order = there.map((t, i) => ({ ...t, i })).sort((a, b) => a.y - b.y || a.i - b.i);
  const at = order.findIndex((t) => t.id === id);
  const next = order[at + (up ? 1 : -1)];
  return { id: next?.id ?? id, index };
}
