import { describe, expect, test } from 'vitest';
import { outletArea } from '#core/air/air.ts';
import { weatherState } from '#core/weather/weather.ts';
import { machineA, num, refusal, result, type Parts } from '../../support/sample.ts';

/** 6 km/h, 4 m rows, 3 m trees, k 3: 24 000 m³/h needed; 30 000 given in the high gear, 22 500 in the low. */
const air = (parts: Parts = {}) => result(parts).air;

describe('air', () => {
  test('needed, given, per metre, at the outlet', () => {
    const a = air();
    expect(num(a.needed)).toBeCloseTo(24_000, 8);
    expect(num(a.given)).toBeCloseTo(30_000, 8);
    expect(a.ratio).toBeCloseTo(1.25, 12);
    expect(num(a.perMetre)).toBeCloseTo(5, 12);
    expect(num(a.outletSpeed)).toBeCloseTo(15_000 / 3600 / (0.12 * 0.55 * ((95 * Math.PI) / 180)), 9);
    expect(num(a.fanPower)).toBe(1);
    expect(a.k).toMatchObject({ value: 3, certainty: 'memory', assumption: 'air.k-medium' });
  });
  test('the divisor follows density and stage', () => {
    const k = (densityClass: 'open' | 'medium' | 'dense', bbch?: number) => air({ canopy: { densityClass }, rung: bbch === undefined ? {} : { bbch } }).k.value;
    expect([k('open'), k('medium'), k('dense'), k('dense', 75), k('dense', 69)]).toEqual([3.25, 3, 2.25, 2.25, 2.25]);
    expect([k('open', 68), k('dense', 0)]).toEqual([3.5, 3.5]);
  });
  test('ways to match it, each with its limits', () => {
    const [speed, low, ptoLow, ptoHigh] = [air().matches[0]!, air().matches[1]!, air().matches[2]!, air().matches[3]!];
    expect(air().matches).toHaveLength(4);
    expect(speed).toMatchObject({ kind: 'speed', feasible: true });
    expect(num(speed.value)).toBeCloseTo(7.5, 12);
    expect('limit' in speed).toBe(false);
    expect(low).toMatchObject({ kind: 'gear', gear: 'low', feasible: true });
    expect(num(low.value)).toBeCloseTo(22_500, 8);
    expect(ptoLow).toMatchObject({ kind: 'pto', gear: 'low', feasible: false, limit: 560 });
    expect(num(ptoLow.value)).toBeCloseTo(576, 9);
    expect(ptoHigh).toMatchObject({ kind: 'pto', gear: 'high', feasible: true });
    expect(num(ptoHigh.value)).toBeCloseTo(432, 9);
    expect(air({ setting: { speedKmH: 3 } }).matches[3]).toMatchObject({ feasible: false, limit: 400 });
    expect(air({ canopy: { heightM: 6 } }).matches[0]).toMatchObject({ feasible: true });
    expect(air({ canopy: { heightM: 9 } }).matches[0]).toMatchObject({ feasible: false, limit: 3 });
    expect(air({ canopy: { heightM: 2 } }).matches[0]).toMatchObject({ feasible: false, limit: 8 });
  });
  test('one side on needs and gets half, through the same outlet', () => {
    const a = air({ block: { pattern: { kind: 'one-side-one-face', side: 'left' } } });
    expect(num(a.needed)).toBeCloseTo(12_000, 8);
    expect(num(a.given)).toBeCloseTo(15_000, 8);
    expect(a.ratio).toBeCloseTo(1.25, 12);
    expect(num(a.outletSpeed)).toBeCloseTo(num(air().outletSpeed), 9);
    expect(num(a.matches[1]!.value)).toBeCloseTo(11_250, 8);
    expect(num(a.matches[3]!.value)).toBeCloseTo(432, 9);
  });
  test('a fan that blows more to one side: the side alone gets its share, both together what they got', () => {
    const gears = machineA().gears.map((g) => ({ ...g, leftShare: g.id === 'low' ? 0.6 : 0.55 }));
    const of = (side: 'left' | 'right') => air({ machine: { gears }, block: { pattern: { kind: 'one-side-one-face', side } } });
    const [left, right, both, equal] = [of('left'), of('right'), air({ machine: { gears } }), air()];
    expect(num(left.given)).toBeCloseTo(16_500, 8);
    expect(num(right.given)).toBeCloseTo(13_500, 8);
    expect([left.ratio, right.ratio]).toEqual([expect.closeTo(1.375, 12), expect.closeTo(1.125, 12)]);
    const area = 0.12 * 0.55 * ((95 * Math.PI) / 180);
    expect(num(left.outletSpeed)).toBeCloseTo(16_500 / 3600 / area, 9);
    expect(num(right.outletSpeed)).toBeCloseTo(13_500 / 3600 / area, 9);
    // Each other gear by its own share: 22 500 m³/h, 60 % to the left.
    expect(num(left.matches[1]!.value)).toBeCloseTo(13_500, 8);
    expect(num(right.matches[1]!.value)).toBeCloseTo(9_000, 8);
    expect(num(left.matches[2]!.value)).toBeCloseTo(480, 9);
    expect(left.given).toMatchObject({ certainty: 'published', inputs: { fs: { path: 'machine.gears.high', value: 0.55 } } });
    expect(right.given).toMatchObject({ certainty: 'published', inputs: { fs: { formula: { id: 'air-right-share' }, inputs: { fl: { path: 'machine.gears.high', value: 0.55 } } } } });
    // Both on: their mean at the outlet, and all of the fan.
    expect([num(both.given), both.ratio, num(both.outletSpeed)]).toEqual([num(equal.given), equal.ratio, num(equal.outletSpeed)]);
    expect(both.matches.map((m) => num(m.value))).toEqual(equal.matches.map((m) => num(m.value)));
    // Where nothing was said, half is a default.
    expect(air({ block: { pattern: { kind: 'one-side-one-face', side: 'right' } } }).given).toMatchObject({ certainty: 'assumed' });
  });
  test('an unknown gear has no air, but the other ways are still worked out', () => {
    const a = air({ setting: { gear: 'none' } });
    for (const x of [a.given, a.perMetre, a.outletSpeed, a.fanPower, a.matches[0]!.value]) expect(refusal(x)).toBe('unknown-gear @ setting.gear');
    expect(a.given).toMatchObject({ parameters: { gear: 'none' } });
    expect(a.ratio).toBeUndefined();
    expect(a.matches[0]).toMatchObject({ feasible: false });
    expect(a.matches.map((m) => `${m.kind} ${m.gear ?? ''}`)).toEqual(['speed ', 'gear low', 'pto low', 'gear high', 'pto high']);
  });
  test('outlets', () => {
    expect(outletArea({ kind: 'arc', axisHeightM: 1, radiusM: 0.5, fromDeg: 0, toDeg: 90, slotWidthM: 0.1 })).toBeCloseTo((0.1 * 0.5 * Math.PI) / 2, 12);
    expect(outletArea({ kind: 'tower', fromHeightM: 0.5, toHeightM: 2.5, offsetM: 0.4, slotWidthM: 0.08 })).toBeCloseTo(0.16, 12);
    // Three pipes of 20 cm.
    const spouts = [{ heightM: 0.8, offsetM: 0.5, angleDeg: 0 }, { heightM: 1.2, offsetM: 0.5, angleDeg: 10 }, { heightM: 1.6, offsetM: 0.4, angleDeg: 30 }];
    expect(outletArea({ kind: 'spouts', diameterM: 0.2, spouts })).toBeCloseTo(3 * Math.PI * 0.1 ** 2, 12);
    const closed = air({ machine: { outlet: { kind: 'tower', fromHeightM: 2, toHeightM: 2, offsetM: 0.4, slotWidthM: 0.08 } } });
    expect(refusal(closed.outletSpeed)).toBe('input-out-of-range @ machine.outlet');
  });
  test('power goes with the cube of the speed over the gear\'s own', () => expect(num(air({ setting: { ptoRpm: 270 } }).fanPower)).toBe(0.125));
});

