import { given, refused, type Answer, type Given } from '../working/answer.ts';
import { derive, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';

/** Air pressure at a height above sea level, kPa. FAO-56 eq. 7. */
export const AIR_PRESSURE = formula(
  'air-pressure', 'p', 'kPa', { z: 'm' }, '101.3 * ((293 - 0.0065 * z) / 293) ^ 5.26', (v) => 101.3 * ((293 - 0.0065 * v.z) / 293) ** 5.26,
  { sources: ['fao-56'], certainty: 'memory', range: { z: [-500, 5000] } }
);

/** Saturation vapour pressure over water, kPa. FAO-56 eq. 11. */
export const saturation = (tC: number): number => 0.6108 * Math.exp((17.27 * tC) / (tC + 237.3));

/** Coefficient of a ventilated psychrometer, 1/°C. FAO-56, for eq. 15. */
const PSYCHROMETER = 0.000662;

/** Vapour pressure that a psychrometer with these two temperatures stands for, kPa. */
const vapour = (tC: number, wetC: number, pKPa: number): number => saturation(wetC) - PSYCHROMETER * pKPa * (tC - wetC);

/** Wet-bulb temperature: where the psychrometer's equation meets the humidity given. Found by halving between −60 °C and the dry bulb. */
export const WET_BULB = formula(
  'wet-bulb', 'Tw', 'degC', { T: 'degC', RH: '%', p: 'kPa' }, 'Tw where es(Tw) - 0.000662 * p * (T - Tw) = RH / 100 * es(T)',
  (v) => {
    const wanted = (v.RH / 100) * saturation(v.T);
    let low = -60;
    let high = v.T;
    for (let i = 0; i < 60 && high - low > 1e-10; i++) {
      const mid = (low + high) / 2;
      if (vapour(v.T, mid, v.p) < wanted) low = mid;
      else high = mid;
    }
    return (low + high) / 2;
  },
  { sources: ['fao-56'], certainty: 'memory', range: { T: [-20, 60], RH: [1, 100], p: POSITIVE }, published: { T: [0, 50] } }
);

/** Delta T: dry bulb less wet bulb, °C. */
export const DELTA_T = formula('delta-t', 'ΔT', 'K', { T: 'degC', Tw: 'degC' }, 'T - Tw', (v) => v.T - v.Tw, { sources: ['bom-delta-t'], certainty: 'exact' });

/** Delta T of the air, aware of altitude; refused outside −20…60 °C and 1…100 % humidity. */
export function deltaT(T: Given, RH: Given, z: Given): Answer {
  const p = derive(AIR_PRESSURE, { z });
  const Tw = derive(WET_BULB, { T, RH, p });
  return derive(DELTA_T, { T, Tw });
}

export const noDay = refused('no-weather', 'day', {});
export const sea = given(0, 'm', 'assumed', { path: 'day.altitudeM' });
