import { describe, expect, test } from 'vitest';
import { orderOfMixing } from '#core/mix/order.ts';
import { passesOf } from '#core/mix/passes.ts';
import { portions } from '#core/mix/portions.ts';
import type { Mix } from '#core/mix/types.ts';
import type { Label } from '#core/dose/types.ts';
import { given } from '#core/working/answer.ts';
import type { PassPattern } from '#core/sprayer/types.ts';
import { loads, type Case } from '../../support/loads.ts';
import { label, num, refusal } from '../../support/sample.ts';

const codes = (s: ReturnType<typeof loads>) => s.findings.map((f) => f.code);
const severity = (s: ReturnType<typeof loads>, code: string) => s.findings.find((f) => f.code === code)?.severity;
const two: Mix = { partners: [{ label: 'p1' }, { label: 'p2' }] };

describe('area', () => {
  test('of the mix before the block’s, the block’s before that of the rows', () => {
    expect(num(loads({ mix: { areaHa: 2 } }).area)).toBe(2);
    expect(loads({ mix: { areaHa: 2 } }).areaFrom).toBe('mix');
    expect(loads({ block: { rows: 10, rowLengthM: 100 } }).areaFrom).toBe('block');
    const byRows = loads({ areaHa: null, block: { rows: 10, rowLengthM: 100 } });
    expect(byRows.areaFrom).toBe('rows');
    expect(num(byRows.area)).toBeCloseTo(0.4, 12);
  });
  test('refused by name where nothing is known; what rests on it as well, the rest stands', () => {
    const s = loads({ areaHa: null, block: { rows: 10 } });
    expect(refusal(s.area)).toBe('no-area @ areaHa');
    expect(refusal(s.count)).toBe('no-area @ areaHa');
    expect(s.loads).toEqual([]);
    expect(num(s.areaPerTank)).toBeCloseTo(2.96, 9);
    expect(severity(s, 'loads-without-area')).toBe('stop');
  });
  test('rows that make another area are told, from 5 % on', () => {
    expect(codes(loads({ block: { rows: 100, rowLengthM: 157 } }))).not.toContain('area-disagrees');
    expect(severity(loads({ block: { rows: 100, rowLengthM: 158 } }), 'area-disagrees')).toBe('warn');
    expect(severity(loads({ mix: { areaHa: 7 } }), 'area-above-block')).toBe('warn');
  });
});

describe('volume', () => {
  test('is the measured one where there is one, and said so', () => {
    const s = loads({ measured: { volume: given(600, 'L/ha', 'measured') } });
    expect([num(s.sprayed), s.volumeFrom]).toEqual([3600, 'check']);
    expect(loads().volumeFrom).toBe('setting');
    // The dose stands: the mix is weaker.
    expect(s.partners[0]!.forArea).toBe(7.2);
    expect(num(s.partners[0]!.strength)).toBeCloseTo(0.2, 12);
  });
});

