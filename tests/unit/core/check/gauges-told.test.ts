import { describe, expect, test } from 'vitest';
import type { Gauges, LawTest } from '#core/check/types.ts';
import { oneRound } from '../../../support/check.ts';
import { about, told } from '../../../support/findings.ts';
import { arcNozzles, shut, table, type Parts } from '../../../support/sample.ts';

/** What gauges and the law of flow make the check say, each finding whole. 10 bar are set; the machine takes 4 to 18. */
const said = (code: string, gauges: Gauges, parts: Parts = {}) => told(oneRound({ gauges }, parts).state, code);
const bar = (value: number) => ({ value, unit: 'bar' });

test('gauges that are right say nothing', () => {
  const { findings } = oneRound({ gauges: { restBar: 0, readBar: 10, masterBar: 10, farBar: 9.5, oneSideBar: 10.2 } }).round;
  expect(findings).toEqual([]);
});

describe('the machine’s gauge', () => {
  test('does not come back to zero', () => {
    expect(said('check-gauge-rest', { restBar: 0.3 })).toEqual([{ code: 'check-gauge-rest', severity: 'warn', parameters: { reading: bar(0.3) }, sources: ['habit'], path: 'check.gauges.restBar' }]);
    expect(said('check-gauge-rest', { restBar: 0.2 })).toEqual([]);
  });
  test('is off beside one that is right, over or under', () => {
    expect(said('check-gauge-off', { readBar: 11.2, masterBar: 10 })).toEqual([
      { code: 'check-gauge-off', severity: 'warn', parameters: { off: about(12, '%'), read: bar(11.2), right: bar(10) }, sources: ['iso-16122-3'], path: 'check.gauges.readBar' }
    ]);
    expect(said('check-gauge-off', { readBar: 8.8, masterBar: 10 }).map((f) => f.parameters['off'])).toEqual([about(12, '%')]);
    expect([said('check-gauge-off', { readBar: 9.1, masterBar: 10 }), said('check-gauge-off', { readBar: 10.9, masterBar: 10 })]).toEqual([[], []]);
    expect(said('check-gauge-off', { readBar: 6, masterBar: 5 }, { assumptions: { 'check.gauge-off': 20.1 } })).toEqual([]);
    expect(said('check-gauge-off', { readBar: 12 })).toEqual([]);
  });
  test('does not read what was set, over or under', () => {
    expect(said('check-gauge-not-set', { readBar: 8.8 })).toEqual([
      { code: 'check-gauge-not-set', severity: 'warn', parameters: { read: bar(8.8), set: bar(10) }, sources: ['deveau-2009'], path: 'check.gauges.readBar' }
    ]);
    expect(said('check-gauge-not-set', { readBar: 11.2 })).toHaveLength(1);
    expect([9.1, 10.9, 0].map((readBar) => said('check-gauge-not-set', { readBar }).length)).toEqual([0, 0, 0]);
    expect(said('check-gauge-not-set', { masterBar: 5 })).toEqual([]);
  });
  test('reads psi', () => {
    // 10 bar are 145.04 psi.
    expect(said('check-suspect-psi', { readBar: 145 }).map((f) => [f.path, f.parameters])).toEqual([
      ['check.gauges.readBar', { measurement: 'check.gauges.readBar', found: bar(145), expected: bar(10), factor: about(14.503774, '1', 5) }]
    ]);
    expect(said('check-suspect-psi', { masterBar: 145 })).toEqual([]);
  });
});

describe('pressure lost on the way', () => {
  test('to the far nozzle, and the flow that it costs', () => {
    // 8 of 10 bar: √0.8 of the flow.
    expect(said('check-pressure-loss', { readBar: 10, farBar: 8 })).toEqual([
      { code: 'check-pressure-loss', severity: 'warn', parameters: { loss: about(20, '%'), flow: about(10.557281, '%'), far: bar(8) }, sources: ['iso-16122-3', 'sqrt-law'], path: 'check.gauges.farBar' }
    ]);
    expect([8.6, 11].map((farBar) => said('check-pressure-loss', { readBar: 10, farBar }).length)).toEqual([0, 0]);
    expect(said('check-pressure-loss', { farBar: 5 })).toEqual([]);
  });
  test('or gained when one side is shut', () => {
    const found = { code: 'check-one-side', severity: 'warn', parameters: { off: about(12, '%') }, sources: ['iso-16122-3'], path: 'check.gauges.oneSideBar' };
    expect(said('check-one-side', { readBar: 10, oneSideBar: 11.2 })).toEqual([found]);
    expect(said('check-one-side', { readBar: 10, oneSideBar: 8.8 })).toEqual([found]);
    expect([9.1, 10.9].map((oneSideBar) => said('check-one-side', { readBar: 10, oneSideBar }).length)).toEqual([0, 0]);
  });
});

