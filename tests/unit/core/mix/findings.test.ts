import { describe, expect, test } from 'vitest';
import type { Label } from '#core/dose/types.ts';
import type { Mix } from '#core/mix/types.ts';
import { about, told } from '../../../support/findings.ts';
import { loads, type Case } from '../../../support/loads.ts';

/** What is said of loads and products, each finding whole. Unless changed: 6 ha at 500 L/ha, three loads of 1000 L from a tank of 1480 usable. */
const said = (code: string, c: Case = {}) => told(loads(c), code);
const partners = (...ids: string[]): Mix => ({ partners: ids.map((label) => ({ label })) });
const kg = (value: number) => about(value, 'kg');

test('nothing to say of the example', () => expect(loads().findings).toEqual([]));

describe('area', () => {
  test('not known', () => {
    expect(said('loads-without-area', { areaHa: null })).toEqual([{ code: 'loads-without-area', severity: 'stop', parameters: {}, sources: [], path: 'areaHa' }]);
    expect(said('loads-without-area', { areaHa: null, block: { rows: 100, rowLengthM: 150 } })).toEqual([]);
  });
  test('volume not known', () => {
    expect(said('loads-without-volume', { machine: { nozzles: [] } })).toEqual([{ code: 'loads-without-volume', severity: 'stop', parameters: {}, sources: [], path: 'setting' }]);
    expect(said('loads-without-volume')).toEqual([]);
  });
  test('rows that make another area, more or less by 5 %', () => {
    // 100 rows of 158 m, 4 m apart: 6.32 ha, 5.33 % more than 6; of 142 m: 5.68 ha.
    const rows = (rowLengthM: number) => said('area-disagrees', { block: { rows: 100, rowLengthM } });
    expect(rows(158)).toEqual([
      { code: 'area-disagrees', severity: 'warn', parameters: { area: { value: 6, unit: 'ha' }, rows: about(6.32, 'ha'), off: about(5.333333, '%') }, sources: ['neapmg-1996'], path: 'areaHa' }
    ]);
    expect(rows(142).map((f) => f.parameters['off'])).toEqual([about(5.333333, '%')]);
    expect([...rows(157), ...rows(143)]).toEqual([]);
  });
  test('rows alone have nothing to disagree with', () => expect(said('area-disagrees', { areaHa: null, block: { rows: 100, rowLengthM: 158 } })).toEqual([]));
  test('more than the block has, by its own area or by its rows', () => {
    const above = (areaHa: number, c: Case = {}) => said('area-above-block', { ...c, mix: { areaHa } });
    expect(above(6.4)).toEqual([{ code: 'area-above-block', severity: 'warn', parameters: { area: { value: 6.4, unit: 'ha' }, block: { value: 6, unit: 'ha' } }, sources: [], path: 'mix.areaHa' }]);
    expect(above(6.29)).toEqual([]);
    const byRows = { areaHa: null, block: { rows: 100, rowLengthM: 150 } };
    expect(above(6.4, byRows)).toHaveLength(1);
    expect(above(6.29, byRows)).toEqual([]);
    expect(above(6.4, { areaHa: null })).toEqual([]);
  });
});

