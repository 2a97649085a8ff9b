import { describe, expect, test } from 'vitest';
import type { Finding } from '#core/advice/finding.ts';
import { piecesOf } from '#core/fitting/pressures.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { driveOf, isRule, planSpeed, rowOf, wantedFlow } from '#core/fitting/row.ts';
import { RULES, ruleReports } from '#core/fitting/rules.ts';
import type { DropletClass } from '#core/sprayer/types.ts';
import { about } from '../../../support/findings.ts';
import { nozzleTable, positionsOf, problemOf, sizesOf } from '../../../support/fitting.ts';

/** Sizes a0, a1, a2 of 1, 2 and 3 L/min at 10 bar. */
const table = nozzleTable('a', 10, [1, 2, 3]);
const sizes = sizesOf({ ...table, sizes: table.sizes.map((s, i) => ({ ...s, colour: ['red', 'blue', 'green'][i]! })) });
/** Three nozzles, the upper one to give as much as the other two; two small and a middle one are fitted. */
const task = (more: Partial<FittingProblem> = {}, weights = [1, 1, 2]): FittingProblem => problemOf(6, { sizes, positions: positionsOf(weights, [0, 0, 1]), ...more });
const near = (v: number) => expect.closeTo(v, 9) as number;
const drive = { speedKmH: 6, pressureBar: 10 };
const told = (row: { findings: readonly Finding[] }, code: string) => row.findings.filter((f) => f.code === code);

describe('a fitting', () => {
  const row = () => rowOf(task(), [0, 1, 2], drive);
  test('each nozzle: its flow and share against what is wanted, and what it takes the place of', () =>
    expect(row().nozzles).toEqual([
      { position: 'L1', side: 'left', table: 'a', size: 'a0', colour: 'red', flowLPerMin: 1, targetLPerMin: 1.5, share: near(1 / 6), weight: 0.25, off: near(-1 / 3) },
      { position: 'L2', side: 'left', table: 'a', size: 'a1', colour: 'blue', instead: { table: 'a', size: 'a0' }, flowLPerMin: 2, targetLPerMin: 1.5, share: near(1 / 3), weight: 0.25, off: near(1 / 3) },
      { position: 'L3', side: 'left', table: 'a', size: 'a2', colour: 'green', instead: { table: 'a', size: 'a1' }, flowLPerMin: 3, targetLPerMin: 3, share: 0.5, weight: 0.5, off: 0 }
    ]));
  test('the whole', () =>
    expect(row()).toMatchObject({
      names: [],
      changes: 2,
      speedKmH: 6,
      atPresentSpeed: true,
      pressureBar: 10,
      flowLPerMin: 6,
      wantedLPerMin: near(6),
      volumeLPerHa: near(150),
      // A sixth, a quarter and a half.
      match: near(11 / 12),
      classes: [],
      // Half of the middle one and all of the upper one.
      topShare: near(2 / 3)
    }));
  test('at another speed the wanted flow and the volume follow it', () => {
    const slow = rowOf(task(), [0, 1, 2], { speedKmH: 3, pressureBar: 2.5 });
    // A quarter of the pressure, half of the flow.
    expect([slow.flowLPerMin, slow.wantedLPerMin, slow.volumeLPerHa, slow.atPresentSpeed]).toEqual([near(3), near(3), near(150), false]);
  });
  test('a nozzle where nothing is wanted has no target to be off from', () => expect(rowOf(task({}, [0, 1, 2]), [0, 1, 2], drive).nozzles[0]).toMatchObject({ targetLPerMin: 0, off: null }));
  test('colours and classes are left out where the table prints none', () => {
    const plain = rowOf(task({ sizes: sizesOf(table) }), [0, 1, 2], drive);
    for (const n of plain.nozzles) for (const k of ['colour', 'droplets']) expect(n).not.toHaveProperty(k);
    for (const n of plain.needs) expect(n).not.toHaveProperty('colour');
  });
  test('droplet classes, once each', () => {
    const classes: readonly DropletClass[] = ['F', 'M', 'M'];
    const printed = sizesOf({ ...table, sizes: table.sizes.map((s, i) => ({ ...s, droplets: [{ fromBar: 3, class: classes[i]! }] })) });
    const r = rowOf(task({ sizes: printed }), [0, 1, 2], drive);
    expect([r.classes, r.nozzles.map((n) => n.droplets)]).toEqual([['F', 'M'], ['F', 'M', 'M']]);
  });
});

