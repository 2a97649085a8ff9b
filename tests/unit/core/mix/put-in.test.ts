import { describe, expect, test } from 'vitest';
import type { Label } from '#core/dose/types.ts';
import { about } from '../../../support/findings.ts';
import { loads, type Case } from '../../../support/loads.ts';

/** What was put into the loads against what their land takes, each finding whole. 1.2 kg/ha: 2.4 kg for 2 ha a load, 0.048 more in the first. */
const said = (putIn: readonly (readonly [load: number, amount: number])[], label: Partial<Label> = {}, more: Case = {}) =>
  loads({ ...more, labels: [{ rate: 1.2, ...label }], mix: { ...more.mix, partners: [{ label: 'p1', putIn: putIn.map(([load, amount]) => ({ load, amount })) }] } }).findings.filter((f) => f.code.startsWith('put-in'));
const kg = (value: number) => about(value, 'kg');
/** Dilute 750 L/ha, applied 500: a factor of 1.5. */
const finding = (code: string, load: number, put: number, due: number, severity = 'warn', sources: string[] = []) => ({
  code, severity, parameters: { product: 'Product 1', load: String(load), put: kg(put), due: kg(due), factor: about(1.5, '1') }, sources, path: 'mix.partners'
});

test('nothing put in, nothing said', () => expect(said([])).toEqual([]));

describe('amounts', () => {
  test('too much and too little, beyond 5 %', () => {
    expect(said([[2, 2.53]])).toEqual([finding('put-in-too-much', 2, 2.53, 2.4)]);
    expect(said([[2, 2.27]])).toEqual([finding('put-in-too-little', 2, 2.27, 2.4)]);
    expect([2.51, 2.29].map((a) => said([[2, a]]))).toEqual([[], []]);
    expect(said([[2, 2.51]], {}, { assumptions: { 'mix.amount-tolerance': 0.04 } })).toHaveLength(1);
  });
  test('the first load takes that for what stays behind as well', () => expect(said([[1, 2.6]])).toEqual([finding('put-in-too-much', 1, 2.6, 2.448)]));
  test('for a load that is not planned', () => {
    const none = (load: number) => ({ code: 'put-in-no-load', severity: 'note', parameters: { product: 'Product 1', load: String(load), count: '3' }, sources: [], path: 'mix.partners' });
    expect(said([[4, 2.4]])).toEqual([none(4)]);
    expect(said([[3, 2.4]])).toEqual([]);
  });
  test('of two amounts for one load the later one holds', () => expect(said([[2, 9], [2, 2.4]])).toEqual([]));
  test('each load for itself', () => expect(said([[1, 2.448], [2, 3], [3, 1]]).map((f) => [f.code, f.parameters['load']])).toEqual([['put-in-too-much', '2'], ['put-in-too-little', '3']]));
  test('where nothing is due nothing is judged', () => expect(said([[2, 1]], { rate: 0 })).toEqual([]));
  test('all loads told and right: that is good', () => {
    const right = said([[1, 2.448], [2, 2.4], [3, 2.45]]);
    expect(right).toEqual([{ code: 'put-in-right', severity: 'good', parameters: { product: 'Product 1', put: kg(7.298), due: kg(7.248) }, sources: [], path: 'mix.partners' }]);
    expect(said([[1, 2.448], [2, 2.4]])).toEqual([]);
  });
  test('in litres where the label counts litres', () => expect(said([[2, 2.6]], { unit: 'L' })[0]!.parameters).toMatchObject({ put: about(2.6, 'Lprod'), due: about(2.4, 'Lprod') }));
});

describe('above the label’s maximum', () => {
  test('half a per cent is what weighing leaves; more stops', () => {
    expect(said([[2, 2.411]], { maxPerHa: 1.2 })).toEqual([]);
    expect(said([[2, 2.413]], { maxPerHa: 1.2 })).toEqual([finding('put-in-too-much', 2, 2.413, 2.4, 'stop')]);
  });
  test('what is for the residual does not land on this land', () => {
    expect(said([[1, 2.459]], { maxPerHa: 1.2 })).toEqual([]);
    expect(said([[1, 2.462]], { maxPerHa: 1.2 })).toEqual([finding('put-in-too-much', 1, 2.462, 2.448, 'stop')]);
  });
});

describe('the concentration factor', () => {
  // 0.1 kg in 100 L dilute: 0.75 kg/ha, 1.5 kg for a load of 2 ha.
  const dilute: Partial<Label> = { basis: 'per-100-l-dilute', rate: 0.1 };
  test('twice, or not at all', () => {
    expect(said([[2, 2.25]], dilute)).toEqual([finding('put-in-factor-twice', 2, 2.25, 1.5, 'warn', ['neapmg-1996'])]);
    expect(said([[2, 1]], dilute)).toEqual([finding('put-in-factor-missed', 2, 1, 1.5, 'warn', ['neapmg-1996'])]);
    expect([2.4, 2.1].map((a) => said([[2, a]], dilute)[0]!.code)).toEqual(['put-in-too-much', 'put-in-too-much']);
    expect([1.06, 0.94].map((a) => said([[2, a]], dilute)[0]!.code)).toEqual(['put-in-too-little', 'put-in-too-little']);
  });
  test('twice and above the maximum stops', () => expect(said([[2, 2.25]], { ...dilute, maxPerHa: 1 })).toEqual([finding('put-in-factor-twice', 2, 2.25, 1.5, 'stop', ['neapmg-1996'])]));
  test('is no matter of a label that does not count dilute spray, nor where there is no factor', () => {
    expect(said([[2, 3.6]])[0]!.code).toBe('put-in-too-much');
    expect(said([[2, 1.6]])[0]!.code).toBe('put-in-too-little');
    expect(said([[2, 1.6]], dilute, { volume: 750 })[0]!.code).toBe('put-in-too-much');
  });
});

describe('a full load’s product in a part load', () => {
  const full: Case = { mix: { fills: 'full' } };
  test('is named for what it is', () => {
    // 1480 L take 3.552 kg, the last 40 L 0.096.
    expect(said([[3, 3.552]], {}, full)).toEqual([finding('put-in-of-full-load', 3, 3.552, 0.096)]);
    expect(said([[3, 3]], {}, full)).toEqual([finding('put-in-too-much', 3, 3, 0.096)]);
  });
  test('a full load itself cannot be mistaken for one', () => expect(said([[2, 4]], {}, full)[0]!.code).toBe('put-in-too-much'));
});
