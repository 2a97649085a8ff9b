import { describe, expect, it } from 'vitest';
import { given, refused } from '#core/working/answer.ts';
import { derive } from '#core/working/figure.ts';
import { formula } from '#core/working/formula.ts';
import { plain, plainAnswer } from '#core/working/plain.ts';
import { assumptionsUnder } from '#core/working/under.ts';

const SUM = formula('test-plain-sum', 'S', 'm', { a: 'm', b: 'm' }, 'a + b', (v) => v.a + v.b, { sources: ['geometry'], certainty: 'exact' });
const a = given(1, 'm', 'measured', { path: 'x' });
const b = given(2, 'm', 'memory', { assumption: 'aim.overshoot', sources: ['habit'] });
const s = derive(SUM, { a, b });

describe('plain data', () => {
  it('writes a figure with its whole working, keys in a fixed order', () => {
    expect(JSON.stringify(plainAnswer(s))).toBe(
      '{"value":3,"unit":"m","symbol":"S","formula":"test-plain-sum","expression":"a + b","certainty":"memory","extrapolated":false,"sources":["geometry"],' +
        '"inputs":{"a":{"value":1,"unit":"m","certainty":"measured","path":"x"},"b":{"value":2,"unit":"m","certainty":"memory","assumption":"aim.overshoot","sources":["habit"]}}}'
    );
  });
  it('writes a refusal by name', () =>
    expect(plainAnswer(refused('input-out-of-range', 'x', { least: -Infinity, most: 5, symbol: 'v' }))).toEqual({ refused: 'input-out-of-range', path: 'x', parameters: { least: null, most: 5, symbol: 'v' } }));
  it('has null for what JSON cannot hold', () => expect(plain([NaN, Infinity, -Infinity, Number.MAX_VALUE, 1])).toEqual([null, null, null, null, 1]));
  it('turns maps into objects and leaves out functions and what is undefined', () =>
    expect(plain({ m: new Map([['k', { f: () => 1, n: 2, u: undefined }]]), l: [null, true, 'x'] })).toEqual({ m: { k: { n: 2 } }, l: [null, true, 'x'] }));
  it('takes an object that only looks like an answer for what it is', () => expect(plain({ kind: 'speed', value: 3 })).toEqual({ kind: 'speed', value: 3 }));
});

describe('assumptionsUnder', () => {
  it('finds the assumptions at the foot of a working, each once', () => expect([...assumptionsUnder([s, derive(SUM, { a: s, b })])]).toEqual([['aim.overshoot', b]]));
  it('finds none under refusals, nothing and measured values', () => expect([...assumptionsUnder([a, null, undefined, refused('x', 'y')])]).toEqual([]));
});
