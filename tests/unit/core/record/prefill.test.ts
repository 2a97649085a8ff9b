import { describe, expect, it } from 'vitest';
import { calibrationFields, treatmentFields } from '#core/record/prefill.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Round } from '#core/check/types.ts';
import type { Document, Rung } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { document, label, setting, shut, type Parts } from '../../../support/sample.ts';

const DAY = '2031-05-12';
const both = (parts: Parts, edit: (d: Document) => Document = (d) => d): [Document, Result] => {
  const d = edit(document(parts));
  const r = evaluate(d, 'block', 'now');
  if ('kind' in r) throw new Error(r.code);
  return [d, r];
};

describe('a calibration record begun from a round', () => {
  const round = {
    setting: setting({ speedKmH: 5, nozzles: shut('L8') }),
    displayKmH: 5.9,
    runs: [{ distanceM: 100, seconds: 66.8, direction: 'out' as const }, { distanceM: 100, seconds: 67.2 }],
    gauges: { restBar: 0, readBar: 10.2, farBar: 9.6 },
    refill: { kind: 'standing' as const, seconds: 180, litres: 53 },
    catches: [{ position: 'L1', litres: 0.98, seconds: 60 }, { position: 'R1', litres: 1.02, seconds: 60 }]
  };
  const fields = () => calibrationFields(...both({ day: { temperatureC: 14, windMPerS: 1.5 }, rung: { check: { ticks: [{ item: 'leaks', state: 'fine' }, { item: 'drips', state: 'fault' }], rounds: [{ setting: setting() }, round] } } }), DAY);

  it('raw runs, catches and readings stand as they were typed', () => {
    const f = fields();
    expect(f.speedRuns).toBe('100 m 66.8 s out\n100 m 67.2 s');
    expect(f.catches).toBe('L1 0.98 L 60 s\nR1 1.02 L 60 s');
    expect([f.refillL, f.refillS, f.refillM]).toEqual([53, 180, undefined]);
    expect([f.displayKmH, f.gaugeRestBar, f.gaugeBar, f.farGaugeBar, f.masterGaugeBar]).toEqual([5.9, 0, 10.2, 9.6, undefined]);
    expect(f.walkRound).toBe('leaks fine\ndrips fault');
  });
  it('the setting is that of the round, not the present one', () => {
    const f = fields();
    expect([f.setSpeedKmH, f.setPressureBar, f.fanGear, f.ptoRpm]).toEqual([5, 10, 'High', 540]);
    const nozzles = f.nozzles!.split('\n');
    expect(nozzles).toHaveLength(16);
    expect(nozzles[0]).toBe('L1 iso-10625 015 open');
    expect(nozzles.filter((n) => n.endsWith('shut'))).toEqual(['L8 iso-10625 015 shut']);
  });
  it('block, row spacing, driving, width, weather', () => {
    const f = fields();
    expect([f.date, f.blockName, f.stage, f.rowSpacingM, f.pattern, f.widthServedM, f.temperatureC, f.windMPerS, f.tolerance]).toEqual([DAY, 'Block', 'Now', 4, 'every-alley', 4, 14, 1.5, 'normal']);
  });
  it('figures that were worked out: 200 m in 134 s, 53 L in 3 min, over 4 m', () => {
    const f = fields();
    expect(f.speedKmH).toBeCloseTo(5.373, 3);
    expect(f.flowLPerMin).toBeCloseTo(17.667, 3);
    // 17.667 L/min on 5.373 km/h × 4 m = 2.149 ha/h
    expect(f.volumeLPerHa).toBeCloseTo(493.2, 0);
    expect(f.offWantedPct).toBeCloseTo((f.volumeLPerHa! / f.wantedLPerHa! - 1) * 100, 2);
  });
  it('nothing is guessed: what was not measured is not there', () => {
    const f = fields();
    for (const k of ['operator', 'tyre', 'humidityPct', 'nextDue', 'masterGaugeBar', 'action'] as const) expect(f, k).not.toHaveProperty(k);
  });
  it('a repeat takes the runs of the round before, where they still hold', () => {
    const [e, s] = both({ rung: { check: { rounds: [{ setting: setting(), runs: round.runs }, { setting: setting(), refill: round.refill }] } } });
    const g = calibrationFields(e, s, DAY);
    expect(g.speedRuns).toBe('100 m 66.8 s out\n100 m 67.2 s');
    expect([g.refillL, g.flowLPerMin]).toEqual([53, 17.6667]);
  });
  it('an output taken over from another set of open nozzles was not measured', () => {
    const [e, s] = both({ setting: { nozzles: shut('L8', 'R8') }, rung: { check: { rounds: [{ setting: setting(), runs: round.runs, refill: round.refill }, { setting: setting({ nozzles: shut('L8', 'R8') }), runs: round.runs }] } } });
    const g = calibrationFields(e, s, DAY);
    expect(g.speedKmH).toBeCloseTo(5.373, 3);
    for (const k of ['flowLPerMin', 'volumeLPerHa', 'offWantedPct', 'refillL'] as const) expect(g, k).not.toHaveProperty(k);
  });
  it('without any round, the present setting', () => {
    const [e, s] = both({});
    expect(calibrationFields(e, s, DAY)).toMatchObject({ setSpeedKmH: 6, setPressureBar: 10, machine: 'Arc' });
    expect(calibrationFields(e, s, DAY)).not.toHaveProperty('tolerance');
  });
});

