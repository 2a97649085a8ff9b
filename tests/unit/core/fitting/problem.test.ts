import { describe, expect, test } from 'vitest';
import { fit } from '#core/fitting/fit.ts';
import { fittingProblem, type FittingProblem } from '#core/fitting/problem.ts';
import { ruleReports } from '#core/fitting/rules.ts';
import type { Fitting } from '#core/fitting/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { ISO_TABLE_ID } from '#core/sprayer/iso10625.ts';
import type { NozzlePosition } from '#core/sprayer/types.ts';
import { document, onlyOpen, shut, type Parts } from '../../../support/sample.ts';
import { isoSizes, positionsOf, problemOf } from '../../../support/fitting.ts';

const of = (parts: Parts) => {
  const d = document(parts);
  const r = evaluate(d, 'block', 'now');
  if ('kind' in r) throw new Error(r.code);
  return fittingProblem(d, r);
};
const task = (parts: Parts): FittingProblem => {
  const p = of(parts);
  if ('kind' in p) throw new Error(`${p.code} at ${p.path}`);
  return p;
};
const code = (parts: Parts): string => {
  const p = of(parts);
  return 'kind' in p ? `${p.code} @ ${p.path}` : 'a task';
};
const wish = (fitting: Fitting, more: Parts = {}): Parts => ({ ...more, rung: { fitting } });

/** Level nozzles of a tower, half a metre out: each ray crosses every plane at its own height. */
const level = (...heights: number[]): NozzlePosition[] =>
  (['left', 'right'] as const).flatMap((side) =>
    heights.map((heightM, i) => ({ id: `${side === 'left' ? 'L' : 'R'}${i + 1}`, side, heightM, offsetM: 0.5, angleDeg: 0, swivelDownDeg: -15, swivelUpDeg: 15, coneAngleDeg: 20, table: ISO_TABLE_ID, size: '015' }))
  );
const weightsOf = (p: FittingProblem): Record<string, number> => Object.fromEntries(p.positions.map((q) => [q.id, q.weight]));

describe('weights as the canopy stands', () => {
  test('a box 0.5 to 3.0 m before nozzles at 0.6, 1.2, 1.8 and 2.4 m: bands of 0.4, 0.6, 0.6 and 0.9 m', () => {
    const w = weightsOf(task({ canopy: { shape: 'box', heightM: 3, skirtM: 0.5 }, machine: { nozzles: level(0.6, 1.2, 1.8, 2.4) } }));
    for (const side of ['L', 'R']) [0.4, 0.6, 0.6, 0.9].forEach((m, i) => expect(w[`${side}${i + 1}`]).toBeCloseTo(m / 5, 9));
  });
  test('half the width weighs half: a profile that narrows from 1.2 to 0.6 m', () => {
    const profile = [{ heightM: 0.5, widthM: 1.2 }, { heightM: 1.75, widthM: 1.2 }, { heightM: 1.7501, widthM: 0.6 }, { heightM: 3, widthM: 0.6 }];
    // The lower two meet half-way at 1.5, the second and third at 2.
    const w = weightsOf(task({ canopy: { profile, heightM: 3, skirtM: 0.5, widthM: 1.2 }, machine: { nozzles: level(1.25, 1.75, 2.25) } }));
    const area = [1 * 1.2, 0.25 * 1.2 + 0.25 * 0.6, 1 * 0.6];
    const all = 2 * area.reduce((a, b) => a + b, 0);
    area.forEach((m, i) => expect(w[`L${i + 1}`]).toBeCloseTo(m / all, 4));
  });
  test('a nozzle over the top weighs nothing and takes nothing from its neighbour', () => {
    const w = weightsOf(task({ canopy: { shape: 'box', heightM: 3, skirtM: 0.5 }, machine: { nozzles: level(0.6, 1.2, 1.8, 2.4, 4.5) } }));
    expect(w['L5']).toBe(0);
    expect(w['L4']).toBeCloseTo(0.9 / 5, 9);
  });
  test('no nozzle before leaf is refused', () => expect(code({ machine: { nozzles: level(4.5) } })).toBe('no-leaf-before-nozzles @ setting.nozzles'));
});

