import { describe, expect, test } from 'vitest';
import type { Remedy } from '#core/check/state.ts';
import type { SpeedRun } from '#core/check/types.ts';
import { findingSentence } from '#words/index.ts';
import '#words/headland/join.ts';
import { checked, minute, oneRound, said } from '../../../support/check.ts';
import { num, refusal, setting } from '../../../support/sample.ts';

const runs: SpeedRun[] = [{ distanceM: 100, seconds: 60 }, { distanceM: 100, seconds: 60 }, { distanceM: 100, seconds: 60 }];
const right = { runs, catches: minute(1.095) };
const shut = (...positions: string[]) => positions.map((position) => ({ position, open: false }));

describe('a test belongs to the setting that it was made with', () => {
  const standingOf = (now: object) => {
    const state = checked([{ ...right, setting: setting() }], { setting: now });
    return { speed: state.rounds[0]!.speedStanding, output: state.rounds[0]!.outputStanding, state };
  };
  test('unchanged, both hold', () => {
    const { speed, output } = standingOf({});
    expect([speed.stands, output.stands]).toEqual(['holds', 'holds']);
  });
  test.each([
    ['speed', { speedKmH: 5 }, ['setting.speedKmH'], []],
    ['fan gear', { gear: 'low' }, ['setting.gear'], []],
    ['PTO speed', { ptoRpm: 500 }, ['setting.ptoRpm'], ['setting.ptoRpm']],
    ['pressure', { pressureBar: 11 }, [], ['setting.pressureBar']],
    ['a size', { nozzles: [{ position: 'L4', size: '02' }] }, [], ['setting.sizes']],
    ['a size and the open ones', { nozzles: [{ position: 'L4', size: '02' }, ...shut('R8')] }, [], ['setting.sizes', 'setting.nozzles']]
  ] as const)('other %s', (_, now, speedChanged, outputChanged) => {
    const { speed, output } = standingOf(now);
    expect(speed).toEqual({ stands: speedChanged.length ? 'stale' : 'holds', changed: [...speedChanged] });
    expect(output).toEqual({ stands: outputChanged.length ? 'stale' : 'holds', changed: [...outputChanged] });
  });
  test('a swivel changes neither', () => expect(standingOf({ nozzles: [{ position: 'L4', swivelDeg: 5 }] }).output.stands).toBe('holds'));
  test('the size of a nozzle that is shut both times does not matter', () => {
    const state = checked([{ ...right, setting: setting({ nozzles: [...shut('L8')] }) }], { setting: { nozzles: [{ position: 'L8', open: false, size: '04' }] } });
    expect(state.rounds[0]!.outputStanding.stands).toBe('holds');
  });
  test('a nozzle that was opened with another size is another open nozzle, and no longer alike', () => {
    const state = checked([{ ...right, setting: setting({ nozzles: [...shut('L8')] }) }], { setting: { nozzles: [{ position: 'L8', size: '02' }] } });
    expect(state.rounds[0]!.outputStanding).toEqual({ stands: 'stale', changed: ['setting.nozzles'] });
  });
  test('what a nozzle carries that is shut both times does not make them unlike', () => {
    const odd = { position: 'L8', open: false, size: '04' };
    const state = checked([{ ...right, setting: setting({ nozzles: [odd] }) }], { setting: { nozzles: [odd, ...shut('R8')] } });
    expect(state.rounds[0]!.outputStanding).toEqual({ stands: 'scaled', changed: ['setting.nozzles'] });
  });
  test('fewer open, all alike: by the count, and said to be so', () => {
    const { output, state } = standingOf({ nozzles: shut('L8', 'R8') });
    expect(output.stands).toBe('scaled');
    expect(num(state.outcome.flow.value)).toBeCloseTo(14 * 1.095, 9);
    expect(said(state)).toContain('check-output-scaled');
  });
  test('fewer open, not all alike: stale', () => {
    const state = checked([{ ...right, setting: setting({ nozzles: [{ position: 'L1', size: '01' }] }) }], { setting: { nozzles: [{ position: 'L1', size: '01' }, ...shut('L8')] } });
    expect(refusal(state.outcome.flow.value)).toBe('output-stale @ check.output');
    const f = state.findings.find((x) => x.code === 'check-output-stale')!;
    expect(findingSentence(f, 'metric')).toBe('The output was measured with other open nozzles. Measure it again.');
  });
  test('none open', () => expect(refusal(standingOf({ nozzles: minute(1).map((c) => ({ position: c.position, open: false })) }).state.outcome.volume.value)).toBe('output-stale @ check.output'));
  test('stale speed: the output still counts, the volume does not', () => {
    const { state } = standingOf({ speedKmH: 5 });
    expect(num(state.outcome.flow.value)).toBeCloseTo(17.52, 9);
    expect(refusal(state.outcome.volume.value)).toBe('speed-stale @ check.runs');
    expect(said(state)).toContain('check-speed-stale');
  });
  test('a course does not outlive a change of speed', () => {
    const now = (speedKmH: number) => checked([{ setting: setting(), refill: { kind: 'course', distanceM: 300, litres: 52.6 } }], { setting: { speedKmH } }).outcome.volume.value;
    expect(num(now(6))).toBeCloseTo(438.3, 1);
    expect(refusal(now(5))).toBe('speed-not-measured @ check.runs');
  });
});