describe('what a calibration record takes from where', () => {
  const runs = [{ distanceM: 100, seconds: 72 }];
  const minute = (litres: number) => ['L', 'R'].flatMap((side) => [1, 2, 3, 4, 5, 6, 7, 8].map((n) => ({ position: `${side}${n}`, litres, seconds: 60 })));
  const record = (check: NonNullable<Rung['check']>, parts: Parts = {}) => calibrationFields(...both({ ...parts, rung: { check } }), DAY);

  it('catches: their mean, both sides, how far each is off, and what is wanted', () => {
    // Eight of 1 L/min and eight of which one gives 1.16: mean 1.01 L/min; R8 is 1.16/1.01 of it, the others 1/1.01.
    const catches = minute(1).map((c) => (c.position === 'R8' ? { ...c, litres: 1.16 } : c));
    const f = record({ rounds: [{ setting: setting(), runs, catches }] }, { block: { ownWaterLPerHa: 500 } });
    expect([f.meanNozzleLPerMin, f.leftLPerMin, f.rightLPerMin, f.flowLPerMin]).toEqual([1.01, 8, 8.16, 16.16]);
    expect(f.deviations!.split('\n')).toEqual([...minute(1).slice(0, 15).map((c) => `${c.position} -0.990099 %`), 'R8 14.8515 %']);
    // 16.16 L/min at 5 km/h on 4 m are 484.8 L/ha, 3.04 % under 500.
    expect([f.speedKmH, f.volumeLPerHa, f.wantedLPerHa, f.offWantedPct]).toEqual([5, 484.8, 500, -3.04]);
  });
  it('a nozzle that no table knows has no deviation to write down, and is no line', () => {
    const f = record({ rounds: [{ setting: setting({ nozzles: [{ position: 'L1', size: 'none' }] }), catches: minute(1) }] }, { setting: { nozzles: [{ position: 'L1', size: 'none' }] } });
    expect(f.deviations!.split('\n')).toHaveLength(15);
    expect(f.deviations).toMatch(/^L2 /);
    expect(f.nozzles).toMatch(/^L1 iso-10625 none open\nL2 iso-10625 015 open/);
  });
  it('a refill on the spot has seconds, along a course metres', () => {
    const part = (refill: Round['refill']) => {
      const f = record({ rounds: [{ setting: setting(), ...(refill ? { refill } : {}) }] });
      return [f.refillL, f.refillS, f.refillM];
    };
    expect(part({ kind: 'standing', seconds: 180, litres: 53 })).toEqual([53, 180, undefined]);
    expect(part({ kind: 'course', distanceM: 300, litres: 52 })).toEqual([52, undefined, 300]);
    expect(part(undefined)).toEqual([undefined, undefined, undefined]);
  });
  it('the tolerance set chosen; the usual one where none was', () => {
    expect(record({ tolerance: 'strict', rounds: [] }).tolerance).toBe('strict');
    expect(record({ rounds: [] }).tolerance).toBe('normal');
  });
  it('a display without runs is of the round in hand; with runs of the round before, of that one', () => {
    expect(record({ rounds: [{ setting: setting(), displayKmH: 5.5 }] }).displayKmH).toBe(5.5);
    expect(record({ rounds: [{ setting: setting(), displayKmH: 5.2, runs }, { setting: setting(), displayKmH: 5.5 }] }).displayKmH).toBe(5.2);
  });
  it('gauges and catches of the round that the flow comes from; where none holds, of the round in hand', () => {
    const first = { setting: setting(), gauges: { readBar: 10, masterBar: 9.8 }, catches: minute(1) };
    const of = (second: Round) => {
      const f = record({ rounds: [first, second] });
      return [f.gaugeBar, f.masterGaugeBar, f.catches?.split('\n').length, f.flowLPerMin];
    };
    expect(of({ setting: setting(), gauges: { readBar: 9 } })).toEqual([10, 9.8, 16, 16]);
    expect(of({ setting: setting({ pressureBar: 9 }), gauges: { readBar: 9 } })).toEqual([9, undefined, undefined, undefined]);
  });
  it('sizes and tables set at a position are those written down; a gear that is not known keeps its name', () => {
    const f = record({ rounds: [{ setting: setting({ gear: 'odd', nozzles: [{ position: 'L2', table: 'own', size: 'x' }, { position: 'L3', open: false }] }) }] });
    expect(f.nozzles!.split('\n').slice(0, 4)).toEqual(['L1 iso-10625 015 open', 'L2 own x open', 'L3 iso-10625 015 shut', 'L4 iso-10625 015 open']);
    expect(f.fanGear).toBe('odd');
  });
  it('a machine without nozzles, a walk without ticks: no empty lines', () => {
    const f = record({ rounds: [{ setting: setting(), runs: [], catches: [] }], ticks: [] }, { machine: { nozzles: [] } });
    for (const k of ['nozzles', 'walkRound', 'speedRuns', 'catches', 'deviations'] as const) expect(f, k).not.toHaveProperty(k);
  });
});

