import { DEPTHS, type HeightCell, type SprayBalance } from '#core/spray/types.ts';
import { RIBBON_CLASSES, type PaperPlace, type SeenPaper, type RibbonClass, type SeenRibbon, type Seen } from '#core/spray/seen.ts';
import type { Side } from '#core/sprayer/types.ts';
import { airAt, cellAt } from './figures.ts';

/** Heights are as good as a tape held up from the ground: this close is the same place. */
const SAME_M = 0.005;
const here = (side: Side, heightM: number) => (s: { readonly side: Side; readonly heightM: number }) => s.side === side && Math.abs(s.heightM - heightM) < SAME_M;

/** Nothing seen is no field of the document. */
const tidy = ({ ribbons = [], papers = [] }: Seen): Seen | undefined => {
  const kept: Seen = { ...(ribbons.length > 0 ? { ribbons } : {}), ...(papers.length > 0 ? { papers } : {}) };
  return Object.keys(kept).length > 0 ? kept : undefined;
};

export const ribbonAt = (seen: Seen, side: Side, heightM: number): RibbonClass | undefined => seen.ribbons?.find(here(side, heightM))?.class;
export function withRibbon(seen: Seen, side: Side, heightM: number, what: RibbonClass | undefined): Seen | undefined {
  const others = (seen.ribbons ?? []).filter((r) => !here(side, heightM)(r));
  return tidy({ ...seen, ribbons: what === undefined ? others : [...others, { side, heightM, class: what }] });
}

export const paperAt = (seen: Seen, side: Side, heightM: number, place: PaperPlace): number | undefined => seen.papers?.find((p) => p.place === place && here(side, heightM)(p))?.coveragePercent;
export function withPaper(seen: Seen, side: Side, heightM: number, place: PaperPlace, coveragePercent: number | undefined): Seen | undefined {
  const others = (seen.papers ?? []).filter((p) => p.place !== place || !here(side, heightM)(p));
  return tidy({ ...seen, papers: coveragePercent === undefined ? others : [...others, { side, heightM, place, coveragePercent }] });
}

/** Air behind the row where a ribbon hung, m/s: none where it stops within the row; undefined where the model has no path. */
export function behind(b: SprayBalance, r: Pick<SeenRibbon, 'side' | 'heightM'>): number | undefined {
  const at = airAt(b.faces, r.side, r.heightM);
  return at ? (at.outMPerS ?? 0) : undefined;
}
export const strength = (c: RibbonClass): number => RIBBON_CLASSES.indexOf(c);

/** Cells about the one at a height. A parcel falls into one cell at a step, so single cells are rough: depth more than height. */
const about = (cells: readonly HeightCell[], heightM: number, each: number): readonly HeightCell[] => {
  const at = cells.indexOf(cellAt(cells, heightM)!);
  return cells.slice(Math.max(0, at - each), at + each + 1);
};
const HEIGHT_CELLS = 1;
const DEPTH_CELLS = 3;

/**
 * Deposit where a paper hung in the crown, µL/cm²: that of its height, parted by depth as the nearest row catches it thereabouts, with
 * leaf taken as alike at all depths. undefined beside the crown, and where nothing grows.
 */
export function depositAt(b: SprayBalance, { heightM, place }: Pick<SeenPaper, 'heightM' | 'place'>): number | undefined {
  if (b.heights.length === 0 || place === 'over' || place === 'ground') return undefined;
  const grown = about(b.heights, heightM, HEIGHT_CELLS).filter((c) => c.depositUlPerCm2 !== null);
  const area = grown.reduce((s, c) => s + c.areaIndex, 0);
  if (area <= 0) return undefined;
  const deposit = grown.reduce((s, c) => s + c.depositUlPerCm2! * c.areaIndex, 0) / area;
  const wide = about(b.heights, heightM, DEPTH_CELLS);
  const byDepth = Array.from({ length: DEPTHS }, (_, i) => wide.reduce((s, c) => s + c.byDepth[i]!, 0));
  const sum = (cells: readonly number[]) => cells.reduce((s, v) => s + v, 0);
  const mean = sum(byDepth) / DEPTHS;
  if (mean <= 0) return 0;
  const inner = byDepth.slice(1, -1);
  const there = place === 'near' ? byDepth[0]! : place === 'far' ? byDepth.at(-1)! : sum(inner) / inner.length;
  return (deposit * there) / mean;
}
