import { outletArea } from '#core/air/air.ts';
import { refused } from '#core/working/answer.ts';
import { inUnit, need, partsOf, type Call, type Inputs } from '../../support/published.ts';
import { machineA, result } from '../../support/sample.ts';

const none = refused('absent', '');
const airOf = (i: Inputs) => {
  const parts = partsOf(i);
  const k = i.k as number | undefined;
  return result({ ...parts, ...(k === undefined ? {} : { assumptions: { 'air.k-medium': k } }) }).air;
};
const match = (i: Inputs, kind: 'speed' | 'pto') => airOf(i).matches.find((m) => m.kind === kind)?.value ?? none;

export const air: Record<string, Call> = {
  needed: (i) => airOf(i).needed,
  given: (i) => airOf(i).given,
  shortfall: (i) => 1 / (airOf(i).ratio ?? NaN) - 1,
  per_metre: (i) => airOf(i).perMetre,
  given_ratio: (i) => inUnit(airOf(i).given, 'm3/h') / need(i, 'fan_flow'),
  power: (i) => airOf(i).fanPower,
  outlet_speed: (i) => airOf(i).outletSpeed,
  outlet_area_both: () => 2 * outletArea(machineA().outlet),
  speed_match: (i) => match(i, 'speed'),
  pto_match: (i) => match(i, 'pto')
};
