import { isEarly } from '../../canopy/growth.ts';
import { GAL_PER_ACRE_L_PER_HA } from '../../quantity/constants.ts';
import { formula } from '../../working/formula.ts';
import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { constant, type Strategy } from '../strategy.ts';

/** Share of the full-foliage rate before the end of bloom: the middle of 0.25–0.35 against 0.70 gal/1000 ft³. */
const EARLY = constant('us-row-volume.season-early', 0.3 / 0.7, '1', [0.3, 1], 'derived', 'rutgers-1998');
const FULL = constant('us-row-volume.season-full', 1, '1', [0.3, 1], 'published', 'rutgers-1998');

/** US tree-row volume with density factor k and seasonal factor g; 400 gal/acre is the standard orchard's. Total tree height. */
export const US_ROW_VOLUME: Strategy = {
  id: 'us-row-volume',
  descriptor: 'TRVg',
  height: 'ground',
  width: 'greatest',
  water: formula('us-row-volume-water', 'V', 'L/ha', { g: '1', k: 'L/m3', TRVg: 'm3/ha' }, 'g * k * TRVg', (v) => v.g * v.k * v.TRVg, {
    sources: ['landers-trv', 'penn-state-tree-fruit', 'rutgers-1998'],
    range: { g: NOT_NEGATIVE, k: NOT_NEGATIVE, TRVg: NOT_NEGATIVE },
    published: { TRVg: [0, 69520] }
  }),
  waterKind: 'dilute',
  index: formula(
    'us-row-volume-index', 'I', '1', { g: '1', k: 'L/m3', TRVg: 'm3/ha', V0: 'L/ha' }, 'g * k * TRVg / V0', (v) => (v.g * v.k * v.TRVg) / v.V0,
    { sources: ['penn-state-tree-fruit'], range: { g: NOT_NEGATIVE, k: NOT_NEGATIVE, TRVg: NOT_NEGATIVE, V0: POSITIVE } }
  ),
  constants: { V0: constant('us-row-volume.standard', 400 * GAL_PER_ACRE_L_PER_HA, 'L/ha', [1000, 6000], 'published', 'penn-state-tree-fruit') },
  choose: (canopy) => ({ g: isEarly(canopy.bbch) ? EARLY : FULL }),
  choices: [EARLY, FULL],
  validity: ['under-doses-small-trees', 'box-volume', 'early-rate-disputed'],
  sources: ['landers-trv', 'penn-state-tree-fruit', 'sutton-unrath-1984', 'sutton-unrath-1988']
};
