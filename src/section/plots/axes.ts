import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { group, label, line, mark, px, type Mark, type Scene } from '../scene.ts';

/** Room of a plot inside its drawing, px. */
export interface Room {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
export type Scale = ScaleLinear<number, number>;

/** What an axis says: its title with the unit, and a figure at a tick. */
export interface AxisWords {
  readonly title: string;
  readonly tick: (value: number) => string;
}

/** Px that a tick may claim at least, so that figures do not touch. */
const TICK_X = 64;
const TICK_Y = 38;

/** A scale whose ends read well; a range of one value gets room on both sides. */
export function scale(low: number, high: number, from: number, to: number, ends = true): Scale {
  const span = high - low;
  const half = span > 0 ? 0 : Math.max(Math.abs(high) * 0.05, 0.5);
  const s = scaleLinear([low - half, high + half], [from, to]);
  return ends ? s.nice(ticksFor(s)) : s;
}
const ticksFor = (s: Scale): number => {
  const [a, b] = s.range() as [number, number];
  return Math.max(Math.round(Math.abs(b - a) / (b > a ? TICK_X : TICK_Y)), 2);
};

/** Grid, ticks and titles. The upright axis has its title lying above it, so that no head has to be bent. */
export function axes(x: Scale, y: Scale, words: { readonly x: AxisWords; readonly y: AxisWords }, room: Room): Mark {
  const { left, top, right, bottom } = room;
  return group('axes', [
    ...y.ticks(ticksFor(y)).flatMap((v) => [line('grid', left, y(v), right, y(v), `gy${v}`), label('tick', left - 6, y(v) + 4, words.y.tick(v), { 'text-anchor': 'end' }, `ty${v}`)]),
    ...x.ticks(ticksFor(x)).flatMap((v) => [line('tick-mark', x(v), bottom, x(v), bottom + 5, `gx${v}`), label('tick', x(v), bottom + 19, words.x.tick(v), { 'text-anchor': 'middle' }, `tx${v}`)]),
    line('axis', left, bottom, right, bottom, 'x'),
    line('axis', left, top, left, bottom, 'y'),
    label('axis-title', 0, top - 14, words.y.title, {}, 'y-title'),
    label('axis-title', left, bottom + 38, words.x.title, {}, 'x-title')
  ], {}, 'axes');
}

/** A drawing that is only looked at. */
export const plot = (width: number, height: number, marks: readonly Mark[]): Scene => ({ width, height, marks, handles: [], fields: [], spots: [] });

/** Px that a text takes, as near as it can be told without a font. */
export const textWidth = (text: string, size = 13): number => text.length * size * 0.49;

/** A small rhomb about a point: a mark that is no circle. */
export const rhomb = (cls: string, x: number, y: number, r: number, key: string): Mark =>
  mark('path', cls, { d: `M${px(x)} ${px(y - r)}L${px(x + r)} ${px(y)}L${px(x)} ${px(y + r)}L${px(x - r)} ${px(y)}Z` }, { key });