describe('treatment records begun from a mix', () => {
  it('the block’s own product: 1.5 kg/ha on 1.8 ha are 2.7 kg', () => {
    const [d, r] = both({ label: { name: 'Cover', rate: 1.5 }, block: { areaHa: 1.8, crop: 'apple' }, rung: { bbch: 71 } });
    const [f, ...rest] = treatmentFields(d, r, DAY);
    expect(rest).toEqual([]);
    expect(f).toMatchObject({ date: DAY, productName: 'Cover', productKgPerHa: 1.5, productTotalKg: 2.7, treatedAreaHa: 1.8, crop: 'apple', bbch: 71, blockName: 'Block' });
    expect(f).not.toHaveProperty('productLPerHa');
    expect(f).not.toHaveProperty('startTime');
    expect(f).not.toHaveProperty('mixedWith');
    // 16 nozzles of 015 at 10 bar: 0.6 × √(10/3) × 16 = 17.53 L/min; 600 × 17.53 / (6 × 4)
    expect(f!.volumeLPerHa).toBeCloseTo(438.2, 1);
  });
  it('one record for each product of the mix, each naming the others, in the field of its unit', () => {
    const [d, r] = both({ label: { name: 'Cover', rate: 1.5 }, block: { areaHa: 2 }, rung: { mix: { areaHa: 1.5, usedL: 640, partners: [{ label: 'label' }, { label: 'oil' }] } } }, (x) => ({
      ...x,
      labels: [...x.labels, label({ id: 'oil', name: 'Oil', unit: 'L', rate: 0.4 })]
    }));
    const list = treatmentFields(d, r, DAY);
    expect(list.map((f) => [f.productName, f.productKgPerHa, f.productTotalKg, f.productLPerHa, f.productTotalL, f.mixedWith, f.treatedAreaHa, f.mixUsedL])).toEqual([
      ['Cover', 1.5, 2.25, undefined, undefined, 'Oil', 1.5, 640],
      ['Oil', undefined, undefined, 0.4, 0.6, 'Cover', 1.5, 640]
    ]);
  });
  it('what was put into every load is what was used; one load untold, and it is what the loads were to take', () => {
    const used = (...putIn: { load: number; amount: number }[]) => {
      // 438 L/ha on 4 ha are two loads of a 1000 L tank
      const [d, r] = both({ label: { rate: 1.5 }, block: { areaHa: 4 }, rung: { mix: { partners: [{ label: 'label', putIn }] } } });
      return treatmentFields(d, r, DAY)[0]!.productTotalKg;
    };
    expect([used({ load: 1, amount: 3.1 }, { load: 2, amount: 2.95 }), used({ load: 1, amount: 3.1 }), used()]).toEqual([6.05, 6, 6]);
  });
  it('the volume that was measured for this setting, not the one of the tables', () => {
    const check = { rounds: [{ setting: setting(), runs: [{ distanceM: 100, seconds: 66.8 }], refill: { kind: 'standing' as const, seconds: 180, litres: 53 } }] };
    const volume = (set: Parts['setting']) => {
      const [d, r] = both({ ...(set ? { setting: set } : {}), rung: { check } });
      return treatmentFields(d, r, DAY)[0]!.volumeLPerHa!;
    };
    // 17.667 L/min at 5.389 km/h over 4 m
    expect(volume(undefined)).toBeCloseTo(491.7, 0);
    // other pressure: nothing is measured of it, 0.6 × √(12/3) × 16 × 600 / (6 × 4)
    expect(volume({ pressureBar: 12 })).toBeCloseTo(480, 0);
  });
  it('a volume taken over by the count of open nozzles was not measured: the tables’ counts', () => {
    const check = { rounds: [{ setting: setting(), runs: [{ distanceM: 100, seconds: 60 }], refill: { kind: 'standing' as const, seconds: 180, litres: 53 } }] };
    const [d, r] = both({ setting: { nozzles: shut('L8', 'R8') }, rung: { check } });
    // 14 × 0.6 × √(10/3) L/min × 600 / (6 × 4)
    expect(treatmentFields(d, r, DAY)[0]!.volumeLPerHa).toBeCloseTo(383.4, 1);
  });
  it('product on the area is known though no loads are', () => {
    const [d, r] = both({ label: { rate: 1.5 }, block: { areaHa: 1.8 }, machine: { tankL: 20, residualL: 20 } });
    expect(treatmentFields(d, r, DAY)[0]).toMatchObject({ productKgPerHa: 1.5, productTotalKg: 2.7 });
  });
  it('a dose or an area that is not known makes no total', () => {
    const total = (parts: Parts) => treatmentFields(...both(parts), DAY)[0]!;
    const noDose = total({ label: { basis: 'percent-of-water', rate: 1 }, block: { areaHa: 1.8 } });
    expect([noDose.productName, noDose.productKgPerHa, noDose.productTotalKg]).toEqual(['Sample', undefined, undefined]);
    const noArea = total({ label: { rate: 1.5 } });
    expect([noArea.productKgPerHa, noArea.productTotalKg, noArea.treatedAreaHa]).toEqual([1.5, undefined, undefined]);
  });
  it('three products: each names the other two', () => {
    const [d, r] = both({ label: { name: 'One' }, block: { areaHa: 2 }, rung: { mix: { partners: ['label', 'b', 'c'].map((l) => ({ label: l })) } } }, (x) => ({
      ...x,
      labels: [...x.labels, label({ id: 'b', name: 'Two' }), label({ id: 'c', name: 'Three' })]
    }));
    expect(treatmentFields(d, r, DAY).map((f) => f.mixedWith)).toEqual(['Two\nThree', 'One\nThree', 'One\nTwo']);
  });
  it('without a product or an area, what is known', () => {
    const [d, r] = both({});
    const [f] = treatmentFields(d, r, DAY);
    expect(f).not.toHaveProperty('productName');
    expect(f).not.toHaveProperty('treatedAreaHa');
    expect(f!.setSpeedKmH).toBe(6);
  });
});
