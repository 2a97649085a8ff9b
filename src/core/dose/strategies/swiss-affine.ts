import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE } from '../../working/figure.ts';
import { constant, type Strategy } from '../strategy.ts';

/**
 * The Swiss scheme: a straight line that keeps half the dose for the smallest tree. Published: 400 L/ha four-fold, 1600 L/ha single
 * strength and 100 % at 10 000 m³/ha. Slope and intercept are from memory and are the user's to change.
 */
export const SWISS_AFFINE: Strategy = {
  id: 'swiss-affine',
  descriptor: 'TRVc',
  height: 'crown',
  width: 'greatest',
  water: formula('swiss-water', 'V', 'L/ha', { b: 'L/m3', TRVc: 'm3/ha', V0: 'L/ha' }, 'b * TRVc + V0', (v) => v.b * v.TRVc + v.V0, {
    sources: ['ruegg-viret-1999', 'arenenberg-2011'],
    certainty: 'memory',
    range: { TRVc: NOT_NEGATIVE }
  }),
  waterKind: 'applied',
  dilute: formula('swiss-dilute', 'V1', 'L/ha', { b: 'L/m3', TRVc: 'm3/ha', V0: 'L/ha' }, '4 * (b * TRVc + V0)', (v) => 4 * (v.b * v.TRVc + v.V0), {
    sources: ['arenenberg-2011'],
    certainty: 'memory',
    range: { TRVc: NOT_NEGATIVE }
  }),
  index: formula('swiss-index', 'I', '1', { e: '1', TRVc: 'm3/ha', TRV0: 'm3/ha' }, 'e + (1 - e) * TRVc / TRV0', (v) => v.e + ((1 - v.e) * v.TRVc) / v.TRV0, {
    sources: ['swiss-register-2026', 'ruegg-viret-1999'],
    certainty: 'memory',
    range: { TRVc: NOT_NEGATIVE }
  }),
  constants: {
    b: constant('swiss-affine.water-slope', 0.02, 'L/m3', [0, 0.1], 'memory', 'ruegg-viret-1999'),
    V0: constant('swiss-affine.water-intercept', 200, 'L/ha', [0, 1000], 'memory', 'ruegg-viret-1999'),
    e: constant('swiss-affine.least-share', 0.5, '1', [0, 1], 'memory', 'ruegg-viret-1999'),
    TRV0: constant('swiss-affine.reference-volume', 10000, 'm3/ha', [5000, 20000], 'published', 'arenenberg-2011')
  },
  validity: ['memory-law', 'swiss-labels-only'],
  sources: ['swiss-register-2026', 'arenenberg-2011', 'ruegg-viret-1999']
};
