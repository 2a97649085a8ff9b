import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { converted, display, entered, isUnitSystem, shown, UNIT_SYSTEMS, type Unit, type UnitSystem } from '#core/quantity/units.ts';

/**
 * Every unit that US display changes, against a general unit library and against the definitions written out: foot 0.3048 m,
 * pound 0.45359237 kg, US gallon 231 in³ (0.0254 m each), acre 43 560 ft², mile 5280 ft, g 9.80665 m/s².
 * The library's constants are rounded (its acre to nine digits): 1e-5 there, 1e-12 against the definitions.
 */
const ft = 0.3048;
const lb = 0.45359237;
const gal = 231 * 0.0254 ** 3 * 1000;
const acre = (43560 * ft ** 2) / 10000;

const CASES: readonly (readonly [unit: Unit, symbol: string, definition: number, us: string, metric: string])[] = [
  ['m', 'ft', ft, 'ft', 'm'],
  ['m2', 'ft²', ft ** 2, 'ft2', 'm2'],
  ['m3', 'ft³', ft ** 3, 'ft3', 'm3'],
  ['m3/m', 'ft³/ft', ft ** 2, 'ft3/ft', 'm3/m'],
  ['m/ha', 'ft/ac', ft / acre, 'ft/acre', 'm/hectare'],
  ['m2/ha', 'ft²/ac', ft ** 2 / acre, 'ft2/acre', 'm2/hectare'],
  ['m3/ha', 'ft³/ac', ft ** 3 / acre, 'ft3/acre', 'm3/hectare'],
  ['L/m3', 'gal/1000 ft³', gal / (1000 * ft ** 3), 'gal/ft3', 'l/m3'],
  ['m2/m3', 'ft²/ft³', 1 / ft, 'ft2/ft3', 'm2/m3'],
  ['UCR/ha', 'UCR/ac', 1 / acre, '1/acre', '1/hectare'],
  ['L/UCR', 'gal/UCR', gal, 'gal', 'l'],
  ['L', 'gal', gal, 'gal', 'l'],
  ['L/ha', 'gal/ac', gal / acre, 'gal/acre', 'l/hectare'],
  ['L/ha/m', 'gal/ac per ft', gal / acre / ft, 'gal/acre*ft', 'l/hectare*m'],
  ['L/min', 'gal/min', gal, 'gal/min', 'l/min'],
  ['L/100m', 'gal/100 ft', gal / ft, 'gal/ft', 'l/m'],
  ['L/100m/m', 'gal/100 ft per ft', gal / ft ** 2, 'gal/ft2', 'l/m2'],
  ['kg', 'lb', lb, 'lb', 'kg'],
  ['kg/ha', 'lb/ac', lb / acre, 'lb/acre', 'kg/hectare'],
  ['kg/hL', 'lb/100 gal', lb / gal, 'lb/gal', 'kg/l'],
  ['kg/ha/m', 'lb/ac per ft', lb / acre / ft, 'lb/acre*ft', 'kg/hectare*m'],
  ['Lprod', 'fl oz', gal / 128, 'floz', 'l'],
  ['Lprod/ha', 'fl oz/ac', gal / 128 / acre, 'floz/acre', 'l/hectare'],
  ['Lprod/hL', 'fl oz/100 gal', 1 / 128, 'floz/gal', 'l/l'],
  ['Lprod/ha/m', 'fl oz/ac per ft', gal / 128 / acre / ft, 'floz/acre*ft', 'l/hectare*m'],
  ['bar', 'psi', (lb * 9.80665) / 0.0254 ** 2 / 1e5, 'psi', 'bar'],
  ['m/s', 'mph', (5280 * ft) / 3600, 'mph', 'm/s'],
  ['km/h', 'mph', (5280 * ft) / 1000, 'mph', 'km/h'],
  ['m3/h', 'cfm', ft ** 3 * 60, 'ft3/min', 'm3/h'],
  ['K', '°F', 5 / 9, 'degF', 'degC'],
  ['K.d', '°F·d', 5 / 9, 'degF', 'degC'],
  ['ha', 'ac', acre, 'acre', 'hectare'],
  ['ha/h', 'ac/h', acre, 'acre/h', 'hectare/h'],
  ['s/100m', 's/100 ft', 1 / ft, 's/ft', 's/m']
];

/** US factors of 1: litres per litre, or the same unit in both systems. */
const SAME: readonly Unit[] = ['1', '%', 'uL/cm2', 'rpm', 'deg', 'kPa', 's'];
const ALL: readonly Unit[] = [...CASES.map(([unit]) => unit), ...SAME, 'degC'];

