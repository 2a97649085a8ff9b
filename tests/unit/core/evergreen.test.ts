import { describe, expect, it } from 'vitest';
import { num, result } from '../../support/sample.ts';

describe('an evergreen block', () => {
  const at = (evergreen: boolean, bbch: number) => result({ block: { evergreen, strategy: 'us-row-volume' }, rung: { bbch } });
  it('keeps its leaf and its water at bud break', () => {
    expect(num(at(true, 10).canopy.figures.LAD)).toBe(2);
    expect(num(at(true, 10).strategy.water)).toBe(num(at(false, 75).strategy.water));
  });
  it('is told from a block that drops its leaf', () => {
    expect(num(at(false, 10).canopy.figures.LAD)).toBeLessThan(0.05);
    expect(num(at(false, 10).strategy.water) / num(at(true, 10).strategy.water)).toBeCloseTo(0.3 / 0.7, 12);
  });
});
