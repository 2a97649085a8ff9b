import { describe, expect, test } from 'vitest';
import { measured } from '#core/check/measured.ts';
import type { Round } from '#core/check/types.ts';
import { given, refused } from '#core/working/answer.ts';
import { checked, minute, oneRound } from '../../../support/check.ts';
import { num } from '../../../support/sample.ts';
import { faultsOf, originsOf } from '../../../support/working.ts';

/** Everything that can be measured on the headland, in two rounds. */
const all: Omit<Round, 'setting'> = {
  displayKmH: 6,
  runs: [{ distanceM: 100, seconds: 60, direction: 'out' }, { distanceM: 100, seconds: 61, direction: 'out' }, { distanceM: 100, seconds: 62, direction: 'back' }],
  gauges: { readBar: 10, masterBar: 9.8, farBar: 9, oneSideBar: 11 },
  refill: { kind: 'standing', seconds: 240, litres: 70, litresErrorL: 1, secondsError: 1 },
  catches: minute(1.1),
  law: { firstBar: 5, firstLPerMin: 10, secondBar: 10, secondLPerMin: 14 }
};
const course: Omit<Round, 'setting'> = { runs: [{ distanceM: 100, seconds: 60 }], refill: { kind: 'course', distanceM: 300, litres: 52 } };
const whole = () => checked([all, course], { block: { areaHa: 2 }, rung: { mix: { usedL: 900 } } });
/** What the headland adds; the machine and the canopy are told elsewhere. */
const own = (line: string) => /^(check|mix|areaHa|setting)/.test(line);

describe('the working of a check', () => {
  test('each given value is of its unit, as sure as it is, and leads to its field', () => {
    const { rounds, outcome, remedies, used } = whole();
    expect(originsOf([rounds, outcome, remedies, used]).filter(own)).toEqual([
      'areaHa ha stated',
      'check.catches.litres L measured',
      'check.catches.meanFlow L/min measured',
      'check.catches.meanLitres L measured',
      'check.catches.meanRatio 1 measured',
      'check.catches.meanSeconds s measured',
      'check.catches.seconds s measured',
      'check.displayKmH km/h stated',
      'check.gauges.farBar bar measured',
      'check.gauges.masterBar bar measured',
      'check.gauges.oneSideBar bar measured',
      'check.gauges.readBar bar measured',
      'check.law.firstBar bar measured',
      'check.law.firstLPerMin L/min measured',
      'check.law.secondBar bar measured',
      'check.law.secondLPerMin L/min measured',
      'check.refill.distanceM m measured',
      'check.refill.litres L measured',
      'check.refill.litresErrorL L stated',
      'check.refill.seconds s measured',
      'check.refill.secondsError s stated',
      'check.runs.distanceM m measured',
      'check.runs.meanSeconds s measured',
      'check.runs.middle km/h measured',
      'check.runs.number 1 derived',
      'check.runs.seconds s measured',
      // Of three runs, and of one that tells none.
      'check.runs.spread km/h assumed',
      'check.runs.spread km/h measured',
      'check.studentT 1 derived',
      'check.water 1 stated',
      'mix.usedL L measured',
      'setting.pressureBar bar stated',
      'setting.speedKmH km/h stated'
    ]);
    expect(originsOf(checked([all], { rung: { mix: { usedL: 900, areaHa: 2 } } }).used).filter(own)).toContain('mix.areaHa ha stated');
  });
  test('each figure is its formula’s', () => {
    const { rounds, outcome, remedies, used } = whole();
    expect(faultsOf([rounds, outcome, remedies, used])).toEqual([]);
  });
  test('a flow taken over by the count of nozzles says how many', () => {
    const state = checked([{ ...all, setting: { speedKmH: 6, pressureBar: 10, gear: 'high', ptoRpm: 540 } }], { setting: { nozzles: [{ position: 'L8', open: false }] } });
    expect(originsOf(state.outcome)).toContain('check.openNozzles 1 exact');
    expect(faultsOf(state.outcome)).toEqual([]);
  });
});

describe('a measured value', () => {
  test('has half of its interval on either side', () => {
    expect(measured(given(200, 'L/ha'), given(5, '%')).interval).toEqual({ low: 190, high: 210 });
    expect(measured(given(-200, 'L/ha'), given(5, '%')).interval).toEqual({ low: -210, high: -190 });
  });
  test('has none where it or its error is not known', () => {
    const [value, no] = [given(200, 'L/ha'), refused('no', 'here')];
    expect(measured(value, no)).toEqual({ value, error: no, interval: null });
    expect(measured(no, value)).toEqual({ value: no, error: value, interval: null });
  });
});

describe('gauges', () => {
  const at = (gauges: NonNullable<Round['gauges']>) => oneRound({ gauges }).round.pressure;
  test('without any, the pressure that was set', () => {
    const { pressure } = oneRound({}).round;
    expect(pressure).toMatchObject({ gauges: null, from: 'setting', proven: false, gaugeOff: null, loss: null, flowLoss: null, oneSide: null });
    expect(pressure.atNozzles).toEqual({ kind: 'given', value: 10, unit: 'bar', certainty: 'stated', path: 'setting.pressureBar' });
  });
  test('proven at the far nozzle, or beside a gauge that is right; not by the machine’s own', () =>
    expect([at({ readBar: 10 }), at({ masterBar: 10 }), at({ farBar: 9 })].map((p) => [p.from, p.proven])).toEqual([['gauge', false], ['master', true], ['far', true]]));
  test('loss on the way is from the right gauge, else from the machine’s', () => {
    // 9 of 10 and of 9.6 bar; √0.9 of the flow.
    expect(num(at({ readBar: 10, farBar: 9 }).loss)).toBeCloseTo(10, 9);
    expect(num(at({ readBar: 10, masterBar: 9.6, farBar: 9 }).loss)).toBeCloseTo(6.25, 9);
    expect(num(at({ readBar: 10, farBar: 9 }).flowLoss)).toBeCloseTo(5.131670, 6);
    expect(at({ farBar: 9 }).loss).toBeNull();
  });
  test('the machine’s gauge against the right one, and one side against both', () => {
    const p = at({ readBar: 10.5, masterBar: 10, oneSideBar: 11.55 });
    expect([num(p.gaugeOff), num(p.oneSide)]).toEqual([expect.closeTo(5, 9), expect.closeTo(10, 9)]);
    expect([at({ masterBar: 10, oneSideBar: 11 }).gaugeOff, at({ masterBar: 10, oneSideBar: 11 }).oneSide]).toEqual([null, null]);
  });
  test('a gauge that reads nothing, or less, tells nothing', () => expect(at({ readBar: 0, masterBar: -1 })).toMatchObject({ from: 'setting', proven: false, gaugeOff: null }));
});
