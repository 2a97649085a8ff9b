import { describe, expect, test } from 'vitest';
import { gridOf, MOST_STEPS } from '#core/fitting/grid.ts';
import { mayAt, pieceAt, piecesOf } from '#core/fitting/pressures.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import type { DropletClass } from '#core/sprayer/types.ts';
import { nozzleTable, positionsOf, problemOf, sizesOf } from '../../../support/fitting.ts';

const droplets: readonly { fromBar: number; class: DropletClass }[] = [{ fromBar: 4, class: 'C' }, { fromBar: 8, class: 'M' }, { fromBar: 12, class: 'F' }];
const printed = nozzleTable('a', 10, [1], { pressureMinBar: 4, pressureMaxBar: 15 });
const sizes = [...sizesOf({ ...printed, sizes: printed.sizes.map((s) => ({ ...s, droplets })) }), ...sizesOf(nozzleTable('b', 10, [2], { pressureMinBar: 6, pressureMaxBar: 10 }))];
const task = (more: Partial<FittingProblem> = {}) => problemOf(3, { sizes, positions: positionsOf([1], [0]), pressure: { presentBar: 10, leastBar: 5, mostBar: 14 }, ...more });

describe('a size at a pressure', () => {
  const may = (bar: number, more: Partial<FittingProblem> = {}, size = 0) => mayAt(task(more), sizes[size]!, bar);
  test('inside its table’s range, ends included', () => expect([3.99, 4, 15, 15.01].map((bar) => may(bar))).toEqual([false, true, true, false]));
  test('of the wanted classes, ends included', () => {
    const at = (more: Partial<FittingProblem>) => [5, 9, 13].map((bar) => may(bar, more));
    expect(at({ finestClass: 'M' })).toEqual([true, true, false]);
    expect(at({ coarsestClass: 'M' })).toEqual([false, true, true]);
    expect(at({ finestClass: 'M', coarsestClass: 'M' })).toEqual([false, true, false]);
    expect(at({ finestClass: 'VC' })).toEqual([false, false, false]);
    expect(at({ coarsestClass: 'VF' })).toEqual([false, false, false]);
  });
  test('a class that is not printed meets no wish', () => {
    expect([may(7, {}, 1), may(7, { finestClass: 'XF' }, 1), may(7, { coarsestClass: 'UC' }, 1)]).toEqual([true, false, false]);
  });
});

describe('pressures cut into pieces', () => {
  const pieces = () => piecesOf(task());
  test('where the machine, a table or a class begins or ends; each end a piece of its own', () => {
    const points = pieces().filter((p) => p.leastBar === p.mostBar).map((p) => p.leastBar);
    expect(points).toEqual([5, 6, 8, 10, 12, 14]);
    expect(pieces()).toHaveLength(11);
    pieces().forEach((p, i, all) => i > 0 && expect(p.leastBar).toBeGreaterThan(all[i - 1]!.mostBar));
  });
  test('with the sizes that may be used there', () => {
    const at = (bar: number) => [...pieceAt(pieces(), bar)!.allowed];
    expect([5, 5.5, 6, 7, 10, 11, 14].map(at)).toEqual([[1, 0], [1, 0], [1, 1], [1, 1], [1, 1], [1, 0], [1, 0]]);
    const fine = piecesOf(task({ finestClass: 'M' }));
    expect([6, 7.9, 8, 11.9, 12, 13].map((bar) => pieceAt(fine, bar)!.allowed[0])).toEqual([1, 1, 1, 1, 0, 0]);
  });
  test('outside the machine’s there is none', () => expect([4.9, 14.1].map((bar) => pieceAt(pieces(), bar))).toEqual([undefined, undefined]));
  test('a hair beside an end is the end', () => expect(pieceAt(pieces(), 5 * (1 - 1e-10))!.leastBar).toBe(5));
  test('a single pressure is one piece', () => expect(piecesOf(task({ pressure: { presentBar: 10, leastBar: 7, mostBar: 7 } }))).toHaveLength(1));
});

describe('a grid of flows', () => {
  test('their greatest common divisor', () => {
    expect(gridOf([0.4, 0.6, 1], 10)).toEqual({ step: expect.closeTo(0.2, 9), exact: true });
    expect(gridOf([1.2], 10)).toEqual({ step: 1.2, exact: true });
    // Divisors by the square root of a pressure as well.
    const root = Math.sqrt(3);
    expect(gridOf([0.4 / root, 1 / root], 10)).toEqual({ step: expect.closeTo(0.2 / root, 9), exact: true });
  });
  test('or, where they have none that is coarse enough, a ten thousandth of the largest total', () => {
    expect(gridOf([1, Math.SQRT2], 20)).toEqual({ step: 20 / MOST_STEPS, exact: false });
    // A thousandth divides both, but that would be twelve thousand steps; to ten it is ten thousand.
    expect(gridOf([1, 1.001], 12)).toEqual({ step: 0.0012, exact: false });
    expect(gridOf([1, 1.001], 9.9)).toEqual({ step: expect.closeTo(0.001, 9), exact: true });
  });
});
