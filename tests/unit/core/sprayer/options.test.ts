import { describe, expect, test } from 'vitest';
import { optionsFor, type Option } from '#core/sprayer/options.ts';
import type { DropletClass, NozzleTable } from '#core/sprayer/types.ts';
import { given, refused, type Answer } from '#core/working/answer.ts';
import { arcNozzles, num, onlyOpen, refusal, result, shut, table, type Parts } from '../../../support/sample.ts';
import { faultsOf } from '../../../support/working.ts';

/** Sizes named by their flow at 10 bar, not in order, as a table may print them. */
const sizes = ['1.5', '0.5', '2.5', '1', '0.75', '2', '1.25'].map((id) => ({ id, flowLPerMin: Number(id) }));
/** Sixteen of 1 L/min at 10 bar, 6 km/h in 4 m rows: 16 L/min, 400 L/ha. */
const own = (more: Partial<NozzleTable> = {}, parts: Parts = {}): Parts => ({ ...parts, tables: [table(1, { sizes, ...more }), ...(parts.tables ?? [])], machine: { nozzles: arcNozzles({ table: 'own', size: '1' }), ...parts.machine } });
const towards = (target: Answer | number, parts: Parts = own()): Readonly<Record<Option['kind'], Option>> => {
  const { sprayer, pass } = result(parts);
  const options = optionsFor(sprayer, typeof target === 'number' ? given(target, 'L/ha') : target, pass);
  return Object.fromEntries(options.map((o) => [o.kind, o])) as Record<Option['kind'], Option>;
};
const remarks = (o: Option) => o.remarks.map((r) => r.code);

test('each figure of each option is its formula’s', () => expect(faultsOf(towards(470))).toEqual([]));

describe('speed', () => {
  test('the ends of the machine’s range are within it', () => {
    // 600·16/(800·4) = 3 and 600·16/(300·4) = 8 km/h.
    expect([towards(800).speed, towards(300).speed].map((o) => [num(o.speed), o.feasible, remarks(o)])).toEqual([[3, true, ['air-per-metre']], [8, true, ['air-per-metre']]]);
    expect([towards(801).speed, towards(299).speed].map((o) => [o.feasible, remarks(o)])).toEqual([[false, ['below-speed-range', 'air-per-metre']], [false, ['above-speed-range', 'air-per-metre']]]);
  });
  test('air per metre of row is told where the speed changes by more than 2 %', () => {
    expect([393, 407].map((v) => towards(v).speed.remarks)).toEqual([[], []]);
    // Air goes with 1/speed, so with the volume: 391/400 and 409/400.
    expect([391, 409].map((v) => towards(v).speed.remarks)).toEqual([[-0.0225], [0.0225]].map(([change]) => [{ code: 'air-per-metre', parameters: { change: expect.closeTo(change!, 9) as number } }]));
  });
  test('is not possible towards what is not known', () => {
    const o = towards(refused('no', 'here')).speed;
    expect([o.feasible, o.remarks, refusal(o.speed)]).toEqual([false, [], 'no @ here']);
  });
});

