import { describe, expect, test } from 'vitest';
import type { Diagnosis } from '#core/check/state.ts';
import { minute, oneRound, said } from '../../../support/check.ts';
import { num, refusal } from '../../../support/sample.ts';

/** Sixteen ISO 015 nozzles: 0.6·√(10/3) = 1.0954 L/min each at 10 bar. */
const TABLE = 1.0954;
const eight = (side: string, litres: number) => Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 8].map((n) => [`${side}${n}`, litres]));
const diagnosed = (own: Record<string, number>, all = TABLE, more: Parameters<typeof oneRound>[0] = {}) => oneRound({ catches: minute(all, own), ...more }).round.catches!;

describe('diagnosis', () => {
  const CASES: readonly (readonly [string, Record<string, number>, number, Diagnosis, string[]])[] = [
    ['all as the table', {}, TABLE, 'fine', []],
    ['all a little worn', {}, TABLE * 1.06, 'fine', []],
    ['all 15 % low', {}, TABLE * 0.85, 'evenly-low', []],
    ['all 15 % high, pressure not proven', {}, TABLE * 1.15, 'evenly-high', []],
    ['one clogged', { L4: TABLE * 0.6 }, TABLE, 'one-low', ['L4']],
    ['one dry', { R8: 0 }, TABLE, 'one-low', ['R8']],
    ['one worn', { R2: TABLE * 1.3 }, TABLE, 'one-high', ['R2']],
    ['a clogged and a worn one', { L4: TABLE * 0.75, R4: TABLE * 1.25 }, TABLE, 'hidden-pair', ['L4', 'R4']],
    ['two worn', { L4: TABLE * 1.25, R4: TABLE * 1.25 }, TABLE, 'several-bad', ['L4', 'R4']],
    ['left 6 % up, right 6 % down', { ...eight('L', TABLE * 1.06), ...eight('R', TABLE * 0.94) }, TABLE, 'sides-differ', []],
    ['left 15 % up, right 15 % down: no nozzle is at fault', { ...eight('L', TABLE * 1.15), ...eight('R', TABLE * 0.85) }, TABLE, 'sides-differ', []]
  ];
  test.each(CASES)('%s', (_, own, all, diagnosis, bad) => {
    const c = diagnosed(own, all);
    expect([c.diagnosis, c.bad]).toEqual([diagnosis, bad]);
  });
  test('all high is a worn set once the pressure was read beside a gauge that is right', () =>
    expect(diagnosed({}, TABLE * 1.15, { gauges: { readBar: 10, masterBar: 10 } }).diagnosis).toBe('worn-set'));
  test('all high at the set pressure is fine at the true one', () => {
    // √(13/10) = 1.14: the gauge read 10 where 13 were right.
    expect(diagnosed({}, TABLE * 1.14, { gauges: { readBar: 10, masterBar: 13 } }).diagnosis).toBe('fine');
  });
  test('all low at the set pressure, where the far gauge shows why', () => expect(diagnosed({}, TABLE * 0.85, { gauges: { readBar: 10, farBar: 7.225 } }).diagnosis).toBe('fine'));
  test('among four, one clogged does not make the other three worn', () => {
    const open = ['L1', 'L2', 'R1', 'R2'];
    const { round } = oneRound(
      { catches: open.map((position) => ({ position, litres: position === 'L1' ? TABLE / 2 : TABLE, seconds: 60 })) },
      { setting: { nozzles: ['L', 'R'].flatMap((s) => [1, 2, 3, 4, 5, 6, 7, 8].map((n) => ({ position: `${s}${n}`, open: open.includes(`${s}${n}`) }))) } }
    );
    expect([round.catches!.diagnosis, round.catches!.bad]).toEqual(['one-low', ['L1']]);
  });
  test('not before all are caught', () => {
    const { state, round } = oneRound({ catches: minute(TABLE).slice(0, 10) });
    expect(round.catches!.diagnosis).toBe('incomplete');
    expect(round.catches!.missing).toEqual(['R3', 'R4', 'R5', 'R6', 'R7', 'R8']);
    expect(refusal(round.catches!.total.value)).toBe('catch-missing @ check.catches');
    expect(num(round.catches!.left)).toBeCloseTo(8 * TABLE, 9);
    expect(said(state)).toContain('check-catch-missing');
  });
  test('mixed sizes compare by their ratios', () => {
    const { round } = oneRound({ catches: minute(TABLE, { L1: 1.4606, R1: 1.4606 }) }, { setting: { nozzles: [{ position: 'L1', size: '02' }, { position: 'R1', size: '02' }] } });
    expect(round.catches!.diagnosis).toBe('fine');
    expect(num(round.catches!.nozzles[0]!.deviation)).toBeCloseTo(0, 1);
  });
  test('alike sizes: deviation from the mean ratio is deviation from the mean flow', () => {
    const { round } = oneRound({ catches: minute(1, { L1: 1.3 }) });
    // Mean of fifteen 1.0 and one 1.3.
    expect(num(round.catches!.nozzles[0]!.deviation)).toBeCloseTo(100 * (1.3 / 1.01875 - 1), 9);
  });
});

