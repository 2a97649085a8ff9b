import { isRefused, valueOf } from '../../working/answer.ts';
import { outlineOf, widthAt } from '../outline.ts';
import type { Canopy, ProfileStation } from '../types.ts';
import type { PhotoDensity } from './density.ts';
import { MOST_RELATIVE } from './rules.ts';

/** A document holds so many stations. */
const MOST_STATIONS = 60;
const tidy = (v: number): number => Number(v.toFixed(4));

/** What a photograph says of a rung's canopy; the rest of the canopy stays as it is. */
export type PhotographedCanopy = Pick<Canopy, 'ladM2PerM3' | 'profile'>;

/**
 * Leaf area density and, where it is wanted, density by height: the outline as it is drawn, with a station at the middle of each band that tells
 * its density over the mean. The outline itself stays as it was. null where the whole was refused.
 */
export function canopyOfPhoto(canopy: Canopy, said: PhotoDensity, byHeight: boolean): PhotographedCanopy | null {
  if (isRefused(said.density)) return null;
  const mean = said.density.value;
  const ladM2PerM3 = Number(mean.toPrecision(3));
  if (!byHeight) return { ladM2PerM3 };
  const relative = new Map<number, number>();
  for (const { band, density, atLeast } of said.bands) relative.set(tidy((band.fromM + band.toM) / 2), Math.min(MOST_RELATIVE, tidy((valueOf(atLeast ?? density) ?? mean) / mean)));
  const outline = outlineOf(canopy);
  const kept = new Set((canopy.profile && canopy.profile.length > 1 ? canopy.profile : outline).map((p) => tidy(p.heightM)));
  const all = kept.size + relative.size <= MOST_STATIONS ? new Set([...kept, ...relative.keys()]) : kept;
  const measured = new Map((canopy.profile ?? []).map((p) => [tidy(p.heightM), p.widthM]));
  const at = (heightM: number): number | undefined => {
    if (all !== kept) return relative.get(heightM);
    const i = said.bands.findIndex(({ band }) => heightM >= band.fromM && heightM < band.toM);
    return i < 0 ? undefined : [...relative.values()][i];
  };
  const profile = [...all].sort((a, b) => a - b).map((heightM): ProfileStation => {
    const relativeDensity = at(heightM);
    return { heightM, widthM: measured.get(heightM) ?? tidy(widthAt(outline, heightM)), ...(relativeDensity === undefined ? {} : { relativeDensity }) };
  });
  return { ladM2PerM3, profile };
}