describe('pressure', () => {
  test('more than a tenth of the flow is too coarse for it', () => {
    expect([439, 361].map((v) => [towards(v).pressure.feasible, remarks(towards(v).pressure)])).toEqual([[true, []], [true, []]]);
    expect([441, 359].map((v) => towards(v).pressure.remarks)).toEqual([0.1025, -0.1025].map((change) => [{ code: 'coarse-for-pressure', parameters: { change: expect.closeTo(change, 9) as number } }]));
    expect(towards(441).pressure.feasible).toBe(false);
  });
  test('brings the flow and keeps the speed', () => {
    const o = towards(420).pressure;
    expect([num(o.pressure), num(o.flow), num(o.volume), num(o.speed), num(o.workRate)]).toEqual([11.025, 16.8, 420, 6, 2.4].map((v) => expect.closeTo(v, 9) as number));
    expect(o.sizes).toEqual([]);
  });
  test('the ends of the ranges of machine and table are within them', () => {
    const at = (more: Partial<NozzleTable>, machine: Parts['machine'] = {}) => remarks(towards(400, own(more, { machine: { nozzles: arcNozzles({ table: 'own', size: '1' }), ...machine } })).pressure);
    expect(at({ pressureMinBar: 10, pressureMaxBar: 10 })).toEqual([]);
    expect(at({}, { pressureMinBar: 10, pressureMaxBar: 10 })).toEqual([]);
    expect(at({ pressureMinBar: 10.1 })).toEqual(['below-pressure-range']);
    expect(at({ pressureMaxBar: 9.9 })).toEqual(['above-pressure-range']);
    expect(at({}, { pressureMinBar: 10.1 })).toEqual(['below-pressure-range']);
    expect(at({}, { pressureMaxBar: 9.9 })).toEqual(['above-pressure-range']);
  });
  test('outside them it is not possible', () => expect(towards(400, own({ pressureMinBar: 10.1 })).pressure.feasible).toBe(false));
  test('the table of a nozzle that is shut does not matter, for pressure or sizes', () => {
    const narrow = own({}, { tables: [table(1, { id: 'narrow', pressureMinBar: 9.9, pressureMaxBar: 10.1 })], setting: { nozzles: [{ position: 'L8', table: 'narrow', size: 'x', open: false }] } });
    // Fifteen are 375 L/ha.
    expect([remarks(towards(390, narrow).pressure), remarks(towards(390, narrow).size)]).toEqual([[], []]);
  });
  test('of an unknown nozzle, no pressure can be said; shut, it does no harm', () => {
    const unknown = (open: boolean) => towards(390, own({}, { setting: { nozzles: [{ position: 'L8', size: 'none', open }] } })).pressure;
    expect([unknown(true).feasible, refusal(unknown(true).pressure)]).toEqual([false, 'unknown-nozzle @ machine.L8']);
    expect(unknown(true).droplets).toEqual([]);
    expect(num(unknown(false).pressure)).toBeCloseTo(10 * (390 / 375) ** 2, 9);
  });
});

