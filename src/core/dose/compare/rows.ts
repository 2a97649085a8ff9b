import type { CanopyState } from '../../canopy/canopy.ts';
import { intervalOf, type Interval } from '../../canopy/uncertainty.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { refused, valueOf, type Answer } from '../../working/answer.ts';
import { derive } from '../../working/figure.ts';
import { evaluateStrategy, type StrategyAnswer } from '../evaluate.ts';
import { doseRange } from '../label-rules.ts';
import { product, type Act, type Product } from '../product.ts';
import type { Strategy } from '../strategy.ts';
import { CONCENTRATION } from '../water.ts';
import { sceneOf, type Scene } from './scene.ts';

/** What one strategy says of one block at one rung. */
export interface StrategyRow {
  readonly id: string;
  /** One of the user's own. */
  readonly own: boolean;
  readonly strategy: Strategy;
  readonly descriptor: Answer | null;
  readonly water: Answer | null;
  readonly dilute: Answer | null;
  readonly index: Answer;
  /** Product per hectare after adaptation, floor and cap of the block's label; null without a label. */
  readonly dose: Answer | null;
  readonly acts: readonly Act[];
  /** Dilute water over the water of the setting now; null where the strategy knows no dilute water. */
  readonly concentration: Answer | null;
  /** 95 % intervals from the errors of the measurements. */
  readonly intervals: { readonly water: Interval | null; readonly index: Interval | null; readonly dose: Interval | null };
}

/** Every strategy on the block and rung of a result, in the order of the strategy table; the user's own behind them. */
export const strategyRows = (document: Document, result: Result): readonly StrategyRow[] => rowsOn(sceneOf(document, result), result.canopy);

/** The same on any canopy. */
export const rowsOn = (scene: Scene, canopy: CanopyState): readonly StrategyRow[] => scene.strategies.map((s) => rowOf(s, scene, canopy));

function rowOf(strategy: Strategy, { label, volume, assumptions }: Scene, canopy: CanopyState): StrategyRow {
  const answer = answerOf(strategy, canopy, assumptions);
  const { descriptor, water, dilute, index } = answer;
  const dosed = label ? product(label, canopy, answer) : null;
  const interval = (a: Answer | null) => (a ? intervalOf(a, canopy.errors) : null);
  return {
    id: strategy.id,
    own: isOwn(strategy),
    strategy,
    descriptor,
    water,
    dilute,
    index,
    dose: dosed?.perHa ?? null,
    acts: dosed?.acts ?? [],
    concentration: dilute && derive(CONCENTRATION, { V1: dilute, V: volume }),
    intervals: { water: interval(water), index: interval(index), dose: dosed && allowed(interval(dosed.perHa), dosed) }
  };
}

/** An interval of a dose ends where the label's rules end it: at its maximum, and for an adapted dose at the whole dose and the user's floor. */
function allowed(interval: Interval | null, { label, labelDose }: Product): Interval | null {
  if (!interval) return null;
  const [least, most] = doseRange(label, valueOf(labelDose));
  return { ...interval, low: Math.min(Math.max(interval.low, least), most), high: Math.min(interval.high, most) };
}

export const isOwn = (s: Strategy): boolean => s.id.startsWith('own.');

/** As `evaluateStrategy`; a formula of the user's own that gives no figure here says so in its own words. */
export function answerOf(strategy: Strategy, canopy: CanopyState, assumptions: Scene['assumptions']): StrategyAnswer {
  const answer = evaluateStrategy(strategy, canopy, assumptions);
  if (!isOwn(strategy)) return answer;
  const told = <A extends Answer | null>(a: A, field: string): A | Answer =>
    a?.kind === 'refused' && a.code === 'not-a-number' ? refused('own-no-figure', `ownStrategies.${strategy.id.slice(4)}.${field}`, { name: strategy.name ?? strategy.id }) : a;
  return { ...answer, water: told(answer.water, 'water'), dilute: told(answer.dilute, 'water'), index: told(answer.index, 'index') as Answer };
}
