import fc from 'fast-check';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { keptRows, sortRows, summary } from '../../../src/workspace/block-rows.ts';

const canopies = { count: 5, block: ['Bench 2', 'bench 10', 'Hill', 'Élan', 'Bench 2'] };
const figures = Float64Array.of(3, 1, NaN, 2, 3);
const all = Uint32Array.of(0, 1, 2, 3, 4);
const list = (rows: Uint32Array) => [...rows];

describe('rows that are kept', () => {
  it('are those whose name holds the text, whatever its case and blanks about it', () => {
    expect(list(keptRows(canopies, ' BENCH ', null))).toEqual([0, 1, 4]);
    expect(list(keptRows(canopies, '', null))).toEqual([0, 1, 2, 3, 4]);
    expect(list(keptRows(canopies, 'nowhere', null))).toEqual([]);
  });
  it('are on the right side of a limit, which counts itself; without a figure none is', () => {
    expect(list(keptRows(canopies, '', { values: figures, way: 'least', value: 2 }))).toEqual([0, 3, 4]);
    expect(list(keptRows(canopies, '', { values: figures, way: 'most', value: 2 }))).toEqual([1, 3]);
    expect(list(keptRows(canopies, 'bench', { values: figures, way: 'most', value: 2 }))).toEqual([1]);
  });
});

describe('rows that are sorted', () => {
  it('by a figure, those without one last whichever way, equal ones as they were', () => {
    expect(list(sortRows(all, false, figures))).toEqual([1, 3, 0, 4, 2]);
    expect(list(sortRows(all, true, figures))).toEqual([0, 4, 3, 1, 2]);
  });
  it('by name as people count: 2 before 10', () => expect(list(sortRows(all, false, canopies.block))).toEqual([0, 4, 1, 3, 2]));
  it('keep their order where there is nothing to sort by', () => expect(sortRows(all, false, null)).toBe(all));
  it('are the same rows', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.double(), fc.constant(NaN)), { maxLength: 60 }), fc.boolean(), (v, down) => {
        const rows = Uint32Array.from(v, (_, i) => i);
        const out = sortRows(rows, down, Float64Array.from(v));
        expect([...out].sort((a, b) => a - b)).toEqual([...rows]);
        const known = [...out].map((i) => v[i]!).filter((x) => !Number.isNaN(x));
        for (let i = 1; i < known.length; i++) expect(down ? known[i - 1]! >= known[i]! : known[i - 1]! <= known[i]!).toBe(true);
      })
    );
  });
});

describe('what a column comes to', () => {
  it('is its mean and standard deviation, as a statistics library has them', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 2, maxLength: 50 }), (v) => {
        const said = summary(Float64Array.from(v), Uint32Array.from(v, (_, i) => i));
        expect(said.mean).toBeCloseTo(mean(v), 6);
        expect(said.deviation).toBeCloseTo(sampleStandardDeviation(v), 6);
      })
    );
  });
  it('leaves out what has no figure, and is none of nothing', () => {
    expect(summary(figures, all)).toEqual({ mean: 2.25, deviation: expect.closeTo(Math.sqrt(11 / 12), 12) });
    expect(summary(figures, Uint32Array.of(2)).mean).toBeNaN();
    expect(summary(figures, Uint32Array.of(1)).deviation).toBeNaN();
  });
});
