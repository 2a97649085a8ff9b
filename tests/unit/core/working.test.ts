import { describe, expect, test } from 'vitest';
import '#core/setting/evaluate.ts';
import { CERTAINTIES, given, isRefused, refused, valueOf, weaker, type Answer } from '#core/working/answer.ts';
import { Assumptions, type Assumption } from '#core/working/assumption.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '#core/working/figure.ts';
import { formula, formulas } from '#core/working/formula.ts';

const RATIO = formula('test-ratio', 'r', '1', { a: 'm', b: 'm' }, 'a / b', (v) => v.a / v.b, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { a: NOT_NEGATIVE },
  published: { b: [1, 10] }
});
const m = (value: number, certainty?: Parameters<typeof given>[2], more?: Parameters<typeof given>[3]) => given(value, 'm', certainty, more);
const figure = (a: Answer) => {
  if (a.kind !== 'figure') throw new Error(a.kind);
  return a;
};

describe('derive', () => {
  test('keeps what it was made from', () => {
    const [a, b] = [m(6), m(3)];
    const f = figure(derive(RATIO, { a, b }));
    expect(f.value).toBe(2);
    expect(f.unit).toBe('1');
    expect(f.formula).toBe(RATIO);
    expect(f.inputs).toEqual({ a, b });
    expect(f.inputs.a).toBe(a);
    expect(f.extrapolated).toBe(false);
  });
  test('is no surer than its weakest part', () => {
    expect(figure(derive(RATIO, { a: m(6, 'exact'), b: m(3, 'measured') })).certainty).toBe('derived');
    expect(figure(derive(RATIO, { a: m(6, 'memory'), b: m(3, 'measured') })).certainty).toBe('memory');
    expect(figure(derive(RATIO, { a: m(6, 'practice'), b: m(3, 'assumed') })).certainty).toBe('assumed');
  });
  test('marks what lies outside the published range, and what was made from it', () => {
    const out = figure(derive(RATIO, { a: m(6), b: m(0.5) }));
    expect(out.extrapolated).toBe(true);
    expect(figure(derive(RATIO, { a: m(6), b: m(10.01) })).extrapolated).toBe(true);
    expect(figure(derive(RATIO, { a: m(6), b: m(1) })).extrapolated).toBe(false);
    expect(figure(derive(RATIO, { a: m(6), b: m(10) })).extrapolated).toBe(false);
    expect(figure(derive(RATIO, { a: { ...out, unit: 'm' }, b: m(2) })).extrapolated).toBe(true);
  });
  test('hands a refusal on as it is', () => {
    const no = refused('code', 'path', { x: 1 });
    expect(derive(RATIO, { a: no, b: m(3) })).toBe(no);
    expect(derive(RATIO, { a: m(1), b: no })).toBe(no);
  });
  test('refuses an input outside its range, naming field, value and limits', () => {
    expect(derive(RATIO, { a: m(-1, 'measured', { path: 'canopy.heightM' }), b: m(3) })).toEqual({
      kind: 'refused',
      code: 'input-out-of-range',
      path: 'canopy.heightM',
      parameters: { formula: 'test-ratio', symbol: 'a', value: -1, least: 0, most: Number.MAX_VALUE, unit: 'm' }
    });
    expect(derive(RATIO, { a: m(-1), b: m(3) })).toMatchObject({ path: 'a' });
    expect(derive(RATIO, { a: { ...figure(derive(RATIO, { a: m(1), b: m(2) })), value: -2 }, b: m(3) })).toMatchObject({ code: 'input-out-of-range', path: 'a' });
  });
  test('lets no NaN and no infinity through', () => {
    for (const bad of [NaN, Infinity, -Infinity]) expect(derive(RATIO, { a: m(1), b: m(bad) })).toMatchObject({ kind: 'refused', code: 'input-out-of-range' });
    expect(derive(RATIO, { a: m(1), b: m(0) })).toEqual({ kind: 'refused', code: 'not-a-number', path: 'test-ratio', parameters: { formula: 'test-ratio' } });
    expect(derive(RATIO, { a: m(0), b: m(0) })).toMatchObject({ code: 'not-a-number' });
  });
  test('range ends are inside', () => expect(derive(RATIO, { a: m(0), b: m(2) })).toMatchObject({ kind: 'figure', value: 0 }));
  test('positive means above zero, not negative means zero or above', () => {
    expect(POSITIVE[0]).toBeGreaterThan(0);
    expect(POSITIVE[0]).toBeLessThan(1e-300);
    expect(NOT_NEGATIVE[0]).toBe(0);
    expect(Number.isFinite(POSITIVE[1]) && Number.isFinite(NOT_NEGATIVE[1])).toBe(true);
  });
});

