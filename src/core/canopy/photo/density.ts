import { Assumptions, type AssumptionValues } from '../../working/assumption.ts';
import { given, isRefused, refused, type Answer, type Given } from '../../working/answer.ts';
import { derive } from '../../working/figure.ts';
import { PHOTO_REGISTRY } from './assumptions.ts';
import * as F from './formulas.ts';
import { FEWEST_GAPS, FEWEST_PIXELS, LEAST_LAD, LEAST_WIDTH_M, MOST_LAD, MOST_SATURATED } from './rules.ts';
import type { CanopyPhoto, PhotoBand } from './types.ts';

/** What one band says. */
export interface BandDensity {
  readonly band: PhotoBand;
  readonly gapFraction: Answer;
  /** Refused where there are too few gaps or pixels to tell. */
  readonly density: Answer;
  /** Where there are too few gaps: the density that the fewest would tell. There is at least so much. */
  readonly atLeast: Answer | null;
}

/** What a photograph says. */
export interface PhotoDensity {
  readonly bands: readonly BandDensity[];
  /** Mean over the section; bands with too few gaps stand in it with what they have at least. */
  readonly density: Answer;
  /** Whether there may be more than that. */
  readonly atLeast: boolean;
  /** Part of the section whose bands have too few gaps, 0…1. */
  readonly saturated: number;
  /** The assumptions that were used, by id. */
  readonly assumptions: ReadonlyMap<string, Given>;
}

/**
 * Leaf area density by height from gap counts: P = exp(−G·C·LAD·W), band by band, then the mean by area of the section.
 * Refused by name: a band with too few gaps or pixels; the whole where most of the section has too few gaps, where a band has too few pixels
 * or no width, and where the result lies outside what a document takes.
 * @param own the user's own assumptions
 */
export function photoDensity(photo: CanopyPhoto, own: AssumptionValues = {}): PhotoDensity {
  const assumptions = new Assumptions(PHOTO_REGISTRY, own);
  const G = assumptions.take('photo.projection');
  const C = assumptions.take('photo.clumping');
  const bands = photo.bands.map((band) => bandDensity(band, G, C));
  const area = (b: PhotoBand): number => b.widthM * (b.toM - b.fromM);
  const section = photo.bands.reduce((s, b) => s + area(b), 0);
  const saturated = section > 0 ? bands.reduce((s, b) => s + (b.atLeast ? area(b.band) : 0), 0) / section : 0;
  return { bands, density: meanOf(bands, saturated), atLeast: saturated > 0, saturated, assumptions: assumptions.used };
}

const metres = (v: number): Given => given(v, 'm', 'measured');
const count = (v: number): Given => given(v, '1', 'measured');

function bandDensity(band: PhotoBand, G: Given, C: Given): BandDensity {
  const { pixels, gaps, widthM } = band;
  const where = { from: band.fromM, to: band.toM };
  const W = metres(widthM);
  const gapFraction = derive(F.GAP_FRACTION, { g: count(gaps), n: count(pixels) });
  const none = (density: Answer): BandDensity => ({ band, gapFraction, density, atLeast: null });
  if (!(pixels >= FEWEST_PIXELS)) return none(refused('photo-few-pixels', 'photo.bands', { ...where, pixels, fewest: FEWEST_PIXELS }));
  if (!(widthM >= LEAST_WIDTH_M)) return none(refused('photo-no-width', 'photo.bands', where));
  if (gaps >= FEWEST_GAPS) return none(derive(F.LEAF_DENSITY_BY_GAPS, { P: gapFraction, G, C, W }));
  const P = derive(F.GAP_FRACTION, { g: given(FEWEST_GAPS, '1', 'assumed'), n: count(pixels) });
  return { band, gapFraction, density: refused('photo-saturated', 'photo.bands', { ...where, gaps, fewest: FEWEST_GAPS }), atLeast: derive(F.LEAF_DENSITY_BY_GAPS, { P, G, C, W }) };
}

function meanOf(bands: readonly BandDensity[], saturated: number): Answer {
  const [lowest, ...others] = bands;
  if (!lowest) return refused('photo-no-bands', 'photo');
  const unfit = bands.find((b) => isRefused(b.density) && !b.atLeast);
  if (unfit) return unfit.density;
  if (!(saturated <= MOST_SATURATED)) return refused('photo-mostly-saturated', 'photo', { share: Math.round(100 * saturated) });
  const told = ({ density, atLeast }: BandDensity): Answer => atLeast ?? density;
  const size = ({ band }: BandDensity) => ({ W: metres(band.widthM), z: metres(band.toM - band.fromM) });
  let mean = told(lowest);
  let A0 = derive(F.SECTION_WITH_BAND, { A0: given(0, 'm2', 'exact'), ...size(lowest) });
  for (const b of others) {
    mean = derive(F.LEAF_DENSITY_WITH_BAND, { LAD0: mean, A0, LADb: told(b), ...size(b) });
    A0 = derive(F.SECTION_WITH_BAND, { A0, ...size(b) });
  }
  if (isRefused(mean)) return mean;
  if (mean.value < LEAST_LAD) return refused('photo-no-leaf', 'photo', { found: mean.value, least: LEAST_LAD });
  if (mean.value > MOST_LAD) return refused('photo-too-dense', 'photo', { found: mean.value, most: MOST_LAD });
  return mean;
}
