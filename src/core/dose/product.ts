import type { CanopyState } from '../canopy/canopy.ts';
import { given, isRefused, refused, type Answer, type Formula } from '../working/answer.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { StrategyAnswer } from './evaluate.ts';
import type { Label, LabelBasis } from './types.ts';

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

type LabelUnit = Label['unit'];
const doseUnit = { kg: 'kg/ha', L: 'Lprod/ha' } as const;

/** Declares one formula for products in kg and in L. */
const both = <K extends string>(make: (unit: LabelUnit) => Formula<K>): Record<LabelUnit, Formula<K>> => ({ kg: make('kg'), L: make('L') });

const PER_100_L = both((u) =>
  formula(`label-per-100-l-${u}`, 'D', doseUnit[u], { r: u === 'kg' ? 'kg/hL' : 'Lprod/hL', V1: 'L/ha' }, 'r * V1 / 100', (v) => (v.r * v.V1) / 100, {
    sources: ['landers-trv', 'furness-1998'],
    range: { r: NOT_NEGATIVE, V1: NOT_NEGATIVE }
  })
);
const PER_WALL = both((u) =>
  formula(`label-per-leaf-wall-${u}`, 'D', doseUnit[u], { r: doseUnit[u], LWA: 'm2/ha' }, 'r * LWA / 10000', (v) => (v.r * v.LWA) / 10000, {
    sources: ['toews-friessleben-2012'],
    range: { r: NOT_NEGATIVE, LWA: NOT_NEGATIVE }
  })
);
const PER_HEIGHT = both((u) =>
  formula(`label-per-crown-height-${u}`, 'D', doseUnit[u], { r: u === 'kg' ? 'kg/ha/m' : 'Lprod/ha/m', h: 'm' }, 'r * h', (v) => v.r * v.h, {
    sources: ['bvl-2012'],
    certainty: 'memory',
    range: { r: NOT_NEGATIVE, h: NOT_NEGATIVE }
  })
);
const PER_VOLUME = both((u) =>
  formula(`label-per-row-volume-${u}`, 'D', doseUnit[u], { r: doseUnit[u], TRVc: 'm3/ha' }, 'r * TRVc / 10000', (v) => (v.r * v.TRVc) / 10000, {
    sources: ['walklate-2003'],
    certainty: 'derived',
    range: { r: NOT_NEGATIVE, TRVc: NOT_NEGATIVE }
  })
);
const PERCENT = both((u) =>
  formula(`label-percent-of-water-${u}`, 'D', doseUnit[u], { c: '%', V0: 'L/ha' }, 'c / 100 * V0', (v) => (v.c / 100) * v.V0, {
    sources: ['arenenberg-2011', 'swiss-register-2026'],
    range: { c: NOT_NEGATIVE, V0: NOT_NEGATIVE }
  })
);
const SCALED = both((u) =>
  formula(`dose-scaled-${u}`, 'D', doseUnit[u], { D0: doseUnit[u], I: '1' }, 'D0 * I', (v) => v.D0 * v.I, {
    sources: ['walklate-2003'],
    certainty: 'derived',
    range: { D0: NOT_NEGATIVE, I: NOT_NEGATIVE }
  })
);
const CAPPED = both((u) =>
  formula(`dose-capped-${u}`, 'D', doseUnit[u], { D0: doseUnit[u], Dmax: doseUnit[u] }, 'min(D0, Dmax)', (v) => Math.min(v.D0, v.Dmax), {
    sources: ['arithmetic'],
    certainty: 'exact',
    range: { D0: NOT_NEGATIVE, Dmax: NOT_NEGATIVE }
  })
);
const BOUNDED_INDEX = formula(
  'index-bounded', 'I', '1', { I0: '1', F: '1', Imax: '1' }, 'min(max(I0, F), Imax)', (v) => Math.min(Math.max(v.I0, v.F), v.Imax),
  { sources: ['arithmetic'], certainty: 'exact', range: { I0: NOT_NEGATIVE, F: [0, 1] } }
);

/** Bases that count ground or water, and so leave the canopy to the adaptation; the others follow the canopy by themselves. */
const FIXED: ReadonlySet<LabelBasis> = new Set<LabelBasis>(['per-hectare', 'percent-of-water']);

/** The label's dose per hectare by its own basis. Refuses a per-100-L label where no dilute water is known. */
function labelDose(label: Label, canopy: CanopyState, strategy: StrategyAnswer): Answer {
  const u = label.unit;
  const c = canopy.figures;
  const rate = (unit: Parameters<typeof given>[1]) => given(label.rate, unit, 'stated', { path: 'label.rate' });
  switch (label.basis) {
    case 'per-hectare':
      return rate(doseUnit[u]);
    case 'per-100-l-dilute':
      return derive(PER_100_L[u], {
        r: rate(u === 'kg' ? 'kg/hL' : 'Lprod/hL'),
        V1: strategy.dilute ?? refused('no-dilute-water', 'strategy', { strategy: strategy.strategy.id })
      });
    case 'per-leaf-wall':
      return derive(PER_WALL[u], { r: rate(doseUnit[u]), LWA: c.LWA });
    case 'per-crown-height':
      return derive(PER_HEIGHT[u], { r: rate(u === 'kg' ? 'kg/ha/m' : 'Lprod/ha/m'), h: c.h });
    case 'per-row-volume':
      return derive(PER_VOLUME[u], { r: rate(doseUnit[u]), TRVc: c.TRVc });
    case 'percent-of-water':
      return derive(PERCENT[u], {
        c: rate('%'),
        V0: label.referenceWaterLPerHa === undefined
          ? refused('no-reference-water', 'label.referenceWaterLPerHa', { label: label.id })
          : given(label.referenceWaterLPerHa, 'L/ha', 'stated', { path: 'label.referenceWaterLPerHa' })
      });
  }
}

/**
 * Product per hectare under the label. The label's dose stands unless the user has stated that it may go down with the canopy
 * (`downward`) or must follow it (`required`); the floor is the user's; the label's maximum caps everything.
 */
export function product(label: Label, canopy: CanopyState, strategy: StrategyAnswer): Product {
  const u = label.unit;
  const acts: Act[] = [];
  const dose = labelDose(label, canopy, strategy);
  let perHa = dose;
  const index = strategy.index;
  if (FIXED.has(label.basis)) {
    const adaptation = label.adaptation ?? 'none';
    if (adaptation === 'none') {
      if (isRefused(index) || Math.abs(index.value - 1) > 1e-9) acts.push('label-dose-kept');
    } else {
      const F = given(label.floor ?? 0, '1', label.floor === undefined ? 'assumed' : 'stated', { path: 'label.floor' });
      const most = adaptation === 'downward' ? 1 : Number.MAX_VALUE;
      const bounded = derive(BOUNDED_INDEX, { I0: index, F, Imax: given(most, '1', 'stated', { path: 'label.adaptation' }) });
      perHa = derive(SCALED[u], { D0: dose, I: bounded });
      if (!isRefused(index) && !isRefused(perHa)) {
        if (index.value > most) acts.push('not-above-label');
        else if (index.value < F.value) acts.push('floored');
        else acts.push('scaled-to-canopy');
      }
    }
  }
  if (label.maxPerHa !== undefined) {
    const capped = derive(CAPPED[u], { D0: perHa, Dmax: given(label.maxPerHa, doseUnit[u], 'stated', { path: 'label.maxPerHa' }) });
    if (!isRefused(perHa) && perHa.value > label.maxPerHa) {
      acts.push('capped-at-label-maximum');
      perHa = capped;
    }
  }
  return { label, labelDose: dose, perHa, acts };
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
