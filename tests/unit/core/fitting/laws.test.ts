import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fit, type FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { isoSizes, nozzleTable, positionsOf, problemOf, sizesOf } from '../../../support/fitting.ts';

const ISO = ['0075', '01', '015', '02', '025', '03', '04'] as const;
const task = fc.record({
  weights: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 6, maxLength: 6 }).filter((w) => w.some((v) => v > 0)),
  now: fc.array(fc.nat(ISO.length - 1), { minLength: 6, maxLength: 6 }),
  flow: fc.double({ min: 5, max: 14, noNaN: true })
});
const problem = ({ weights, now, flow }: { weights: number[]; now: number[]; flow: number }, more: Partial<FittingProblem> = {}): FittingProblem =>
  problemOf(flow, { sizes: isoSizes(...ISO), positions: positionsOf(weights, now), ...more });
/** The best match with at most so many changes, at the present speed or at any. */
const best = (p: FittingProblem, changes = Infinity, presentOnly = false): number => {
  const found = fit(p);
  return 'kind' in found ? -1 : Math.max(-1, ...found.rows.filter((r) => r.changes <= changes && (r.atPresentSpeed || !presentOnly)).map((r) => r.match));
};
const list = (p: FittingProblem): FittingList => {
  const found = fit(p);
  if ('kind' in found) throw new Error(found.code);
  return found;
};
const runs = { seed: 41, numRuns: 25 };

describe('laws of a fitting', () => {
  test('twice the target with nozzles of twice the flow is the same fitting', () => {
    const table = (k: number) => nozzleTable('a', 3, [0.3, 0.4, 0.6, 0.8, 1, 1.2, 1.6].map((q) => q * k));
    fc.assert(
      fc.property(task, (t) => {
        const of = (k: number) => problem({ ...t, flow: t.flow * k }, { sizes: sizesOf(table(k)) });
        const [a, b] = [fit(of(1)), fit(of(2))];
        if ('kind' in a || 'kind' in b) return expect('kind' in a && 'kind' in b).toBe(true);
        expect(b.rows.map((r) => [r.changes, r.atPresentSpeed])).toEqual(a.rows.map((r) => [r.changes, r.atPresentSpeed]));
        b.rows.forEach((r, i) => {
          expect(r.match).toBeCloseTo(a.rows[i]!.match, 9);
          expect(r.pressureBar).toBeCloseTo(a.rows[i]!.pressureBar, 6);
        });
      }),
      runs
    );
  });
  test('left and right alike gives left and right alike', () => {
    fc.assert(
      fc.property(task, ({ weights, now, flow }) => {
        const found = fit(problemOf(2 * flow, { sizes: isoSizes(...ISO), positions: positionsOf(weights, now, ['left', 'right']), mirrored: true }));
        if ('kind' in found) return;
        for (const r of found.rows) for (const n of r.nozzles) expect(r.nozzles.find((m) => m.position === `R${n.position.slice(1)}`)?.size).toBe(n.size);
      }),
      runs
    );
  });
  test('a machine seen in a mirror is fitted in the mirror', () => {
    fc.assert(
      fc.property(task, ({ weights, now, flow }) => {
        const left = problem({ weights, now, flow });
        const right: FittingProblem = { ...left, positions: left.positions.map((p) => ({ ...p, side: 'right' as const })) };
        expect(best(right)).toBeCloseTo(best(left), 12);
      }),
      { seed: 42, numRuns: 8 }
    );
  });
  test('more changes allowed is never worse, and changes allowed are kept', () => {
    fc.assert(
      fc.property(task, (t) => {
        let before = -1;
        for (const mostChanges of [0, 1, 2, 4, 6]) {
          const found = fit(problem(t, { mostChanges }));
          const match = 'kind' in found ? -1 : Math.max(...found.rows.map((r) => r.match));
          if (!('kind' in found)) for (const r of found.rows) expect(r.changes).toBeLessThanOrEqual(mostChanges);
          expect(match).toBeGreaterThanOrEqual(before - 1e-9);
          before = match;
        }
      }),
      runs
    );
  });
  test('more sizes to choose from are never worse, at any number of changes', () => {
    fc.assert(
      fc.property(task, (t) => {
        const few = problem(t);
        const many = { ...few, sizes: [...few.sizes, ...isoSizes('0125', '035', '05')] };
        for (const c of [0, 1, 2, 3, 6]) for (const presentOnly of [true, false]) expect(best(many, c, presentOnly)).toBeGreaterThanOrEqual(best(few, c, presentOnly) - 1e-9);
      }),
      { seed: 43, numRuns: 6 }
    );
  });
  test('wider pressures and speeds are never worse', () => {
    fc.assert(
      fc.property(task, (t) => {
        expect(best(problem(t, { pressure: { presentBar: 10, leastBar: 3, mostBar: 20 } }))).toBeGreaterThanOrEqual(best(problem(t)) - 1e-9);
        expect(best(problem(t, { speed: { presentKmH: 6, leastKmH: 3, mostKmH: 9 } }))).toBeGreaterThanOrEqual(best(problem(t)) - 1e-9);
      }),
      runs
    );
  });
  test('the total is the wanted one, every flow is that of its table, shares add up', () => {
    fc.assert(
      fc.property(task, (t) => {
        const p = problem(t);
        const found = fit(p);
        if ('kind' in found) return;
        for (const r of found.rows) {
          expect(r.volumeLPerHa / p.targetLPerHa).toBeCloseTo(1, 7);
          expect(r.nozzles.reduce((s, n) => s + n.share, 0)).toBeCloseTo(1, 9);
          for (const n of r.nozzles) expect(n.flowLPerMin).toBeCloseTo(p.sizes.find((s) => s.size.id === n.size)!.size.flowLPerMin * Math.sqrt(r.pressureBar / 3), 9);
          expect(r.pressureBar).toBeGreaterThanOrEqual(5 - 1e-6);
          expect(r.pressureBar).toBeLessThanOrEqual(15 + 1e-6);
          expect(r.speedKmH).toBeGreaterThanOrEqual(4 - 1e-6);
          expect(r.speedKmH).toBeLessThanOrEqual(8 + 1e-6);
        }
      }),
      runs
    );
  });
});