describe('tolerance sets', () => {
  const at = (factor: number, tolerance: 'strict' | 'normal' | 'inspection') => oneRound({ catches: minute(TABLE, { L1: TABLE * factor }) }, {}, { tolerance }).round.catches!.diagnosis;
  test('8 % is beyond strict, 13 % beyond normal, 20 % beyond inspection', () => {
    expect([at(1.08, 'strict'), at(1.08, 'normal'), at(1.08, 'inspection')]).toEqual(['one-high', 'fine', 'fine']);
    expect([at(1.13, 'normal'), at(1.13, 'inspection')]).toEqual(['one-high', 'fine']);
    expect(at(1.2, 'inspection')).toBe('one-high');
  });
  test('the user’s own limit counts', () => expect(oneRound({ catches: minute(TABLE, { L1: TABLE * 1.08 }) }, { assumptions: { 'check.mean-normal': 6 } }).round.catches!.diagnosis).toBe('one-high'));
  test('a 20-second catch cannot carry a 5 % rule', () => {
    const short = minute(TABLE).map((c) => ({ ...c, litres: TABLE / 3, seconds: 20 }));
    const strict = oneRound({ catches: short }, {}, { tolerance: 'strict' });
    expect(strict.round.catches!.tooCoarse).toBe(true);
    expect(said(strict.state)).toContain('check-catch-coarse');
    expect(oneRound({ catches: minute(TABLE) }, {}, { tolerance: 'strict' }).round.catches!.tooCoarse).toBe(false);
  });
});

describe('refill', () => {
  test('the user’s own errors come before the assumed ones', () => {
    const { round } = oneRound({ refill: { kind: 'standing', seconds: 100, litres: 50, litresErrorL: 3, secondsError: 0 } });
    expect(num(round.refill.flow.error)).toBeCloseTo(6, 10);
  });
  test('how long to spray is told before anything was measured, by the tables', () => {
    const { round } = oneRound({});
    // 17.53 L/min: 2 L of 6.845 L/min·… by hand: √((60·2/17.527)² + 2²)·50
    expect(num(round.refill.longEnough)).toBeCloseTo(50 * Math.hypot(120 / 17.527, 2), 1);
    expect(round.refill.isLongEnough).toBeNull();
  });
  test('half measured is no output', () => {
    expect(refusal(oneRound({ refill: { kind: 'standing', seconds: 180 } }).round.refill.flow.value)).toBe('output-not-measured @ check.output');
    expect(refusal(oneRound({ refill: { kind: 'course', litres: 18 } }).state.outcome.volume.value)).toBe('output-not-measured @ check.output');
  });
  test('a course tells litres per hectare without any speed', () => {
    const { state } = oneRound({ refill: { kind: 'course', distanceM: 300, litres: 52.6 } });
    expect(num(state.outcome.volume.value)).toBeCloseTo(438.3, 1);
    expect(refusal(state.outcome.flow.value)).toBe('speed-not-measured @ check.runs');
  });
  test('more than the tank holds', () => expect(said(oneRound({ refill: { kind: 'standing', seconds: 3600, litres: 1200 } }).state)).toContain('check-refill-over-tank'));
  test('shorter than three minutes', () => {
    expect(said(oneRound({ refill: { kind: 'standing', seconds: 120, litres: 35 } }).state)).toContain('check-refill-brief');
    expect(said(oneRound({ refill: { kind: 'standing', seconds: 180, litres: 52.6 } }).state)).not.toContain('check-refill-brief');
  });
  test('jugs come before the refill', () => expect(oneRound({ catches: minute(1.2), refill: { kind: 'standing', seconds: 180, litres: 52.6 } }).state.outcome.flowFrom).toBe('catches'));
  test('but not while one is missing', () => expect(oneRound({ catches: minute(1.2).slice(1), refill: { kind: 'standing', seconds: 180, litres: 52.6 } }).state.outcome.flowFrom).toBe('standing'));
});

describe('gauges', () => {
  test('the reading nearest to the nozzles counts', () => {
    const from = (gauges: object) => oneRound({ gauges }).round.pressure;
    expect([from({}).from, from({ readBar: 9 }).from, from({ readBar: 9, masterBar: 9.5 }).from, from({ readBar: 9, masterBar: 9.5, farBar: 8 }).from]).toEqual(['setting', 'gauge', 'master', 'far']);
    expect(from({ readBar: 9, masterBar: 9.5, farBar: 8 }).atNozzles.value).toBe(8);
    expect(num(from({ readBar: 9, masterBar: 10, farBar: 8 }).loss)).toBeCloseTo(20, 10);
  });
  test('a gauge at nothing is none', () => expect(oneRound({ gauges: { readBar: 0 } }).round.pressure.from).toBe('setting'));
  test('10 and 20 bar are ordinary for a machine and nozzles made for them; 25 are not', () => {
    const at = (bar: number) => said(oneRound({ gauges: { readBar: bar } }, { setting: { pressureBar: bar }, machine: { pressureMaxBar: 20 } }).state).includes('check-pressure-outside');
    expect([at(10), at(20), at(25)]).toEqual([false, false, true]);
  });
  test('one side shut', () => {
    expect(said(oneRound({ gauges: { readBar: 10, oneSideBar: 11.5 } }).state)).toContain('check-one-side');
    expect(said(oneRound({ gauges: { readBar: 10, oneSideBar: 10.8 } }).state)).not.toContain('check-one-side');
  });
});

describe('law of flow', () => {
  const law = (q: number) => oneRound({ law: { firstBar: 5, firstLPerMin: 10, secondBar: 20, secondLPerMin: q } });
  test('twice the flow at four times the pressure is the square root', () => {
    expect(num(law(20).round.law!.exponent)).toBeCloseTo(0.5, 12);
    expect(law(20).round.law!.inside).toBe(true);
    expect(said(law(17).state)).toContain('check-exponent-outside');
    expect(said(law(23).state)).toContain('check-exponent-outside');
  });
  test('half measured, and pressures that tell nothing', () => {
    expect(refusal(oneRound({ law: { firstBar: 5 } }).round.law!.exponent)).toBe('law-not-measured @ check.law');
    expect(refusal(oneRound({ law: { firstBar: 5, firstLPerMin: 10, secondBar: 5, secondLPerMin: 10 } }).round.law!.exponent)).toBe('pressures-too-close @ check.law.secondBar');
  });
});
