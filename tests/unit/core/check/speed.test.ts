import { mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import type { SpeedRun } from '#core/check/types.ts';
import { num, refusal } from '../../../support/sample.ts';
import { oneRound, said } from '../../../support/check.ts';

const out = (seconds: number, distanceM = 100): SpeedRun => ({ distanceM, seconds, direction: 'out' });
const back = (seconds: number, distanceM = 100): SpeedRun => ({ distanceM, seconds, direction: 'back' });
const speed = (runs: readonly SpeedRun[], assumptions = {}) => oneRound({ runs }, { assumptions }).round.speed!;

describe('spread of runs', () => {
  test('is the standard deviation of a general library, runs of one direction', () => {
    const seconds = [58, 59.5, 61, 60.2, 62.4];
    const s = speed(seconds.map((t) => out(t)));
    expect(num(s.spread)).toBeCloseTo(sampleStandardDeviation(seconds.map((t) => 360 / t)), 10);
  });
  test('is around the mean of each direction, so that a slope is no spread', () => {
    const s = speed([out(50), out(50), back(70), back(70)]);
    expect(num(s.spread)).toBeCloseTo(0, 10);
    expect(s.directions.map((d) => [d.direction, d.runs])).toEqual([['out', 2], ['back', 2]]);
    expect(num(s.directions[0]!.speed)).toBeCloseTo(7.2, 10);
  });
  test('is refused for one run in each direction; the watch is the least error', () => {
    const s = speed([out(60), back(60)], { 'check.watch-error': 0.6 });
    expect(refusal(s.spread)).toBe('too-few-runs @ check.runs.spread');
    expect(num(s.measured.error)).toBeCloseTo(1, 10);
  });
  test('never brings less than the watch leaves', () => {
    const s = speed([out(60), out(60), out(60)], { 'check.watch-error': 1.2 });
    expect(num(s.spread)).toBeCloseTo(0, 10);
    expect(num(s.measured.error)).toBeCloseTo(2, 10);
    expect(s.measured.interval!.low).toBeCloseTo(5.88, 10);
    expect(s.measured.interval!.high).toBeCloseTo(6.12, 10);
  });
  test('more runs of the same spread narrow the interval', () => {
    const few = speed([out(58), out(62), out(58), out(62)]);
    const many = speed([out(58), out(62), out(58), out(62), out(58), out(62), out(58), out(62)]);
    expect(num(many.measured.error)).toBeLessThan(num(few.measured.error));
  });
  test('direction unsaid: all metres over all seconds', () => {
    const s = speed([{ distanceM: 100, seconds: 60 }, { distanceM: 100, seconds: 90 }]);
    expect(num(s.measured.value)).toBeCloseTo(mean([4.8]), 10);
  });
});

describe('a run that differs', () => {
  test('is named, and the others are not', () => {
    const { state, round } = oneRound({ runs: [out(60), out(60.4), out(52), out(59.8)] });
    expect(round.speed!.runs.filter((r) => r.differs).map((r) => r.number)).toEqual([3]);
    const found = state.findings.find((f) => f.code === 'check-run-faster')!;
    expect(found.parameters.run).toBe('3');
  });
  test('is not named where the watch explains it', () => {
    expect(oneRound({ runs: [out(10, 20), out(10.6, 20), out(10.1, 20)] }, { assumptions: { 'check.watch-error': 0.5 } }).round.speed!.runs.some((r) => r.differs)).toBe(false);
  });
  test('of two, both are named together', () => {
    const { state } = oneRound({ runs: [out(60), out(70), back(61), back(61)] });
    expect(said(state)).toContain('check-runs-disagree');
    expect(state.findings.find((f) => f.code === 'check-runs-disagree')!.parameters.runs).toEqual(['1', '2']);
  });
  test('the other direction is no mate', () => expect(oneRound({ runs: [out(60), out(60), out(60), back(75), back(75), back(75)] }).round.speed!.runs.some((r) => r.differs)).toBe(false));
});

describe('what is said of a course', () => {
  test('88 ft is short, 100 m is not', () => {
    expect(said(oneRound({ runs: [out(20, 26.8224)] }).state)).toContain('check-short-course');
    expect(said(oneRound({ runs: [out(60)] }).state)).not.toContain('check-short-course');
  });
  test('few runs, one direction', () => {
    const found = said(oneRound({ runs: [out(60)] }).state);
    expect(found).toEqual(expect.arrayContaining(['check-few-runs', 'check-one-direction']));
    expect(said(oneRound({ runs: [out(60), back(60), out(60)] }).state)).not.toEqual(expect.arrayContaining(['check-few-runs']));
  });
  test('faster than is usual in trees', () => {
    expect(said(oneRound({ runs: [out(50)] }, { setting: { speedKmH: 7.2 } }).state)).toContain('check-fast');
    expect(said(oneRound({ runs: [out(65)] }, { setting: { speedKmH: 5.5 } }).state)).not.toContain('check-fast');
  });
  test('terms that nobody ticked', () => expect(said(oneRound({ runs: [out(60)] }).state)).toContain('check-terms-open'));
});

test('no runs, no speed: refused by name, and the tables promise nothing', () => {
  const { state, round } = oneRound({ displayKmH: 6 });
  expect(round.speed).toBeNull();
  expect(refusal(state.outcome.speed.value)).toBe('speed-not-measured @ check.runs');
  expect(refusal(state.outcome.predicted)).toBe('speed-not-measured @ check.runs');
});