describe('loads', () => {
  test('a tank that is filled to the hair is not begun again', () => {
    const s = loads({ areaHa: 3 * 2.96, mix: { fills: 'full' } });
    expect(num(s.count)).toBe(3);
    expect(num(s.loads[2]!.mix)).toBeCloseTo(1480, 6);
  });
  test('full loads with a silly last one say how to make them alike', () => {
    const s = loads({ mix: { fills: 'full' } });
    const f = s.findings.find((x) => x.code === 'last-load-small')!;
    expect(f.parameters).toMatchObject({ count: '3', equal: { value: 1000, unit: 'L' } });
    expect(codes(loads())).not.toContain('last-load-small');
  });
  test('rows of a load follow its share of the land', () => {
    expect(loads({ block: { rows: 90 } }).loads.map((l) => l.rows)).toEqual([30, 30, 30].map((n) => expect.closeTo(n, 9) as unknown));
    expect(loads().loads[0]!.rows).toBeNull();
  });
  test('what stays behind is mixed once, in the first load', () => {
    const s = loads();
    expect(s.loads.map((l) => num(l.fill))).toEqual([1020, 1000, 1000]);
    expect(s.loads.map((l) => l.products[0]!.total)).toEqual([2.448, 2.4, 2.4]);
    expect(s.partners[0]!.total).toBe(7.248);
  });
  test('a tank that the residual fills, and more loads than a plan can mean, are refused by name', () => {
    const full = loads({ tankL: 20 });
    expect(refusal(full.usable)).toBe('no-usable-tank @ machine.residualL');
    expect(severity(full, 'no-usable-tank')).toBe('stop');
    const many = loads({ areaHa: 10_000 });
    expect(refusal(many.count)).toBe('too-many-loads @ machine.tankL');
    expect(severity(many, 'too-many-loads')).toBe('stop');
  });
  test('an unknown residual counts as none and is asked for', () => {
    expect(codes(loads())).not.toContain('residual-unknown');
    const s = loads({ residualL: null });
    expect(num(s.usable)).toBe(1500);
    expect(codes(s)).toContain('residual-unknown');
  });
});

describe('several products', () => {
  test('each by its own label', () => {
    const s = loads({ mix: two, labels: [{ rate: 1.2 }, { unit: 'L', basis: 'per-leaf-wall', rate: 0.5 }] });
    // Leaf wall of 2 faces, 2.5 m, 4 m rows: 12 500 m²/ha, so 0.625 L/ha.
    expect(s.partners.map((p) => p.forArea)).toEqual([7.2, 3.75]);
    expect(s.loads[1]!.products.map((p) => p.amount)).toEqual([2.4, 1.25]);
  });
  test('water, concentration and maximum of each label are kept', () => {
    const s = loads({
      mix: { partners: ['p1', 'p2', 'p3', 'p4'].map((l) => ({ label: l })) },
      labels: [{ minWaterLPerHa: 600 }, { maxWaterLPerHa: 400 }, { maxConcentration: 1.5 }, { rate: 3, maxPerHa: 2 }],
      block: { strategy: 'row-volume' }
    });
    expect(severity(s, 'partner-below-water')).toBe('stop');
    expect(severity(s, 'partner-above-water')).toBe('stop');
    expect(s.partners[3]!.forArea).toBe(12);
    expect(codes(s)).toContain('partner-at-maximum');
    expect(codes(s)).toContain('many-partners');
  });
  test('too strong a mix stops', () => {
    const s = loads({ labels: [{ rate: 1.2, maxConcentration: 1.01 }], volume: 100 });
    expect(severity(s, 'partner-too-concentrated')).toBe('stop');
  });
  test('no product at all is said', () => expect(codes(loads({ labels: [] }))).toContain('mix-without-product'));
  test('a dose that cannot be worked out stops, the others stand', () => {
    const s = loads({ mix: two, labels: [{ rate: 1.2 }, { basis: 'percent-of-water', rate: 1 }] });
    expect(severity(s, 'partner-without-dose')).toBe('stop');
    expect(s.partners[0]!.forArea).toBe(7.2);
    expect(s.partners[1]!.forArea).toBe(0);
  });
  test('stock', () => {
    const short = loads({ mix: { partners: [{ label: 'p1', orderedAmount: 7 }] } }).findings.find((f) => f.code === 'stock-short')!;
    expect(short.parameters.off).toEqual({ value: expect.closeTo(0.248, 9) as number, unit: 'kg' });
    expect(severity(loads({ mix: { partners: [{ label: 'p1', orderedAmount: 10 }] } }), 'stock-suffices')).toBe('good');
  });
  test('a residual on top of a dose at its maximum is told', () => {
    expect(severity(loads({ labels: [{ rate: 1.2, maxPerHa: 1.2 }] }), 'rinse-passes-maximum')).toBe('warn');
    expect(codes(loads({ labels: [{ rate: 1.2, maxPerHa: 1.3 }] }))).not.toContain('rinse-passes-maximum');
  });
});

