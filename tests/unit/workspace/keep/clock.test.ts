import { describe, expect, it } from 'vitest';
import { WallClock } from '#workspace/keep/clock.ts';

describe('the clock on the wall', () => {
  const setUp = () => {
    const now = { wall: 1_900_000_000_000, own: 5000 };
    return { now, clock: new WallClock(() => now.wall, () => now.own) };
  };
  it('is seen to go back, once, by so much', () => {
    const { now, clock } = setUp();
    now.own += 10_000;
    now.wall += 10_000 - 7_200_000;
    expect(clock.setBackS()).toBeCloseTo(7200, 6);
    now.own += 1000;
    now.wall += 1000;
    expect(clock.setBackS()).toBe(0);
  });
  it('a few seconds, a jump ahead, a sleep are nothing to speak of', () => {
    const { now, clock } = setUp();
    now.wall -= 50_000;
    expect(clock.setBackS()).toBe(0);
    now.wall += 86_400_000;
    expect(clock.setBackS()).toBe(0);
  });
  it('stands before a moment that has been', () => {
    const { now, clock } = setUp();
    expect(clock.beforeS(now.wall + 3_600_000)).toBe(3600);
    expect(clock.beforeS(now.wall + 30_000)).toBe(0);
    expect(clock.beforeS(now.wall - 1)).toBe(0);
  });
});
