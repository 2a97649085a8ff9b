import { given, refused, valueOf, type Formula, type Given, type Refused } from '../working/answer.ts';
import { derive, NOT_NEGATIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { Label, LabelBasis } from './types.ts';

export const doseUnit = { kg: 'kg/ha', L: 'Lprod/ha' } as const;

/** Declares one formula for products in kg and in L. */
export const both = <K extends string>(make: (unit: Label['unit']) => Formula<K>): Record<Label['unit'], Formula<K>> => ({ kg: make('kg'), L: make('L') });

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
export const FIXED_BASES: ReadonlySet<LabelBasis> = new Set<LabelBasis>(['per-hectare', 'percent-of-water']);

/** What a rule is told from outside the label: figures of the canopy, what the strategy says, what the rules before it made. */
export type Told = 'LWA' | 'h' | 'TRVc' | 'dilute' | 'index' | 'dose' | 'bounded';

/** A formula with what stands for each of its symbols. */
export interface Rule {
  readonly formula: Formula;
  readonly inputs: Readonly<Record<string, Told | Given | Refused>>;
}

/** What a label makes of the dose, one formula after the other, whether one canopy is worked out or a table of them. */
export interface LabelRules {
  /** `dose` by the label's own basis. */
  readonly dose: Rule | Given;
  /** The adaptation: `bounded` index, and the dose scaled by it. Null where the basis follows the canopy by itself, or the label's dose stands. */
  readonly adapted: { readonly bounded: Rule; readonly scaled: Rule; readonly floor: number; readonly most: number } | null;
  /** The basis leaves the canopy alone, and nobody said that the dose may follow it. */
  readonly kept: boolean;
  /** The label's most on a hectare. */
  readonly capped: { readonly rule: Rule; readonly most: number } | null;
}

export function labelRules(label: Label): LabelRules {
  const u = label.unit;
  const fixed = FIXED_BASES.has(label.basis);
  const kept = fixed && (label.adaptation ?? 'none') === 'none';
  const floor = label.floor ?? 0;
  const most = label.adaptation === 'downward' ? 1 : Number.MAX_VALUE;
  return {
    dose: byBasis(label),
    kept,
    adapted: !fixed || kept ? null : {
      floor,
      most,
      bounded: {
        formula: BOUNDED_INDEX,
        inputs: {
          I0: 'index',
          F: given(floor, '1', label.floor === undefined ? 'assumed' : 'stated', { path: 'label.floor' }),
          Imax: given(most, '1', 'stated', { path: 'label.adaptation' })
        }
      },
      scaled: { formula: SCALED[u], inputs: { D0: 'dose', I: 'bounded' } }
    },
    capped: label.maxPerHa === undefined ? null : {
      most: label.maxPerHa,
      rule: { formula: CAPPED[u], inputs: { D0: 'dose', Dmax: given(label.maxPerHa, doseUnit[u], 'stated', { path: 'label.maxPerHa' }) } }
    }
  };
}

/**
 * Between what a label keeps a dose, per hectare: its maximum, and for a basis that leaves the canopy alone the user's floor and, where the
 * dose may only go down, the whole dose.
 * @param labelDose by the label's own basis; undefined where it is refused
 */
export function doseRange(label: Label, labelDose: number | undefined): readonly [least: number, most: number] {
  const whole = FIXED_BASES.has(label.basis) ? (labelDose ?? Infinity) : Infinity;
  return [Number.isFinite(whole) ? whole * (label.floor ?? 0) : 0, Math.min(label.maxPerHa ?? Infinity, label.adaptation === 'downward' ? whole : Infinity)];
}

/** The dose by a basis that leaves the canopy alone; undefined where the basis follows the canopy, or it is refused. */
export function fixedDose(label: Label): number | undefined {
  if (!FIXED_BASES.has(label.basis)) return undefined;
  const dose = byBasis(label);
  return valueOf('formula' in dose ? derive(dose.formula, dose.inputs as Readonly<Record<string, Given | Refused>>) : dose);
}

function byBasis(label: Label): Rule | Given {
  const u = label.unit;
  const rate = (unit: Given['unit']) => given(label.rate, unit, 'stated', { path: 'label.rate' });
  switch (label.basis) {
    case 'per-hectare':
      return rate(doseUnit[u]);
    case 'per-100-l-dilute':
      return { formula: PER_100_L[u], inputs: { r: rate(u === 'kg' ? 'kg/hL' : 'Lprod/hL'), V1: 'dilute' } };
    case 'per-leaf-wall':
      return { formula: PER_WALL[u], inputs: { r: rate(doseUnit[u]), LWA: 'LWA' } };
    case 'per-crown-height':
      return { formula: PER_HEIGHT[u], inputs: { r: rate(u === 'kg' ? 'kg/ha/m' : 'Lprod/ha/m'), h: 'h' } };
    case 'per-row-volume':
      return { formula: PER_VOLUME[u], inputs: { r: rate(doseUnit[u]), TRVc: 'TRVc' } };
    case 'percent-of-water':
      return {
        formula: PERCENT[u],
        inputs: {
          c: rate('%'),
          V0: label.referenceWaterLPerHa === undefined
            ? refused('no-reference-water', 'label.referenceWaterLPerHa', { label: label.id })
            : given(label.referenceWaterLPerHa, 'L/ha', 'stated', { path: 'label.referenceWaterLPerHa' })
        }
      };
  }
}
