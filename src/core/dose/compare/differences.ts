import type { Canopy } from '../../canopy/types.ts';
import { DEFAULT_SHAPE } from '../../canopy/outline.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { valueOf } from '../../working/answer.ts';
import { REFERENCE_HEIGHT, REFERENCE_LAD, REFERENCE_SPACING, REFERENCE_WIDTH } from '../reference.ts';
import type { Strategy } from '../strategy.ts';
import { inProportion, lawOf } from './law.ts';
import { answerOf, strategyRows, type StrategyRow } from './rows.ts';
import { sceneOf, stateOf, type Scene, type Standing } from './scene.ts';

/**
 * Where two dose indices part. All but the first two are steps from the reference canopy to the block's.
 * - reference: they give the reference canopy different shares, for they mean another canopy by the whole dose
 * - law: one keeps a share of the dose where nothing stands
 * - spacing, height, width: of rows; of the crown, skirt to top; greatest
 * - skirt: one counts the height from the ground, the other from the skirt
 * - outline: one counts what is inside the outline, the other the box around it
 * - gaps, faces, density, stage: whether they count these, and how
 */
export const REASONS = ['reference', 'law', 'spacing', 'height', 'skirt', 'width', 'outline', 'gaps', 'faces', 'density', 'stage'] as const;
export type ReasonCode = (typeof REASONS)[number];

export interface Reason {
  readonly code: ReasonCode;
  /**
   * `a`, `b`: what the step makes of each index, as a factor (of `reference`: the index on the reference canopy); `factor`: a over b. Left out where
   * there is no such number. The factors of all reasons of a pair make its ratio. `from`, `to`: what is substituted, in the engine's units, if it is one number.
   */
  readonly values: Record<string, number | string>;
}

export interface Pair {
  readonly a: string;
  readonly b: string;
  /** Index a − index b. */
  readonly difference: number | null;
  /** Index a over index b. */
  readonly ratio: number | null;
  readonly reasons: readonly Reason[];
}

/** A factor nearer to 1 is none. */
const NONE = 1e-9;

/**
 * Every two strategies, a before b in the order of the rows, with the reasons why their dose indices differ on this block. The reasons are found by
 * substitution: the block is built up from the reference canopy, one measurement after the other, and after each both indices are worked out.
 * What a step does to a over what it does to b is its factor; together they are the ratio, exactly. A straight line is first put into proportion, so that
 * what it keeps stands as a reason of its own. The order of the steps is ours; it matters only for formulas that are no products.
 */
export function pairs(document: Document, result: Result, rows: readonly StrategyRow[] = strategyRows(document, result)): readonly Pair[] {
  const scene = sceneOf(document, result);
  const steps = stepsTo(scene);
  const paths = rows.map((row) => pathOf(row.strategy, scene, steps));
  return rows.flatMap((rowA, i) =>
    rows.slice(i + 1).map((rowB, j): Pair => {
      const [a, b] = [valueOf(rowA.index), valueOf(rowB.index)];
      const [pathA, pathB] = [paths[i]!, paths[i + 1 + j]!];
      return {
        a: rowA.id,
        b: rowB.id,
        difference: a === undefined || b === undefined ? null : a - b,
        ratio: a === undefined || b === undefined || b === 0 ? null : a / b,
        reasons: pathA.flatMap(({ code, factor, substituted }, n): Reason[] => {
          const other = pathB[n]!.factor;
          const apart = factor / other;
          // Two that are both nothing, or both refused, do not part here.
          if (Math.abs(apart - 1) < NONE || Object.is(factor, other)) return [];
          const finite = Object.entries({ a: factor, b: other, factor: apart }).filter(([, v]) => Number.isFinite(v));
          return [{ code, values: { ...pathB[n]!.substituted, ...substituted, ...Object.fromEntries(finite) } }];
        })
      };
    })
  );
}

