import { describe, expect, it } from 'vitest';
import type { Unit, UnitSystem } from '#core/quantity/units.ts';
import { formatAmount, formatExact, formatFigure, formatNumber, formatPlain, formatRange, formatShare } from '#words/index.ts';

/** Thin fixed blank of groups, fixed blank before a unit. */
const seen = (text: string): string => text.replaceAll('\u202f', '_').replaceAll('\u00a0', ' ');

describe('formatAmount', () => {
  it.each<[number, Unit, UnitSystem, string]>([
    [438, 'L/ha', 'metric', '438 L/ha'],
    [9580.4, 'm3/ha', 'metric', '9_580 m³/ha'],
    [35676, 'm3/ha', 'metric', '35_676 m³/ha'],
    [1234567, 'm3/ha', 'metric', '1_234_567 m³/ha'],
    [999.6, 'm3/ha', 'metric', '1_000 m³/ha'],
    [35676, 'm3/ha', 'us', '509,858 ft³/ac'],
    [9.353956224, 'L/ha', 'us', '1.0 gal/ac'],
    [3.2, 'm', 'metric', '3.20 m'],
    [3.048, 'm', 'us', '10.0 ft'],
    [6, 'km/h', 'metric', '6.0 km/h'],
    [12, 'deg', 'metric', '12.0°'],
    [540, 'rpm', 'us', '540 rpm'],
    [11.5, 'L/100m', 'metric', '11.5 L/100 m'],
    [0.85, '1', 'metric', '0.85']
  ])('shows %d %s in %s as %s', (value, unit, system, text) => expect(seen(formatAmount(value, unit, system))).toBe(text));

  it('keeps three digits of a small value', () => {
    expect(formatFigure(0.053, 'm', 'metric')).toBe('0.053');
    expect(formatFigure(0.00123456, 'L/min', 'metric')).toBe('0.00123');
    expect(formatFigure(5.432, 'L/ha', 'metric')).toBe('5.43');
  });

  it('never moves a dose by more than a part in a thousand', () => {
    expect(formatFigure(0.125, 'kg/ha', 'metric')).toBe('0.125');
    expect(formatFigure(1.125, 'kg/ha', 'metric')).toBe('1.125');
    for (const dose of [0.0375, 0.4375, 1.0625, 2.3456789, 12.3456789, 123.456])
      for (const unit of ['kg/ha', 'Lprod/ha', 'kg/hL'] as const)
        expect(Math.abs(Number(formatFigure(dose, unit, 'metric')) / dose - 1)).toBeLessThan(1e-3);
  });

  it('tells temperatures from differences of temperatures', () => {
    expect(seen(formatAmount(25, 'degC', 'us'))).toBe('77 °F');
    expect(seen(formatAmount(5, 'K', 'us'))).toBe('9 °F');
    expect(seen(formatAmount(5, 'K', 'metric'))).toBe('5.0 °C');
  });

  it('shows a dash for what is no finite number, and no unit beside it', () => {
    for (const v of [NaN, Infinity, -Infinity]) expect(formatAmount(v, 'L/ha', 'metric')).toBe('–');
  });

  it('writes a true minus, and none before a zero', () => {
    expect(seen(formatAmount(-1.5, 'm', 'metric'))).toBe('−1.50 m');
    expect(seen(formatAmount(-1234, 'L/ha', 'metric'))).toBe('−1_234 L/ha');
    expect(formatNumber(-0.001, 1)).toBe('0.0');
    expect(formatFigure(-1e-16, '1', 'metric')).toBe('0.00');
  });

  it('stays short for any number', () => {
    for (let e = -320; e <= 308; e += 4)
      for (const sign of [1, -1]) expect(formatFigure(sign * Number(`1.23456789e${e}`), 'L/ha', 'metric').length).toBeLessThan(22);
  });
});

it('formatRange gives the unit once', () => expect(seen(formatRange(8600, 10600, 'm3/ha', 'metric'))).toBe('8_600–10_600 m³/ha'));

it.each([
  [0, '0 %'],
  [0.004, '0.4 %'],
  [0.0526, '5.3 %'],
  [0.05, '5 %'],
  [0.0999, '10 %'],
  [0.934, '93 %'],
  [1, '100 %'],
  [-0.035, '−3.5 %'],
  [NaN, '–']
])('formatShare shows %d as %s', (share, text) => expect(seen(formatShare(share))).toBe(text));

it.each([
  [6, '6'],
  [0.5, '0.5'],
  [1.0954451, '1.0954'],
  [13.145341, '13.145'],
  [10000, '10_000'],
  [123456.7, '123_457']
])('formatExact shows %d as %s', (value, text) => expect(seen(formatExact(value, 'L/min'))).toBe(text));

describe('formatPlain', () => {
  it('is what a field takes: a plain point and minus, no groups, no zeros at the end', () => {
    expect(formatPlain(3.2, 'm', 'metric')).toBe('3.2');
    expect(formatPlain(-15, 'deg', 'metric')).toBe('-15');
    expect(formatPlain(35676, 'm3/ha', 'metric')).toBe('35676');
    expect(formatPlain(3.048, 'm', 'us')).toBe('10');
    expect(formatPlain(NaN, 'm', 'metric')).toBe('');
    expect(formatPlain(-0.00001, 'deg', 'metric')).toBe('0');
  });
  it('gives back a number', () => {
    for (const v of [0.125, 1.6, 240, 0.0936, 6.5]) expect(Number(formatPlain(v, 'kg/ha', 'metric'))).toBeCloseTo(v, 6);
  });
});