describe('sizes', () => {
  const changed = (o: Option) => o.sizes.map((s) => `${s.position} ${s.from}→${s.to}`);
  /** Pairs 1, 2, 7 and 8 miss this canopy with narrow cones; 3 to 6 are in leaf. */
  const narrow: Parts = { canopy: { heightM: 2.5, skirtM: 0.9 }, machine: { nozzles: arcNozzles({ table: 'own', size: '1', coneAngleDeg: 5 }) } };

  test('one pair in leaf is enough for a twentieth more; the pressure does the rest', () => {
    const o = towards(420, own({}, narrow)).size;
    // 16.5 of 16.8 L/min at 10 bar.
    expect(o.sizes).toEqual(['L3', 'R3'].map((position) => ({ position, table: 'own', from: '1', to: '1.25' })));
    expect(num(o.pressure)).toBeCloseTo(10 * (16.8 / 16.5) ** 2, 9);
    expect([num(o.flow), num(o.volume), o.feasible, o.remarks]).toEqual([expect.closeTo(16.8, 9), expect.closeTo(420, 9), true, []]);
  });
  test('pairs that miss the leaf come last', () => {
    // A quarter more: seven pairs make 19.5 of 20 L/min, within 3 %; the eighth keeps its size.
    expect(changed(towards(500, own({}, narrow)).size)).toEqual(['L', 'R'].flatMap((side) => [1, 2, 3, 4, 5, 6, 7].map((n) => `${side}${n} 1→1.25`)));
    // Three pairs make 17.5 of 18.2 L/min, four make 18.
    expect(changed(towards(455, own({}, narrow)).size)).toEqual(['L', 'R'].flatMap((side) => [3, 4, 5, 6].map((n) => `${side}${n} 1→1.25`)));
  });
  test('smaller ones for less, and few of them', () => {
    // 12 of 16 L/min: four pairs of half the flow close it, where the size in proportion would take all eight.
    expect(changed(towards(300).size)).toEqual(['L', 'R'].flatMap((side) => [1, 2, 3, 4].map((n) => `${side}${n} 1→0.5`)));
    expect(num(towards(300).size.pressure)).toBeCloseTo(10, 9);
  });
  test('within 3 % the pressure alone does it', () => {
    expect(changed(towards(411).size)).toEqual([]);
    expect(changed(towards(389).size)).toEqual([]);
    expect(changed(towards(413).size)).not.toEqual([]);
    expect(changed(towards(388).size)).not.toEqual([]);
  });
  test('the change that closes most of the gap is made first', () => {
    // Pairs of 1 and of 2 L/min, 6 in all, 7 wanted: the larger pair to 2.5 closes it at once.
    const two = own({}, { setting: { nozzles: onlyOpen('L4', 'R4', 'L5', 'R5').map((n) => (/5/.test(n.position) ? { ...n, size: '2' } : n)) } });
    expect(changed(towards(175, two).size)).toEqual(['L5 2→2.5', 'R5 2→2.5']);
  });
  test('the size in proportion and the one below it are tried, whatever the order of the table', () => {
    // One pair, 2 L/min; 2.8 wanted are 1.4 each: of 1.25 and 1.5 the nearer one.
    const pair = (size: string) => own({}, { setting: { nozzles: onlyOpen('L4', 'R4').map((n) => ({ ...n, size })) } });
    expect(changed(towards(70, pair('1')).size)).toEqual(['L4 1→1.5', 'R4 1→1.5']);
    expect(changed(towards(66, pair('1')).size)).toEqual(['L4 1→1.25', 'R4 1→1.25']);
    expect(num(towards(66, pair('1')).size.pressure)).toBeCloseTo(10 * (1.32 / 1.25) ** 2, 9);
  });
  test('two sides with other sizes at one place are changed by themselves', () => {
    // 1 and 2 L/min; 3.5 wanted: 2.5 on one side closes it.
    const uneven = own({}, { setting: { nozzles: onlyOpen('L4', 'R4').map((n) => (n.position === 'R4' ? { ...n, size: '2' } : n)) } });
    expect(changed(towards(87.5, uneven).size)).toEqual(['R4 2→2.5']);
  });
  test('where none is small enough, the smallest, and it is said', () => {
    const o = towards(100).size;
    expect(new Set(o.sizes.map((s) => s.to))).toEqual(new Set(['0.5']));
    // 4 L/min of sixteen that give 8: a quarter of the pressure.
    expect(num(o.pressure)).toBeCloseTo(2.5, 9);
    expect(o.remarks).toEqual([{ code: 'below-pressure-range', parameters: { limit: 4 } }, { code: 'no-size', parameters: {} }]);
    expect(o.feasible).toBe(false);
  });
  test('a tenth beyond the largest is still a matter of pressure', () => {
    const at = (target: number) => towards(target, own({ sizes: sizes.filter((s) => s.id === '1' || s.id === '1.25') })).size;
    expect([at(549).remarks, at(549).feasible]).toEqual([[], true]);
    expect([remarks(at(551)), at(551).feasible]).toEqual([['no-size'], false]);
    // Sixteen of 1 L/min are the least there is.
    expect([remarks(at(361)), remarks(at(359))]).toEqual([[], ['no-size']]);
  });
  test('towards what is not known, and from nothing, there are none', () => {
    const unknown = towards(refused('no', 'here')).size;
    expect([unknown.feasible, unknown.sizes, refusal(unknown.flow), refusal(unknown.volume)]).toEqual([false, [], 'no @ here', 'no @ here']);
    const nothing = towards(400, own({}, { setting: { nozzles: onlyOpen() } })).size;
    expect([nothing.feasible, num(nothing.flow), refusal(nothing.volume)]).toEqual([false, 16, 'no-nozzle-open @ setting.nozzles']);
  });
});

describe('droplets', () => {
  const from = (...classes: (readonly [number, DropletClass])[]) => classes.map(([fromBar, c]) => ({ fromBar, class: c }));
  const printed = own({
    sizes: [
      { id: '1', flowLPerMin: 1, droplets: from([2, 'M'], [10.5, 'F']) },
      { id: '1.25', flowLPerMin: 1.25, droplets: from([2, 'C'], [10.1, 'M']) },
      { id: '0.5', flowLPerMin: 0.5, droplets: from([2, 'VF']) }
    ]
  });
  test('those of the nozzles that spray, once each, at the pressure of the option', () => {
    const mixed: Parts = { ...printed, setting: { nozzles: [{ position: 'L3', size: '1.25' }, { position: 'L4', size: '0.5', open: false }, ...shut('R4')] } };
    const o = towards(376, mixed);
    // Fourteen spray, one of them larger: M and C as set. 14.25 L/min are 356.25 L/ha; 376 ask for 11.1 bar, where they are F and M.
    expect([o.keep.droplets, o.speed.droplets, o.pressure.droplets]).toEqual([['M', 'C'], ['M', 'C'], ['F', 'M']]);
  });
  test('of other sizes, those that they would spray', () => {
    // 16.5 of 16.8 L/min: 10.37 bar, one pair of 1.25.
    expect(towards(420, printed).size.droplets).toEqual(['M']);
    expect(towards(500, printed).size.droplets).toEqual(['M', 'F']);
  });
});