describe.each(CASES)('%s in %s', (unit, symbol, definition, us, metric) => {
  test('by definition', () => expect(Math.abs(entered(1, unit, 'us') / definition - 1)).toBeLessThan(1e-12));
  test('by a general library', () => {
    const one = unit === 'L/m3' ? Qty(1, us).to(metric).scalar / 1000 : unit === 'Lprod/hL' ? Qty(1, 'floz').to('gal').scalar : Qty(1, us).to(metric).scalar;
    expect(Math.abs(entered(1, unit, 'us') / one - 1)).toBeLessThan(1e-5);
  });
  test('carries its sign', () => expect(display(unit, 'us').symbol).toBe(symbol));
});

test('temperature, with its zero', () => {
  for (const f of [-40, 0, 32, 50, 98.6, 212]) expect(entered(f, 'degC', 'us')).toBeCloseTo(Qty(f, 'tempF').to('tempC').scalar, 9);
  expect(shown(100, 'degC', 'us')).toBeCloseTo(212, 10);
  expect(display('degC', 'us').symbol).toBe('°F');
});

test('a temperature difference has no zero to shift', () => {
  expect(shown(5, 'K', 'us')).toBeCloseTo(9, 12);
  expect(shown(5, 'K', 'metric')).toBe(5);
});

test('metric shows the engine as it is', () => {
  for (const unit of ALL) {
    expect(shown(12.5, unit, 'metric')).toBe(12.5);
    expect(entered(12.5, unit, 'metric')).toBe(12.5);
  }
});

test('units without a US form are the same in both', () => {
  for (const unit of SAME) expect(display(unit, 'us')).toEqual(display(unit, 'metric'));
});

test('shown and entered undo each other', () => {
  for (const system of UNIT_SYSTEMS) for (const unit of ALL) for (const v of [-3, 0, 0.001, 1, 1234.5]) expect(entered(shown(v, unit, system), unit, system)).toBeCloseTo(v, 9);
});

/** What a figure is shown with: sign and decimals, as a grower writes them. */
test('signs and usual decimals', () => {
  const m = (unit: Unit) => [display(unit, 'metric').symbol, display(unit, 'metric').decimals];
  const us = (unit: Unit) => [display(unit, 'us').symbol, display(unit, 'us').decimals];
  expect(m('m')).toEqual(['m', 2]);
  expect(m('L/ha')).toEqual(['L/ha', 0]);
  expect(m('L/min')).toEqual(['L/min', 2]);
  expect(m('bar')).toEqual(['bar', 1]);
  expect(m('kg/ha')).toEqual(['kg/ha', 2]);
  expect(m('Lprod/ha')).toEqual(['L/ha', 2]);
  expect(m('kg/hL')).toEqual(['kg/100 L', 3]);
  expect(m('m3/ha')).toEqual(['m³/ha', 0]);
  expect(m('s/100m')).toEqual(['s/100 m', 0]);
  expect(us('m')).toEqual(['ft', 1]);
  expect(us('L/ha')).toEqual(['gal/ac', 1]);
  expect(us('L/min')).toEqual(['gal/min', 3]);
  expect(us('bar')).toEqual(['psi', 0]);
  expect(us('kg/ha')).toEqual(['lb/ac', 2]);
  expect(us('km/h')).toEqual(['mph', 1]);
  for (const unit of ALL) for (const system of UNIT_SYSTEMS) expect(display(unit, system).decimals).toBeGreaterThanOrEqual(0);
});

