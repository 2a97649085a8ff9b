import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scrolledTo, windowOf } from '../../../src/ui/strategies/table-window.ts';

const LINE = 34;
const VIEW = 500;
/** Where a line stands in the view, px from its top. */
const placeOf = (line: number, count: number, scrolled: number) => {
  const w = windowOf(count, scrolled, VIEW, LINE);
  return w.top + (line - w.first) * LINE - scrolled;
};

describe('the lines that are drawn', () => {
  it('cover the view, wherever it is scrolled to', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2_000_000 }), fc.double({ min: 0, max: 1, noNaN: true }), (count, share) => {
        const { height } = windowOf(count, 0, VIEW, LINE);
        const scrolled = share * Math.max(height - VIEW, 0);
        const w = windowOf(count, scrolled, VIEW, LINE);
        const shown = Math.min(VIEW, count * LINE);
        expect(placeOf(w.first, count, scrolled)).toBeLessThanOrEqual(1e-6);
        expect(placeOf(w.last, count, scrolled)).toBeGreaterThanOrEqual(shown - 1e-6);
        // Some more than the view, never all of a long table.
        expect(w.last - w.first).toBeLessThan(VIEW / LINE + 12);
      })
    );
  });
  it('the first and the last line are reached, of a million too', () => {
    for (const count of [3, 10_000, 1_000_000]) {
      const { height } = windowOf(count, 0, VIEW, LINE);
      expect(height).toBeLessThan(16_000_000);
      expect(windowOf(count, 0, VIEW, LINE).first).toBe(0);
      expect(windowOf(count, height, VIEW, LINE).last).toBe(count);
    }
  });
  it('a line that is gone to is in the view, and nothing moves where it is already', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 1_000_000 }), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (count, from, to) => {
        const { height } = windowOf(count, 0, VIEW, LINE);
        const line = Math.min(Math.floor(to * count), count - 1);
        const scrolled = scrolledTo(line, count, from * (height - VIEW), VIEW, LINE);
        const place = placeOf(line, count, scrolled);
        expect(place).toBeGreaterThan(-0.01);
        expect(place + LINE).toBeLessThan(VIEW + 0.01);
        expect(scrolledTo(line, count, scrolled, VIEW, LINE)).toBeCloseTo(scrolled, 3);
      })
    );
  });
});