describe('what has to be at hand', () => {
  const needs = (chosen: number[], counts: readonly (number | undefined)[] = []) =>
    rowOf(task({ sizes: sizes.map((s, i) => (counts[i] === undefined ? s : { ...s, count: counts[i]! })) }), chosen, drive);
  test('what is taken off elsewhere is fitted again', () => {
    // L2 takes the middle one that L3 gives up; only the large one is new.
    expect(needs([0, 1, 2]).needs).toEqual([{ table: 'a', size: 'a2', colour: 'green', count: 1, buy: 0 }]);
    expect(needs([1, 1, 1]).needs).toEqual([{ table: 'a', size: 'a1', colour: 'blue', count: 2, buy: 0 }]);
    expect(needs([0, 0, 1]).needs).toEqual([]);
    expect(needs([1, 0, 0]).needs).toEqual([]);
  });
  test('beyond the drawer it is bought', () => {
    const of = (counts: readonly (number | undefined)[]) => {
      const r = needs([2, 1, 1], counts);
      return [r.needs.map((n) => [n.size, n.count, n.buy]), r.buy];
    };
    expect(of([])).toEqual([[['a1', 1, 0], ['a2', 1, 0]], 0]);
    expect(of([undefined, 1, 0])).toEqual([[['a1', 1, 0], ['a2', 1, 1]], 1]);
    expect(of([undefined, 0, 0])).toEqual([[['a1', 1, 1], ['a2', 1, 1]], 2]);
    expect(of([undefined, 5, 5])).toEqual([[['a1', 1, 0], ['a2', 1, 0]], 0]);
  });
});

describe('the upper half', () => {
  const top = (chosen: number[], weights: number[]) => rowOf(problemOf(6, { sizes, positions: positionsOf(weights, weights.map(() => 0)) }), chosen, drive).topShare;
  test('of an even number by count, of an odd one with half of the middle', () => {
    expect(top([0, 1, 2, 2], [1, 1, 1, 1])).toBeCloseTo(6 / 9, 12);
    expect(top([2, 0], [1, 1])).toBeCloseTo(1 / 4, 12);
    expect(top([0, 2, 1, 0, 0], [1, 1, 1, 1, 1])).toBeCloseTo(3 / 8, 12);
    expect(top([1], [1])).toBe(0.5);
  });
  test('by height, not by the order of the list; each side for itself', () => {
    const positions = positionsOf([1, 1], [0, 0], ['left', 'right']);
    const shuffled = [positions[1]!, positions[0]!, positions[2]!, positions[3]!];
    // Left: 3 above 1; right: 2 below 1.
    expect(rowOf(problemOf(6, { sizes, positions: shuffled }), [2, 0, 1, 0], drive).topShare).toBeCloseTo(4 / 7, 12);
  });
});

describe('what is told', () => {
  const row = () => rowOf(task(), [1, 1, 2], drive);
  test('nozzles farther from their target than allowed, and the worst of them', () => {
    // 2 for 1.5 L/min twice; at 6 of 7 L/min the upper one is right.
    expect(row().worst).toEqual({ position: 'L1', off: near(1 / 3) });
    expect(told(row(), 'fitting-position-off')).toEqual([
      { code: 'fitting-position-off', severity: 'warn', parameters: { nozzles: ['L1', 'L2'], worst: 'L1', off: about(100 / 3, '%'), tolerance: about(15, '%') }, sources: ['habit'] }
    ]);
    expect(told(rowOf(task({ positionTolerance: 0.34 }), [1, 1, 2], drive), 'fitting-position-off')).toEqual([]);
  });
  test('under its target is as far as over it', () => {
    const low = rowOf(task(), [0, 0, 2], drive);
    expect(low.worst).toEqual({ position: 'L1', off: near(-1 / 3) });
    expect(told(low, 'fitting-position-off')[0]!.parameters['nozzles']).toEqual(['L1', 'L2']);
  });
  test('the worst is the farthest, not the first; none where all are right', () => {
    expect(rowOf(task({}, [1, 1, 4]), [0, 0, 1], drive).worst?.position).toBe('L3');
    expect(rowOf(task({ targetLPerHa: 100 }), [0, 0, 1], drive).worst).toBeNull();
  });
  test('another speed', () => {
    expect(told(rowOf(task(), [0, 1, 2], { speedKmH: 5, pressureBar: 10 }), 'fitting-other-speed')).toEqual([
      { code: 'fitting-other-speed', severity: 'note', parameters: { speed: { value: 5, unit: 'km/h' }, present: { value: 6, unit: 'km/h' } }, sources: ['pat-gardonne'] }
    ]);
    expect(told(row(), 'fitting-other-speed')).toEqual([]);
  });
  test('nozzles where nothing is wanted, with what they spray', () => {
    expect(told(rowOf(task({}, [0, 0, 1]), [0, 1, 2], drive), 'fitting-nothing-wanted')).toEqual([
      { code: 'fitting-nothing-wanted', severity: 'warn', parameters: { nozzles: ['L1', 'L2'], share: about(50, '%') }, sources: ['geometry'] }
    ]);
    expect(told(row(), 'fitting-nothing-wanted')).toEqual([]);
  });
});

