import { describe, expect, test } from 'vitest';
import { given, refused } from '#core/working/answer.ts';
import { loads, type Case } from '../../../support/loads.ts';
import { num, refusal } from '../../../support/sample.ts';
import { faultsOf, originsOf } from '../../../support/working.ts';

/** 6 ha at 500 L/ha, three loads of 1000 L from a tank of 1500 L that keeps 20 L, unless changed. */
const byRows: Case = { areaHa: null, block: { rows: 100, rowLengthM: 150 } };
const ofCanopy = (line: string) => !line.startsWith('canopy.');

describe('where figures come from', () => {
  test('each given value is of its unit, as sure as it is, and leads to its field', () => {
    expect(originsOf(loads({ ...byRows, mix: { turnSeconds: 30, fillMinutes: 20 } })).filter(ofCanopy)).toEqual([
      '(geometry) 1 derived',
      '(habit) 1 practice',
      'label.rate kg/ha stated',
      'machine.residualL L stated',
      'machine.tankL L stated',
      'mix.fillMinutes min stated',
      'mix.turnSeconds s stated',
      'own/x L/min stated',
      'own/x bar stated',
      'pattern 1 stated',
      'rowLengthM m measured',
      'rowSpacingM m measured',
      'rows 1 stated',
      'setting.pressureBar bar stated',
      'setting.speedKmH km/h stated'
    ]);
    const part = originsOf(loads({ mix: { areaHa: 2 }, residualL: null }));
    expect(part).toEqual(expect.arrayContaining(['mix.areaHa ha stated', 'machine.residualL L assumed', 'rowLengthM h assumed']));
    expect(originsOf(loads())).toContain('areaHa ha stated');
  });
  test('and each figure is its formula’s', () => {
    for (const c of [byRows, {}, { mix: { fills: 'full' } }, { labels: [{ unit: 'L', basis: 'per-100-l-dilute', rate: 0.1 }] }] satisfies Case[]) expect(faultsOf(loads(c))).toEqual([]);
  });
  test('what was assumed is listed', () => {
    expect([...loads(byRows).assumptions.keys()]).toEqual(['mix.first-water', 'mix.turn', 'mix.fill', 'mix.small-load']);
    expect(loads({ assumptions: { 'mix.first-water': 0.5 } }).firstWater).toMatchObject({ value: 0.5, certainty: 'stated' });
  });
});

test('what is mixed with what stays behind, and what that is of it', () => {
  const s = loads();
  expect([num(s.prepared), num(s.overOrdered)]).toEqual([3020, expect.closeTo(0.666667, 6)]);
  expect(s.order.map((step) => step.kind)).toEqual(['water', 'agitate', 'product', 'fill-up']);
  expect([loads(byRows).rows!.outer, loads({ ...byRows, mix: { outerPasses: 'two-sided' } }).rows!.outer]).toEqual(['one-sided', 'two-sided']);
});

describe('area', () => {
  test('by rows: what is missing is named', () => {
    expect(refusal(loads().rowsArea)).toBe('no-rows @ rows');
    expect(refusal(loads({ block: { rows: 100 } }).rowsArea)).toBe('no-row-length @ rowLengthM');
    expect(num(loads({ block: { rows: 100, rowLengthM: 140 } }).rowsArea)).toBeCloseTo(5.6, 12);
  });
});

describe('what was measured', () => {
  test('a measured speed counts for the hours, a refused one does not', () => {
    const no = refused('no', 'here');
    // 5 km/h on 4 m are 2 ha/h.
    expect(num(loads({ measured: { speed: given(5, 'km/h', 'measured') } }).work.spraying)).toBeCloseTo(3, 12);
    expect(num(loads({ measured: { speed: no } }).work.spraying)).toBeCloseTo(2.5, 12);
    const s = loads({ measured: { volume: no } });
    expect([s.volumeFrom, num(s.volume)]).toEqual(['setting', expect.closeTo(500, 9)]);
  });
});

describe('products', () => {
  test('the mix’s own; else the block’s; else none', () => {
    const names = (c: Case) => loads(c).partners.map((p) => p.label.name);
    expect(names({ labels: [{}, {}], mix: { partners: [{ label: 'p2' }] } })).toEqual(['Product 2']);
    expect(names({ mix: { partners: [] } })).toEqual(['Product 1']);
    expect(names({ labels: [] })).toEqual([]);
    expect(names({ mix: { partners: [{ label: 'gone' }, { label: 'p1' }] } })).toEqual(['Product 1']);
  });
  test('amounts of all loads, what is left behind, what was ordered and put in', () => {
    const [p] = loads({ mix: { partners: [{ label: 'p1', orderedAmount: 8, putIn: [{ load: 1, amount: 2.4 }] }] } }).partners;
    // 1.2 kg/ha in 500 L/ha are 0.24 kg in 100 L: 0.048 in 20.
    expect([num(p!.strength), num(p!.exact), num(p!.left), num(p!.concentration)]).toEqual([0.24, 7.2, 0.048, 1.5].map((v) => expect.closeTo(v, 9) as number));
    expect([p!.forArea, p!.forResidual, p!.total, p!.step, p!.ordered, p!.putIn]).toEqual([7.2, 0.048, 7.248, 0.001, 8, [{ load: 1, amount: 2.4 }]]);
    expect([loads().partners[0]!.ordered, loads().partners[0]!.putIn]).toEqual([undefined, []]);
  });
  test('where the dose is not known there is nothing to weigh', () => {
    const s = loads({ labels: [{ basis: 'percent-of-water', rate: 1 }] });
    expect(s.partners[0]).toMatchObject({ forArea: 0, forResidual: 0, total: 0, step: 0.001 });
    expect(s.loads.map((l) => [l.products[0]!.amount, l.products[0]!.total, refusal(l.products[0]!.exact)])).toEqual([1, 2, 3].map(() => [0, 0, 'no-reference-water @ label.referenceWaterLPerHa']));
  });
  test('without loads as well, though the dose is known', () => {
    const s = loads({ tankL: 20 });
    expect([s.loads, s.partners[0]!.total, num(s.partners[0]!.exact)]).toEqual([[], 0, expect.closeTo(7.2, 9)]);
  });
  test('no dilute water, no concentration', () => {
    const { concentration } = loads({ block: { strategy: 'leaf-wall' } }).partners[0]!;
    expect(concentration).toEqual({ kind: 'refused', code: 'no-dilute-water', path: 'strategy', parameters: { strategy: 'leaf-wall' } });
  });
  test('each load has its share and the first one that of what stays behind', () => {
    const [first, , last] = loads({ mix: { fills: 'full' } }).loads;
    // 1480 L are 2.96 ha, 40 L are 0.08.
    expect(first!.products[0]).toMatchObject({ amount: 3.552, forResidual: 0.048, total: 3.6, exact: { value: expect.closeTo(3.552, 9) as number } });
    expect(last!.products[0]).toMatchObject({ amount: 0.096, forResidual: 0, total: 0.096 });
    expect([first!.number, last!.number]).toEqual([1, 3]);
    expect([num(first!.area), num(last!.area)]).toEqual([expect.closeTo(2.96, 9), expect.closeTo(0.08, 9)]);
  });
});

