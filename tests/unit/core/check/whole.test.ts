import { describe, expect, test } from 'vitest';
import { checkState } from '#core/check/check.ts';
import type { SpeedRun } from '#core/check/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { checked, minute, said } from '../../../support/check.ts';
import { about } from '../../../support/findings.ts';
import { document, setting, shut } from '../../../support/sample.ts';

/** A check as a whole: what is in it, in which order it is told. */
const runs: SpeedRun[] = [1, 2, 3].map(() => ({ distanceM: 100, seconds: 60 }));
const right = { runs, catches: minute(1.095) };

test('without a check there is none; one that is only begun may stand in', () => {
  const whole = document();
  const result = evaluate(whole, 'block', 'now');
  if ('kind' in result) throw new Error(result.code);
  expect(checkState(whole, result)).toBeNull();
  expect(checkState(whole, result, { rounds: [] })!.check).toEqual({ rounds: [] });
});

test('nothing done yet: the walk is open, the nozzles that miss are known, and that is all', () => {
  const state = checked([]);
  expect(state.findings).toEqual([
    { code: 'check-aimed-past', severity: 'warn', parameters: { nozzles: ['L7', 'L8', 'R7', 'R8'] }, sources: ['lwk-nrw'], path: 'setting.nozzles' },
    { code: 'check-walk-open', severity: 'note', parameters: { open: '13', of: '13' }, sources: [], path: 'check.ticks' }
  ]);
  expect([state.current, state.remedies, state.used, state.trail, state.rounds]).toEqual([null, null, null, [], []]);
  expect(state.tolerance).toMatchObject({ id: 'normal', mean: { value: 10 }, nominal: { value: 10 }, sides: { value: 10 } });
});

test('the tolerance set is the one chosen', () => expect(checked([], {}, { tolerance: 'strict' }).tolerance).toMatchObject({ id: 'strict', mean: { value: 5 }, nominal: { value: 5 } }));

test('worst first: stop, warn, note, good', () => {
  const state = checked([{ ...right, displayKmH: 6 }], { block: { ownWaterLPerHa: 438 } }, { ticks: [{ item: 'ribbon', state: 'fault' }, { item: 'leaks', state: 'fault' }] });
  expect(state.findings.map((f) => f.severity)).toEqual(['stop', 'warn', 'note', 'note', 'note', 'note', 'good', 'good', 'good']);
  expect(state.findings.map((f) => f.code)).toEqual([
    'check-fault-leaks',
    'check-aimed-past',
    'check-fault-ribbon',
    'check-walk-open',
    'check-terms-open',
    'check-one-direction',
    'check-display-right',
    'check-nozzles-fine',
    'check-volume-within'
  ]);
});

test('litres used are judged with the rest', () => {
  // 2 ha at 438 L/ha are 876 L.
  const state = checked([right], { block: { areaHa: 2, ownWaterLPerHa: 438 }, rung: { mix: { usedL: 876 } } });
  expect(state.findings.find((f) => f.code.startsWith('check-used'))).toEqual({
    code: 'check-used-fits',
    severity: 'good',
    parameters: { used: { value: 876, unit: 'L' }, predicted: about(876, 'L'), off: about(0, '%') },
    sources: ['habit'],
    path: 'mix.usedL'
  });
});

describe('rounds after each other', () => {
  test('of an earlier round, what it says of the speed that still counts is told, and nothing else', () => {
    const first = { runs: [runs[0]!], displayKmH: 7, gauges: { restBar: 0.8 }, catches: minute(1.095, { L1: 0.5 }) };
    const state = checked([first, { catches: minute(1.095) }]);
    expect(said(state).filter((code) => /runs|direction|display|rest|one-low|fault/.test(code)).sort()).toEqual(['check-display-high', 'check-few-runs', 'check-one-direction']);
  });
  test('of one whose speed no longer counts, nothing', () => {
    const state = checked([{ runs: [runs[0]!], displayKmH: 7, setting: setting({ gear: 'low' }) }, { catches: minute(1.095) }]);
    expect(said(state).filter((code) => /runs|direction|display/.test(code))).toEqual([]);
  });
  test('each round is judged with the machine as it was set then', () => {
    const state = checked([{ ...right, setting: setting({ pressureBar: 8, nozzles: shut('L8') }) }, right]);
    expect(state.rounds.map((r) => [r.index, r.sprayer.pressure.value, r.sprayer.openCount])).toEqual([[0, 8, 15], [1, 10, 16]]);
    // 0.6·√(8/3) and 0.6·√(10/3) L/min by the table.
    expect(state.rounds.map((r) => r.catches!.nozzles[0]!.nominal)).toMatchObject([{ value: expect.closeTo(0.979796, 6) as number }, { value: expect.closeTo(1.095445, 6) as number }]);
  });
  test('the trail has a line for each round, with its day and what its jugs said', () => {
    const state = checked([{ ...right, at: '2031-05-10T08:00:00Z' }, { runs }, { catches: minute(1.2) }], { block: { ownWaterLPerHa: 450 } });
    const volume = (value: number) => expect.objectContaining({ value: expect.closeTo(value, 6) as number }) as object;
    expect(state.trail).toEqual([
      // 438 of 450 are 2.67 % less, 480 are 6.67 % more.
      { index: 0, at: '2031-05-10T08:00:00Z', volume: volume(438), wanted: volume(450), off: volume(-2.6666667), verdict: 'within', diagnosis: 'fine' },
      { index: 1, at: null, volume: volume(438), wanted: volume(450), off: volume(-2.6666667), verdict: 'within', diagnosis: null },
      { index: 2, at: null, volume: volume(480), wanted: volume(450), off: volume(6.6666667), verdict: 'adjust', diagnosis: 'fine' }
    ]);
    expect(state.current).toBe(state.rounds[2]);
  });
  test('bad nozzles count as long as the output measured with them does', () => {
    const worn = { runs, catches: minute(1.3, { L3: 1.7 }) };
    const first = (more: object) => checked([{ ...worn, setting: setting() }, more], { block: { ownWaterLPerHa: 438 } }).remedies!.firstReplace;
    expect(first({ setting: setting() })).toEqual(['L3']);
    expect(first({ catches: minute(1.3) })).toEqual([]);
  });
});

test('assumptions that were used are listed, others are not', () => {
  const { assumptions } = checked([right]);
  expect(assumptions.get('check.volume-adjust')).toMatchObject({ value: 5, unit: '%', assumption: 'check.volume-adjust' });
  expect(assumptions.has('check.mean-strict')).toBe(false);
});
