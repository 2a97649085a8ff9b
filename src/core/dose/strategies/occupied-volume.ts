import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_VOLUME, VOLUME_REFERENCE } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

/** Litres per m³ of canopy that is really there: true outline, gaps left out. Never to be put on the box volume. */
export const OCCUPIED_VOLUME: Strategy = {
  id: 'occupied-volume',
  descriptor: 'TRVs',
  height: 'crown',
  width: 'outline',
  water: formula('occupied-volume-water', 'V', 'L/ha', { c: 'L/m3', TRVs: 'm3/ha' }, 'c * TRVs', (v) => v.c * v.TRVs, {
    sources: ['chen-zhu-2012'],
    certainty: 'memory',
    range: { c: NOT_NEGATIVE, TRVs: NOT_NEGATIVE }
  }),
  waterKind: 'applied',
  index: formula('occupied-volume-index', 'I', '1', { TRVs: 'm3/ha', TRV0: 'm3/ha' }, 'TRVs / TRV0', (v) => v.TRVs / v.TRV0, {
    sources: ['walklate-2003'],
    certainty: 'derived',
    range: { TRVs: NOT_NEGATIVE, TRV0: POSITIVE }
  }),
  reference: REFERENCE_VOLUME,
  constants: { c: constant('occupied-volume.water', 0.13, 'L/m3', [0.03, 0.3], 'memory', 'chen-zhu-2012'), ...VOLUME_REFERENCE },
  validity: ['outline-volume', 'sensor-coefficient'],
  sources: ['chen-zhu-2012']
};