describe('rows', () => {
  const even = [1, 1.5, 2, 2.5, 2, 1];
  test('no other row beats one on every count', () => {
    const { rows } = list(problem({ weights: even, now: [0, 1, 2, 3, 4, 5], flow: 10 }));
    for (const a of rows)
      for (const b of rows) if (a !== b) expect(a.changes <= b.changes && a.match >= b.match && a.atPresentSpeed >= b.atPresentSpeed).toBe(false);
  });
  test('nozzles taken off are fitted elsewhere before any is bought', () => {
    // Present 03 and 01 are the wrong way round.
    const p = problem({ weights: [1, 3], now: [0, 0], flow: 2.92 });
    const swapped: FittingProblem = { ...p, sizes: [{ ...isoSizes('01')[0]!, count: 0 }, { ...isoSizes('03')[0]!, count: 0 }], positions: p.positions.map((q, i) => ({ ...q, present: 1 - i })) };
    const row = list(swapped).rows.find((r) => r.names.includes('best-match'))!;
    expect(row.changes).toBe(2);
    expect(row.match).toBeCloseTo(1, 9);
    expect(row.buy).toBe(0);
  });
  test('a drawer that holds too few says how many to buy', () => {
    const p = problem({ weights: [1, 1, 1, 1, 1, 1], now: [0, 0, 0, 0, 0, 0], flow: 10 });
    const row = list({ ...p, sizes: [{ ...isoSizes('0075')[0]!, offered: false }, { ...isoSizes('025')[0]!, count: 4 }] }).rows.find((r) => r.changes === 6)!;
    expect(row.needs).toEqual([{ table: 'iso-10625', size: '025', colour: 'lilac', count: 6, buy: 2 }]);
  });
});