describe('rounds', () => {
  test('a later round takes over the speed that still holds; its own output counts', () => {
    const state = checked([right, { catches: minute(1.2) }]);
    expect([state.outcome.speedRound, state.outcome.flowRound]).toEqual([0, 1]);
    expect(num(state.outcome.volume.value)).toBeCloseTo((600 * 16 * 1.2) / (6 * 4), 9);
    expect(state.trail.map((t) => num(t.volume).toFixed(0))).toEqual(['438', '480']);
  });
  test('each line of the trail is of the setting tested then', () => {
    const low = setting({ pressureBar: 8 });
    const state = checked([{ ...right, setting: low }, { catches: minute(1.2) }]);
    expect(num(state.trail[0]!.volume)).toBeCloseTo(438, 6);
    expect(num(state.trail[1]!.volume)).toBeCloseTo(480, 6);
  });
  test('a finding about the speed of an earlier round is still told', () => expect(said(checked([{ ...right, displayKmH: 7 }, { catches: minute(1.1) }]))).toContain('check-display-high'));
  test('what was found about the output of an earlier one is not', () => expect(said(checked([{ runs, catches: minute(1.095, { L1: 0.5 }) }, { catches: minute(1.095) }]))).not.toContain('check-one-low'));
  test('no round: nothing is worked out, nothing breaks', () => {
    const state = checked([]);
    expect(state.current).toBeNull();
    expect(state.remedies).toBeNull();
    expect(refusal(state.outcome.volume.value)).toBe('output-not-measured @ check.output');
    expect(said(state)).toContain('check-walk-open');
  });
});

describe('measured against wanted', () => {
  const at = (wanted: number) => oneRound(right, { block: { ownWaterLPerHa: wanted } }).state;
  test.each([
    [438, 'within', 'check-volume-within'],
    [420, 'within', 'check-volume-within'],
    [410, 'adjust', 'check-volume-above'],
    [470, 'adjust', 'check-volume-below'],
    [390, 'other-nozzles', 'check-volume-far-above'],
    [500, 'other-nozzles', 'check-volume-far-below']
  ] as const)('438 L/ha for %s: %s', (wanted, verdict, code) => {
    const state = at(wanted);
    expect(state.outcome.verdict).toBe(verdict);
    expect(said(state)).toContain(code);
    expect(state.remedies === null).toBe(verdict === 'within');
  });
  test('a sum that is right does not pass with one nozzle clogged, another worn', () => {
    const { state } = oneRound({ runs: right.runs, catches: minute(1.095, { L1: 0.7, R2: 1.49 }) }, { block: { ownWaterLPerHa: 438 } });
    expect(state.current!.catches!.diagnosis).toBe('hidden-pair');
    expect(Math.abs(num(state.outcome.off))).toBeLessThan(1);
    expect(state.outcome.verdict).toBe('bad-nozzles');
    expect(said(state)).toContain('check-volume-hides');
    expect(said(state)).not.toContain('check-volume-within');
    expect(state.remedies).toBeNull();
  });
  test('a refill after it does not mend what the jugs have shown; another catch does', () => {
    const off = { runs: right.runs, catches: minute(1.095, { L1: 0.5 }) };
    const wanted = { block: { ownWaterLPerHa: 438 } };
    // 17.52 L/min for four minutes.
    const refilled = checked([off, { refill: { kind: 'standing', seconds: 240, litres: 70.08 } }], wanted);
    expect(refilled.outcome.flowFrom).toBe('standing');
    expect(refilled.outcome.verdict).toBe('bad-nozzles');
    expect(checked([off, { catches: minute(1.095) }], wanted).outcome.verdict).toBe('within');
  });
  test('no wanted water: measured all the same, no verdict', () => {
    const state = oneRound(right, { block: { strategy: 'leaf-wall' } }).state;
    expect(num(state.outcome.volume.value)).toBeCloseTo(438, 6);
    expect(state.outcome.verdict).toBe('unknown');
    expect(state.remedies).toBeNull();
  });
});

