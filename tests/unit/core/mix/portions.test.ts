import { describe, expect, test } from 'vitest';
import { portions, rounded } from '#core/mix/portions.ts';

describe('what amounts are rounded to', () => {
  const step = (perHa: number, areas: readonly number[]) => portions(perHa, areas).step;
  test('a gram or a millilitre, where half of one for each load is within 2 % of the smallest', () => {
    // Two loads: two halves, 1 g, of 50 g are 2 %; of 49 g they are more.
    expect(step(0.1, [0.5, 0.5])).toBe(0.001);
    expect(step(0.1, [0.49, 0.49])).toBe(0.0001);
    // A single load: half a gram of 25 g.
    expect(step(0.1, [0.25])).toBe(0.001);
    expect(step(0.1, [0.24])).toBe(0.0001);
  });
  test('the smallest load counts, wherever it stands', () => {
    // 1 g of product in one of two: 0.01 g is what two halves may come to.
    for (const areas of [[1, 0.001], [0.001, 1]]) expect(step(1, areas)).toBe(0.00001);
  });
  test('never finer than a millionth of the unit', () => expect(step(1e-7, [1, 1])).toBe(1e-6));
  test('nothing is nothing, in grams', () => expect(portions(0, [1, 1])).toEqual({ loads: [0, 0], total: 0, step: 0.001 }));
});

describe('what each load gets', () => {
  test('its own amount, and the last what rounding left', () => {
    expect(portions(1, [1.2344, 1.2344, 1.2344])).toEqual({ loads: [1.234, 1.234, 1.235], total: 3.703, step: 0.001 });
    expect(portions(1, [1.2346, 1.2346, 1.2346])).toEqual({ loads: [1.235, 1.235, 1.234], total: 3.704, step: 0.001 });
  });
  test('where steps are as fine as they go, no load gets what the ones before it used up', () =>
    // Three times 0.6 of a step are 1.8, so two steps.
    expect(portions(1e-6, [0.6, 0.6, 0.6])).toEqual({ loads: [1e-6, 1e-6, 0], total: 2e-6, step: 1e-6 }));
  test('never more than the maximum on its own land, and then the sum is short of it', () => {
    expect(portions(1, [1.2346, 1.2346], 1)).toEqual({ loads: [1.234, 1.234], total: 2.468, step: 0.001 });
    expect(portions(1, [1.2346, 1.2346], 1.001)).toEqual({ loads: [1.235, 1.234], total: 2.469, step: 0.001 });
  });
  test('a maximum that is met to the gram is met', () => expect(portions(1.1, [0.3, 0.7], 1.1)).toEqual({ loads: [0.33, 0.77], total: 1.1, step: 0.001 }));
});

test('whole steps, without what binary arithmetic leaves', () => {
  expect(rounded(0.1 + 0.2, 0.001)).toBe(0.3);
  expect(rounded(2.4445, 0.01)).toBe(2.44);
  expect(rounded(2.4455, 0.01)).toBe(2.45);
});