describe('refused by name', () => {
  const weights = [1, 1, 1, 1, 1, 1];
  const now = [2, 2, 2, 2, 2, 2];
  const code = (p: FittingProblem) => {
    const found = fit(p);
    return 'kind' in found ? found.code : 'found';
  };
  const only = (...ids: string[]) => ({ sizes: isoSizes(...ids), positions: positionsOf(weights, [0, 0, 0, 0, 0, 0]) });
  test('too little', () => expect(code(problemOf(60, only('01', '015')))).toBe('fitting-too-little'));
  test('too much', () => expect(code(problemOf(1, only('06', '08')))).toBe('fitting-too-much'));
  test('changes bind', () => expect(code(problemOf(24, { ...only('01', '04'), mostChanges: 0 }))).toBe('fitting-changes-bind'));
  test('drops that no table prints', () => expect(code(problem({ weights, now, flow: 8 }, { finestClass: 'C' }))).toBe('fitting-class-unknown'));
  test('drops that no size makes', () => {
    const table = nozzleTable('a', 3, [0.6, 0.8]);
    const sizes = sizesOf({ ...table, sizes: table.sizes.map((s) => ({ ...s, droplets: [{ fromBar: 3, class: 'VF' as const }] })) });
    expect(code(problemOf(7, { sizes, positions: positionsOf(weights, [0, 0, 0, 0, 0, 0]), finestClass: 'M' }))).toBe('fitting-class-unmet');
  });
  test('tables and pressures apart', () => expect(code(problemOf(7, { ...only('015'), pressure: { presentBar: 10, leastBar: 21, mostBar: 30 } }))).toBe('fitting-pressure-tables'));
  test('a search that is stopped', () => {
    const found = fit(problem({ weights, now, flow: 8 }), { cancelled: () => true });
    expect('kind' in found && found.code).toBe('fitting-cancelled');
  });
});

test('drops are kept to the wish, by each size at the pressure found', () => {
  const table = nozzleTable('a', 3, [0.4, 0.6, 0.8, 1, 1.2]);
  // Finer from 8 bar up.
  const sizes = sizesOf({ ...table, sizes: table.sizes.map((s) => ({ ...s, droplets: [{ fromBar: 3, class: 'M' as const }, { fromBar: 8, class: 'F' as const }] })) });
  const p = problemOf(8, { sizes, positions: positionsOf([1, 1, 2, 2, 1, 1], [0, 0, 0, 0, 0, 0]), finestClass: 'M' });
  const { rows } = list(p);
  for (const r of rows) {
    expect(r.pressureBar).toBeLessThan(8);
    expect(r.classes).toEqual(['M']);
  }
  expect(list({ ...p, finestClass: 'F' }).rows.length).toBeGreaterThan(0);
});

test('progress runs from 0 to 1', () => {
  const told: number[] = [];
  fit(problem({ weights: [1, 2, 3, 3, 2, 1], now: [0, 1, 2, 3, 4, 5], flow: 9 }), { progress: (done) => told.push(done) });
  expect(told.length).toBeGreaterThan(2);
  expect([...told].sort((a, b) => a - b)).toEqual(told);
  expect(told.at(-1)).toBeCloseTo(1, 9);
});

test('a table with printed points: pressure is solved by the table, and it is said to be approximate', () => {
  const bend = nozzleTable('bent', 10, [1, 1.5, 2]);
  // An exponent of 0.45 between 5 and 20 bar.
  const points = (q: number) => [5, 10, 20].map((pressureBar) => ({ pressureBar, flowLPerMin: q * (pressureBar / 10) ** 0.45 }));
  const sizes = sizesOf({ ...bend, sizes: bend.sizes.map((s) => ({ ...s, points: points(s.flowLPerMin) })) });
  const found = list(problemOf(9, { sizes, positions: positionsOf([1, 1, 2, 2, 1, 1], [0, 0, 0, 0, 0, 0]) }));
  expect(found.searched.bent).toBe(true);
  for (const r of found.rows.filter((each) => each.atPresentSpeed)) {
    const at10 = r.nozzles.reduce((s, n) => s + sizes.find((z) => z.size.id === n.size)!.size.flowLPerMin, 0);
    expect(r.pressureBar).toBeCloseTo(10 * (9 / at10) ** (1 / 0.45), 4);
  }
});
