import { describe, expect, test } from 'vitest';
import { verdictOf } from '#core/check/outcome.ts';
import type { SpeedRun } from '#core/check/types.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { given, refused } from '#core/working/answer.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { checked, minute, oneRound } from '../../../support/check.ts';
import { about, told } from '../../../support/findings.ts';
import { arcNozzles, setting, shut, type Parts } from '../../../support/sample.ts';

/** What is said of the measured volume, of tests that no longer hold, of nozzles that miss: each finding whole. */
const runs: SpeedRun[] = [1, 2, 3].map(() => ({ distanceM: 100, seconds: 60 }));
/** Sixteen of 1.095 L/min are 17.52 L/min; 600·17.52/(6·4) = 438 L/ha. */
const right = { runs, catches: minute(1.095) };
const wanting = (ownWaterLPerHa: number): Parts => ({ block: { ownWaterLPerHa } });

describe('the limits of a verdict', () => {
  const verdict = (off: number, unfit = false, own = {}) => verdictOf(given(off, '%'), unfit, new Assumptions(ASSUMPTIONS, own));
  test('5 % and 10 %, above as below, the limit itself included', () => {
    expect([0, 5, -5].map((x) => verdict(x))).toEqual(['within', 'within', 'within']);
    expect([5.01, -5.01, 10, -10].map((x) => verdict(x))).toEqual(['adjust', 'adjust', 'adjust', 'adjust']);
    expect([10.01, -10.01].map((x) => verdict(x))).toEqual(['other-nozzles', 'other-nozzles']);
  });
  test('an unfit set is told where the sum is right; where it is not, the sum is told', () => expect([verdict(5, true), verdict(6, true), verdict(12, true)]).toEqual(['bad-nozzles', 'adjust', 'other-nozzles']));
  test('the limits are the user’s', () => expect([verdict(6, false, { 'check.volume-adjust': 6 }), verdict(12, false, { 'check.volume-nozzles': 12 })]).toEqual(['within', 'adjust']));
  test('what is not known has no verdict', () => expect(verdictOf(refused('no', 'here'), false, new Assumptions(ASSUMPTIONS))).toBe('unknown'));
});

describe('measured against wanted', () => {
  test.each([
    // Wanted, off in per cent of it, and what is said.
    [430, 1.860465, 'check-volume-within', 'good', 'ozkan-2021'],
    [410, 6.829268, 'check-volume-above', 'warn', 'ozkan-2021'],
    [470, 6.808511, 'check-volume-below', 'warn', 'ozkan-2021'],
    [390, 12.307692, 'check-volume-far-above', 'warn', 'texas-worksheet'],
    [500, 12.4, 'check-volume-far-below', 'warn', 'texas-worksheet']
  ] as const)('438 L/ha where %d are wanted', (wanted, off, code, severity, source) => {
    const { state } = oneRound(right, wanting(wanted));
    const ofVolume = state.findings.filter((f) => f.path === 'check.output');
    expect(ofVolume).toEqual([{ code, severity, parameters: { volume: about(438, 'L/ha'), wanted: about(wanted, 'L/ha'), off: about(off, '%') }, sources: [source], path: 'check.output' }]);
  });
  test('a sum that hides bad nozzles', () => {
    const { state } = oneRound({ runs, catches: minute(1.095, { L1: 0.7, R2: 1.49 }) }, wanting(438));
    expect(told(state, 'check-volume-hides', 'check-volume-within')).toEqual([
      { code: 'check-volume-hides', severity: 'warn', parameters: { volume: about(438, 'L/ha'), wanted: about(438, 'L/ha'), off: about(0, '%') }, sources: ['florida-manual'], path: 'check.output' }
    ]);
  });
  test('without wanted water, nothing is said of it', () =>
    expect(told(oneRound(right, { block: { strategy: 'leaf-wall' } }).state, 'check-volume-within', 'check-volume-above', 'check-volume-below', 'check-volume-far-above', 'check-volume-far-below', 'check-volume-hides')).toEqual([]));
});

describe('a volume that is not known closely enough', () => {
  // Over a course, what the mark on the tank leaves is all: litres of litres.
  const course = (litresErrorL: number) => told(oneRound({ refill: { kind: 'course', distanceM: 300, litres: 50, litresErrorL } }).state, 'check-uncertain');
  test('beyond the limit that it is judged by', () => {
    expect(course(2.5)).toEqual([]);
    expect(course(2.6)).toEqual([{ code: 'check-uncertain', severity: 'note', parameters: { error: about(5.2, '%'), limit: about(5, '%') }, sources: ['error-propagation'], path: 'check.output' }]);
  });
  test('a course that was not measured has no error to speak of', () => expect(told(oneRound({ refill: { kind: 'course', distanceM: 300 } }).state, 'check-uncertain')).toEqual([]));
  test('the limit is the user’s', () => expect(told(oneRound({ refill: { kind: 'course', distanceM: 300, litres: 50, litresErrorL: 2.6 } }, { assumptions: { 'check.volume-adjust': 6 } }).state, 'check-uncertain')).toEqual([]));
});

