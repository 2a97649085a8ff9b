import { describe, expect, it } from 'vitest';
import { readTime, watchFace } from '#ui/headland/clock.ts';

describe('a watch face', () => {
  it.each([
    [0, '00:00.0'],
    [62.2, '01:02.2'],
    [59.99, '00:59.9'],
    [3600, '1:00:00.0'],
    [36_125.75, '10:02:05.7']
  ])('%d s is %s', (seconds, text) => expect(watchFace(seconds)).toBe(text));
});

describe('a typed time', () => {
  it.each([
    ['62.4', 62.4],
    ['62,4', 62.4],
    [' 67 ', 67],
    ['1:02.4', 62.4],
    ['1:02', 62],
    ['1:7', 67],
    ['2:00', 120],
    ['.5', 0.5]
  ])('%s is %d s', (text, seconds) => expect(readTime(text)).toBeCloseTo(seconds, 10));
  it.each(['', 'abc', '1:', '1:60', '1:075', '1:2:3', '-5', '1e3', '62.4 s', '6 2', 'Infinity'])('“%s” is none', (text) => expect(readTime(text)).toBeNaN());
});
