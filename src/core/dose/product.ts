import type { CanopyState } from '../canopy/canopy.ts';
import { isRefused, refused, type Answer } from '../working/answer.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { StrategyAnswer } from './evaluate.ts';
import { both, doseUnit, labelRules, type Rule, type Told } from './label-rules.ts';
import type { Label } from './types.ts';

/** What a rule did to a dose or a water rate, so that it can be shown acting. */
export type Act =
  | 'label-dose-kept'
  | 'scaled-to-canopy'
  | 'not-above-label'
  | 'floored'
  | 'capped-at-label-maximum'
  | 'raised-to-label-minimum-water'
  | 'capped-at-label-maximum-water'
  | 'own-water';

export interface Product {
  readonly label: Label;
  /** Dose that the label's own basis gives, per hectare, before any adaptation or cap. */
  readonly labelDose: Answer;
  /** Dose to be used, per hectare. Never above the label's maximum. */
  readonly perHa: Answer;
  readonly acts: readonly Act[];
}

/**
 * Product per hectare under the label. The label's dose stands unless the user has stated that it may go down with the canopy
 * (`downward`) or must follow it (`required`); the floor is the user's; the label's maximum caps everything. Refuses a per-100-L label
 * where no dilute water is known.
 */
export function product(label: Label, canopy: CanopyState, strategy: StrategyAnswer): Product {
  const { dose, adapted, kept, capped } = labelRules(label);
  const { LWA, h, TRVc } = canopy.figures;
  const index = strategy.index;
  const told: Partial<Record<Told, Answer>> = { LWA, h, TRVc, index, dilute: strategy.dilute ?? refused('no-dilute-water', 'strategy', { strategy: strategy.strategy.id }) };
  const answer = ({ formula, inputs }: Rule): Answer =>
    derive(formula, Object.fromEntries(Object.entries(inputs).map(([symbol, input]) => [symbol, typeof input === 'string' ? told[input]! : input])));

  const acts: Act[] = [];
  const labelDose = 'formula' in dose ? answer(dose) : dose;
  let perHa = told.dose = labelDose;
  if (kept && (isRefused(index) || Math.abs(index.value - 1) > 1e-9)) acts.push('label-dose-kept');
  if (adapted) {
    told.bounded = answer(adapted.bounded);
    perHa = told.dose = answer(adapted.scaled);
    if (!isRefused(index) && !isRefused(perHa)) acts.push(index.value > adapted.most ? 'not-above-label' : index.value < adapted.floor ? 'floored' : 'scaled-to-canopy');
  }
  if (capped && !isRefused(perHa) && perHa.value > capped.most) {
    acts.push('capped-at-label-maximum');
    perHa = answer(capped.rule);
  }
  return { label, labelDose, perHa, acts };
}

export const MIX_STRENGTH = both((u) =>
  formula(`mix-strength-${u}`, 'M', u === 'kg' ? 'kg/hL' : 'Lprod/hL', { D: doseUnit[u], V: 'L/ha' }, '100 * D / V', (v) => (100 * v.D) / v.V, {
    sources: ['arithmetic'],
    certainty: 'exact',
    range: { D: NOT_NEGATIVE, V: POSITIVE }
  })
);
export const PER_TANK = both((u) =>
  formula(`product-per-tank-${u}`, 'mT', u === 'kg' ? 'kg' : 'Lprod', { M: u === 'kg' ? 'kg/hL' : 'Lprod/hL', T: 'L' }, 'M * T / 100', (v) => (v.M * v.T) / 100, {
    sources: ['arithmetic'],
    certainty: 'exact',
    range: { M: NOT_NEGATIVE, T: POSITIVE }
  })
);
/** Product per hectare that a mix of given strength leaves at a given volume. */
export const DELIVERED = both((u) =>
  formula(`product-delivered-${u}`, 'D', doseUnit[u], { M: u === 'kg' ? 'kg/hL' : 'Lprod/hL', V: 'L/ha' }, 'M * V / 100', (v) => (v.M * v.V) / 100, {
    sources: ['arithmetic'],
    certainty: 'exact',
    range: { M: NOT_NEGATIVE, V: NOT_NEGATIVE }
  })
);
