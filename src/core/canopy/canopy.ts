import { GAL_PER_1000FT3_L_PER_M3 } from '../quantity/constants.ts';
import type { Assumptions } from '../working/assumption.ts';
import { given, refused, weaker, type Answer, type Given } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import * as F from './formulas.ts';
import { unfoldedShare } from './growth.ts';
import { measuredProfile, outlineOf, sectionArea } from './outline.ts';
import type { Canopy, DensityClass, WidthAt } from './types.ts';
import { coverageFor, type Errors } from './uncertainty.ts';

/** The canopy in figures, under the symbols of the formulas, so that any strategy can be bound to it by symbol. */
export interface CanopyFigures {
  readonly H: Given;
  readonly Hs: Given;
  readonly W: Given;
  readonly R: Given;
  readonly n: Given;
  readonly h: Answer;
  readonly f: Answer;
  readonly s: Answer;
  readonly A: Answer;
  readonly TRVg: Answer;
  readonly TRVc: Answer;
  readonly TRVs: Answer;
  readonly LWA: Answer;
  readonly RL: Answer;
  readonly UCR: Answer;
  readonly LAD: Answer;
  readonly LAI: Answer;
  /** US density factor, L per m³ of box. */
  readonly k: Given;
  /** Multiplier of the metric density scale, 1 is dense. */
  readonly m: Given;
}

export interface CanopyState {
  readonly figures: CanopyFigures;
  readonly outline: readonly WidthAt[];
  readonly densityClass: DensityClass;
  readonly densityStated: boolean;
  /** Top that nozzles are aimed at: the tallest tenth where it is known. */
  readonly aimTopM: number;
  readonly bbch: number | undefined;
  readonly errors: Errors;
}

export interface CanopySite {
  readonly rowSpacingM: number;
  readonly bbch?: number | undefined;
  /** Faces of the row that are treated: 2, or 1 where each row is sprayed from one side alone. */
  readonly faces: number;
  /** The leaf area density comes from gaps in a photograph and from what was assumed of the leaves. */
  readonly photographed?: boolean;
}

/** Everything the engine knows of one canopy. Refuses by name a skirt at or above the top; the rest follows from there. */
export function canopyState(canopy: Canopy, site: CanopySite, assumptions: Assumptions): CanopyState {
  const at = (field: string) => `canopy.${field}`;
  // What was proposed from another stage is not measured yet.
  const sure = canopy.proposed ? 'assumed' : 'measured';
  const H = given(canopy.heightM, 'm', sure, { path: at('heightM') });
  const Hs = given(canopy.skirtM ?? 0, 'm', canopy.skirtM === undefined ? 'assumed' : sure, { path: at('skirtM') });
  const W = given(canopy.widthM, 'm', sure, { path: at('widthM') });
  const R = given(site.rowSpacingM, 'm', 'measured', { path: 'rowSpacingM' });
  const n = given(site.faces, '1', 'stated', { path: 'pattern' });
  const h = Hs.value < H.value ? derive(F.CROWN_HEIGHT, { H, Hs }) : refused('skirt-above-top', at('skirtM'), { skirt: Hs.value, height: H.value });
  // A full row is an assumption only where nothing at all was said of gaps.
  const silent = canopy.filledFraction === undefined && canopy.missingFraction === undefined ? 'assumed' : 'measured';
  const f = derive(F.FILLED, {
    f0: given(canopy.filledFraction ?? 1, '1', silent, { path: at('filledFraction') }),
    m: given(canopy.missingFraction ?? 0, '1', silent, { path: at('missingFraction') })
  });

  const outline = outlineOf(canopy);
  const box = (H.value - Hs.value) * W.value;
  const measured = measuredProfile(canopy) !== null;
  const s: Answer = box > 0
    ? given(sectionArea(outline) / box, '1', measured ? sure : 'assumed', { path: at(measured ? 'profile' : 'shape') })
    : refused('no-section', at('widthM'), { width: W.value });
  const A = derive(F.SECTION_AREA, { s, h, W });
  const TRVs = derive(F.TRV_OUTLINE, { A, R, f });
  const LAD: Answer = canopy.ladM2PerM3 !== undefined
    ? given(canopy.ladM2PerM3, 'm2/m3', site.photographed ? weaker(sure, 'derived') : sure, { path: at('ladM2PerM3') })
    : derive(F.LEAF_DENSITY_AT_STAGE, {
        LADf: assumptions.take('canopy.full-leaf-density'),
        u: given(site.bbch === undefined ? 1 : unfoldedShare(site.bbch), '1', site.bbch === undefined ? 'assumed' : 'derived', { path: 'bbch', sources: ['forshey-1987'] })
      });
  const densityClass = canopy.densityClass ?? 'medium';

  return {
    figures: {
      H, Hs, W, R, n, h, f, s, A, TRVs, LAD,
      TRVg: derive(F.TRV_GROUND, { H, W, R, f }),
      TRVc: derive(F.TRV_CROWN, { h, W, R, f }),
      LWA: derive(F.LEAF_WALL, { n, h, R, f }),
      RL: derive(F.ROW_LENGTH, { R }),
      UCR: derive(F.CANOPY_ROWS, { h, W, R, f }),
      LAI: derive(F.LEAF_AREA_INDEX, { LAD, TRVs }),
      k: canopy.usDensityGalPer1000Ft3 !== undefined
        ? given(canopy.usDensityGalPer1000Ft3 * GAL_PER_1000FT3_L_PER_M3, 'L/m3', 'stated', { path: at('usDensityGalPer1000Ft3'), sources: ['landers-trv'] })
        : assumptions.take('canopy.us-density'),
      m: assumptions.take(`canopy.multiplier-${densityClass}`)
    },
    outline,
    densityClass,
    densityStated: canopy.densityClass !== undefined,
    aimTopM: Math.max(canopy.tallestTenthM ?? 0, canopy.heightM),
    bbch: site.bbch,
    errors: errorsOf(canopy, { H, Hs, W, R })
  };
}

function errorsOf(canopy: Canopy, leaf: { H: Given; Hs: Given; W: Given; R: Given }): Errors {
  const e = canopy.errors ?? {};
  const of = new Map<Given, number>();
  const note = (g: Given, se: number | undefined) => {
    if (se !== undefined && se > 0) of.set(g, se);
  };
  note(leaf.H, e.heightSeM);
  note(leaf.Hs, e.skirtSeM);
  note(leaf.W, e.widthSeM);
  note(leaf.R, e.rowSpacingSeM);
  return {
    of,
    coverage: coverageFor(e.trees),
    ...(e.heightWidthCorrelation ? { pair: { a: leaf.H, b: leaf.W, correlation: e.heightWidthCorrelation } } : {})
  };
}
