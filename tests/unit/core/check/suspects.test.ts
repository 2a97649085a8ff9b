import { describe, expect, test } from 'vitest';
import { suspicions, type Pair } from '#core/check/suspects.ts';
import type { Severity } from '#core/advice/finding.ts';
import type { Unit } from '#core/quantity/units.ts';
import { given, refused } from '#core/working/answer.ts';
import { about } from '../../../support/findings.ts';

const UNIT: Readonly<Record<Pair['of'], Unit>> = { speed: 'km/h', flow: 'L/min', volume: 'L/ha', pressure: 'bar', litres: 'L' };
const suspected = (of: Pair['of'], found: number, expected: number) => suspicions([{ of, path: 'here', found: given(found, UNIT[of]), expected: given(expected, UNIT[of]) }]);
const codes = (of: Pair['of'], found: number, expected: number) => suspected(of, found, expected).map((f) => f.code.replace('check-suspect-', ''));

/**
 * Factor by the definitions of the units: mile 1.609344 km, foot 0.3048 m, US gallon 3.785411784 L, imperial gallon 4.54609 L,
 * acre 0.40468564224 ha, psi 0.0689475729 bar; 88 ft/min are one mph; flow goes with the root of pressure.
 */
const FACTORS: readonly (readonly [string, number, readonly Pair['of'][], Severity, string])[] = [
  ['half', 2, ['flow', 'volume', 'litres'], 'warn', 'arithmetic'],
  ['mph', 1.609344, ['speed'], 'warn', 'arithmetic'],
  ['feet-per-minute', 88, ['speed', 'volume'], 'warn', 'arithmetic'],
  ['feet', 3.28084, ['speed', 'volume'], 'warn', 'arithmetic'],
  ['gallon', 3.785412, ['flow', 'volume', 'litres'], 'warn', 'arithmetic'],
  ['imperial', 4.54609, ['flow', 'volume', 'litres'], 'warn', 'arithmetic'],
  ['gallons', 1.20095, ['flow', 'volume', 'litres'], 'note', 'arithmetic'],
  ['acre', 2.471054, ['volume', 'litres'], 'warn', 'arithmetic'],
  ['gallons-per-acre', 9.353958, ['volume'], 'warn', 'arithmetic'],
  ['minutes', 60, ['flow'], 'warn', 'arithmetic'],
  ['psi', 14.503774, ['pressure'], 'warn', 'arithmetic'],
  ['psi-flow', 3.808382, ['flow'], 'warn', 'sqrt-law']
];

describe.each(FACTORS)('%s', (name, factor, kinds, severity, source) => {
  test('is suspected of what it can happen to, whichever way round', () => {
    for (const of of kinds) {
      const f = { code: `check-suspect-${name}`, severity, sources: [source], path: 'here' };
      const values = { measurement: 'here', expected: { value: 100, unit: UNIT[of] } };
      expect(suspected(of, 100 * factor, 100), of).toContainEqual({ ...f, parameters: { ...values, found: about(100 * factor, UNIT[of]), factor: about(factor, '1', 4) } });
      expect(suspected(of, 100 / factor, 100), of).toContainEqual({ ...f, parameters: { ...values, found: about(100 / factor, UNIT[of]), factor: about(1 / factor, '1', 4) } });
    }
  });
  test('is not suspected of anything else', () => {
    for (const of of Object.keys(UNIT) as Pair['of'][]) if (!kinds.includes(of)) expect(codes(of, factor, 1), of).not.toContain(name);
  });
  test('within 2 % of it, not farther', () => {
    const of = kinds[0]!;
    for (const off of [0.981, 1.019]) {
      expect(codes(of, factor * off, 1), String(off)).toContain(name);
      expect(codes(of, 1, factor * off), String(off)).toContain(name);
    }
    for (const off of [0.979, 1.021]) {
      expect(codes(of, factor * off, 1), String(off)).not.toContain(name);
      expect(codes(of, 1, factor * off), String(off)).not.toContain(name);
    }
  });
});

test('a gallon and the root of psi over bar are too near to tell apart: both are named', () => expect(codes('flow', 3.8, 1)).toEqual(['gallon', 'psi-flow']));
test('nothing is suspected of what is right, of nothing, or of what is not known', () => {
  for (const of of Object.keys(UNIT) as Pair['of'][]) expect(codes(of, 100, 100), of).toEqual([]);
  expect(codes('flow', 0, 1)).toEqual([]);
  expect(codes('flow', 1, 0)).toEqual([]);
  expect(codes('flow', -2, -1)).toEqual([]);
  const known = given(2, 'L/min');
  expect(suspicions([{ of: 'flow', path: 'here', found: refused('no', 'here'), expected: known }])).toEqual([]);
  expect(suspicions([{ of: 'flow', path: 'here', found: known, expected: refused('no', 'here') }])).toEqual([]);
  expect(suspicions([])).toEqual([]);
});
test('each pair is judged by itself, in order', () =>
  expect(
    suspicions([
      { of: 'pressure', path: 'gauge', found: given(145, 'bar'), expected: given(10, 'bar') },
      { of: 'flow', path: 'jugs', found: given(8, 'L/min'), expected: given(16, 'L/min') }
    ]).map((f) => [f.code, f.path])
  ).toEqual([['check-suspect-psi', 'gauge'], ['check-suspect-half', 'jugs']]));
