import { describe, expect, test } from 'vitest';
import { figuresOf } from '#core/fitting/figures.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { rowOf } from '#core/fitting/row.ts';
import { nozzleTable, positionsOf, problemOf, sizesOf } from '../../../support/fitting.ts';
import { num, refusal } from '../../../support/sample.ts';
import { faultsOf, originsOf } from '../../../support/working.ts';

/** Sizes of 1, 2 and 3 L/min at 10 bar; 6 L/min wanted, half of it through the upper one of three. */
const task = (more: Partial<FittingProblem> = {}, weights = [1, 1, 2]): FittingProblem => problemOf(6, { sizes: sizesOf(nozzleTable('a', 10, [1, 2, 3])), positions: positionsOf(weights, [0, 0, 1]), ...more });
const figures = (p: FittingProblem, chosen = [0, 1, 2], drive = { speedKmH: 6, pressureBar: 10 }) => figuresOf(p, rowOf(p, chosen, drive));
const near = (v: number) => expect.closeTo(v, 9) as number;

describe('the figures of a fitting', () => {
  test('with their working: each is its formula’s, and leads to its field', () => {
    const f = figures(task());
    expect(faultsOf(f)).toEqual([]);
    expect(originsOf(f)).toEqual(['(arithmetic) 1 derived', '(arithmetic) L/min derived', '(geometry) 1 derived', 'a/a0 L/min stated', 'a/a0 bar stated', 'a/a1 L/min stated', 'a/a1 bar stated', 'a/a2 L/min stated', 'a/a2 bar stated', 'fitting.targetLPerHa L/ha stated', 'pattern m derived', 'setting.pressureBar bar derived', 'setting.pressureBar bar stated', 'setting.speedKmH km/h stated']);
    expect(originsOf(figures(task(), [0, 1, 2], { speedKmH: 5, pressureBar: 10 }))).toContain('setting.speedKmH km/h derived');
  });
  test('flow, volume, match and upper share', () => {
    const f = figures(task());
    expect([f.wanted, f.pressure, f.flow, f.volume, f.match, f.topShare].map((a) => num(a))).toEqual([6, 10, 6, 150, 11 / 12, 2 / 3].map(near));
    expect(f.nozzles.map((n) => [n.position, num(n.flow), num(n.target), num(n.off)])).toEqual([['L1', 1, 1.5, -1 / 3], ['L2', 2, 1.5, 1 / 3], ['L3', 3, 3, 0]].map(([p, ...v]) => [p, ...v.map((x) => near(x as number))]));
  });
  test('the pressure is the one that gives the total, by the square from the present one', () => {
    // 4 L/min at 10 bar for 6: 22.5 bar.
    expect(num(figures(task(), [0, 0, 1]).pressure)).toBeCloseTo(22.5, 9);
    // Of a mix of 1.44 the nozzles give 5 L/min: 14.4 bar.
    expect(num(figures(task({ specificGravity: 1.44 })).pressure)).toBeCloseTo(14.4, 9);
    expect(num(figures(task({ specificGravity: 1.44 })).flow)).toBeCloseTo(5, 9);
  });
  test('a nozzle where nothing is wanted has nothing to be off from', () => {
    const [first] = figures(task({}, [0, 1, 2])).nozzles;
    expect([num(first!.target), refusal(first!.off)]).toEqual([0, 'nothing-wanted-here @ fitting.weights']);
    expect(first!.off).toMatchObject({ parameters: { position: 'L1' } });
  });
});
