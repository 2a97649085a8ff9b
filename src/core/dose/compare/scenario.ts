import type { Canopy, DensityClass } from '../../canopy/types.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { rowsOn, type StrategyRow } from './rows.ts';
import { sceneOf, stateOf, type Standing } from './scene.ts';

/** Measurements of a block as they might be; what is left out stays as it is. */
export interface Changes {
  readonly heightM?: number;
  readonly skirtM?: number;
  readonly widthM?: number;
  readonly rowSpacingM?: number;
  readonly filledFraction?: number;
  readonly missingFraction?: number;
  readonly usDensityGalPer1000Ft3?: number;
  readonly ladM2PerM3?: number;
  readonly densityClass?: DensityClass;
  readonly bbch?: number;
}

/**
 * What the strategies would say of the block if it measured otherwise; the document is not changed. Standard errors stay as they are. A measured
 * profile goes along: it keeps the share of its box that it fills. What cannot be (a skirt above the top) is refused in every row.
 */
export function scenario(document: Document, result: Result, changes: Changes): readonly StrategyRow[] {
  const scene = sceneOf(document, result);
  return rowsOn(scene, stateOf(changed(scene.standing, changes), scene.assumptions));
}

/** A standing with some of its measurements changed. */
export function changed(standing: Standing, { rowSpacingM = standing.rowSpacingM, bbch = standing.bbch, ...of }: Changes): Standing {
  const before = standing.canopy;
  const after: Canopy = { ...before, ...of };
  const profile = before.profile && stretched(before, after);
  return { ...standing, rowSpacingM, bbch, canopy: profile ? { ...after, profile } : after };
}

/** The measured profile between the new skirt and the new top, its widths in proportion to the greatest. */
function stretched(before: Canopy, after: Canopy): Canopy['profile'] {
  const [skirt, newSkirt] = [before.skirtM ?? 0, after.skirtM ?? 0];
  const [tall, wide] = [(after.heightM - newSkirt) / (before.heightM - skirt), after.widthM / before.widthM];
  if (!(tall > 0) || !(wide >= 0) || !Number.isFinite(tall) || !Number.isFinite(wide)) return before.profile;
  return before.profile?.map((p) => ({ ...p, heightM: newSkirt + (p.heightM - skirt) * tall, widthM: p.widthM * wide }));
}
