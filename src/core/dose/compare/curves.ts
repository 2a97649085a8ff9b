import { GAL_PER_1000FT3_L_PER_M3 } from '../../quantity/constants.ts';
import type { Unit } from '../../quantity/units.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { valueOf } from '../../working/answer.ts';
import { answerOf } from './rows.ts';
import { changed, type Changes } from './scenario.ts';
import { sceneOf, stateOf } from './scene.ts';

/** One measurement that goes over a range: total height, greatest width, row spacing, skirt (m); leaf area density (m²/m³); US density factor (L/m³). */
export type Axis = 'height' | 'width' | 'spacing' | 'density' | 'skirt' | 'us-density';

/** What one strategy says as one measurement changes and the rest is held. */
export interface Curve {
  readonly id: string;
  readonly points: readonly {
    /** The measurement, in the unit of `AXIS_UNITS`. */
    readonly x: number;
    /** Crown box, skirt to top, m³/ha; leaf wall, m²/ha; total height, m. NaN where there is none. */
    readonly trv: number;
    readonly lwa: number;
    readonly height: number;
    readonly index: number | null;
    readonly water: number | null;
  }[];
}

export const AXIS_UNITS: Readonly<Record<Axis, Unit>> = { height: 'm', width: 'm', spacing: 'm', density: 'm2/m3', skirt: 'm', 'us-density': 'L/m3' };

const CHANGE: Readonly<Record<Axis, (x: number) => Changes>> = {
  height: (heightM) => ({ heightM }),
  width: (widthM) => ({ widthM }),
  spacing: (rowSpacingM) => ({ rowSpacingM }),
  density: (ladM2PerM3) => ({ ladM2PerM3 }),
  skirt: (skirtM) => ({ skirtM }),
  'us-density': (k) => ({ usDensityGalPer1000Ft3: k / GAL_PER_1000FT3_L_PER_M3 })
};

/** What the block measures on an axis; NaN where it is refused. */
export function measuredOn({ canopy: { figures } }: Result, axis: Axis): number {
  const a = { height: figures.H, width: figures.W, spacing: figures.R, density: figures.LAD, skirt: figures.Hs, 'us-density': figures.k }[axis];
  return valueOf(a) ?? NaN;
}

/** The range of an axis about a block: so far that young and old trees of its kind are in it. The US density factor goes over its published scale. */
export function rangeOf(result: Result, axis: Axis): readonly [number, number] {
  const x = measuredOn(result, axis);
  const { H, Hs } = result.canopy.figures;
  switch (axis) {
    case 'height':
      return [Math.max(0.35 * x, Hs.value + 0.1 * Math.max(x - Hs.value, 0.1)), 1.65 * x];
    case 'width':
    case 'spacing':
      return [0.35 * x, 1.65 * x];
    case 'density':
      return [0.1 * x, 2 * x];
    case 'skirt':
      return [0, 0.8 * H.value];
    case 'us-density':
      return [Math.min(x, 0.7 * GAL_PER_1000FT3_L_PER_M3), Math.max(x, GAL_PER_1000FT3_L_PER_M3)];
  }
}

/**
 * Dose index and water of every strategy over the range of an axis, in `steps` even steps (at least 1, so `steps` + 1 points).
 * Which season and density constants stand is chosen anew at each point, as for a block that measures so.
 */
export function curves(document: Document, result: Result, axis: Axis, steps = 60, range = rangeOf(result, axis)): readonly Curve[] {
  const scene = sceneOf(document, result);
  const [from, to] = range;
  const count = Math.max(1, Math.floor(steps));
  const canopies = Array.from({ length: count + 1 }, (_, i) => {
    const x = from + ((to - from) * i) / count;
    return { x, canopy: stateOf(changed(scene.standing, CHANGE[axis](x)), scene.assumptions) };
  });
  return scene.strategies.map((strategy) => ({
    id: strategy.id,
    points: canopies.map(({ x, canopy }) => {
      const { water, index } = answerOf(strategy, canopy, scene.assumptions);
      const { TRVc, LWA, H } = canopy.figures;
      return { x, trv: valueOf(TRVc) ?? NaN, lwa: valueOf(LWA) ?? NaN, height: H.value, index: valueOf(index) ?? null, water: valueOf(water) ?? null };
    })
  }));
}
