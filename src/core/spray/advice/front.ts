import type { Objectives } from './types.ts';

/** Objectives as numbers of which more is always better. */
export type Goods = readonly [onTrees: number, lost: number, evenness: number, workRate: number];
export const goodsOf = ({ onTrees, lost, cv, workRateHaPerH }: Objectives): Goods => [onTrees, -lost, -(cv ?? 0), workRateHaPerH];

const SAME = 1e-9;

/** At least as good in everything and better in something. */
export function dominates(a: Goods, b: Goods): boolean {
  let better = false;
  for (let i = 0; i < a.length; i++) {
    if (a[i]! < b[i]! - SAME) return false;
    if (a[i]! > b[i]! + SAME) better = true;
  }
  return better;
}

/** Those that no other dominates; of equal ones the first. */
export function front<T extends { readonly goods: Goods }>(all: readonly T[]): T[] {
  const out: T[] = [];
  for (const one of all) {
    if (out.some((o) => dominates(o.goods, one.goods) || same(o.goods, one.goods))) continue;
    for (let i = out.length - 1; i >= 0; i--) if (dominates(one.goods, out[i]!.goods)) out.splice(i, 1);
    out.push(one);
  }
  return out;
}
const same = (a: Goods, b: Goods): boolean => a.every((v, i) => Math.abs(v - b[i]!) <= SAME);

/** A range of an objective shorter than this is taken as this long: differences that nobody sees do not spread a front. */
const LEAST_SPAN: Goods = [0.05, 0.05, 0.1, 0];
/** Plans nearer to each other than this part of the front's span are one. */
const NEAR = 0.12;

/** The best in each objective, the best all round, then always the one that is farthest from those chosen, up to `most`. */
export function spread<T extends { readonly goods: Goods }>(all: readonly T[], most: number, todayRate: number): T[] {
  if (all.length === 0) return [];
  const span = LEAST_SPAN.map((least, i) => Math.max(i === 3 ? 0.1 * todayRate : least, Math.max(...all.map((a) => a.goods[i]!)) - Math.min(...all.map((a) => a.goods[i]!))));
  const sum = (a: T): number => a.goods.reduce((s, v, i) => s + v / span[i]!, 0);
  const distance = (a: T, b: T): number => Math.sqrt(a.goods.reduce((s, v, i) => s + ((v - b.goods[i]!) / span[i]!) ** 2, 0));
  const best = (score: (a: T) => number): T => all.reduce((x, y) => (score(y) > score(x) + SAME ? y : x));
  const chosen: T[] = [];
  // A hair of the whole decides between equals.
  for (const score of [sum, ...[0, 1, 2, 3].map((i) => (a: T) => a.goods[i]! / span[i]! + 0.02 * sum(a))]) {
    const one = best(score);
    if (chosen.length < most && chosen.every((c) => distance(c, one) >= NEAR)) chosen.push(one);
  }
  while (chosen.length < most) {
    const nearest = (a: T): number => Math.min(...chosen.map((c) => distance(c, a)));
    const next = best(nearest);
    if (nearest(next) < 2 * NEAR) break;
    chosen.push(next);
  }
  return chosen;
}
