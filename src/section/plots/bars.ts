import { bin } from 'd3-array';
import { group, label, line, mark, px, type Mark, type Scene } from '../scene.ts';
import { axes, plot, rhomb, scale, textWidth, type AxisWords } from './axes.ts';
import { hatchPath } from './hatch.ts';

const ROW = 40;
const TOP = 34;
const FOOT = 46;

export interface Span {
  readonly low: number;
  readonly high: number;
}
export interface IntervalRow {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  /** Reckoned from the standard errors. */
  readonly analytic: Span | null;
  /** Of the draws. */
  readonly drawn: (Span & { readonly mean: number }) | null;
  readonly chosen: boolean;
}

/** Left margin for names; on a narrow drawing they stand above their bars. */
function nameRoom(names: readonly string[], width: number): { readonly left: number; readonly above: boolean } {
  const widest = Math.max(...names.map((n) => textWidth(n)), 0) + 14;
  return widest > width * 0.36 ? { left: 8, above: true } : { left: widest, above: false };
}
const ends = (values: readonly number[], least?: number): [number, number] => {
  const v = least === undefined ? values : [least, ...values];
  return [Math.min(...v), Math.max(...v)];
};
/** The values' own axis alone, below the rows. */
function axisX(s: ReturnType<typeof scale>, words: AxisWords, left: number, right: number, top: number, bottom: number): Mark {
  const blank = { title: '', tick: () => '' };
  const a = axes(s, scale(0, 1, bottom, top), { x: words, y: blank }, { left, right, top, bottom });
  // Upright lines instead of lying ones: values are read downwards.
  return group('axes', [
    ...s.ticks(6).map((v) => line('grid', s(v), top, s(v), bottom, `g${v}`)),
    ...(a.children ?? []).filter((m) => m.cls !== 'grid' && m.key !== 'y' && m.text !== '')
  ], {}, 'axes');
}

/** Every strategy's interval twice: reckoned, as an open bar with end caps; drawn, as a hatched bar with its mean. */
export function intervalsScene(rows: readonly IntervalRow[], width: number, words: AxisWords): Scene {
  const { left, above } = nameRoom(rows.map((r) => r.name), width);
  const high = above ? ROW + 18 : ROW;
  const right = width - 16;
  const bottom = TOP + rows.length * high;
  const all = rows.flatMap((r) => [r.value, ...(r.analytic ? [r.analytic.low, r.analytic.high] : []), ...(r.drawn ? [r.drawn.low, r.drawn.high] : [])]);
  const x = scale(...ends(all.length > 0 ? all : [0, 1], 0), left, right);
  return plot(width, bottom + FOOT, [
    axisX(x, words, left, right, TOP - 8, bottom),
    ...rows.map((r, i) => {
      const y = TOP + i * high + (above ? 18 : 0);
      return group(`interval${r.chosen ? ' chosen' : ''}`, [
        label('name', above ? left : left - 10, above ? y - 2 : y + ROW / 2, r.name, above ? {} : { 'text-anchor': 'end' }, 'name'),
        ...(r.analytic ? [mark('path', 'span-analytic', { d: `M${px(x(r.analytic.low))} ${px(y + 4)}v10M${px(x(r.analytic.low))} ${px(y + 9)}H${px(x(r.analytic.high))}M${px(x(r.analytic.high))} ${px(y + 4)}v10` }, { key: 'analytic' })] : []),
        ...(r.drawn ? drawnBar(r.drawn, x, y + 19) : []),
        rhomb('span-value', x(r.value), y + 9, 5, 'value')
      ], {}, r.id);
    })
  ]);
}
function drawnBar({ low, high, mean }: Span & { readonly mean: number }, x: (v: number) => number, y: number): Mark[] {
  const wide = Math.max(x(high) - x(low), 1);
  return [
    mark('rect', 'span-drawn', { x: px(x(low)), y: px(y), width: px(wide), height: 10 }, { key: 'drawn' }),
    mark('path', 'span-hatch', { d: hatchPath(x(low), y, wide, 10, 4) }, { key: 'hatch' }),
    line('span-mean', x(mean), y - 2, x(mean), y + 12, 'mean')
  ];
}

