import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { display, entered, shown, type Unit } from '#core/quantity/units.ts';

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
  for (const unit of ALL) for (const v of [-3, 0, 0.001, 1, 1234.5]) expect(entered(shown(v, unit, 'us'), unit, 'us')).toBeCloseTo(v, 9);
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
  for (const unit of ALL) for (const system of ['metric', 'us'] as const) expect(display(unit, system).decimals).toBeGreaterThanOrEqual(0);
});
