import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { constant, type Strategy } from '../strategy.ts';

/**
 * The Canadian metric scale. Its numbers 0.75 to 1.0 multiply the standard orchard's 3343 L on 35 676 m³; they are no
 * gal/1000 ft³ and are kept apart from the US factor: dense here (1.0) is the US scale's least (0.70).
 */
export const METRIC_MULTIPLIER: Strategy = {
  id: 'metric-multiplier',
  descriptor: 'TRVg',
  height: 'ground',
  width: 'greatest',
  water: formula('metric-multiplier-water', 'V', 'L/ha', { m: '1', V0: 'L/ha', TRVg: 'm3/ha', TRV0: 'm3/ha' }, 'm * V0 * TRVg / TRV0', (v) => (v.m * v.V0 * v.TRVg) / v.TRV0, {
    sources: ['canada-trv'],
    range: { m: NOT_NEGATIVE, V0: POSITIVE, TRVg: NOT_NEGATIVE, TRV0: POSITIVE }
  }),
  waterKind: 'dilute',
  index: formula('metric-multiplier-index', 'I', '1', { m: '1', TRVg: 'm3/ha', TRV0: 'm3/ha' }, 'm * TRVg / TRV0', (v) => (v.m * v.TRVg) / v.TRV0, {
    sources: ['canada-trv'],
    range: { m: NOT_NEGATIVE, TRVg: NOT_NEGATIVE, TRV0: POSITIVE }
  }),
  constants: {
    V0: constant('metric-multiplier.standard-water', 3343, 'L/ha', [500, 6000], 'published', 'canada-trv'),
    TRV0: constant('metric-multiplier.standard-volume', 35676, 'm3/ha', [5000, 60000], 'published', 'canada-trv')
  },
  validity: ['under-doses-small-trees', 'box-volume'],
  sources: ['canada-trv']
};