describe('published rules', () => {
  const high = { canopyTopM: 6.5, evergreen: true };
  const rules = (more: Partial<FittingProblem>, chosen: number[]) => rowOf(task(more), chosen, drive).findings.filter(isRule);
  test('what differs from a rule that suits is told with the share, or without it where it is about the middle', () => {
    // The upper half gives 0.5 + 1 of 4: 37.5 %, and all but the lowest are alike.
    const share = { share: about(37.5, '%') };
    expect(rules(high, [1, 0, 0])).toEqual([
      { code: 'fitting-rule-upper-large', severity: 'note', parameters: share, sources: ['niederholzer-2023'] },
      { code: 'fitting-rule-upper-low-machine', severity: 'note', parameters: share, sources: ['brann-1965'] },
      { code: 'fitting-rule-two-thirds', severity: 'note', parameters: share, sources: ['habit'] },
      { code: 'fitting-rule-middle-heavy', severity: 'note', parameters: {}, sources: ['comite-citricos-2024'] }
    ]);
    expect(rules({ outlet: { kind: 'tower', fromHeightM: 0.5, toHeightM: 3, offsetM: 0.5, slotWidthM: 0.1 } }, [1, 0, 0])).toEqual([
      { code: 'fitting-rule-proportional', severity: 'note', parameters: share, sources: ['habit'] }
    ]);
  });
  test('nothing where a rule is met, or was not meant for this machine and these trees', () => {
    // 1 + 3 of 6 are 66.7 %.
    expect(rules({ canopyTopM: 4 }, [0, 1, 2])).toEqual([]);
    expect(rules({ canopyTopM: 1 }, [1, 0, 0])).toEqual([]);
    // Trees of 8 m are too high for the rule of low machines; the middle is not the largest.
    expect(rules({ ...high, canopyTopM: 8 }, [0, 1, 2]).map((f) => f.code)).toEqual(['fitting-rule-middle-heavy']);
  });
  test('the largest in the middle third, on every side', () => {
    const middle = (chosen: number[]) => rowOf(problemOf(6, { sizes, positions: positionsOf([1, 1, 1], [0, 0, 0], ['left', 'right']), evergreen: true, canopyTopM: 1 }), chosen, drive).rules.find((r) => r.rule === 'middle-heavy')!.met;
    expect([middle([0, 1, 0, 0, 2, 0]), middle([0, 1, 0, 2, 1, 0]), middle([1, 0, 0, 0, 2, 0]), middle([0, 0, 1, 0, 1, 0])]).toEqual([true, false, false, false]);
    // Of seven, the third to the fifth.
    const seven = (at: number) => rowOf(problemOf(6, { sizes, positions: positionsOf([1, 1, 1, 1, 1, 1, 1], [0, 0, 0, 0, 0, 0, 0]), evergreen: true }), [0, 1, 2, 3, 4, 5, 6].map((i) => (i === at ? 2 : 0)), drive).rules.find((r) => r.rule === 'middle-heavy')!.met;
    expect([0, 1, 2, 3, 4, 5, 6].map(seven)).toEqual([false, false, true, true, true, false, false]);
  });
  test('half a point either way is how a share is read', () => {
    const met = (top: number, id: string) => ruleReports(task(), top, false).find((r) => r.rule === id)!.met;
    for (const { id, upper } of RULES) {
      if (!upper) continue;
      expect([upper[0] - 0.0049, upper[1] + 0.0049].map((top) => met(top, id)), id).toEqual([true, true]);
      expect([upper[0] - 0.0051, upper[1] + 0.0051].map((top) => met(top, id)), id).toEqual([false, false]);
    }
  });
  test('a report says what the rule asks for and where it is from', () => {
    expect(ruleReports(task({ canopyTopM: 4 }), 0.7, true)).toEqual([
      { rule: 'upper-large', suits: true, met: true, least: 0.65, most: 0.8, source: 'niederholzer-2023', certainty: 'published' },
      { rule: 'upper-low-machine', suits: false, met: true, least: 0.68, most: 0.72, source: 'brann-1965', certainty: 'published' },
      { rule: 'two-thirds', suits: true, met: false, least: 0.65, most: 0.69, source: 'habit', certainty: 'memory' },
      { rule: 'middle-heavy', suits: false, met: true, source: 'comite-citricos-2024', certainty: 'published' },
      { rule: 'proportional', suits: false, met: false, least: 0.5, most: 0.6, source: 'habit', certainty: 'memory' }
    ]);
  });
  test('how high trees are above the slot: its end, or its top where it runs past it', () => {
    const suits = (canopyTopM: number, toDeg: number) => ruleReports(task({ canopyTopM, outlet: { kind: 'arc', axisHeightM: 1, radiusM: 0.5, fromDeg: -15, toDeg, slotWidthM: 0.1 } }), 0.7, true).filter((r) => r.suits).map((r) => r.rule);
    // The slot ends 0.25 m above the axis at 30°, at 1.25 m; at its top it is 1.5 m high.
    expect([suits(1.24, 30), suits(1.26, 30), suits(3.24, 30), suits(3.26, 30)]).toEqual([[], ['two-thirds'], ['two-thirds'], ['upper-large', 'two-thirds']]);
    expect([suits(1.49, 120), suits(1.51, 120), suits(3.51, 90)]).toEqual([[], ['two-thirds'], ['upper-large', 'two-thirds']]);
  });
  test('20 to 25 ft before a radial fan', () => {
    const low = (canopyTopM: number, more: Partial<FittingProblem> = {}) => ruleReports(task({ canopyTopM, ...more }), 0.7, true).find((r) => r.rule === 'upper-low-machine')!.suits;
    expect([5.9, 6, 7.6, 7.7].map((m) => low(m))).toEqual([false, true, true, false]);
    expect(low(7, { outlet: { kind: 'tower', fromHeightM: 0.5, toHeightM: 3, offsetM: 0.5, slotWidthM: 0.1 } })).toBe(false);
  });
});

