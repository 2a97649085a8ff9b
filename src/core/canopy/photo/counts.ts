import { widthAt } from '../outline.ts';
import type { WidthAt } from '../types.ts';
import { MOST_BANDS } from './rules.ts';
import { LEVELS, type CanopyPhoto, type Histogram, type PhotoBand } from './types.ts';

/** Edges of equal bands from skirt to top, rising, m: as near to the wanted height as goes. Wants skirt < top. */
export function bandEdges(skirtM: number, topM: number, bandM: number): readonly number[] {
  const count = Math.min(MOST_BANDS, Math.max(1, Math.round((topM - skirtM) / bandM)));
  return Array.from({ length: count + 1 }, (_, i) => skirtM + ((topM - skirtM) * i) / count);
}

/** Pixels and gaps of one histogram: levels from the threshold on are gaps. */
export function countsOf(histogram: Histogram, threshold: number): { readonly pixels: number; readonly gaps: number } {
  let pixels = 0;
  let gaps = 0;
  for (let level = 0; level < LEVELS; level++) {
    pixels += histogram[level]!;
    if (level >= threshold) gaps += histogram[level]!;
  }
  return { pixels, gaps };
}

/** To a tenth of a millimetre, so that a document stays readable. */
const tidy = (v: number): number => Number(v.toFixed(4));

/** Counts of every band, with the width of the outline at its middle. `histograms` belong to the bands between `edges`, from the lowest up. */
export function photoOf(histograms: readonly Histogram[], edges: readonly number[], outline: readonly WidthAt[], threshold: number): CanopyPhoto {
  const bands = histograms.map((h, i): PhotoBand => {
    const [fromM, toM] = [edges[i]!, edges[i + 1]!];
    return { fromM: tidy(fromM), toM: tidy(toM), widthM: tidy(widthAt(outline, (fromM + toM) / 2)), ...countsOf(h, threshold) };
  });
  return { threshold, bands };
}
