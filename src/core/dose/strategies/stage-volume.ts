import { isDormant, isEarly } from '../../canopy/growth.ts';
import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { REFERENCE_VOLUME, VOLUME_REFERENCE } from '../reference.ts';
import { constant, type Strategy } from '../strategy.ts';

const retained = (stage: string, litresPer1000M3: number) =>
  constant(`stage-volume.${stage}`, litresPer1000M3 / 1000, 'L/m3', [0.02, 0.4], 'published', 'bound-boucher');
const DORMANT = retained('dormant', 75);
const EARLY = retained('early-or-open', 100);
const MEDIUM = retained('medium', 125);
const DENSE = retained('dense', 150);

/** Volume that the canopy holds at run-off, by stage and density, on the volume inside the outline (widths stacked by height). */
export const STAGE_VOLUME: Strategy = {
  id: 'stage-volume',
  descriptor: 'TRVs',
  height: 'crown',
  width: 'outline',
  water: formula('stage-volume-water', 'V', 'L/ha', { z: 'L/m3', TRVs: 'm3/ha' }, 'z * TRVs', (v) => v.z * v.TRVs, {
    sources: ['bound-boucher'],
    range: { z: NOT_NEGATIVE, TRVs: NOT_NEGATIVE }
  }),
  waterKind: 'dilute',
  index: formula('stage-volume-index', 'I', '1', { z: 'L/m3', TRVs: 'm3/ha', z0: 'L/m3', TRV0: 'm3/ha' }, 'z * TRVs / (z0 * TRV0)', (v) => (v.z * v.TRVs) / (v.z0 * v.TRV0), {
    sources: ['bound-boucher'],
    certainty: 'derived',
    range: { z: NOT_NEGATIVE, TRVs: NOT_NEGATIVE, z0: POSITIVE, TRV0: POSITIVE }
  }),
  reference: REFERENCE_VOLUME,
  constants: { z0: MEDIUM, ...VOLUME_REFERENCE },
  choose: (canopy) => ({ z: chosen(canopy.bbch, canopy.densityClass) }),
  choices: [DORMANT, EARLY, MEDIUM, DENSE],
  validity: ['outline-volume', 'run-off-judged-in-field'],
  sources: ['bound-boucher']
};

function chosen(bbch: number | undefined, density: 'open' | 'medium' | 'dense') {
  if (isDormant(bbch)) return DORMANT;
  if (isEarly(bbch) || density === 'open') return EARLY;
  return density === 'dense' ? DENSE : MEDIUM;
}
