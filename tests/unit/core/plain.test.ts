import { describe, expect, test } from 'vitest';
import { plain, plainAnswer, plainNumber } from '#core/working/plain.ts';
import { assumptionsUnder } from '#core/working/under.ts';
import { given, refused, type Answer } from '#core/working/answer.ts';
import { result } from '../../support/sample.ts';

describe('plain data', () => {
  test('numbers that JSON cannot hold, and bounds that were never set, are null', () => {
    expect([1.5, 0, -3, NaN, Infinity, -Infinity, Number.MAX_VALUE, -Number.MAX_VALUE].map(plainNumber)).toEqual([1.5, 0, -3, null, null, null, null, null]);
  });
  test('a given value with what is known of it', () => {
    expect(plainAnswer(given(3, 'm'))).toEqual({ value: 3, unit: 'm', certainty: 'stated' });
    expect(plainAnswer(given(3, 'm', 'memory', { path: 'p', assumption: 'a', sources: ['habit'] }))).toEqual({ value: 3, unit: 'm', certainty: 'memory', path: 'p', assumption: 'a', sources: ['habit'] });
  });
  test('a refusal with its reason', () => {
    expect(plainAnswer(refused('code', 'path', { least: -Infinity, name: 'x', value: 2 }))).toEqual({ refused: 'code', path: 'path', parameters: { least: null, name: 'x', value: 2 } });
  });
  test('a figure with its working, down to what was typed', () => {
    const { RL } = result().canopy.figures;
    expect(plainAnswer(RL)).toEqual({
      value: 2500, unit: 'm/ha', symbol: 'RL', formula: 'row-length', expression: '10000 / R', certainty: 'measured', extrapolated: false, sources: ['arithmetic'],
      inputs: { R: { value: 4, unit: 'm', certainty: 'measured', path: 'rowSpacingM' } }
    });
  });
  test('maps, lists, nothing', () => {
    expect(plain({ a: new Map<unknown, unknown>([['x', 1], [2, null]]), b: [true, 'y', NaN], c: undefined, d: () => 1 })).toEqual({ a: { x: 1, '2': null }, b: [true, 'y', null] });
    expect(plain(undefined)).toBeNull();
    expect(plain(Symbol('x'))).toBeNull();
    expect(plain({ kind: 'given' })).toEqual({ kind: 'given' });
    expect(plain({ kind: 'refused' })).toEqual({ kind: 'refused' });
    expect(plain({ kind: 'every-alley', unit: 'm' })).toEqual({ kind: 'every-alley', unit: 'm' });
    expect(plain([given(1, '1')])).toEqual([{ value: 1, unit: '1', certainty: 'stated' }]);
    expect(plain([refused('a', 'b')])).toEqual([{ refused: 'a', path: 'b', parameters: {} }]);
  });
  test('figures come back from JSON as they went', () => {
    const { water, sprayer, product } = result({ label: { adaptation: 'required' } });
    const all = plain({ wanted: water.wanted, volume: sprayer.volume, dose: product!.perHa });
    expect(JSON.parse(JSON.stringify(all))).toEqual(all);
    expect(JSON.stringify(all)).not.toContain('e+308');
  });
});

describe('assumptions under an answer', () => {
  const ids = (...answers: (Answer | null | undefined)[]) => [...assumptionsUnder(answers).keys()];
  test('those that it rests on, and no others', () => {
    const r = result();
    expect(ids(r.water.wanted)).toEqual(['row-volume.water']);
    expect(ids(r.sprayer.volume)).toEqual(['mix.specific-gravity']);
    expect(ids(r.air.needed)).toEqual(['air.k-medium']);
    expect(ids(r.strategy.index).sort()).toEqual(['reference.crown-height', 'reference.row-spacing', 'reference.width']);
    expect(ids(r.canopy.figures.TRVc)).toEqual([]);
    expect(ids(r.water.wanted, r.sprayer.volume)).toEqual(['row-volume.water', 'mix.specific-gravity']);
  });
  test('with the value that was taken', () => expect(assumptionsUnder([result({ assumptions: { 'row-volume.water': 0.12 } }).water.wanted]).get('row-volume.water')).toMatchObject({ value: 0.12, certainty: 'stated' }));
  test('none of a refusal or of nothing', () => expect(ids(refused('x', 'y'), null, undefined)).toEqual([]));
});

test('what every job uses of assumptions is listed, with the tolerance of the air', () => {
  const used = [...result().assumptions.keys()];
  for (const id of ['air.tolerance', 'air.k-medium', 'aim.overshoot', 'aim.useful-share', 'mix.specific-gravity', 'row-volume.water']) expect(used).toContain(id);
});