describe('pressure that neither machine nor nozzles are made for', () => {
  test('is told with what they are made for, ends included', () => {
    expect(said('check-pressure-outside', { farBar: 18.1 })).toEqual([{ code: 'check-pressure-outside', severity: 'warn', parameters: { pressure: bar(18.1), least: bar(4), most: bar(18) }, sources: [], path: 'check.gauges' }]);
    expect([3.9, 4, 18].map((farBar) => said('check-pressure-outside', { farBar }).length)).toEqual([1, 0, 0]);
  });
  test('the narrowest range of those that spray counts', () => {
    const own: Parts = { tables: [table(1, { pressureMinBar: 6, pressureMaxBar: 12 })], machine: { nozzles: arcNozzles().map((n) => (n.id === 'L8' ? { ...n, table: 'own', size: 'x' } : n)) } };
    expect([5.9, 6, 12, 12.1].map((farBar) => said('check-pressure-outside', { farBar }, own).map((f) => [f.parameters['least'], f.parameters['most']]))).toEqual([[[bar(6), bar(12)]], [], [], [[bar(6), bar(12)]]]);
    expect(said('check-pressure-outside', { farBar: 14 }, { ...own, setting: { nozzles: shut('L8') } })).toEqual([]);
  });
  test('a pressure that nobody read is not held against them', () => expect(told(oneRound({}, { setting: { pressureBar: 30 } }).state, 'check-pressure-outside')).toEqual([]));
});

describe('flow against pressure', () => {
  const law = (secondLPerMin: number, more: Partial<LawTest> = {}, parts: Parts = {}) =>
    told(oneRound({ law: { firstBar: 4, firstLPerMin: 10, secondBar: 16, secondLPerMin, ...more } }, parts).state, 'check-exponent-inside', 'check-exponent-outside');
  // Four times the pressure: twice the flow by the square root; 4^0.44 is 1.8404, 4^0.56 is 2.1735.
  test('by the square root is good', () =>
    expect(law(20)).toEqual([{ code: 'check-exponent-inside', severity: 'good', parameters: { exponent: about(0.5, '1') }, sources: ['sqrt-law'], path: 'check.law' }]));
  test('by another law is told with what is usual', () => {
    const outside = (exponent: number) => ({ code: 'check-exponent-outside', severity: 'warn', parameters: { exponent: about(exponent, '1', 3), least: { value: 0.45, unit: '1' }, most: { value: 0.55, unit: '1' } }, sources: ['sqrt-law'], path: 'check.law' });
    expect(law(18.404)).toEqual([outside(0.44)]);
    expect(law(21.735)).toEqual([outside(0.56)]);
    expect([law(18.79)[0]!.code, law(21.3)[0]!.code]).toEqual(['check-exponent-inside', 'check-exponent-inside']);
  });
  test('nothing before all four are measured, nor where the pressures are within a tenth of each other', () => {
    const { state, round } = oneRound({ law: { firstBar: 4, firstLPerMin: 10, secondLPerMin: 20 } });
    expect([round.law!.inside, told(state, 'check-exponent-inside', 'check-exponent-outside')]).toEqual([null, []]);
    for (const gone of ['firstBar', 'firstLPerMin', 'secondBar', 'secondLPerMin'] as const) {
      const { [gone]: _, ...rest } = { firstBar: 4, firstLPerMin: 10, secondBar: 16, secondLPerMin: 20 };
      expect(oneRound({ law: rest }).round.law!.exponent, gone).toMatchObject({ code: 'law-not-measured', path: 'check.law' });
    }
    const close = (secondBar: number) => oneRound({ law: { firstBar: 10, firstLPerMin: 10, secondBar, secondLPerMin: 10.5 } }).round.law!.exponent;
    expect([close(11).kind, close(10.9), close(9.2)]).toMatchObject(['figure', { code: 'pressures-too-close', path: 'check.law.secondBar' }, { code: 'pressures-too-close' }]);
    expect(close(9).kind).toBe('figure');
  });
  test('the limits are the user’s, ends included', () => {
    expect(law(20, {}, { assumptions: { 'check.exponent-least': 0.5 } })[0]!.code).toBe('check-exponent-inside');
    expect(law(20, {}, { assumptions: { 'check.exponent-most': 0.5 } })[0]!.code).toBe('check-exponent-inside');
  });
});