describe('loads', () => {
  test('too many', () => {
    // 5 000 000 L from 1480 L: 3378.4.
    expect(said('too-many-loads', { areaHa: 10_000 })).toEqual([{ code: 'too-many-loads', severity: 'stop', parameters: { count: '3379' }, sources: [], path: 'machine.tankL' }]);
    expect(said('too-many-loads', { areaHa: null })).toEqual([]);
  });
  test('a thousand are still a plan', () => {
    // 1480 L at 500 L/ha are 2.96 ha.
    expect(loads({ areaHa: 2960 }).loads).toHaveLength(1000);
    expect(loads({ areaHa: 2961 }).loads).toHaveLength(0);
  });
  test('a tank that the residual fills', () => {
    expect(said('no-usable-tank', { tankL: 20 })).toEqual([
      { code: 'no-usable-tank', severity: 'stop', parameters: { tank: { value: 20, unit: 'L' }, residual: { value: 20, unit: 'L' } }, sources: [], path: 'machine.residualL' }
    ]);
    expect(said('no-usable-tank', { tankL: 21 })).toEqual([]);
  });
  test('full ones and a small last: how to make them alike', () => {
    // 3000 L: two of 1480 and 40.
    expect(said('last-load-small', { mix: { fills: 'full' } })).toEqual([
      { code: 'last-load-small', severity: 'warn', parameters: { last: about(40, 'L'), equal: { value: 1000, unit: 'L' }, count: '3' }, sources: ['habit'], path: 'mix.fills' }
    ]);
    expect(said('load-small', { mix: { fills: 'full' } })).toEqual([]);
    expect(said('last-load-small')).toEqual([]);
  });
  test('a single small one cannot be evened out', () => {
    const small = { code: 'load-small', severity: 'note', parameters: { load: about(250, 'L'), share: about(16.891892, '%') }, sources: ['habit'] };
    expect(said('load-small', { areaHa: 0.5 })).toEqual([small]);
    expect(said('load-small', { areaHa: 0.5, mix: { fills: 'full' } })).toEqual([small]);
    expect(said('last-load-small', { areaHa: 0.5, mix: { fills: 'full' } })).toEqual([]);
  });
  test('nor can equal ones', () => {
    const assumptions = { 'mix.small-load': 0.9 };
    expect(said('load-small', { assumptions }).map((f) => f.parameters['share'])).toEqual([about(67.567568, '%')]);
    expect(said('last-load-small', { assumptions })).toEqual([]);
  });
  test('a quarter of the usable tank is not small', () => {
    expect(said('load-small', { tankL: 1020, areaHa: 0.5 })).toEqual([]);
    expect(said('load-small', { tankL: 1020, areaHa: 0.499 })).toHaveLength(1);
  });
  test('a residual that nobody stated', () => {
    expect(said('residual-unknown', { residualL: null })).toEqual([{ code: 'residual-unknown', severity: 'note', parameters: {}, sources: ['iso-16119-3'], path: 'machine.residualL' }]);
    expect(said('residual-unknown', { residualL: 0 })).toEqual([]);
  });
  test('hours that go into turning and filling', () => {
    // 2.5 h of spraying, 100 turns of a minute, three hours of filling: 6 ha in 7.1667 h of 2.4 ha/h.
    expect(said('efficiency-low', { block: { rows: 100 }, mix: { turnSeconds: 60, fillMinutes: 60 } })).toEqual([
      { code: 'efficiency-low', severity: 'note', parameters: { efficiency: about(34.883721, '%'), turning: about(23.255814, '%'), filling: about(41.860465, '%') }, sources: ['asabe-d497'] }
    ]);
    // Half of the time is not less than half.
    expect(said('efficiency-low', { block: { rows: 100 }, mix: { turnSeconds: 0, fillMinutes: 50 } })).toEqual([]);
    expect(said('efficiency-low', { block: { rows: 100 }, mix: { turnSeconds: 0, fillMinutes: 50.1 } })).toHaveLength(1);
    expect(said('efficiency-low', { mix: { fillMinutes: 600 } })).toEqual([]);
  });
});

describe('outer passes', () => {
  const block = { rows: 100, rowLengthM: 150 };
  // 200 faces and two that are not there: 3000 L, 30 L.
  const parameters = { spare: about(30, 'L'), share: about(1, '%') };
  test('with both sides on', () =>
    expect(told(loads({ block, mix: { outerPasses: 'two-sided' } }), 'outer-passes-waste', 'outer-passes-one-sided')).toEqual([
      { code: 'outer-passes-waste', severity: 'warn', parameters, sources: ['geometry'], path: 'mix.outerPasses' }
    ]));
  test('with the outer side shut', () => {
    const note = { code: 'outer-passes-one-sided', severity: 'note', parameters, sources: ['geometry'], path: 'mix.outerPasses' };
    expect(told(loads({ block }), 'outer-passes-waste', 'outer-passes-one-sided')).toEqual([note]);
    expect(told(loads({ block, mix: { outerPasses: 'one-sided' } }), 'outer-passes-waste', 'outer-passes-one-sided')).toEqual([note]);
  });
  test('nothing to say where nothing is spare, where rows are not known, where there is no flow', () => {
    for (const c of [{ block: { ...block, pattern: { kind: 'one-side-both-faces', side: 'left' } } }, { block: { rows: 100 } }, { block, machine: { nozzles: [] } }] satisfies Case[])
      expect(told(loads(c), 'outer-passes-waste', 'outer-passes-one-sided')).toEqual([]);
  });
});