describe('amounts that a person can weigh', () => {
  test('the last load carries the rounding', () => expect(portions(1, [1 / 3, 1 / 3, 1 / 3])).toEqual({ loads: [0.333, 0.333, 0.334], total: 1, step: 0.001 }));
  // Half a step for each of three loads within 2 % of 5 g: 0.067 g, so hundredths of a gram.
  test('small loads are weighed more finely', () => expect(portions(0.01, [0.5, 0.5, 0.5])).toEqual({ loads: [0.005, 0.005, 0.005], total: 0.015, step: 0.00001 }));
  test('the maximum holds for each load', () => expect(portions(1, [1 / 3, 1 / 3, 1 / 3], 1)).toEqual({ loads: [0.333, 0.333, 0.333], total: 0.999, step: 0.001 }));
  test('nothing shared out is nothing', () => expect(portions(0, [1, 1]).total).toBe(0));
});

describe('order of mixing', () => {
  const named = (...kinds: (Label['formulation'] | undefined)[]) => kinds.map((formulation, i) => label({ id: String(i), name: formulation ?? 'none', ...(formulation ? { formulation } : {}) }));
  test('soluble powders, dry powders, flowables, emulsifiables, solutions; conditioners before, unknown ones last', () => {
    const steps = orderOfMixing(named(undefined, 'SL', 'EC', 'SC', 'WG', 'SG', 'conditioner', 'adjuvant'));
    expect(steps.map((s) => (s.kind === 'product' ? s.label.name : s.kind))).toEqual(['water', 'agitate', 'conditioner', 'SG', 'WG', 'SC', 'EC', 'SL', 'adjuvant', 'none', 'fill-up']);
  });
  test('an unknown kind in a mix is asked for, alone it is not', () => {
    expect(codes(loads({ mix: two, labels: [{ formulation: 'WG' }, {}] })).filter((c) => c === 'formulation-unknown')).toHaveLength(1);
    expect(codes(loads())).not.toContain('formulation-unknown');
  });
});

describe('passes', () => {
  const of = (pattern: PassPattern, rows: number) => {
    const p = passesOf(pattern, rows)!;
    return [p.passes, p.faces, p.spare];
  };
  test('each way of driving, by drawing them', () => {
    expect(of({ kind: 'every-alley' }, 3)).toEqual([4, 6, 2]);
    expect(of({ kind: 'one-side-both-faces', side: 'left' }, 3)).toEqual([6, 6, 0]);
    expect(of({ kind: 'one-side-one-face', side: 'left' }, 3)).toEqual([3, 3, 0]);
    expect(of({ kind: 'alternate-alleys' }, 4)).toEqual([2, 4, 0]);
    expect(of({ kind: 'alternate-alleys' }, 5)).toEqual([3, 5, 1]);
    expect(of({ kind: 'whole-rows', rows: 2 }, 5)).toEqual([3, 10, 2]);
    expect(passesOf({ kind: 'swath', widthM: 8 }, 5)).toBeNull();
  });
  test.each([
    { kind: 'every-alley' },
    { kind: 'one-side-both-faces', side: 'left' },
    { kind: 'alternate-alleys' },
    { kind: 'whole-rows', rows: 3 }
  ] as const)('$kind: mix on the faces is what the area says', (pattern) => {
    const s = loads({ areaHa: null, block: { rows: 24, rowLengthM: 130, pattern } });
    expect(num(s.rows!.mix)).toBeCloseTo(num(s.sprayed), 6);
  });
  test('both sides on outside: the waste is a warning, and is not in the loads', () => {
    const block = { rows: 100, rowLengthM: 150 };
    const s = loads({ block, mix: { outerPasses: 'two-sided' } });
    expect(s.findings.find((f) => f.code === 'outer-passes-waste')?.parameters.spare).toMatchObject({ value: expect.closeTo(30, 6) as number });
    expect(num(s.sprayed)).toBeCloseTo(3000, 6);
    expect(severity(loads({ block }), 'outer-passes-one-sided')).toBe('note');
  });
  test('without rows the turns are not known, and no total of hours is made up', () => {
    const s = loads();
    expect(s.rows).toBeNull();
    expect(refusal(s.work.total)).toBe('no-rows @ rows');
    expect(num(s.work.spraying)).toBe(2.5);
  });
  test('much turning and filling is told', () => expect(codes(loads({ block: { rows: 100 }, mix: { turnSeconds: 60, fillMinutes: 60 } }))).toContain('efficiency-low'));
});

