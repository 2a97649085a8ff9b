import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_LAD, REFERENCE_VOLUME, VOLUME_REFERENCE } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

/** By leaf area: a wanted deposit on the leaves that stand there, divided by the share of the spray that stays. */
export const LEAF_AREA: Strategy = {
  id: 'leaf-area',
  descriptor: 'LAI',
  height: 'crown',
  width: 'outline',
  water: formula('leaf-area-water', 'V', 'L/ha', { LAI: '1', d: 'uL/cm2', y: '1' }, '100 * LAI * d / y', (v) => (100 * v.LAI * v.d) / v.y, {
    sources: ['walklate-2003', 'herrington-1981'],
    certainty: 'derived',
    range: { LAI: NOT_NEGATIVE, d: NOT_NEGATIVE, y: POSITIVE }
  }),
  waterKind: 'applied',
  index: formula('leaf-area-index-ratio', 'I', '1', { LAD: 'm2/m3', TRVc: 'm3/ha', LAD0: 'm2/m3', TRV0: 'm3/ha' }, 'LAD * TRVc / (LAD0 * TRV0)', (v) => (v.LAD * v.TRVc) / (v.LAD0 * v.TRV0), {
    sources: ['walklate-2003'],
    certainty: 'derived',
    range: { LAD: NOT_NEGATIVE, TRVc: NOT_NEGATIVE, LAD0: POSITIVE, TRV0: POSITIVE }
  }),
  reference: REFERENCE_VOLUME,
  constants: {
    d: constant('leaf-area.deposit', 0.7, 'uL/cm2', [0.05, 5], 'assumed', 'furness-thompson'),
    // 22–37 % (bush) and 25 % (hedgerow) of the spray stayed on apple in full leaf; bare trees held 6–22 %.
    y: constant('leaf-area.recovery', 0.25, '1', [0.05, 0.9], 'published', 'herrington-1981'),
    LAD0: REFERENCE_LAD,
    ...VOLUME_REFERENCE
  },
  validity: ['leaf-density-rarely-known', 'recovery-uncertain'],
  sources: ['walklate-2003', 'herrington-1981']
};
