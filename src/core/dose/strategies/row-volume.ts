import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_VOLUME, VOLUME_REFERENCE } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

/** In proportion to the tree-row volume of the crown. */
export const ROW_VOLUME: Strategy = {
  id: 'row-volume',
  descriptor: 'TRVc',
  height: 'crown',
  width: 'greatest',
  water: formula('row-volume-water', 'V', 'L/ha', { c: 'L/m3', TRVc: 'm3/ha' }, 'c * TRVc', (v) => v.c * v.TRVc, {
    sources: ['wilton-nz'],
    range: { c: NOT_NEGATIVE, TRVc: NOT_NEGATIVE }
  }),
  waterKind: 'dilute',
  index: formula('row-volume-index', 'I', '1', { TRVc: 'm3/ha', TRV0: 'm3/ha' }, 'TRVc / TRV0', (v) => v.TRVc / v.TRV0, {
    sources: ['walklate-2003'],
    certainty: 'derived',
    range: { TRVc: NOT_NEGATIVE, TRV0: POSITIVE }
  }),
  reference: REFERENCE_VOLUME,
  constants: { c: constant('row-volume.water', 0.1, 'L/m3', [0.01, 0.4], 'published', 'wilton-nz'), ...VOLUME_REFERENCE },
  validity: ['under-doses-small-trees', 'box-volume'],
  sources: ['walklate-2003', 'sutton-unrath-1984']
};
