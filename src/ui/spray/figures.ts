import { LEAST_BAND, LEAST_LOSS_BAND, type Fate, type FaceSpeed, type HeightCell, type Range, type Shares8, type SprayBalance, type SprayBand } from '#core/spray/types.ts';
import type { Side } from '#core/sprayer/types.ts';

/** Fates in the order of the table, by what they mean for the grower. */
export const ON_TREES = ['near', 'far', 'rows'] as const satisfies readonly Fate[];
export const LOST = ['ground-out', 'over', 'through', 'dried'] as const satisfies readonly Fate[];

/** The model's own error, while the full band is not known yet. */
const around = (share: number, least: number): Range => [Math.max(0, share - least), Math.min(1, share + least)];
export const treesBand = (b: SprayBalance, band: SprayBand | null): Range => band?.onTrees ?? around(b.onTrees, LEAST_BAND);
export const lostBand = (b: SprayBalance, band: SprayBand | null): Range => band?.lost ?? around(b.lost, LEAST_LOSS_BAND);

const holds = ([least, most]: Range, share: number): boolean => share >= least - 1e-9 && share <= most + 1e-9;

/** The band, if it still belongs to the balance: after a change one arrives later than the other. */
export const bandOf = (balance: SprayBalance, band: SprayBand | null): SprayBand | null => (band && holds(band.onTrees, balance.onTrees) && holds(band.lost, balance.lost) ? band : null);

/** A figure beside another of the same kind: a difference is clear where the other lies outside the band of this one. */
export interface Difference {
  readonly by: number;
  readonly clear: boolean;
}
export const difference = (now: number, other: number, range: Range | null): Difference => ({ by: now - other, clear: range === null ? false : !holds(range, other) });

/** Words for a coefficient of variation. The scale is ours; no source sets one. */
export type Evenness = 'even' | 'fairly' | 'uneven' | 'very';
export const evenness = (cv: number): Evenness => (cv <= 0.2 ? 'even' : cv <= 0.4 ? 'fairly' : cv <= 0.6 ? 'uneven' : 'very');

/** Several neighbouring height cells as one, for the eye. */
export interface HeightBand {
  readonly fromM: number;
  readonly toM: number;
  readonly areaIndex: number;
  readonly share: number;
  readonly depositUlPerCm2: number | null;
}
/** Cells from the ground up, `each` of them joined; the deposit is the mean over the leaf that has one. Highest first, as they are seen. */
export function heightBands(cells: readonly HeightCell[], each: number): readonly HeightBand[] {
  const out: HeightBand[] = [];
  for (let i = 0; i < cells.length; i += each) {
    const some = cells.slice(i, i + each);
    const grown = some.filter((c) => c.depositUlPerCm2 !== null && c.areaIndex > 0);
    const leaf = grown.reduce((s, c) => s + c.areaIndex, 0);
    out.push({
      fromM: some[0]!.fromM,
      toM: some.at(-1)!.toM,
      areaIndex: some.reduce((s, c) => s + c.areaIndex, 0),
      share: some.reduce((s, c) => s + c.share, 0),
      depositUlPerCm2: leaf > 0 ? grown.reduce((s, c) => s + c.depositUlPerCm2! * c.areaIndex, 0) / leaf : null
    });
  }
  return out.reverse();
}

/** Twenty cells are joined two and two for the eye. */
export const HEIGHTS_SHOWN_EACH = 2;

/** The cell that holds a height; the nearest one beyond the crown. */
export const cellAt = (cells: readonly HeightCell[], heightM: number): HeightCell | undefined => cells.find((c) => heightM < c.toM) ?? cells.at(-1);

/** Air at one height of one side, between the paths that are known. */
export interface AirAt {
  readonly inMPerS: number;
  readonly outMPerS: number | null;
}
/** null where no path of that side meets the row near that height: farther than half a metre from the lowest and the highest one. */
const REACH_M = 0.5;
export function airAt(faces: readonly FaceSpeed[], side: Side, heightM: number): AirAt | null {
  const own = faces.filter((f) => f.side === side).sort((a, b) => a.heightM - b.heightM);
  const above = own.findIndex((f) => f.heightM >= heightM);
  const high = above < 0 ? own.at(-1) : own[above];
  const low = above < 0 ? high : (own[above - 1] ?? high);
  if (!high || !low) return null;
  if (low === high) return Math.abs(high.heightM - heightM) <= REACH_M ? high : null;
  const f = (heightM - low.heightM) / (high.heightM - low.heightM);
  const out = low.outMPerS === null || high.outMPerS === null ? (f < 0.5 ? low : high).outMPerS : low.outMPerS + f * (high.outMPerS - low.outMPerS);
  return { inMPerS: low.inMPerS + f * (high.inMPerS - low.inMPerS), outMPerS: out };
}

/** Heights over the crown, highest first: the top, then evenly down, rounded to what a tape shows. */
export const heightsOver = (skirtM: number, topM: number, parts: readonly number[]): readonly number[] => [...new Set(parts.map((p) => Math.round((skirtM + p * (topM - skirtM)) * 10) / 10))];

/** What was seen against what was predicted, by pairs: lengths cannot be compared, only order. */
export interface Order {
  readonly agree: number;
  readonly against: number;
  readonly close: number;
}
/** Predictions this close to each other are not ordered: air speed is no surer than ±15 to 25 %. */
const CLOSE = 0.2;
export function orderOf(all: readonly { readonly seen: number; readonly predicted: number }[]): Order {
  let [agree, against, close] = [0, 0, 0];
  for (const [i, a] of all.entries())
    for (const b of all.slice(i + 1)) {
      if (a.seen === b.seen) continue;
      const greatest = Math.max(a.predicted, b.predicted);
      if (Math.abs(a.predicted - b.predicted) <= CLOSE * greatest) close++;
      else if (a.seen > b.seen === a.predicted > b.predicted) agree++;
      else against++;
    }
  return { agree, against, close };
}

/** Shares of one nozzle's own spray, by what its line shows. */
export interface NozzleLine {
  readonly trees: number;
  readonly ground: number;
  readonly beyond: number;
  readonly over: number;
  readonly air: number;
}
export const nozzleLine = (s: Shares8): NozzleLine => ({ trees: s.near + s.far + s.rows, ground: s['ground-in'], beyond: s['ground-out'], over: s.over, air: s.through + s.dried });
