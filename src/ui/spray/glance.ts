import type { UnitSystem } from '#core/quantity/units.ts';
import type { Rung } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import type { SprayBalance } from '#core/spray/types.ts';
import { sprayScreen as words } from '#words/en/spray/screen.ts';
import { formatAmount, formatRange } from '#words/format.ts';
import { nozzleNames } from '#words/names.ts';
import { HEIGHTS_SHOWN_EACH, heightBands, nozzleLine } from './figures.ts';
import { shareText } from './text.ts';

/** One line that says what is most worth knowing of a table that is folded. */

/** A nozzle that sends this much over the top or beyond the block is named; otherwise the range over all of them is told. */
const MUCH = 0.25;

export function nozzleGlance(b: SprayBalance): string {
  const lines = b.perNozzle.map((n) => ({ position: n.position, ...nozzleLine(n.shares) }));
  if (lines.length === 0) return '';
  const past = lines.filter((l) => l.over + l.beyond + l.air >= MUCH);
  if (past.length > 0) return words.mostLost(nozzleNames(past.map((l) => l.position)), past.length, shareText(Math.max(...past.map((l) => l.over + l.beyond + l.air))));
  const trees = lines.map((l) => l.trees);
  return words.treesFrom(shareText(Math.min(...trees)), shareText(Math.max(...trees)));
}

export function heightGlance(b: SprayBalance, system: UnitSystem): string {
  const bands = heightBands(b.heights, HEIGHTS_SHOWN_EACH).filter((h) => h.depositUlPerCm2 !== null);
  const sorted = bands.toSorted((x, y) => y.depositUlPerCm2! - x.depositUlPerCm2!);
  const [most, least] = [sorted[0], sorted.at(-1)];
  if (!most || !least) return '';
  const at = (h: typeof most) => formatAmount((h.fromM + h.toM) / 2, 'm', system);
  return words.heightLine(at(most), formatAmount(most.depositUlPerCm2!, 'uL/cm2', system), at(least), formatAmount(least.depositUlPerCm2!, 'uL/cm2', system));
}

export function airGlance({ faces }: SprayBalance, system: UnitSystem): string {
  if (faces.length === 0) return words.airNowhere;
  const range = (speeds: readonly number[]) => formatRange(Math.min(...speeds), Math.max(...speeds), 'm/s', system);
  const meets = range(faces.map((f) => f.inMPerS));
  const leaves = faces.flatMap((f) => (f.outMPerS === null ? [] : [f.outMPerS]));
  return leaves.length === 0 ? words.airStops(meets) : words.airLine(meets, range(leaves));
}

/** What is set beside the rung in view: another rung, or the saved setting of this one. */
export const otherName = (other: Result, rung: Rung): string => (other.rung.id === rung.id ? words.besideSaved : other.rung.name);