describe('rows of a load', () => {
  const rows = (c: Case) => loads(c).loads.map((l) => l.rows);
  const each = (...values: number[]) => values.map((v) => expect.closeTo(v, 9) as number);
  test('by its share of the mix', () => expect(rows({ block: { rows: 100 }, mix: { fills: 'full' } })).toEqual(each(49.333333333, 49.333333333, 1.333333333)));
  test('of a part of the block, its part of the rows, by area or by the rows themselves', () => {
    expect(rows({ block: { rows: 100 }, mix: { areaHa: 3 } })).toEqual(each(25, 25));
    expect(rows({ ...byRows, mix: { areaHa: 3 } })).toEqual(each(25, 25));
  });
  test('not known where the block’s own area is not, or no rows are', () => {
    expect(rows({ areaHa: null, block: { rows: 100 }, mix: { areaHa: 3 } })).toEqual([null, null]);
    expect(rows({})).toEqual([null, null, null]);
  });
});

describe('rinsing', () => {
  test('ten times what stays behind; a tenth of the tank where that is nothing', () => {
    const { rinse } = loads();
    // 20 of 220 L at once; 20 of 86.67 three times.
    expect([num(rinse.tenfold), num(rinse.tenth), num(rinse.water), num(rinse.once), num(rinse.thrice)]).toEqual([200, 150, 200, expect.closeTo(9.090909, 6), expect.closeTo(1.228949, 6)]);
    expect(num(loads({ residualL: 0 }).rinse.water)).toBe(150);
    expect(loads({ residualL: 0 }).rinse.once.kind).toBe('refused');
  });
});

describe('the day’s work', () => {
  const hours = (c: Case) => {
    const { spraying, outer, turning, filling, total } = loads(c).work;
    return [spraying, outer, turning, filling, total].map((a) => Math.round(num(a) * 1e6) / 1e6);
  };
  test('spraying, outer passes, turns, fills', () =>
    // 15 000 m of alleys and one more pass of 150 m at 6 km/h; 100 turns of 36 s; three fills of 20 min.
    expect(hours({ ...byRows, mix: { turnSeconds: 36, fillMinutes: 20 } })).toEqual([2.5, 0.025, 1, 1, 4.525]));
  test('of a part of the block: its share of the passes, none of them an outer one', () =>
    // 50.5 passes are 51, so 50 turns; 1500 L are two loads.
    expect(hours({ ...byRows, mix: { areaHa: 3, turnSeconds: 36, fillMinutes: 30 } })).toEqual([1.25, 0, 0.5, 1, 2.75]));
  test('passes that come out whole are not rounded up', () =>
    // 99 rows have 100 passes; 5.5 of 10 ha are 55 of them, though binary arithmetic makes a hair more of it: 54 turns.
    expect(hours({ block: { rows: 99 }, areaHa: 10, mix: { areaHa: 5.5, turnSeconds: 100, fillMinutes: 0 } })[2]).toBe(1.5));
  test('a single pass has no turn', () => expect(hours({ areaHa: 6, block: { rows: 1, pattern: { kind: 'one-side-one-face', side: 'left' } }, mix: { fillMinutes: 0 } })[2]).toBe(0));
  test('without rows, or for a part of a block whose area is not known, turns are not known', () => {
    expect(refusal(loads().work.turning)).toBe('no-rows @ rows');
    expect(refusal(loads({ areaHa: null, block: { rows: 100 }, mix: { areaHa: 3 } }).work.turning)).toBe('no-rows @ rows');
    expect(refusal(loads().work.efficiency)).toBe('no-rows @ rows');
  });
  test('what was not said of turns and fills is 25 s and 25 min', () => expect(hours({ areaHa: 6, block: { rows: 144 } }).slice(2, 4)).toEqual([1, 1.25]));
  test('efficiency is what is done of what could be', () => {
    const { theoretical, effective, efficiency } = loads({ ...byRows, mix: { turnSeconds: 36, fillMinutes: 20 } }).work;
    expect([num(theoretical), num(effective), num(efficiency)]).toEqual([2.4, 1.325967, 55.248619].map((v) => expect.closeTo(v, 6) as number));
  });
});