describe('weather', () => {
  test('nothing measured, nothing said', () => {
    expect(weatherState(undefined)).toBeNull();
    expect(weatherState({})).toBeNull();
    expect(result().weather).toBeNull();
  });
  test('delta T needs temperature and humidity', () => {
    expect(refusal(weatherState({ temperatureC: 20 })!.deltaT)).toBe('no-weather @ day');
    expect(refusal(weatherState({ humidityPct: 50 })!.deltaT)).toBe('no-weather @ day');
    expect(num(weatherState({ temperatureC: 20, humidityPct: 50 })!.deltaT)).toBeCloseTo(6.16, 1);
    expect(weatherState({ temperatureC: 20, humidityPct: 50, altitudeM: 0 })!.deltaT).toMatchObject({ unit: 'K', certainty: 'memory' });
  });
  test('it is refused where the equation is not meant for', () => {
    expect(refusal(weatherState({ temperatureC: 70, humidityPct: 50 })!.deltaT)).toBe('input-out-of-range @ day.temperatureC');
    expect(refusal(weatherState({ temperatureC: 20, humidityPct: 0 })!.deltaT)).toBe('input-out-of-range @ day.humidityPct');
    expect(refusal(weatherState({ temperatureC: 20, humidityPct: 50, altitudeM: 5500 })!.deltaT)).toBe('input-out-of-range @ day.altitudeM');
    expect(weatherState({ temperatureC: -10, humidityPct: 50 })!.deltaT).toMatchObject({ extrapolated: true });
    expect(weatherState({ temperatureC: 10, humidityPct: 50 })!.deltaT).toMatchObject({ extrapolated: false });
  });
  test('altitude raises delta T; none stated means sea level, as an assumption', () => {
    const at = (altitudeM?: number) => weatherState({ temperatureC: 25, humidityPct: 40, ...(altitudeM === undefined ? {} : { altitudeM }) })!.deltaT;
    expect(num(at(1500))).toBeGreaterThan(num(at()) + 0.2);
    expect(num(at(0))).toBe(num(at()));
    expect(at()).toMatchObject({ certainty: 'assumed' });
  });
  const sides = (day: NonNullable<Parameters<typeof weatherState>[0]>) => Object.fromEntries(weatherState(day)!.limits.map((l) => [l.limit.code, l.side]));
  test('published ranges, ends inside', () => {
    expect(sides({ windMPerS: 1 })).toEqual({ 'wind-low-hazard': 'inside', 'wind-limit': 'inside' });
    expect(sides({ windMPerS: 0.9 })).toEqual({ 'wind-low-hazard': 'below', 'wind-limit': 'inside' });
    expect(sides({ windMPerS: 3 })).toEqual({ 'wind-low-hazard': 'inside', 'wind-limit': 'inside' });
    expect(sides({ windMPerS: 3.1 })).toEqual({ 'wind-low-hazard': 'above', 'wind-limit': 'inside' });
    expect(sides({ windMPerS: 5 })['wind-limit']).toBe('inside');
    expect(sides({ windMPerS: 5.1 })['wind-limit']).toBe('above');
    expect(sides({ temperatureC: 25 })).toEqual({ 'temperature-limit': 'inside' });
    expect(sides({ temperatureC: 25.1 })).toEqual({ 'temperature-limit': 'above' });
    expect(sides({ humidityPct: 50 })).toEqual({ 'humidity-limit': 'inside' });
    expect(sides({ humidityPct: 49 })).toEqual({ 'humidity-limit': 'below' });
    expect(sides({ temperatureC: 20, humidityPct: 95 })).toMatchObject({ 'delta-t-preferred': 'below', 'delta-t-limit': 'inside' });
    expect(sides({ temperatureC: 25, humidityPct: 40 })).toMatchObject({ 'delta-t-preferred': 'above', 'delta-t-limit': 'inside' });
    expect(sides({ temperatureC: 30, humidityPct: 20 })).toMatchObject({ 'delta-t-preferred': 'above', 'delta-t-limit': 'above' });
    expect(sides({ temperatureC: 20, humidityPct: 60 })).toMatchObject({ 'delta-t-preferred': 'inside', 'delta-t-limit': 'inside' });
  });
  test('calm is not safe, nor is a low sun', () => {
    const inversion = (day: NonNullable<Parameters<typeof weatherState>[0]>) => weatherState(day)!.inversion;
    expect([inversion({ windMPerS: 0.99 }), inversion({ windMPerS: 1 }), inversion({ windMPerS: 3, sunLow: true }), inversion({ windMPerS: 3, sunLow: false }), inversion({ temperatureC: 20 })]).toEqual([true, false, true, false, false]);
  });
});