describe('products', () => {
  const one = (code: string, label: Partial<Label>, c: Case = {}) => said(code, { ...c, labels: [{ rate: 1.2, ...label }] });
  test('none', () => {
    expect(said('mix-without-product', { labels: [] })).toEqual([{ code: 'mix-without-product', severity: 'note', parameters: {}, sources: [], path: 'mix.partners' }]);
    expect(said('mix-without-product')).toEqual([]);
  });
  test('a dose that cannot be worked out, and why', () => {
    expect(one('partner-without-dose', { basis: 'percent-of-water', rate: 1 })).toEqual([
      { code: 'partner-without-dose', severity: 'stop', parameters: { product: 'Product 1', reason: 'no-reference-water' }, sources: [], path: 'label.rate' }
    ]);
    expect(one('partner-without-dose', {})).toEqual([]);
  });
  test('less water than the label asks for', () => {
    expect(one('partner-below-water', { minWaterLPerHa: 501 })).toEqual([
      { code: 'partner-below-water', severity: 'stop', parameters: { product: 'Product 1', volume: about(500, 'L/ha'), least: { value: 501, unit: 'L/ha' } }, sources: ['waac-concentration'], path: 'label.minWaterLPerHa' }
    ]);
    expect(one('partner-below-water', { minWaterLPerHa: 500 })).toEqual([]);
    expect(one('partner-below-water', { minWaterLPerHa: 501 }, { machine: { nozzles: [] } })).toEqual([]);
  });
  test('more water than the label allows', () => {
    expect(one('partner-above-water', { maxWaterLPerHa: 499 })).toEqual([
      { code: 'partner-above-water', severity: 'stop', parameters: { product: 'Product 1', volume: about(500, 'L/ha'), most: { value: 499, unit: 'L/ha' } }, sources: [], path: 'label.maxWaterLPerHa' }
    ]);
    expect(one('partner-above-water', { maxWaterLPerHa: 500 })).toEqual([]);
    expect(one('partner-above-water', { maxWaterLPerHa: 499 }, { machine: { nozzles: [] } })).toEqual([]);
  });

  // Crown of 2.5 m × 1.2 m in 4 m rows: 7500 m³/ha, a tenth of a litre each, 750 L/ha dilute; 500 are applied.
  test('stronger than the label allows', () => {
    expect(one('partner-too-concentrated', { maxConcentration: 1.49 })).toEqual([
      { code: 'partner-too-concentrated', severity: 'stop', parameters: { product: 'Product 1', factor: about(1.5, '1'), most: { value: 1.49, unit: '1' } }, sources: ['waac-concentration'], path: 'label.maxConcentration' }
    ]);
    expect(one('partner-too-concentrated', { maxConcentration: 1.5 })).toEqual([]);
    expect(one('partner-too-concentrated', {}, { volume: 20 })).toEqual([]);
  });
  test('how strong is not known without a dilute volume', () => {
    const leafWall: Case = { block: { strategy: 'leaf-wall' } };
    expect(one('partner-concentration-unknown', { maxConcentration: 2 }, leafWall)).toEqual([
      { code: 'partner-concentration-unknown', severity: 'note', parameters: { product: 'Product 1', most: { value: 2, unit: '1' } }, sources: [], path: 'strategy' }
    ]);
    expect(one('partner-concentration-unknown', {}, leafWall)).toEqual([]);
    expect(one('partner-concentration-unknown', { maxConcentration: 2 })).toEqual([]);
    expect(one('partner-concentration-unknown', { maxConcentration: 2 }, { machine: { nozzles: [] } })).toEqual([]);
  });
  test('the factor is counted once in what is weighed for a dilute rate', () => {
    const counted = (volume: number, label: Partial<Label> = {}) => one('factor-counted-once', { basis: 'per-100-l-dilute', rate: 0.1, ...label }, { volume });
    // 0.75 kg/ha in 500 L/ha are 0.15 kg in 100 L.
    expect(counted(500)).toEqual([
      { code: 'factor-counted-once', severity: 'note', parameters: { product: 'Product 1', factor: about(1.5, '1'), strength: about(0.15, 'kg/hL') }, sources: ['neapmg-1996', 'awri-2010'] }
    ]);
    // Within a hundredth of dilute there is no factor to speak of.
    expect([744, 750, 756].map((v) => counted(v).length)).toEqual([0, 0, 0]);
    expect([741, 759].map((v) => counted(v).length)).toEqual([1, 1]);
    expect(counted(500, { basis: 'per-hectare' })).toEqual([]);
    expect(one('factor-counted-once', { basis: 'per-100-l-dilute', rate: 0.1 }, { block: { strategy: 'leaf-wall' } })).toEqual([]);
  });
  test('a dose that the label’s maximum cuts', () => {
    expect(one('partner-at-maximum', { rate: 3, maxPerHa: 2 })).toEqual([{ code: 'partner-at-maximum', severity: 'note', parameters: { product: 'Product 1', dose: about(2, 'kg/ha') }, sources: [], path: 'label.maxPerHa' }]);
    expect(one('partner-at-maximum', { rate: 2, maxPerHa: 2 })).toEqual([]);
  });
  test('product for what stays behind, beyond the maximum of the land', () => {
    // 7.2 kg and 0.048 in the 20 L that stay behind: 7.248 on 6 ha are 1.208 kg/ha.
    expect(one('rinse-passes-maximum', { maxPerHa: 1.2079 })).toEqual([
      { code: 'rinse-passes-maximum', severity: 'warn', parameters: { product: 'Product 1', left: kg(0.048), residual: { value: 20, unit: 'L' } }, sources: ['iso-16119-3'], path: 'label.maxPerHa' }
    ]);
    expect(one('rinse-passes-maximum', { maxPerHa: 1.208 })).toEqual([]);
    expect(one('rinse-passes-maximum', { maxPerHa: 1.2 }, { residualL: 0 })).toEqual([]);
    expect(one('rinse-passes-maximum', {})).toEqual([]);
  });
  test('an amount is in the label’s unit', () =>
    expect(one('rinse-passes-maximum', { unit: 'L', maxPerHa: 1.2 }).map((f) => f.parameters['left'])).toEqual([about(0.048, 'Lprod')]));
});

