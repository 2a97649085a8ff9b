import type { Fate, Range, SprayBalance, SprayBand } from '#core/spray/types.ts';
import { difference, lostBand, treesBand } from './figures.ts';

/** A setting's balance with the volume that is sprayed. */
export interface Sprayed {
  readonly balance: SprayBalance;
  readonly volumeLPerHa: number;
}
export type BesideId = Fate | 'on-trees' | 'lost' | 'volume' | 'trees-area' | 'lost-area' | 'cv' | 'deposit';
export interface BesideLine {
  readonly id: BesideId;
  readonly unit: '%' | 'L/ha' | 'uL/cm2';
  readonly now: number;
  readonly other: number;
  /** now − other: shares as shares. */
  readonly by: number;
  /** Outside the band of the figure as it is now; a volume is counted, not predicted. */
  readonly clear: boolean;
  readonly main: boolean;
}

/** What two settings do, line by line. A share or a figure without a band yet has no clear difference. */
export function besideLines(now: Sprayed & { readonly band: SprayBand | null }, other: Sprayed): readonly BesideLine[] {
  const [a, b, band] = [now.balance, other.balance, now.band];
  const times = (range: Range): Range => [range[0] * now.volumeLPerHa, range[1] * now.volumeLPerHa];
  const trees = treesBand(a, band);
  const lost = lostBand(a, band);
  const line = (id: BesideId, unit: BesideLine['unit'], x: number, y: number, range: Range | null, main = false): BesideLine => ({ id, unit, now: x, other: y, ...difference(x, y, range), main });
  const share = (fate: Fate) => line(fate, '%', a.shares[fate], b.shares[fate], band?.shares[fate] ?? null);
  return [
    line('on-trees', '%', a.onTrees, b.onTrees, trees, true),
    share('near'),
    share('far'),
    share('rows'),
    share('ground-in'),
    line('lost', '%', a.lost, b.lost, lost, true),
    share('ground-out'),
    share('over'),
    share('through'),
    share('dried'),
    { id: 'volume', unit: 'L/ha', now: now.volumeLPerHa, other: other.volumeLPerHa, by: now.volumeLPerHa - other.volumeLPerHa, clear: true, main: true },
    line('trees-area', 'L/ha', a.onTrees * now.volumeLPerHa, b.onTrees * other.volumeLPerHa, times(trees)),
    line('lost-area', 'L/ha', a.lost * now.volumeLPerHa, b.lost * other.volumeLPerHa, times(lost)),
    ...(a.cv !== null && b.cv !== null ? [line('cv', '%', a.cv, b.cv, band?.cv ?? null)] : []),
    ...(a.depositUlPerCm2 !== null && b.depositUlPerCm2 !== null ? [line('deposit', 'uL/cm2', a.depositUlPerCm2, b.depositUlPerCm2, band?.depositUlPerCm2 ?? null)] : [])
  ];
}