/** Sets that regions mix: what stands in them, against the definitions written out (imperial gallon 4.54609 L, 160 fluid ounces). */
const impGal = 4.54609;
const psi = (lb * 9.80665) / 0.0254 ** 2 / 1e5;
const MIXED: readonly (readonly [system: UnitSystem, unit: Unit, symbol: string, definition: number])[] = [
  ['metric-psi', 'bar', 'psi', psi],
  ['metric-psi', 'km/h', 'km/h', 1],
  ['metric-psi', 'L/ha', 'L/ha', 1],
  ['metric-mph', 'km/h', 'mph', 1.609344],
  ['metric-mph', 'm/s', 'mph', 0.44704],
  ['metric-mph', 'bar', 'bar', 1],
  ['acres', 'ha', 'ac', acre],
  ['acres', 'ha/h', 'ac/h', acre],
  ['acres', 'L/ha', 'L/ac', 1 / acre],
  ['acres', 'L/ha/m', 'L/ac per m', 1 / acre],
  ['acres', 'kg/ha', 'kg/ac', 1 / acre],
  ['acres', 'kg/ha/m', 'kg/ac per m', 1 / acre],
  ['acres', 'Lprod/ha', 'L/ac', 1 / acre],
  ['acres', 'Lprod/ha/m', 'L/ac per m', 1 / acre],
  ['acres', 'm3/ha', 'm³/ac', 1 / acre],
  ['acres', 'm2/ha', 'm²/ac', 1 / acre],
  ['acres', 'm/ha', 'm/ac', 1 / acre],
  ['acres', 'UCR/ha', 'UCR/ac', 1 / acre],
  ['acres', 'L', 'L', 1],
  ['acres', 'kg/hL', 'kg/100 L', 1],
  ['acres', 'bar', 'psi', psi],
  ['acres', 'km/h', 'km/h', 1],
  ['acres', 'm', 'm', 1],
  ['imperial', 'L', 'imp gal', impGal],
  ['imperial', 'L/ha', 'imp gal/ac', impGal / acre],
  ['imperial', 'L/ha/m', 'imp gal/ac per ft', impGal / acre / ft],
  ['imperial', 'L/min', 'imp gal/min', impGal],
  ['imperial', 'L/100m', 'imp gal/100 ft', impGal / ft],
  ['imperial', 'L/100m/m', 'imp gal/100 ft per ft', impGal / ft ** 2],
  ['imperial', 'L/m3', 'imp gal/1000 ft³', impGal / (1000 * ft ** 3)],
  ['imperial', 'L/UCR', 'imp gal/UCR', impGal],
  ['imperial', 'kg/hL', 'lb/100 imp gal', lb / impGal],
  ['imperial', 'Lprod', 'imp fl oz', impGal / 160],
  ['imperial', 'Lprod/ha', 'imp fl oz/ac', impGal / 160 / acre],
  ['imperial', 'Lprod/hL', 'imp fl oz/100 imp gal', 1 / 160],
  ['imperial', 'Lprod/ha/m', 'imp fl oz/ac per ft', impGal / 160 / acre / ft],
  ['imperial', 'kg/ha', 'lb/ac', lb / acre],
  ['imperial', 'm', 'ft', ft],
  ['imperial', 'km/h', 'mph', 1.609344],
  ['imperial', 'degC', '°C', 1]
];

test.each(MIXED)('%s shows %s in %s', (system, unit, symbol, definition) => {
  expect(display(unit, system).symbol).toBe(symbol);
  expect(Math.abs((entered(1, unit, system) - entered(0, unit, system)) / definition - 1)).toBeLessThan(1e-12);
  expect(converted(unit, system)).toBe(definition !== 1);
});

test('no gallon is left unnamed beside an imperial one', () => {
  for (const unit of ALL) expect(display(unit, 'imperial').symbol.replace(/imp (gal|fl oz)/g, '')).not.toMatch(/gal|fl oz/);
});

test('a set is known by its id alone', () => {
  expect(UNIT_SYSTEMS.every(isUnitSystem)).toBe(true);
  for (const other of ['', 'US', 'toString', null, 3]) expect(isUnitSystem(other)).toBe(false);
});

/** One law in every set: rate, flow, speed and spacing belong together whatever they are shown in. */
test.each(UNIT_SYSTEMS)('a rate in %s is the flow over the land that is passed', (system) => {
  const [flow, speed, spacing] = [23, 6.4, 4.2];
  const rate = (600 * flow) / (speed * spacing);
  const perMinute = entered(shown(flow, 'L/min', system), 'L/min', system);
  const land = (entered(shown(speed, 'km/h', system), 'km/h', system) * entered(shown(spacing, 'm', system), 'm', system)) / 600;
  expect(entered(shown(rate, 'L/ha', system), 'L/ha', system)).toBeCloseTo(perMinute / land, 9);
  // Litres over land, each in its own unit, are the rate in its own.
  const [gallon, land1] = [entered(1, 'L', system), entered(1, 'ha', system)];
  expect(entered(1, 'L/ha', system)).toBeCloseTo(gallon / land1, 12);
  expect(entered(1, 'L/min', system)).toBeCloseTo(gallon, 12);
  expect(entered(1, 'kg/ha', system)).toBeCloseTo(entered(1, 'kg', system) / land1, 12);
  expect(entered(1, 'Lprod/ha', system)).toBeCloseTo(entered(1, 'Lprod', system) / land1, 12);
});