describe('a task', () => {
  test('holds the nozzles that spray, and weights that add up to 1', () => {
    expect(task({ setting: { nozzles: shut('L8', 'R8') } }).positions.map((p) => p.id)).toEqual(['L1', 'L2', 'L3', 'L4', 'L5', 'L6', 'L7', 'R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'R7']);
    const one = task({ block: { pattern: { kind: 'one-side-both-faces', side: 'left' } } });
    expect(one.positions.every((p) => p.side === 'left')).toBe(true);
    expect(one.widthM).toBe(2);
    expect(one.positions.reduce((s, p) => s + p.weight, 0)).toBeCloseTo(1, 12);
  });
  test('is plain data', () => {
    const p = task({});
    expect(structuredClone(p)).toEqual(p);
    const found = fit(p);
    expect(structuredClone(found)).toEqual(found);
  });
  test('takes the wanted water, or the user’s own target', () => {
    expect(task({ block: { ownWaterLPerHa: 333 } }).targetLPerHa).toBe(333);
    expect(task(wish({ targetLPerHa: 250 }, { block: { ownWaterLPerHa: 333 } })).targetLPerHa).toBe(250);
    expect(code({ block: { strategy: 'leaf-wall' } })).toMatch(/^strategy-without-water/);
    expect(task(wish({ targetLPerHa: 250 }, { block: { strategy: 'leaf-wall' } })).targetLPerHa).toBe(250);
  });
  test('holds machine and wish together', () => {
    expect(task(wish({ pressureMinBar: 2, pressureMaxBar: 12, speedMinKmH: 5 })).pressure).toEqual({ presentBar: 10, leastBar: 4, mostBar: 12 });
    expect(task(wish({ speedMinKmH: 5 })).speed).toEqual({ presentKmH: 6, leastKmH: 5, mostKmH: 8 });
    expect(code(wish({ pressureMinBar: 19 }))).toBe('fitting-pressure-apart @ fitting.pressureMinBar');
    expect(code(wish({ speedMaxKmH: 2 }))).toBe('fitting-speed-apart @ fitting.speedMinKmH');
  });
  test('offers the stock; what is fitted and not in stock may only stay', () => {
    const p = task(wish({ stock: [{ table: ISO_TABLE_ID, size: '02', count: 3 }] }));
    expect(p.sizes.map((s) => [s.size.id, s.offered, s.count])).toEqual([['02', true, 3], ['015', false, undefined]]);
    expect(task({}).sizes.filter((s) => s.offered)).toHaveLength(17);
  });
  test('own weights: what is not named weighs nothing; none at all is refused', () => {
    expect(weightsOf(task(wish({ weighting: 'own', weights: [{ position: 'L2', weight: 1 }, { position: 'R2', weight: 3 }] })))).toMatchObject({ L1: 0, L2: 0.25, R2: 0.75 });
    expect(code(wish({ weighting: 'own' }))).toBe('no-own-weight @ fitting.weights');
    expect(Object.values(weightsOf(task(wish({ weighting: 'uniform' })))).every((w) => Math.abs(w - 1 / 16) < 1e-12)).toBe(true);
  });
  test('no open nozzle, no canopy and an unknown size are refused', () => {
    expect(code({ setting: { nozzles: onlyOpen() } })).toBe('no-nozzle-open @ setting.nozzles');
    expect(code({ canopy: { skirtM: 3.5 } })).toMatch(/^no-outline/);
    expect(code({ setting: { nozzles: [{ position: 'L1', size: '99' }] } })).toMatch(/^unknown-nozzle/);
  });
});

describe('the list', () => {
  test('nozzles that cannot reach the target say what they would need', () => {
    // Six of 0.4 L/min at 3 bar for 24 L/min: 4 L/min each, a tenth of it at 3 bar, so a hundred times 3 bar.
    const found = fit(problemOf(24, { sizes: isoSizes('01', '06'), positions: positionsOf([1, 1, 1, 1, 1, 1], [0, 0, 0, 0, 0, 0]) }));
    if ('kind' in found) throw new Error(found.code);
    expect(found.findings.map((f) => f.code)).toEqual(['fitting-present-unfit']);
    expect((found.findings[0]!.parameters.pressure as { value: number }).value).toBeCloseTo(300, 6);
  });
  test('sides that differ now are said, where both are to be alike', () => {
    const positions = positionsOf([1, 1], [0, 1], ['left', 'right']).map((p) => (p.id === 'R1' ? { ...p, present: 1 } : p));
    const found = fit(problemOf(6, { sizes: isoSizes('015', '02'), positions, mirrored: true }));
    if ('kind' in found) throw new Error(found.code);
    expect(found.findings.map((f) => f.code)).toEqual(['fitting-sides-unlike']);
    expect(found.rows.every((r) => !r.names.includes('no-change'))).toBe(true);
  });
  test('where the present pressure would not do, the speed that does is the nearest one', () => {
    // 6 × 0.8 L/min at 3 bar; 15 bar gives √5 as much, 10.733 L/min; 12 L/min are wanted at 6 km/h: 5.367 km/h.
    const found = fit(problemOf(12, { sizes: isoSizes('02'), positions: positionsOf([1, 1, 1, 1, 1, 1], [0, 0, 0, 0, 0, 0]) }));
    if ('kind' in found) throw new Error(found.code);
    expect(found.rows).toHaveLength(1);
    expect(found.rows[0]).toMatchObject({ atPresentSpeed: false, names: ['no-change', 'best-match'] });
    expect(found.rows[0]!.pressureBar).toBeCloseTo(15, 6);
    expect(found.rows[0]!.speedKmH).toBeCloseTo(6 * (4.8 * Math.sqrt(5)) / 12, 6);
    expect(found.rows[0]!.findings.map((f) => f.code)).toContain('fitting-other-speed');
  });
});

test('rules are those of §6.1, for the machines and trees that they are meant for', () => {
  const p = problemOf(10, { sizes: isoSizes('02'), positions: positionsOf([1, 1], [0, 0]) });
  const suits = (more: Partial<FittingProblem>) => ruleReports({ ...p, ...more }, 0.7, true).filter((r) => r.suits).map((r) => r.rule);
  expect(suits({ canopyTopM: 2.5 })).toEqual(['two-thirds']);
  expect(suits({ canopyTopM: 4 })).toEqual(['upper-large', 'two-thirds']);
  expect(suits({ canopyTopM: 6.5, evergreen: true })).toEqual(['upper-large', 'upper-low-machine', 'two-thirds', 'middle-heavy']);
  expect(suits({ outlet: { kind: 'tower', fromHeightM: 0.5, toHeightM: 3, offsetM: 0.5, slotWidthM: 0.1 } })).toEqual(['proportional']);
  // None was meant for round spouts, however high or green the trees are.
  expect(suits({ outlet: { kind: 'spouts', diameterM: 0.15, spouts: [{ heightM: 1, offsetM: 0.5, angleDeg: 20 }] }, canopyTopM: 6.5, evergreen: true })).toEqual([]);
  const met = (top: number) => Object.fromEntries(ruleReports(p, top, false).map((r) => [r.rule, r.met]));
  expect(met(0.538)).toMatchObject({ 'upper-large': false, proportional: true });
  expect(met(0.667)).toMatchObject({ 'upper-large': true, 'two-thirds': true, 'upper-low-machine': false, 'middle-heavy': false });
});
