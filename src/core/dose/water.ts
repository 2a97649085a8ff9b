import type { Assumption } from '../working/assumption.ts';
import { given, isRefused, refused, type Answer, type Quantity } from '../working/answer.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { StrategyAnswer } from './evaluate.ts';
import type { Act } from './product.ts';
import type { Label } from './types.ts';

export const WATER_ASSUMPTIONS: readonly Assumption[] = [
  // In trees and bushes the trade speaks of ultra-low volume below 50 L/ha: it wants sprayers made for it. No source at hand.
  { id: 'water.little', value: 50, unit: 'L/ha', least: 0, most: 500, certainty: 'memory', sources: ['habit'] }
];

const BOUNDED_WATER = formula(
  'water-bounded', 'V', 'L/ha', { V0: 'L/ha', Vmin: 'L/ha', Vmax: 'L/ha' }, 'min(max(V0, Vmin), Vmax)', (v) => Math.min(Math.max(v.V0, v.Vmin), v.Vmax),
  { sources: ['waac-concentration'], certainty: 'exact', range: { V0: NOT_NEGATIVE, Vmin: NOT_NEGATIVE } }
);

/** Concentration factor: dilute water over the water really applied. */
export const CONCENTRATION = formula('concentration-factor', 'CF', '1', { V1: 'L/ha', V: 'L/ha' }, 'V1 / V', (v) => v.V1 / v.V, {
  sources: ['landers-trv'],
  range: { V1: NOT_NEGATIVE, V: POSITIVE }
});

/** Water for a mix of the wanted concentration. */
const CONCENTRATED = formula('water-concentrated', 'V', 'L/ha', { V1: 'L/ha', CF: '1' }, 'V1 / CF', (v) => v.V1 / v.CF, {
  sources: ['landers-trv'],
  range: { V1: NOT_NEGATIVE, CF: POSITIVE }
});

export interface Water {
  /** Water wanted on a hectare, after the label's least and most. */
  readonly wanted: Answer;
  /** The same before them. */
  readonly free: Answer;
  readonly acts: readonly Act[];
}

/** Water worth comparing with: a bare canopy has none under some strategies, and nothing is no percentage of nothing. */
export const isWater = (a: Answer): a is Quantity => !isRefused(a) && a.value > 1e-3;

/** The user's own water, else the strategy's at the wanted concentration, held between the label's least and most. */
export function wantedWater(strategy: StrategyAnswer, own: number | undefined, concentration: number | undefined, label: Label | undefined): Water {
  const acts: Act[] = own === undefined ? [] : ['own-water'];
  const free: Answer = own !== undefined
    ? given(own, 'L/ha', 'stated', { path: 'ownWaterLPerHa' })
    : !strategy.water
      ? refused('strategy-without-water', 'ownWaterLPerHa', { strategy: strategy.strategy.id })
      : strategy.strategy.waterKind === 'dilute' && concentration !== undefined && concentration !== 1
        ? derive(CONCENTRATED, { V1: strategy.water, CF: given(concentration, '1', 'stated', { path: 'concentration' }) })
        : strategy.water;
  const least = label?.minWaterLPerHa;
  const most = label?.maxWaterLPerHa;
  if (isRefused(free) || !((least !== undefined && free.value < least) || (most !== undefined && free.value > most))) return { wanted: free, free, acts };
  acts.push(least !== undefined && free.value < least ? 'raised-to-label-minimum-water' : 'capped-at-label-maximum-water');
  const wanted = derive(BOUNDED_WATER, {
    V0: free,
    Vmin: given(least ?? 0, 'L/ha', 'stated', { path: 'label.minWaterLPerHa' }),
    Vmax: given(most ?? Number.MAX_VALUE, 'L/ha', 'stated', { path: 'label.maxWaterLPerHa' })
  });
  return { wanted, free, acts };
}