describe('a volume that nobody sprays', () => {
  // Sixteen of 0.5 L/min are 8 L/min: 200 L/ha; of 2.5, 1000.
  const unusual = (litres: number, parts: Parts = {}) => told(oneRound({ runs, catches: minute(litres) }, parts).state, 'check-volume-unusual');
  test('under 200 and over 1000 L/ha, not there', () => {
    expect(unusual(0.5)).toEqual([]);
    expect(unusual(2.5)).toEqual([]);
    expect(unusual(0.49)).toEqual([
      { code: 'check-volume-unusual', severity: 'note', parameters: { volume: about(196, 'L/ha'), least: { value: 200, unit: 'L/ha' }, most: { value: 1000, unit: 'L/ha' } }, sources: ['habit'], path: 'check.output' }
    ]);
    expect(unusual(2.51)).toHaveLength(1);
  });
  test('what is usual is the user’s to say', () => {
    expect(unusual(0.49, { assumptions: { 'check.usual-least': 190 } })).toEqual([]);
    expect(unusual(2.51, { assumptions: { 'check.usual-most': 1100 } })).toEqual([]);
  });
  test('the same by a course and by the outcome is said once', () => {
    // 10 000 · 23.9 / (300 · 4)
    const said = told(oneRound({ refill: { kind: 'course', distanceM: 300, litres: 23.9 } }).state, 'check-volume-unusual');
    expect(said.map((f) => f.parameters['volume'])).toEqual([about(199.1666667, 'L/ha')]);
  });
});

describe('tests that no longer hold', () => {
  const stale = (measurement: string, what: 'speed' | 'output') => ({ code: `check-${what}-stale`, severity: 'warn', parameters: { measurement }, sources: [], path: measurement });
  const said = (state: ReturnType<typeof checked>) => told(state, 'check-speed-stale', 'check-output-stale');

  test('each changed value is named', () => {
    const state = checked([{ ...right, setting: setting() }], { setting: { gear: 'low', ptoRpm: 500, pressureBar: 11 } });
    expect(said(state)).toEqual([stale('setting.gear', 'speed'), stale('setting.ptoRpm', 'speed'), stale('setting.pressureBar', 'output'), stale('setting.ptoRpm', 'output')]);
  });
  test('nothing is stale that was measured again', () => expect(said(checked([{ ...right, setting: setting({ pressureBar: 9, gear: 'low' }) }, right]))).toEqual([]));
  test('nor where the setting is again one that was tested before', () =>
    expect(said(checked([{ ...right, setting: setting() }, { ...right, setting: setting({ pressureBar: 9, gear: 'low' }) }]))).toEqual([]));
  test('nor where nothing was measured', () => expect(said(checked([{ setting: setting() }], { setting: { gear: 'low', pressureBar: 11 } }))).toEqual([]));
  test('what was measured last is compared, whatever rounds without it came after', () => {
    const rounds = [
      { ...right, setting: setting({ speedKmH: 5, pressureBar: 8 }) },
      { ...right, setting: setting({ gear: 'low', pressureBar: 12 }) },
      { setting: setting({ pressureBar: 9 }) }
    ];
    const state = checked(rounds, { setting: { pressureBar: 9, nozzles: [{ position: 'L4', size: '02' }] } });
    expect(said(state)).toEqual([stale('setting.gear', 'speed'), stale('setting.pressureBar', 'output'), stale('setting.sizes', 'output')]);
  });
  test('a flow taken over by the count of open nozzles is told with what it comes to', () => {
    const state = checked([{ ...right, setting: setting() }], { setting: { nozzles: shut('L8', 'R8') } });
    // 14 · 1.095
    expect(told(state, 'check-output-scaled', 'check-output-stale')).toEqual([
      { code: 'check-output-scaled', severity: 'note', parameters: { flow: about(15.33, 'L/min') }, sources: ['arithmetic'], path: 'setting.nozzles' }
    ]);
    expect(told(checked([right]), 'check-output-scaled')).toEqual([]);
  });
});

describe('open nozzles that miss the leaf', () => {
  const past = (parts: Parts) => told(oneRound(right, parts).state, 'check-aimed-past').map((f) => f.parameters['nozzles']);
  /** Narrow cones: 1 and 2 run under this skirt, 7 and 8 over this top. */
  const narrow: Parts = { canopy: { heightM: 2.5, skirtM: 0.9 }, machine: { nozzles: arcNozzles({ coneAngleDeg: 5 }) } };
  test('are named, over the top and under the skirt', () => {
    expect(past(narrow)).toEqual([['L1', 'L2', 'L7', 'L8', 'R1', 'R2', 'R7', 'R8']]);
    expect(told(oneRound(right, narrow).state, 'check-aimed-past')[0]).toMatchObject({ severity: 'warn', sources: ['lwk-nrw'], path: 'setting.nozzles' });
  });
  test('those that are shut, or on a side that does not spray, are not', () => {
    expect(past({ ...narrow, setting: { nozzles: shut('L1', 'L2', 'R7', 'R8') } })).toEqual([['L7', 'L8', 'R1', 'R2']]);
    expect(past({ ...narrow, block: { pattern: { kind: 'one-side-both-faces', side: 'right' } } })).toEqual([['R1', 'R2', 'R7', 'R8']]);
  });
  test('none is named where none misses', () => {
    const { findings } = checked([], { ...narrow, setting: { nozzles: shut('L1', 'L2', 'L7', 'L8', 'R1', 'R2', 'R7', 'R8') } });
    expect(findings.map((f) => f.code)).toEqual(['check-walk-open']);
  });
});
