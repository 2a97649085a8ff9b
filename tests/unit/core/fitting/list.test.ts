import { describe, expect, test } from 'vitest';
import { fit, nearestSizes, type FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { isoSizes, nozzleTable, positionsOf, problemOf, sizesOf } from '../../../support/fitting.ts';
import type { DropletClass } from '#core/sprayer/types.ts';

/** Sizes of 1, 2 and 3 L/min at 10 bar. */
const sizes = sizesOf(nozzleTable('a', 10, [1, 2, 3]));
const task = (flow: number, weights: number[], present: number[], more: Partial<FittingProblem> = {}): FittingProblem => problemOf(flow, { sizes, positions: positionsOf(weights, present), ...more });
const found = (p: FittingProblem): FittingList => {
  const list = fit(p);
  if ('kind' in list) throw new Error(list.code);
  return list;
};
const refused = (p: FittingProblem) => {
  const list = fit(p);
  if (!('kind' in list)) throw new Error('found');
  return [list.code, list.path, list.parameters];
};
const near = (v: number) => expect.closeTo(v, 6) as number;
const rows = (list: FittingList) => list.rows.map((r) => [r.changes, r.nozzles.map((n) => n.size).join(' '), r.names.join(' ')]);

describe('the list', () => {
  test('from no change to the best match, each step named for what it is', () => {
    // A sixth, a third and a half of the flow are wanted. Thirds match by 5/6; 0.2, 0.4 and 0.4 by 0.9.
    const list = found(task(6, [1, 2, 3], [1, 1, 1]));
    expect(rows(list)).toEqual([
      [0, 'a1 a1 a1', 'no-change'],
      [1, 'a0 a1 a1', ''],
      [2, 'a0 a1 a2', 'few-changes best-match']
    ]);
    expect(list.rows.map((r) => r.match)).toEqual([near(5 / 6), near(0.9), near(1)]);
  });
  test('few changes are those that bring half of what can be gained, or the share that the user says', () => {
    const named = (fewGain: number) => found(task(6, [1, 2, 3], [1, 1, 1], { fewGain })).rows.find((r) => r.names.includes('few-changes'))!.changes;
    // The first change brings 0.0667 of 0.1667.
    expect([named(0.39), named(0.41)]).toEqual([1, 2]);
  });
  test('no more changes than are allowed', () => expect(rows(found(task(6, [1, 2, 3], [1, 1, 1], { mostChanges: 1 }))).map((r) => r[0])).toEqual([0, 1]));
  test('where the present sizes are the best, they are all of the list', () => expect(rows(found(task(6, [1, 2, 3], [0, 1, 2])))).toEqual([[0, 'a0 a1 a2', 'no-change best-match']]));
  test('what may not be fitted anew may only stay', () => {
    const list = found(task(6, [1, 2, 3], [1, 1, 1], { sizes: sizes.map((s, i) => ({ ...s, offered: i !== 0 })) }));
    expect(list.rows.flatMap((r) => r.nozzles.map((n) => n.size))).not.toContain('a0');
    expect(list.searched.sizes).toBe(2);
  });
  test('left and right are kept alike where they are to be, at the same height and angle', () => {
    const mirrored = positionsOf([1, 3], [1, 1], ['left', 'right']);
    const alike = found(problemOf(8, { sizes, positions: mirrored, mirrored: true }));
    expect(rows(alike).at(-1)).toEqual([4, 'a0 a2 a0 a2', 'few-changes best-match']);
    expect(alike.rows.map((r) => r.changes % 2)).toEqual(alike.rows.map(() => 0));
    expect(alike.searched.logCombinations).toBeCloseTo(Math.log10(9), 12);
    const apart = found(problemOf(8, { sizes, positions: mirrored.map((p) => (p.side === 'right' ? { ...p, angleDeg: 5 } : p)), mirrored: true }));
    expect(apart.searched.logCombinations).toBeCloseTo(Math.log10(81), 12);
  });
  test('what was searched', () => {
    const { searched } = found(task(6, [1, 2, 3], [1, 1, 1]));
    expect(searched).toEqual({ positions: 3, sizes: 3, logCombinations: near(Math.log10(27)), stepLPerMin: near(1), exact: true, bent: false });
  });
});

describe('by hand', () => {
  test('the size nearest to each target at the present pressure, of those that are offered', () => {
    expect(nearestSizes(task(6, [1, 2, 3], [1, 1, 1]))).toEqual([0, 1, 2]);
    expect(nearestSizes(task(6, [1, 2, 3], [1, 1, 1], { sizes: sizes.map((s, i) => ({ ...s, offered: i !== 0 })) }))).toEqual([1, 1, 2]);
    // 7 km/h are planned: 7 L/min, of which 1.75 for each of four; 1.4 at 10 bar is nearer to 1.
    expect(nearestSizes(task(6, [1, 1, 1, 1], [0, 0, 0, 0]))).toEqual([0, 0, 0, 0]);
    expect(nearestSizes(task(6, [1, 1, 1, 1], [0, 0, 0, 0], { speed: { presentKmH: 6, leastKmH: 7, mostKmH: 8 } }))).toEqual([1, 1, 1, 1]);
  });
  test('is shown beside the list, or is null where it does not fit', () => {
    expect(found(task(6, [1, 2, 3], [1, 1, 1])).byHand).toMatchObject({ changes: 2, match: near(1), pressureBar: near(10) });
    // Each place wants 1.4 L/min, and 1 is nearest: four of them would want 19.6 bar, where 15 are allowed and no other speed.
    const stiff = { speed: { presentKmH: 6, leastKmH: 6, mostKmH: 6 } };
    expect(found(task(5.6, [1, 1, 1, 1], [0, 0, 0, 0], stiff)).byHand).toBeNull();
  });
});

describe('the present sizes', () => {
  test('that no speed and pressure bring there are told, with what they would want', () => {
    // 3 L/min at 10 bar for 9: 90 bar.
    const list = found(task(9, [1, 1, 1], [0, 0, 0]));
    expect(list.findings).toEqual([{ code: 'fitting-present-unfit', severity: 'note', parameters: { pressure: { value: near(90), unit: 'bar' }, speed: { value: 6, unit: 'km/h' } }, sources: ['sqrt-law'] }]);
  });
  test('that are not alike on both sides are told', () => {
    const positions = positionsOf([1, 1], [0, 1], ['left', 'right']).map((p) => (p.id === 'R1' ? { ...p, present: 1 } : p));
    expect(found(problemOf(7, { sizes, positions, mirrored: true })).findings).toEqual([{ code: 'fitting-sides-unlike', severity: 'note', parameters: {}, sources: ['habit'] }]);
  });
  test('that are in the list say nothing', () => expect(found(task(6, [1, 2, 3], [1, 1, 1])).findings).toEqual([]));
});

describe('nothing fits', () => {
  const six = (flow: number, ids: readonly string[], more: Partial<FittingProblem> = {}) => problemOf(flow, { sizes: isoSizes(...ids), positions: positionsOf([1, 1, 1, 1, 1, 1], [0, 0, 0, 0, 0, 0]), ...more });
  test('too little: the most that the largest give at the highest pressure and the lowest speed', () => {
    // 6·0.6·√(15/3) L/min at 4 km/h on 4 m.
    expect(refused(six(60, ['01', '015']))).toEqual(['fitting-too-little', 'fitting.targetLPerHa', { target: 1500, most: near(301.869177), unit: 'L/ha' }]);
  });
  test('too much: the least that the smallest give at the lowest pressure and the highest speed', () => {
    // 6·2.4·√(5/3) at 8 km/h.
    expect(refused(six(1, ['06', '08']))).toEqual(['fitting-too-much', 'fitting.targetLPerHa', { target: 25, least: near(348.568501), unit: 'L/ha' }]);
  });
  test('too few changes', () => {
    expect(refused(six(24, ['01', '04'], { mostChanges: 2 }))).toEqual(['fitting-changes-bind', 'fitting.mostChanges', { changes: 2 }]);
  });
  test('pressures of tables and machine apart', () =>
    expect(refused(six(7, ['015'], { pressure: { presentBar: 10, leastBar: 31, mostBar: 40 } }))[0]).toBe('fitting-pressure-tables'));
  test('pressures apart, with both ranges', () => {
    const narrow = sizesOf(nozzleTable('a', 10, [1], { pressureMinBar: 3, pressureMaxBar: 4 }), nozzleTable('b', 10, [1], { pressureMinBar: 16, pressureMaxBar: 20 }));
    expect(refused(task(3, [1, 1, 1], [0, 0, 0], { sizes: narrow }))).toEqual(['fitting-pressure-tables', 'fitting.pressureMinBar', { least: 5, most: 15, tableLeast: 3, tableMost: 20, unit: 'bar' }]);
  });
  test('no size that may be fitted anywhere else, and that is not where it is', () => {
    const kept = sizes.map((s, i) => ({ ...s, offered: false, count: i }));
    const unlike = positionsOf([1], [0], ['left', 'right']).map((p, i) => ({ ...p, present: i }));
    expect(refused(problemOf(3, { sizes: kept, positions: unlike, mirrored: true }))).toEqual(['fitting-no-size', 'fitting.stock', {}]);
  });
  test('classes that no table prints, or that no size makes', () => {
    const printed = (c: DropletClass) => sizes.map((s) => ({ ...s, size: { ...s.size, droplets: [{ fromBar: 3, class: c }] } }));
    expect(refused(task(6, [1, 2, 3], [1, 1, 1], { finestClass: 'M' }))).toEqual(['fitting-class-unknown', 'fitting.finestClass', { table: 'a' }]);
    expect(refused(task(6, [1, 2, 3], [1, 1, 1], { coarsestClass: 'M' }))[0]).toBe('fitting-class-unknown');
    expect(refused(task(6, [1, 2, 3], [1, 1, 1], { sizes: printed('F'), finestClass: 'M' }))).toEqual(['fitting-class-unmet', 'fitting.finestClass', {}]);
    expect(refused(task(6, [1, 2, 3], [1, 1, 1], { sizes: printed('C'), coarsestClass: 'M' }))[0]).toBe('fitting-class-unmet');
    // Some that are printed and meet it are enough.
    const some = [sizes[0]!, ...printed('M').slice(1)];
    expect(found(task(6, [1, 2, 3], [1, 1, 1], { sizes: some, finestClass: 'M' })).rows.length).toBeGreaterThan(0);
  });
  test('between two sizes where neither speed nor pressure is free', () => {
    const stiff: Partial<FittingProblem> = { speed: { presentKmH: 6, leastKmH: 6, mostKmH: 6 }, pressure: { presentBar: 10, leastBar: 10, mostBar: 10 } };
    expect(refused(task(4.5, [1, 1, 1], [0, 0, 0], stiff))).toEqual(['fitting-none', 'fitting', {}]);
    // 1 + 1 + 3 with one change, 1 + 2 + 2 with two.
    expect(rows(found(task(5, [1, 1, 1], [0, 0, 0], stiff))).map((r) => r[0])).toEqual([1, 2]);
  });
  test('stopped', () => {
    const list = fit(task(6, [1, 2, 3], [1, 1, 1]), { cancelled: () => true });
    expect(list).toMatchObject({ code: 'fitting-cancelled', path: 'fitting', parameters: {} });
  });
});