describe('speed and pressure', () => {
  test('the present speed, or the nearest to it that is allowed', () => {
    const plan = (leastKmH: number, mostKmH: number) => planSpeed(task({ speed: { presentKmH: 6, leastKmH, mostKmH } }));
    expect([plan(4, 8), plan(7, 8), plan(4, 5)]).toEqual([6, 7, 5]);
    expect(wantedFlow(task(), 3)).toBeCloseTo(3, 12);
  });
  const drives = (more: Partial<FittingProblem>, chosen: number[]) => {
    const p = task(more);
    return driveOf(p, piecesOf(p), chosen);
  };
  test('the pressure that makes the total exact, where it is allowed', () => {
    // 4 L/min at 10 bar for 6.
    expect(drives({ pressure: { presentBar: 10, leastBar: 5, mostBar: 23 }, sizes: sizesOf({ ...table, pressureMaxBar: 30 }) }, [0, 0, 1])).toEqual({ speedKmH: 6, pressureBar: near(22.5) });
    expect(drives({}, [0, 1, 2])).toEqual({ speedKmH: 6, pressureBar: near(10) });
  });
  test('else the nearest speed at which an allowed one does: slower at the highest pressure, faster at the lowest', () => {
    // 15 of 22.5 bar: √(15/22.5) of the speed.
    expect(drives({}, [0, 0, 1])).toEqual({ speedKmH: near(6 * Math.sqrt(15 / 22.5)), pressureBar: near(15) });
    // Nine L/min at 10 bar would want 4.44 bar; at 5 it is √(5/4.44) as fast.
    expect(drives({}, [2, 2, 2])).toEqual({ speedKmH: near(6 * Math.sqrt(5 / (40 / 9))), pressureBar: near(5) });
  });
  test('none where neither speed nor pressure reaches', () => {
    expect(drives({ speed: { presentKmH: 6, leastKmH: 5.9, mostKmH: 6.1 } }, [0, 0, 1])).toBeNull();
    expect(drives({ pressure: { presentBar: 10, leastBar: 21, mostBar: 25 } }, [0, 0, 1])).toBeNull();
  });
  test('within the range of every table that is used', () => {
    const narrow = sizesOf(nozzleTable('a', 10, [1, 2]), nozzleTable('b', 10, [3], { pressureMinBar: 12, pressureMaxBar: 13 }));
    // With b, 10 bar are too little: 12 and √1.2 as fast; without it, they are right.
    expect(drives({ sizes: narrow }, [0, 1, 2])).toEqual({ speedKmH: near(6 * Math.sqrt(1.2)), pressureBar: near(12) });
    expect(drives({ sizes: narrow }, [1, 1, 1])).toEqual({ speedKmH: 6, pressureBar: near(10) });
  });
});
