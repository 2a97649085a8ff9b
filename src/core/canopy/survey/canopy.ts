import { mean } from '../laser/statistics.ts';
import type { Canopy, CanopyErrors, WidthAt } from '../types.ts';
import type { Survey, SurveyTree } from './types.ts';

/** What a survey says of a rung's canopy; the rest of the canopy stays as it is. */
export type SurveyedCanopy = Pick<Canopy, 'heightM' | 'widthM' | 'skirtM' | 'profile' | 'tallestTenthM' | 'errors'>;

/** To a tenth of a millimetre, so that a document stays readable. */
const tidy = (v: number): number => Number(v.toFixed(4));

/** The canopy of a survey, in the document's fields. Means alone where one tree tells no error; a skirt that nobody told is left out. */
export function canopyOfSurvey(survey: Survey, all: readonly SurveyTree[]): SurveyedCanopy {
  const { height, width, skirt, correlation, tallestTenth } = survey;
  const errors: CanopyErrors = {
    ...(height.standardError === null ? {} : { heightSeM: tidy(height.standardError) }),
    ...(skirt && skirt.standardError !== null ? { skirtSeM: tidy(skirt.standardError) } : {}),
    ...(width.standardError === null ? {} : { widthSeM: tidy(width.standardError) }),
    ...(correlation === null ? {} : { heightWidthCorrelation: tidy(correlation) }),
    ...(survey.trees > 1 ? { trees: survey.trees } : {})
  };
  const profile = meanProfile(all.filter((t) => !t.leftOut));
  return {
    heightM: tidy(height.mean),
    widthM: tidy(width.mean),
    ...(skirt ? { skirtM: tidy(skirt.mean) } : {}),
    ...(profile.length > 1 ? { profile } : {}),
    tallestTenthM: tidy(tallestTenth.meanM),
    ...(Object.keys(errors).length > 0 ? { errors } : {})
  };
}

/** Mean widths at the heights at which every tree has one; a tree that ends lower has none there, and so the height is left out. */
function meanProfile(trees: readonly SurveyTree[]): WidthAt[] {
  const at = (t: SurveyTree, heightM: number): number | undefined => t.profile?.find((p) => p.heightM === heightM)?.widthM;
  return (trees[0]?.profile ?? []).flatMap(({ heightM }) => {
    const widths = trees.flatMap((t) => at(t, heightM) ?? []);
    return widths.length === trees.length ? [{ heightM, widthM: tidy(mean(widths)) }] : [];
  });
}
