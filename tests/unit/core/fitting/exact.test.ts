import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fit, type FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { nozzleTable, positionsOf, problemOf, sizesOf } from '../../../support/fitting.ts';

/**
 * The search against trying everything. What is tried here is written from the orifice law alone and shares no code with the engine:
 * flow of a nozzle = printed flow · √(pressure / printed pressure); litres per hectare = 600 · flow / (speed · width).
 */
interface Tried {
  readonly changes: number;
  readonly match: number;
  readonly present: boolean;
}

function tryEverything(p: FittingProblem): Tried[] {
  const out: Tried[] = [];
  const n = p.positions.length;
  const chosen = new Array<number>(n).fill(0);
  const wanted = (p.targetLPerHa * p.speed.presentKmH * p.widthM) / 600;
  const visit = (i: number): void => {
    if (i < n) {
      for (let s = 0; s < p.sizes.length; s++) {
        chosen[i] = s;
        visit(i + 1);
      }
      return;
    }
    for (let k = 0; k < n; k++) if (!p.sizes[chosen[k]!]!.offered && chosen[k] !== p.positions[k]!.present) return;
    if (p.mirrored)
      for (let a = 0; a < n; a++)
        for (let b = 0; b < n; b++) if (p.positions[a]!.id.slice(1) === p.positions[b]!.id.slice(1) && chosen[a] !== chosen[b]) return;
    const changes = chosen.filter((s, k) => s !== p.positions[k]!.present).length;
    if (changes > p.mostChanges) return;
    const atOneBar = chosen.map((s) => p.sizes[s]!.size.flowLPerMin / Math.sqrt(p.sizes[s]!.table.referenceBar));
    const sum = atOneBar.reduce((a, b) => a + b, 0);
    const bar = (wanted / sum) ** 2;
    // One range for all, where droplet classes are not asked for.
    const low = Math.max(p.pressure.leastBar, ...chosen.map((s) => p.sizes[s]!.table.pressureMinBar));
    const high = Math.min(p.pressure.mostBar, ...chosen.map((s) => p.sizes[s]!.table.pressureMaxBar));
    if (low > high) return;
    const used = Math.min(Math.max(bar, low), high);
    const speed = p.speed.presentKmH * Math.sqrt(used / bar);
    const hair = 1e-7;
    if (speed < p.speed.leastKmH * (1 - hair) || speed > p.speed.mostKmH * (1 + hair)) return;
    let match = 0;
    for (let k = 0; k < n; k++) match += Math.min(atOneBar[k]! / sum, p.positions[k]!.weight);
    out.push({ changes, match, present: Math.abs(speed / p.speed.presentKmH - 1) < hair });
  };
  visit(0);
  return out;
}

const best = (all: readonly Tried[], changes: number, presentOnly: boolean): number => Math.max(-1, ...all.filter((t) => t.changes <= changes && (t.present || !presentOnly)).map((t) => t.match));
const rowsOf = (l: FittingList): Tried[] => l.rows.map((r) => ({ changes: r.changes, match: r.match, present: r.atPresentSpeed }));

function same(p: FittingProblem, tolerance: number): void {
  const tried = tryEverything(p);
  const found = fit(p);
  if ('kind' in found) {
    expect(tried).toEqual([]);
    return;
  }
  const rows = rowsOf(found);
  for (let c = 0; c <= p.positions.length; c++)
    for (const presentOnly of [true, false]) expect(Math.abs(best(rows, c, presentOnly) - best(tried, c, presentOnly)), `${c} changes, present speed ${presentOnly}`).toBeLessThanOrEqual(tolerance);
  // Nothing in the list is beaten by anything that was tried.
  for (const r of rows) {
    const beaten = tried.some((t) => t.changes <= r.changes && t.match >= r.match - tolerance && Number(t.present) >= Number(r.present) && (t.changes < r.changes || t.match > r.match + tolerance || t.present !== r.present));
    expect(beaten && tolerance < 1e-6, JSON.stringify(r)).toBe(false);
  }
}

const weight = fc.integer({ min: 0, max: 20 });
const weights = (n: number) => fc.array(weight, { minLength: n, maxLength: n }).filter((w) => w.some((v) => v > 0));
const flows = (least: number, most: number) => fc.uniqueArray(fc.integer({ min: 4, max: 60 }), { minLength: least, maxLength: most }).map((a) => a.map((v) => v / 20));
const wish = fc.record({ total: fc.double({ min: 0.5, max: 2, noNaN: true }), least: fc.constantFrom(3, 5, 8), most: fc.constantFrom(9, 14, 20), slow: fc.constantFrom(4, 6), fast: fc.constantFrom(6, 9), changes: fc.integer({ min: 0, max: 5 }) });

describe('finds what trying everything finds', () => {
  test('positions by themselves, one table', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 5 }).chain((n) => fc.record({ w: weights(n), now: fc.array(fc.nat(), { minLength: n, maxLength: n }) })), flows(2, 5), wish, ({ w, now }, q, v) => {
        const sizes = sizesOf(nozzleTable('a', 3, q));
        const positions = positionsOf(w, now.map((k) => k % sizes.length));
        const mean = (q.reduce((a, b) => a + b, 0) / q.length) * w.length * Math.sqrt(10 / 3);
        same(problemOf(mean * v.total, { positions, sizes, mostChanges: Math.min(v.changes, w.length), pressure: { presentBar: 10, leastBar: v.least, mostBar: v.most }, speed: { presentKmH: 6, leastKmH: v.slow, mostKmH: v.fast } }), 1e-9);
      }),
      { seed: 31, numRuns: 150 }
    );
  });
  test('left and right alike', () => {
    fc.assert(
      fc.property(weights(3), fc.array(fc.nat(), { minLength: 3, maxLength: 3 }), flows(2, 4), wish, (w, now, q, v) => {
        const sizes = sizesOf(nozzleTable('a', 3, q));
        const positions = positionsOf(w, now.map((k) => k % sizes.length), ['left', 'right']);
        const mean = (q.reduce((a, b) => a + b, 0) / q.length) * 6 * Math.sqrt(10 / 3);
        same(problemOf(mean * v.total, { positions, sizes, mirrored: true, mostChanges: Math.min(v.changes + 1, 6), pressure: { presentBar: 10, leastBar: v.least, mostBar: v.most }, speed: { presentKmH: 6, leastKmH: v.slow, mostKmH: v.fast } }), 1e-9);
      }),
      { seed: 32, numRuns: 60 }
    );
  });
  test('tables of other reference pressures and ranges mixed: within the step of the grid', () => {
    fc.assert(
      fc.property(weights(4), fc.array(fc.nat(), { minLength: 4, maxLength: 4 }), flows(2, 3), flows(2, 3), wish, (w, now, q, r, v) => {
        // Away from the limits by more than the rounding: a total on the very edge may fall either side of it.
        const sizes = sizesOf(nozzleTable('a', 3, q, { pressureMaxBar: 12.3 }), nozzleTable('b', 10, r, { pressureMinBar: 6.1 }));
        const positions = positionsOf(w, now.map((k) => k % sizes.length));
        const mean = (q.reduce((a, b) => a + b, 0) / q.length) * 4 * Math.sqrt(10 / 3);
        const p = problemOf(mean * v.total, { positions, sizes, pressure: { presentBar: 10, leastBar: v.least, mostBar: v.most }, speed: { presentKmH: 6, leastKmH: v.slow, mostKmH: v.fast } });
        same(p, 1e-3);
      }),
      { seed: 33, numRuns: 40 }
    );
  });
});
