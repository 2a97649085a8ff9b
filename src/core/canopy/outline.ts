import type { Canopy, CanopyShape, WidthAt } from './types.ts';

/**
 * Relative outlines, as [share of the crown's height from the skirt, share of the greatest width]. They stand in for
 * widths that nobody measured, are shown as assumed, and give way to the first measured profile.
 */
const SHAPES: Record<CanopyShape, readonly (readonly [number, number])[]> = {
  box: [[0, 1], [1, 1]],
  wall: [[0, 0.72], [0.06, 0.93], [0.16, 1], [0.82, 0.94], [0.94, 0.74], [1, 0.4]],
  spindle: [[0, 0.34], [0.05, 0.62], [0.13, 0.87], [0.24, 0.99], [0.3, 1], [0.42, 0.95], [0.58, 0.78], [0.74, 0.55], [0.88, 0.31], [0.96, 0.15], [1, 0.04]],
  ellipse: Array.from({ length: 25 }, (_, i) => {
    const u = (1 - Math.cos((Math.PI * i) / 24)) / 2;
    return [u, 2 * Math.sqrt(u * (1 - u))] as const;
  })
};

export const DEFAULT_SHAPE: CanopyShape = 'wall';

/**
 * Full widths from skirt to top, rising in height, metres. A measured profile is joined by straight lines; below its lowest
 * station the width is kept, above its highest it runs to nothing at the top.
 * Wants skirt < top; for anything else the list is empty.
 */
export function outlineOf(canopy: Canopy): readonly WidthAt[] {
  const skirt = canopy.skirtM ?? 0;
  const top = canopy.heightM;
  if (!(skirt < top)) return [];
  const measured = measuredProfile(canopy);
  const first = measured?.[0];
  const last = measured?.at(-1);
  if (measured && first && last)
    return [
      { heightM: skirt, widthM: first.heightM <= skirt ? widthAt(measured, skirt) : first.widthM },
      ...measured.filter((p) => p.heightM > skirt && p.heightM < top),
      { heightM: top, widthM: last.heightM >= top ? widthAt(measured, top) : 0 }
    ];
  return SHAPES[canopy.shape ?? DEFAULT_SHAPE].map(([u, w]) => ({
    heightM: skirt + u * (top - skirt),
    widthM: w * canopy.widthM
  }));
}

/** The widths of the measured profile where they say something of the crown: some of them lie between skirt and top. */
export function measuredProfile(canopy: Canopy): readonly WidthAt[] | null {
  const all = canopy.profile ?? [];
  const [first, last] = [all[0], all.at(-1)];
  const says = first && last && first.heightM < canopy.heightM && last.heightM > (canopy.skirtM ?? 0);
  return says ? all.map(({ heightM, widthM }) => ({ heightM, widthM })) : null;
}

/** Width at a height, straight between stations, 0 outside the outline. */
export function widthAt(outline: readonly WidthAt[], heightM: number): number {
  for (let i = 1; i < outline.length; i++) {
    const a = outline[i - 1]!;
    const b = outline[i]!;
    if (heightM >= a.heightM && heightM <= b.heightM)
      return b.heightM === a.heightM ? b.widthM : a.widthM + ((b.widthM - a.widthM) * (heightM - a.heightM)) / (b.heightM - a.heightM);
  }
  return 0;
}

/** Area of the section between two heights, m²: the stack of trapezia Σ (wᵢ + wᵢ₊₁)/2 · Δz. */
export function sectionArea(outline: readonly WidthAt[], from = -Infinity, to = Infinity): number {
  let area = 0;
  for (let i = 1; i < outline.length; i++) {
    const a = outline[i - 1]!;
    const b = outline[i]!;
    const lo = Math.max(a.heightM, from);
    const hi = Math.min(b.heightM, to);
    if (!(hi > lo)) continue;
    const w = (z: number) => a.widthM + ((b.widthM - a.widthM) * (z - a.heightM)) / (b.heightM - a.heightM);
    area += ((w(lo) + w(hi)) / 2) * (hi - lo);
  }
  return area;
}

/** The same outline stretched from its skirt so that its top stands at `topM`. */
export function stretchedTo(outline: readonly WidthAt[], topM: number): readonly WidthAt[] {
  const skirt = outline[0]?.heightM ?? 0;
  const top = outline.at(-1)?.heightM ?? 0;
  if (!(top > skirt)) return outline;
  const k = (topM - skirt) / (top - skirt);
  return outline.map((p) => ({ heightM: skirt + (p.heightM - skirt) * k, widthM: p.widthM }));
}