describe('stock', () => {
  const stock = (orderedAmount: number, labels: Case['labels'] = [{ rate: 1.2 }]) => told(loads({ labels, mix: { partners: [{ label: 'p1', orderedAmount }] } }), 'stock-short', 'stock-suffices');
  test('to the gram', () => {
    expect(stock(7.247)).toEqual([{ code: 'stock-short', severity: 'warn', parameters: { product: 'Product 1', ordered: kg(7.247), total: kg(7.248), off: kg(0.001) }, sources: [], path: 'mix.partners' }]);
    expect(stock(7.248)).toEqual([{ code: 'stock-suffices', severity: 'good', parameters: { product: 'Product 1', ordered: kg(7.248), total: kg(7.248), off: kg(0) }, sources: [], path: 'mix.partners' }]);
    expect(stock(10).map((f) => [f.code, f.parameters['off']])).toEqual([['stock-suffices', kg(2.752)]]);
  });
  test('in litres where the label counts litres', () => expect(stock(7, [{ rate: 1.2, unit: 'L' }])[0]!.parameters).toMatchObject({ ordered: { unit: 'Lprod' }, total: { unit: 'Lprod' }, off: { unit: 'Lprod' } }));
  test('nothing where nothing is used, where the dose is not known, where nobody ordered', () => {
    expect(stock(7, [{ rate: 0 }])).toEqual([]);
    expect(stock(7, [{ basis: 'percent-of-water', rate: 1 }])).toEqual([]);
    expect(told(loads(), 'stock-short', 'stock-suffices')).toEqual([]);
  });
});

describe('several together', () => {
  const four: Case['labels'] = [{ formulation: 'WG' }, { formulation: 'SC' }, { formulation: 'EC' }, { formulation: 'SL' }];
  test('more than three', () => {
    expect(said('many-partners', { labels: four, mix: partners('p1', 'p2', 'p3', 'p4') })).toEqual([{ code: 'many-partners', severity: 'note', parameters: { count: '4' }, sources: ['habit'], path: 'mix.partners' }]);
    expect(said('many-partners', { labels: four, mix: partners('p1', 'p2', 'p3') })).toEqual([]);
  });
  test('a kind that the label did not say', () => {
    const unknown = (name: number) => ({ code: 'formulation-unknown', severity: 'note', parameters: { product: `Product ${name}` }, sources: ['ndsu-weed-guide'], path: 'label.formulation' });
    expect(said('formulation-unknown', { labels: [{ formulation: 'WG' }, {}, { formulation: 'other' }], mix: partners('p1', 'p2', 'p3') })).toEqual([unknown(2), unknown(3)]);
    expect(said('formulation-unknown', { labels: four, mix: partners('p1', 'p2') })).toEqual([]);
    expect(said('formulation-unknown', { labels: [{}] })).toEqual([]);
  });
});

test('worst first, and then in the order of the work', () =>
  expect(
    loads({
      residualL: null,
      labels: [{ formulation: 'WG', minWaterLPerHa: 600 }, { rate: 3, maxPerHa: 2 }],
      areaHa: 6.1,
      block: { rows: 100, rowLengthM: 170 },
      mix: { fills: 'full', partners: [{ label: 'p1', orderedAmount: 1 }, { label: 'p2', orderedAmount: 100, putIn: [{ load: 9, amount: 1 }] }] }
    }).findings.map((f) => f.code)
  ).toEqual(['partner-below-water', 'area-disagrees', 'last-load-small', 'stock-short', 'residual-unknown', 'outer-passes-one-sided', 'partner-at-maximum', 'formulation-unknown', 'put-in-no-load', 'stock-suffices']));