export interface HistogramInput {
  readonly width: number;
  readonly height: number;
  readonly bins: { readonly from: number; readonly width: number; readonly counts: readonly number[] };
  readonly value: number;
  readonly analytic: Span | null;
  readonly drawn: Span & { readonly mean: number };
  readonly words: { readonly x: AxisWords; readonly y: AxisWords };
  /** What the two intervals and the value are called. */
  readonly names: { readonly analytic: string; readonly drawn: string; readonly value: string };
}
/** How often the draws fell where, with both intervals above them. */
export function histogramScene({ width, height, bins, value, analytic, drawn, words, names }: HistogramInput): Scene {
  const room = { left: 52, top: 92, right: width - 16, bottom: height - 44 };
  const last = bins.from + bins.width * bins.counts.length;
  const x = scale(...ends([bins.from, last, value, ...(analytic ? [analytic.low, analytic.high] : [])]), room.left, room.right, false);
  const y = scale(0, Math.max(...bins.counts, 1), room.bottom, room.top);
  const frame = axes(x, y, words, room);
  const side = (v: number) => (x(v) > (room.left + room.right) / 2 ? { at: x(v) - 8, 'text-anchor': 'end' as const } : { at: x(v) + 8, 'text-anchor': 'start' as const });
  const named = (cls: string, text: string, from: number, to: number, at: number): Mark => {
    // Beside the span where there is room, above it otherwise.
    const right = x(to) + 8 + textWidth(text) < room.right;
    return right ? label(cls, x(to) + 8, at + 4, text, {}, `${cls}-${at}`) : label(cls, Math.max(x(from) - 8, textWidth(text) + 4), at + 4, text, { 'text-anchor': 'end' }, `${cls}-${at}`);
  };
  const v = side(value);
  return plot(width, height, [
    frame,
    ...bins.counts.map((n, i) => {
      const a = x(bins.from + i * bins.width);
      const b = x(bins.from + (i + 1) * bins.width);
      return mark('rect', 'bin', { x: px(a + 0.5), y: px(y(n)), width: px(Math.max(b - a - 1, 0.5)), height: px(room.bottom - y(n)) }, { key: `bin${i}` });
    }),
    line('here-line', x(value), room.top - 12, x(value), room.bottom, 'value'),
    label('here-label', v.at, room.top - 2, names.value, { 'text-anchor': v['text-anchor'] }, 'value-name'),
    ...(analytic
      ? [mark('path', 'span-analytic', { d: `M${px(x(analytic.low))} 30v10M${px(x(analytic.low))} 35H${px(x(analytic.high))}M${px(x(analytic.high))} 30v10` }, { key: 'analytic' }), named('span-name', names.analytic, analytic.low, analytic.high, 35)]
      : []),
    group('interval', drawnBar(drawn, x, 52), {}, 'drawn'),
    named('span-name', names.drawn, drawn.low, drawn.high, 57)
  ]);
}
/** Equal bins over all values, as many as read well. */
export function binned(values: readonly number[], most: number): HistogramInput['bins'] {
  const made = bin().thresholds(most)(values as number[]);
  const [first, second] = [made[0], made[1]];
  if (!first || first.x0 === undefined || first.x1 === undefined) return { from: 0, width: 1, counts: [] };
  const width = second?.x1 !== undefined && second.x0 !== undefined && made.length > 2 ? second.x1 - second.x0 : first.x1 - first.x0 || 1;
  return { from: first.x0, width, counts: made.map((b) => b.length) };
}

export interface TornadoBar {
  readonly id: string;
  readonly name: string;
  readonly kind: 'measured' | 'assumed';
  /** The result at the lower and at the upper end of the input. */
  readonly low: number;
  readonly high: number;
  /** What the input is at its two ends, with unit. */
  readonly from: string;
  readonly to: string;
}
/** How far each input moves the result, the widest first: measured ones filled, assumed ones hatched. */
export function tornadoScene(bars: readonly TornadoBar[], base: number, baseName: string, width: number, words: AxisWords): Scene {
  const ordered = bars.toSorted((a, b) => Math.abs(b.high - b.low) - Math.abs(a.high - a.low));
  const { left, above } = nameRoom(ordered.map((b) => b.name), width);
  const high = above ? 50 : 34;
  // Room for what the input is at both ends of the widest bar.
  const side = Math.max(...ordered.flatMap((b) => [textWidth(b.from, 12), textWidth(b.to, 12)]), 0) + 8;
  const [x0, x1] = [left + side, width - side - 4];
  const bottom = TOP + ordered.length * high;
  const x = scale(...ends([base, ...ordered.flatMap((b) => [b.low, b.high])]), x0, x1, false);
  return plot(width, bottom + FOOT, [
    axisX(x, words, x0, x1, TOP - 8, bottom),
    label('here-label', x(base), TOP - 14, baseName, { 'text-anchor': 'middle' }, 'base-name'),
    ...ordered.map((b, i) => {
      const y = TOP + i * high + (above ? 18 : 0);
      const [a, c] = [Math.min(x(b.low), x(b.high)), Math.max(x(b.low), x(b.high))];
      const wide = Math.max(c - a, 1);
      // The lower end of the input stands where its result does.
      const [leftText, rightText] = b.low <= b.high ? [b.from, b.to] : [b.to, b.from];
      return group(`sway ${b.kind}`, [
        label('name', above ? 8 : left - 10, above ? y - 2 : y + 19, b.name, above ? {} : { 'text-anchor': 'end' }, 'name'),
        mark('rect', 'sway-bar', { x: px(a), y: px(y + 4), width: px(wide), height: 20 }, { key: 'bar' }),
        ...(b.kind === 'assumed' ? [mark('path', 'span-hatch', { d: hatchPath(a, y + 4, wide, 20, 5) }, { key: 'hatch' })] : []),
        label('sway-end', a - 5, y + 18.5, leftText, { 'text-anchor': 'end' }, 'low'),
        label('sway-end', c + 5, y + 18.5, rightText, {}, 'high')
      ], {}, b.id);
    }),
    line('here-line', x(base), TOP - 8, x(base), bottom, 'base')
  ]);
}