describe('field mistake 14: wrong product in the last load, or the concentration factor twice', () => {
  const hundred = { basis: 'per-100-l-dilute', rate: 0.1 } as const;
  const put = (labels: readonly Partial<Label>[], putIn: readonly (readonly [number, number])[], more: Case = {}) =>
    loads({ ...more, labels, mix: { ...more.mix, partners: [{ label: 'p1', putIn: putIn.map(([load, amount]) => ({ load, amount })) }] } });

  test('the amounts of the tool have the factor in once: product per hectare is the label’s, whatever the water', () => {
    const dilute = num(loads({ labels: [hundred] }).partners[0]!.perHa);
    for (const volume of [200, 500, 900]) {
      const s = loads({ labels: [hundred], volume });
      for (const l of s.loads) expect(l.products[0]!.amount / num(l.area)).toBeCloseTo(dilute, 2);
      expect(s.partners[0]!.forArea).toBeCloseTo(dilute * 6, 3);
    }
  });
  test('the factor twice', () => {
    const s = loads({ labels: [hundred], volume: 200 });
    const p = s.partners[0]!;
    const due = s.loads[0]!.products[0]!.total;
    const wrong = put([{ ...hundred, maxPerHa: num(p.perHa) * 1.1 }], [[1, due * num(p.concentration)]], { volume: 200 });
    expect(severity(wrong, 'put-in-factor-twice')).toBe('stop');
    expect(severity(put([hundred], [[1, due / num(p.concentration)]], { volume: 200 }), 'put-in-factor-missed')).toBe('warn');
  });
  test('a full load’s product in the last, part load', () => {
    const s = put([{ rate: 1.2 }], [[3, 3.552]], { mix: { fills: 'full' } });
    expect(severity(s, 'put-in-of-full-load')).toBe('warn');
    expect(severity(put([{ rate: 1.2, maxPerHa: 1.5 }], [[3, 3.552]], { mix: { fills: 'full' } }), 'put-in-of-full-load')).toBe('stop');
  });
  test('too much, too little, a load that is not there; and all right', () => {
    expect(codes(put([{ rate: 1.2 }], [[2, 2.6]]))).toContain('put-in-too-much');
    expect(codes(put([{ rate: 1.2 }], [[2, 2.2]]))).toContain('put-in-too-little');
    expect(codes(put([{ rate: 1.2 }], [[9, 2.4]]))).toContain('put-in-no-load');
    const right = put([{ rate: 1.2 }], [[1, 2.448], [2, 2.4], [3, 2.4]]);
    expect(severity(right, 'put-in-right')).toBe('good');
    expect(codes(put([{ rate: 1.2 }], [[1, 2.448]])).filter((c) => c.startsWith('put-in'))).toEqual([]);
  });
  test('at the label’s maximum even a little more is too much', () => {
    expect(severity(put([{ rate: 1.2, maxPerHa: 1.2 }], [[2, 2.46]]), 'put-in-too-much')).toBe('stop');
    expect(codes(put([{ rate: 1.2, maxPerHa: 1.3 }], [[2, 2.46]])).filter((c) => c.startsWith('put-in'))).toEqual([]);
  });
});