describe('remedies', () => {
  const remedies = (wanted: number, round = right as object, parts: object = {}) => oneRound(round, { block: { ownWaterLPerHa: wanted }, ...parts }).state.remedies!;
  const row = (wanted: number, kind: Remedy['kind']) => remedies(wanted).rows.find((r) => r.kind === kind)!;
  const suiting = (wanted: number) => remedies(wanted).rows.filter((r) => r.suits).map((r) => r.kind);

  test('pressure for a fine gap, speed for a moderate one, nozzles for a large one', () => {
    expect(suiting(410)).toEqual(['pressure']);
    expect(suiting(520)).toEqual(['speed']);
    expect(suiting(700)).toEqual(['size']);
  });
  test('each of them brings the wanted water', () => {
    for (const kind of ['size', 'speed', 'pressure'] as const) expect(num(row(470, kind).option.volume), kind).toBeCloseTo(470, 6);
  });
  test('pressure by the square from the measured flow', () => expect(num(row(470, 'pressure').option.pressure)).toBeCloseTo(10 * (470 / 438) ** 2, 6));
  test('less speed, more air per metre, less work', () => {
    const r = row(520, 'speed');
    expect(num(r.option.speed)).toBeCloseTo((6 * 438) / 520, 6);
    expect(num(r.airChange)).toBeCloseTo(100 * (520 / 438 - 1), 6);
    expect(num(r.option.workRate)).toBeCloseTo(((6 * 438) / 520) * 0.4, 6);
  });
  test('from the measured speed, not the set one', () => {
    const slow = remedies(600, { ...right, runs: [{ distanceM: 100, seconds: 72 }] }).rows.find((r) => r.kind === 'speed')!;
    // 17.52 L/min: 600·17.52/(600·4)
    expect(num(slow.option.speed)).toBeCloseTo(4.38, 6);
  });
  test('other sizes carry over that these give a tenth more than the table', () => {
    // Every nozzle 1.205 for 1.095 L/min: 482 L/ha; 700 wanted is 28 L/min. With the ratio of 1.1, size 025 gives 2.009 and 02 gives 1.607.
    const { rows } = remedies(700, { runs, catches: minute(1.205) });
    const { option } = rows.find((r) => r.kind === 'size')!;
    const count = (to: string) => option.sizes.filter((s) => s.to === to).length;
    const kept = 16 - option.sizes.length;
    const at10 = kept * 1.205 + count('02') * 1.205 * (0.8 / 0.6) + count('025') * 1.205 * (1 / 0.6);
    // What they give at the trimmed pressure is the 28 L/min.
    expect(at10 * Math.sqrt(num(option.pressure) / 10)).toBeCloseTo(28, 6);
    expect(option.sizes.length).toBeGreaterThan(0);
  });
  test('a bad nozzle is put right first: nothing suits before', () => {
    const r = remedies(410, { runs, catches: minute(1.095, { L3: 1.5, R3: 1.095 }) });
    expect(r.firstReplace).toEqual(['L3']);
    expect(r.rows.some((x) => x.suits)).toBe(false);
  });
  test('a worn set and sides that differ are put right first as well', () => {
    const worn = remedies(480, { runs, catches: minute(1.26), gauges: { readBar: 10, masterBar: 10 } });
    expect(worn.firstReplace.length).toBe(16);
    expect(worn.rows.some((x) => x.suits)).toBe(false);
    const uneven = remedies(410, { runs, catches: minute(1.03, Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 8].map((n) => [`R${n}`, 1.16]))) });
    expect(uneven.rows.some((x) => x.suits)).toBe(false);
  });
  test('all low alike is a matter of pressure', () => {
    const low = remedies(410, { runs, catches: minute(0.96) });
    expect(low.firstReplace).toEqual([]);
    expect(low.rows.filter((x) => x.suits).map((x) => x.kind)).toEqual(['pressure']);
  });
  test('outside the machine’s range it is not possible, and says why', () => {
    const { option, suits } = row(1000, 'speed');
    expect(suits).toBe(false);
    expect(option.feasible).toBe(false);
    expect(option.remarks.map((x) => x.code)).toContain('below-speed-range');
  });
});

test('litres used: own area before the block’s, measured volume before the set one', () => {
  const used = (mix: object, round: object = right) => oneRound(round, { block: { areaHa: 2 }, rung: { mix: { usedL: 438, ...mix } as { usedL: number } } }).state.used!;
  expect(num(used({ areaHa: 1 }).off)).toBeCloseTo(0, 6);
  expect(num(used({}).predicted)).toBeCloseTo(876, 6);
  // Nothing measured: sixteen 015 at 10 bar by the table.
  expect(num(used({ areaHa: 1 }, {}).predicted)).toBeCloseTo((600 * 16 * 0.6 * Math.sqrt(10 / 3)) / 24, 6);
  expect(oneRound(right).state.used).toBeNull();
});

test('the walk: what is done, open, faulty', () => {
  const { walk } = checked([], {}, { ticks: [{ item: 'clean', state: 'fine' }, { item: 'guards', state: 'fault' }, { item: 'watch', state: 'fine' }, { item: 'fan-on', state: 'fault' }] });
  expect([walk.done, walk.of, walk.faults, walk.termsBroken]).toEqual([2, 13, ['guards'], ['fan-on']]);
  expect(walk.toolsOpen).not.toContain('watch');
  expect(walk.open).not.toContain('guards');
});
test('missing guards stop everything, a missing ribbon does not', () => {
  const severity = (item: 'guards' | 'ribbon') => checked([], {}, { ticks: [{ item, state: 'fault' }] }).findings.find((f) => f.code === `check-fault-${item}`)!.severity;
  expect([severity('guards'), severity('ribbon')]).toEqual(['stop', 'note']);
});
