import fc from 'fast-check';
import { curveMonotoneY, line } from 'd3-shape';
import { expect, it } from 'vitest';
import { smoothPath } from '#section/smooth.ts';

/** What another's hand draws through the same points. */
const other = line().curve(curveMonotoneY);
const tenth = (v: number) => Math.round(v * 10) / 10;

it('a smooth outline is the monotone curve that d3 draws', () => {
  const steps = fc.array(fc.tuple(fc.double({ min: 0, max: 300, noNaN: true }), fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 40, noNaN: true }))), { minLength: 2, maxLength: 12 });
  fc.assert(
    fc.property(steps, fc.boolean(), (all, rises) => {
      let y = 400;
      const points = all.map(([x, dy]) => [tenth(x), (y = tenth(y + (rises ? -dy : dy)))] as [number, number]);
      const drawn = other(points)!;
      // One point alone is a closed path there and no line here.
      fc.pre(!drawn.endsWith('Z'));
      expect(smoothPath(points)).toBe(drawn);
    }),
    { numRuns: 500 }
  );
});
