import type { CanopyState } from '../../canopy/canopy.ts';
import type { Answer } from '../../working/answer.ts';
import type { Strategy } from '../strategy.ts';

/** How a dose index goes with the canopy: not at all; in proportion; along a straight line that keeps a share; or otherwise. */
export type Law =
  | { readonly kind: 'constant' | 'proportional' | 'other' }
  | { readonly kind: 'affine'; /** Share of the dose that is left where nothing stands. */ readonly least: number };

/**
 * Read off the formula itself: each canopy figure that it uses is put to nothing, to half and to twice. A straight line is one only where the formula
 * rests on a single figure of the canopy.
 * @param index the strategy's index on some canopy, with its working
 */
export function lawOf(strategy: Strategy, canopy: CanopyState, index: Answer): Law {
  if (index.kind !== 'figure') return { kind: 'other' };
  const values = Object.fromEntries(Object.entries(index.inputs).map(([symbol, input]) => [symbol, input.value]));
  const from = Object.keys(strategy.index.inputs).filter((symbol) => symbol in canopy.figures && !(symbol in strategy.constants));
  const at = (symbol: string, share: number) => strategy.index.compute({ ...values, [symbol]: values[symbol]! * share });
  if (from.length === 0) return { kind: 'constant' };
  const now = index.value;
  const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(now), 1e-9);
  if (from.every((symbol) => near(at(symbol, 0), 0) && near(at(symbol, 0.5), now / 2) && near(at(symbol, 2), 2 * now))) return { kind: 'proportional' };
  const [only, ...more] = from;
  const least = at(only!, 0);
  const straight = near(at(only!, 0.5), (least + now) / 2) && near(at(only!, 2), 2 * now - least);
  return more.length === 0 && least > 0 && straight && !near(least, now) ? { kind: 'affine', least } : { kind: 'other' };
}

/**
 * An index as it would be in proportion to the canopy, with the same whole dose: a straight line L + (1 − L)·x/x₀ without its share L.
 * Of any other law the index itself.
 */
export function inProportion(law: Law, index: number): number {
  return law.kind === 'affine' ? (index - law.least) / (1 - law.least) : index;
}