/** The same two the other way round. */
export function turned({ a, b, difference, ratio, reasons }: Pair): Pair {
  return {
    a: b,
    b: a,
    difference: difference === null ? null : -difference,
    ratio: ratio === null || ratio === 0 ? null : 1 / ratio,
    reasons: reasons.map(({ code, values: { a: ofA, b: ofB, factor, ...rest } }) => ({
      code,
      values: { ...rest, ...(ofB === undefined ? {} : { a: ofB }), ...(ofA === undefined ? {} : { b: ofA }), ...(typeof factor === 'number' && factor !== 0 ? { factor: 1 / factor } : {}) }
    }))
  };
}

interface Step {
  readonly code: ReasonCode;
  readonly standing: Standing;
  readonly substituted: Record<string, number>;
}

/** From the reference canopy to the block's. */
function stepsTo({ standing, assumptions }: Scene): readonly Step[] {
  const reference = (id: string) => assumptions.take(id).value;
  const [h0, W0, R0, a0] = [REFERENCE_HEIGHT, REFERENCE_WIDTH, REFERENCE_SPACING, REFERENCE_LAD].map((r) => reference(r.id)) as [number, number, number, number];
  const { canopy, rowSpacingM, bbch, faces } = standing;
  const { skirtM = 0, filledFraction, missingFraction, shape, profile, densityClass, usDensityGalPer1000Ft3, ladM2PerM3 } = canopy;
  const bare: Canopy = { heightM: h0, widthM: W0, shape: 'box', ladM2PerM3: a0 };
  const steps: Step[] = [{ code: 'reference', standing: { canopy: bare, rowSpacingM: R0, bbch: undefined, faces: 2 }, substituted: { h: h0, W: W0, R: R0, TRV: (10000 * h0 * W0) / R0 } }];
  const then = (code: ReasonCode, change: Partial<Standing>, substituted: Record<string, number> = {}) =>
    steps.push({ code, standing: { ...steps.at(-1)!.standing, ...change }, substituted });
  const grown = (change: Partial<Canopy>): Partial<Standing> => ({ canopy: { ...steps.at(-1)!.standing.canopy, ...change } });
  const told = <T extends object>(fields: T): T => Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as T;
  const h = canopy.heightM - skirtM;
  then('spacing', { rowSpacingM }, { from: R0, to: rowSpacingM });
  then('height', grown({ heightM: h }), { from: h0, to: h });
  then('skirt', grown({ heightM: canopy.heightM, skirtM }), { from: 0, to: skirtM });
  then('width', grown({ widthM: canopy.widthM }), { from: W0, to: canopy.widthM });
  then('outline', grown({ shape: shape ?? DEFAULT_SHAPE, ...(profile ? { profile } : {}) }));
  then('gaps', grown(told({ filledFraction, missingFraction }) as Partial<Canopy>), { from: 1, to: (filledFraction ?? 1) * (1 - (missingFraction ?? 0)) });
  then('faces', { faces }, { from: 2, to: faces });
  const { ladM2PerM3: _, ...leafless } = steps.at(-1)!.standing.canopy;
  then('density', { canopy: { ...leafless, ...told({ densityClass, usDensityGalPer1000Ft3, ladM2PerM3 }) } as Canopy });
  then('stage', { bbch }, bbch === undefined ? {} : { to: bbch });
  return steps;
}

/** What each reason makes of one strategy's index: a factor, or NaN. */
function pathOf(strategy: Strategy, { assumptions }: Scene, steps: readonly Step[]): readonly { readonly code: ReasonCode; readonly factor: number; readonly substituted: Record<string, number> }[] {
  const states = steps.map(({ standing }) => stateOf(standing, assumptions));
  const indices = states.map((state) => answerOf(strategy, state, assumptions).index);
  const law = lawOf(strategy, states.at(-1)!, indices.at(-1)!);
  const proportional = indices.map((index) => inProportion(law, valueOf(index) ?? NaN));
  const own = proportional.map((value, i) => ({ code: steps[i]!.code, factor: i === 0 ? value : value / proportional[i - 1]!, substituted: steps[i]!.substituted }));
  const affine = law.kind === 'affine';
  const kept = { code: 'law' as const, factor: affine ? (valueOf(indices.at(-1)!) ?? NaN) / proportional.at(-1)! : 1, substituted: affine ? { least: law.least } : {} };
  return [own[0]!, kept, ...own.slice(1)];
}