test('certainty runs from exact to assumed', () => {
  expect(CERTAINTIES).toEqual(['exact', 'measured', 'stated', 'published', 'derived', 'practice', 'memory', 'assumed']);
  expect(weaker('exact', 'memory')).toBe('memory');
  expect(weaker('memory', 'exact')).toBe('memory');
  expect(weaker('stated', 'stated')).toBe('stated');
});

test('a given value is stated unless said otherwise', () => {
  expect(given(3, 'm')).toEqual({ kind: 'given', value: 3, unit: 'm', certainty: 'stated' });
  expect(given(3, 'm', 'measured', { path: 'x' })).toEqual({ kind: 'given', value: 3, unit: 'm', certainty: 'measured', path: 'x' });
});

test('value or nothing', () => {
  expect(valueOf(given(3, 'm'))).toBe(3);
  expect(valueOf(refused('no', 'x'))).toBeUndefined();
  expect(valueOf(null)).toBeUndefined();
  expect(valueOf(undefined)).toBeUndefined();
  expect(refused('no', 'x')).toEqual({ kind: 'refused', code: 'no', path: 'x', parameters: {} });
  expect(isRefused(refused('no', 'x'))).toBe(true);
  expect(isRefused(given(1, '1'))).toBe(false);
});

test('two formulas cannot share an id', () => {
  expect(() => formula('test-ratio', 'q', '1', {}, '1', () => 1, { sources: ['arithmetic'] })).toThrow('two formulas are called test-ratio');
  expect(formulas().get('test-ratio')).toBe(RATIO);
});

describe('assumptions', () => {
  const a: Assumption = { id: 'a.one', value: 2, unit: 'm', least: 1, most: 3, certainty: 'memory', sources: ['habit'] };
  const registry = new Map([[a.id, a]]);
  test('a default carries its certainty and its name', () => {
    const all = new Assumptions(registry);
    expect(all.take('a.one')).toEqual({ kind: 'given', value: 2, unit: 'm', certainty: 'memory', assumption: 'a.one', sources: ['habit'] });
  });
  test('the user\'s own value is stated', () => {
    expect(new Assumptions(registry, { 'a.one': 2.5 }).take('a.one')).toMatchObject({ value: 2.5, certainty: 'stated', assumption: 'a.one' });
    expect(new Assumptions(registry, { 'a.one': 1 }).take('a.one').value).toBe(1);
    expect(new Assumptions(registry, { 'a.one': 3 }).take('a.one').value).toBe(3);
  });
  test('a value outside its range gives way to the default', () => {
    for (const bad of [0.99, 3.01, NaN, Infinity]) expect(new Assumptions(registry, { 'a.one': bad }).take('a.one')).toMatchObject({ value: 2, certainty: 'memory' });
  });
  test('only what was used is listed, once', () => {
    const all = new Assumptions(new Map([[a.id, a], ['b.two', { ...a, id: 'b.two' }]]));
    const first = all.take('a.one');
    expect(all.take('a.one')).toBe(first);
    expect([...all.used.keys()]).toEqual(['a.one']);
  });
  test('a name that nobody declared is a programmer\'s error', () => expect(() => new Assumptions(registry).take('toString')).toThrow('no assumption is called toString'));
  test('a value hidden in the prototype is not the user\'s', () => {
    const own = Object.create({ 'a.one': 1.5 }) as Record<string, number>;
    expect(new Assumptions(registry, own).take('a.one').value).toBe(2);
  });
});
