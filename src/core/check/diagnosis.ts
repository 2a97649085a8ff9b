import { isRefused, valueOf, type Answer } from '../working/answer.ts';
import type { CatchState, Diagnosis, PressureState, Tolerance } from './state.ts';

/** The set does not spray as it should, whatever its sum is. */
export const UNFIT: ReadonlySet<Diagnosis> = new Set<Diagnosis>(['worn-set', 'one-low', 'one-high', 'hidden-pair', 'several-bad', 'sides-differ']);

interface Facts {
  readonly nozzles: readonly CatchState[];
  readonly missing: readonly string[];
  readonly meanRatio: Answer;
  readonly sidesOff: Answer;
  readonly tolerance: Tolerance;
  readonly pressure: PressureState;
}

/**
 * What the catches together say. Single nozzles first, since the sum hides a clogged one beside a worn one; then the sides; then the whole
 * set against the table. A set that is high alike is worn where the pressure was read at the nozzles or beside a gauge known to be right.
 */
export function diagnose({ nozzles, missing, meanRatio, sidesOff, tolerance, pressure }: Facts): { diagnosis: Diagnosis; bad: readonly string[] } {
  if (missing.length > 0 || nozzles.length < 2 || nozzles.some((n) => n.verdict === 'unknown')) return { diagnosis: 'incomplete', bad: [] };
  const names = (list: readonly CatchState[]) => list.map((n) => n.nozzle.position.id);
  const apart = !isRefused(sidesOff) && Math.abs(sidesOff.value) > tolerance.sides.value;
  if (apart && evenWithinSides(nozzles, tolerance.mean.value)) return { diagnosis: 'sides-differ', bad: [] };

  const lows = nozzles.filter((n) => n.verdict === 'low');
  const highs = nozzles.filter((n) => n.verdict === 'high');
  const bad = names([...nozzles].filter((n) => n.verdict !== 'fine'));
  const off = 100 * ((valueOf(meanRatio) ?? NaN) - 1);
  if (lows.length === 1 && highs.length === 1 && Math.abs(off) <= tolerance.nominal.value) return { diagnosis: 'hidden-pair', bad };
  if (bad.length > 1) return { diagnosis: 'several-bad', bad };
  if (bad.length === 1) return { diagnosis: lows.length === 1 ? 'one-low' : 'one-high', bad };
  if (apart) return { diagnosis: 'sides-differ', bad: [] };
  if (off > tolerance.nominal.value) return { diagnosis: pressure.proven ? 'worn-set' : 'evenly-high', bad: [] };
  if (off < -tolerance.nominal.value) return { diagnosis: 'evenly-low', bad: [] };
  return { diagnosis: 'fine', bad: [] };
}

/** Each side's nozzles agree among themselves. */
function evenWithinSides(nozzles: readonly CatchState[], limit: number): boolean {
  return (['left', 'right'] as const).every((side) => {
    const ratios = nozzles.filter((n) => n.nozzle.position.side === side).map((n) => valueOf(n.ratio) ?? NaN);
    const mean = ratios.reduce((s, r) => s + r, 0) / ratios.length;
    return ratios.every((r) => Math.abs(100 * (r / mean - 1)) <= limit);
  });
}
