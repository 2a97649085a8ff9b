import { describe, expect, test } from 'vitest';
import { STRATEGIES } from '#core/dose/strategies.ts';
import { STRATEGY_IDS, type Label } from '#core/dose/types.ts';
import { isWater } from '#core/dose/water.ts';
import { given, refused } from '#core/working/answer.ts';
import { num, refusal, result, type Parts } from '../../support/sample.ts';

/** Crown 2.5 × 1.2 m in 4 m rows: 7500 m³/ha, index 0.75 by row volume, 750 L/ha; wall 12 500 m²/ha. */
const product = (label: Partial<Label>, more: Parts = {}) => result({ label, ...more }).product!;

describe('what the label\'s basis gives', () => {
  test.each([
    [{ basis: 'per-hectare', rate: 2 }, 2],
    [{ basis: 'per-100-l-dilute', rate: 0.2 }, 1.5],
    [{ basis: 'per-leaf-wall', rate: 1.6 }, 2],
    [{ basis: 'per-crown-height', rate: 0.4 }, 1],
    [{ basis: 'per-row-volume', rate: 2 }, 1.5],
    [{ basis: 'percent-of-water', rate: 0.1, referenceWaterLPerHa: 1600 }, 1.6]
  ] as const)('%o', (label, dose) => {
    for (const unit of ['kg', 'L'] as const) {
      const p = product({ ...label, unit });
      expect(num(p.labelDose)).toBeCloseTo(dose, 12);
      expect(p.labelDose).toMatchObject({ unit: unit === 'kg' ? 'kg/ha' : 'Lprod/ha' });
      expect(num(p.perHa)).toBeCloseTo(dose, 12);
      const volume = num(result().sprayer.volume);
      expect(num(p.strength)).toBeCloseTo((100 * dose) / volume, 12);
      expect(p.strength).toMatchObject({ unit: unit === 'kg' ? 'kg/hL' : 'Lprod/hL' });
      expect(num(p.perTank)).toBeCloseTo((1000 * dose) / volume, 12);
      expect(p.perTank).toMatchObject({ unit: unit === 'kg' ? 'kg' : 'Lprod' });
    }
  });
  test('the rate is the user\'s and leads back to its field', () => {
    const p = product({ rate: 2 });
    expect(p.labelDose).toMatchObject({ kind: 'given', certainty: 'stated', path: 'label.rate' });
  });
  test('bases that follow the canopy by themselves know no adaptation', () => {
    for (const basis of ['per-100-l-dilute', 'per-leaf-wall', 'per-crown-height', 'per-row-volume'] as const) {
      const p = product({ basis, rate: 1, adaptation: 'required', floor: 1 });
      expect(p.acts).toEqual([]);
      expect(p.perHa).toBe(p.labelDose);
    }
  });
  test('per 100 L wants a dilute water', () => {
    const p = product({ basis: 'per-100-l-dilute', rate: 0.2 }, { block: { strategy: 'leaf-wall' } });
    expect(refusal(p.perHa)).toBe('no-dilute-water @ strategy');
    expect(p.perHa).toMatchObject({ parameters: { strategy: 'leaf-wall' } });
    expect(refusal(p.strength)).toBe('no-dilute-water @ strategy');
  });
  test('percent wants a reference water', () => {
    for (const adaptation of ['none', 'downward', 'required'] as const) {
      const p = product({ basis: 'percent-of-water', rate: 0.1, adaptation, maxPerHa: 5 });
      expect(refusal(p.perHa)).toBe('no-reference-water @ label.referenceWaterLPerHa');
      expect(p.perHa).toMatchObject({ parameters: { label: 'label' } });
      expect(p.acts).toEqual(adaptation === 'none' ? ['label-dose-kept'] : []);
    }
  });
});

describe('adaptation to the canopy', () => {
  const small: Parts = {}; // index 0.75
  const large: Parts = { canopy: { heightM: 5.5 } }; // crown 5 m: index 1.5
  const same: Parts = { canopy: { heightM: 3.3, skirtM: 0.5, widthM: 1.25 }, block: { rowSpacingM: 3.5 } }; // the reference itself
  test.each([
    ['none', small, {}, 2, ['label-dose-kept']],
    [undefined, large, {}, 2, ['label-dose-kept']],
    ['none', same, {}, 2, []],
    ['downward', small, {}, 1.5, ['scaled-to-canopy']],
    ['downward', large, {}, 2, ['not-above-label']],
    ['required', small, {}, 1.5, ['scaled-to-canopy']],
    ['required', large, {}, 3, ['scaled-to-canopy']],
    ['downward', small, { floor: 0.8 }, 1.6, ['floored']],
    ['required', small, { floor: 0.8 }, 1.6, ['floored']],
    ['downward', small, { floor: 0.7 }, 1.5, ['scaled-to-canopy']],
    ['required', large, { maxPerHa: 2.4 }, 2.4, ['scaled-to-canopy', 'capped-at-label-maximum']],
    ['required', small, { maxPerHa: 2.4 }, 1.5, ['scaled-to-canopy']],
    ['none', small, { maxPerHa: 1.9 }, 1.9, ['label-dose-kept', 'capped-at-label-maximum']],
    ['none', small, { maxPerHa: 2 }, 2, ['label-dose-kept']],
    ['downward', small, { floor: 1, maxPerHa: 1.2 }, 1.2, ['floored', 'capped-at-label-maximum']]
  ] as const)('%s', (adaptation, parts, more, dose, acts) => {
    for (const unit of ['kg', 'L'] as const) {
      const p = product({ rate: 2, unit, ...(adaptation ? { adaptation } : {}), ...more }, parts);
      expect(num(p.perHa)).toBeCloseTo(dose, 12);
      expect(num(p.labelDose)).toBe(2);
      expect(p.acts).toEqual(acts);
    }
  });
  test('percent labels adapt like those per hectare', () => {
    expect(num(product({ basis: 'percent-of-water', rate: 0.1, referenceWaterLPerHa: 1600, adaptation: 'required' }).perHa)).toBeCloseTo(1.2, 12);
  });
  test('without an index there is no adapted dose', () => {
    const p = product({ rate: 2, adaptation: 'required' }, { canopy: { skirtM: 4 } });
    expect(p.perHa.kind).toBe('refused');
    expect(p.acts).toEqual([]);
    expect(num(product({ rate: 2 }, { canopy: { skirtM: 4 } }).perHa)).toBe(2);
    expect(product({ rate: 2 }, { canopy: { skirtM: 4 } }).acts).toEqual(['label-dose-kept']);
  });
  test('an unstated floor is assumed, a stated one stated', () => {
    const floorOf = (label: Partial<Label>) => {
      const dose = product({ rate: 2, adaptation: 'downward', ...label }).perHa;
      if (dose.kind !== 'figure' || dose.inputs.I?.kind !== 'figure') throw new Error('no working');
      return dose.inputs.I.inputs.F;
    };
    expect(floorOf({})).toMatchObject({ value: 0, certainty: 'assumed', path: 'label.floor' });
    expect(floorOf({ floor: 0.3 })).toMatchObject({ value: 0.3, certainty: 'stated', path: 'label.floor' });
  });
});

describe('water', () => {
  const water = (parts: Parts) => result(parts).water;
  test('the strategy\'s own, untouched', () => {
    const w = water({});
    expect(num(w.wanted)).toBeCloseTo(750, 9);
    expect(w.free).toBe(w.wanted);
    expect(w.acts).toEqual([]);
  });
  test('the user\'s own rules over it', () => {
    const w = water({ block: { ownWaterLPerHa: 400 } });
    expect(w.wanted).toMatchObject({ kind: 'given', value: 400, path: 'ownWaterLPerHa' });
    expect(w.acts).toEqual(['own-water']);
  });
  test('concentrated only where it is dilute', () => {
    expect(num(water({ block: { concentration: 3 } }).wanted)).toBeCloseTo(250, 9);
    expect(num(water({ block: { concentration: 1 } }).wanted)).toBeCloseTo(750, 9);
    expect(num(water({ block: { concentration: 0.5 } }).wanted)).toBeCloseTo(1500, 9);
    expect(num(water({ block: { concentration: 3, strategy: 'swiss-affine' } }).wanted)).toBeCloseTo(350, 9);
    expect(num(water({ block: { concentration: 3, ownWaterLPerHa: 400 } }).wanted)).toBe(400);
  });
  test.each([
    [{ minWaterLPerHa: 800 }, 800, ['raised-to-label-minimum-water']],
    [{ maxWaterLPerHa: 700 }, 700, ['capped-at-label-maximum-water']],
    [{ minWaterLPerHa: 700, maxWaterLPerHa: 800 }, 750, []],
    [{ minWaterLPerHa: 750 }, 750, []],
    [{ maxWaterLPerHa: 750 }, 750, []],
    [{ minWaterLPerHa: 800, maxWaterLPerHa: 900 }, 800, ['raised-to-label-minimum-water']]
  ] as const)('label %o', (label, wanted, acts) => {
    const w = water({ label });
    expect(num(w.wanted)).toBeCloseTo(wanted, 9);
    expect(num(w.free)).toBeCloseTo(750, 9);
    expect(w.acts).toEqual(acts);
  });
  test('own water is held to the label too', () => {
    const w = water({ block: { ownWaterLPerHa: 100 }, label: { minWaterLPerHa: 300 } });
    expect(num(w.wanted)).toBe(300);
    expect(w.acts).toEqual(['own-water', 'raised-to-label-minimum-water']);
  });
  test('strategies that leave water to the label or the user', () => {
    for (const strategy of ['ground-area', 'row-length', 'leaf-wall'] as const) {
      const w = water({ block: { strategy }, label: { minWaterLPerHa: 300 } });
      expect(refusal(w.wanted)).toBe('strategy-without-water @ ownWaterLPerHa');
      expect(w.wanted).toMatchObject({ parameters: { strategy } });
      expect(w.acts).toEqual([]);
    }
  });
  test('nothing is no water', () => {
    expect([isWater(given(0, 'L/ha')), isWater(given(1e-9, 'L/ha')), isWater(given(10, 'L/ha')), isWater(refused('x', 'y'))]).toEqual([false, false, true, false]);
  });
});

describe('strategies', () => {
  const answer = (id: (typeof STRATEGY_IDS)[number], parts: Parts = {}) => result(parts).strategies.find((s) => s.strategy.id === id)!;
  test('which of them name a dilute water', () => {
    const r = result();
    expect(r.strategies.filter((s) => s.dilute !== null).map((s) => s.strategy.id)).toEqual(['row-volume', 'us-row-volume', 'metric-multiplier', 'swiss-affine', 'unit-canopy-row', 'row-distance', 'stage-volume']);
    expect(r.strategies.filter((s) => s.water === null).map((s) => s.strategy.id)).toEqual(['ground-area', 'row-length', 'leaf-wall']);
    expect(num(answer('swiss-affine').dilute)).toBeCloseTo(4 * num(answer('swiss-affine').water), 9);
    const row = answer('row-volume');
    expect(row.dilute).toBe(row.water);
  });
  test('the chosen one is the block\'s', () => {
    for (const strategy of STRATEGY_IDS) expect(result({ block: { strategy } }).strategy.strategy).toBe(STRATEGIES.get(strategy));
  });
  test('what each scales by', () => {
    const f = result().canopy.figures;
    const by: Record<string, unknown> = { 'ground-area': null, 'row-length': f.RL, 'crown-height': f.h, 'leaf-wall': f.LWA, 'row-volume': f.TRVc, 'us-row-volume': f.TRVg, 'metric-multiplier': f.TRVg, 'swiss-affine': f.TRVc, 'unit-canopy-row': f.UCR, 'row-distance': f.LWA, 'stage-volume': f.TRVs, 'occupied-volume': f.TRVs, 'leaf-area': f.LAI };
    for (const s of result().strategies) {
      const d = by[s.strategy.id];
      if (d === null) expect(s.descriptor).toBeNull();
      else expect(num(s.descriptor)).toBe(num(d as Parameters<typeof num>[0]));
    }
  });
  test('conventions of height and width, as each source has them', () => {
    expect(Object.fromEntries([...STRATEGIES.values()].map((s) => [s.id, `${s.height}/${s.width}`]))).toEqual({
      'ground-area': 'none/none', 'row-length': 'none/none', 'crown-height': 'crown/none', 'leaf-wall': 'crown/none', 'row-volume': 'crown/greatest',
      'us-row-volume': 'ground/greatest', 'metric-multiplier': 'ground/greatest', 'swiss-affine': 'crown/greatest', 'unit-canopy-row': 'crown/greatest',
      'row-distance': 'crown/none', 'stage-volume': 'crown/outline', 'occupied-volume': 'crown/outline', 'leaf-area': 'crown/outline'
    });
  });
  test('the US factor follows the season: three sevenths before the end of bloom', () => {
    const at = (bbch: number) => num(answer('us-row-volume', { rung: { bbch } }).water) / num(answer('us-row-volume').water);
    expect(at(68)).toBeCloseTo(3 / 7, 12);
    expect(at(69)).toBe(1);
  });
  test('stage volume chooses by stage first, then by density', () => {
    const z = (bbch: number | undefined, densityClass: 'open' | 'medium' | 'dense') => (10 * num(answer('stage-volume', { canopy: { densityClass }, rung: bbch === undefined ? {} : { bbch } }).water)) / 75;
    expect([z(0, 'dense'), z(6, 'open'), z(7, 'dense'), z(68, 'medium'), z(75, 'open'), z(75, 'medium'), z(75, 'dense'), z(undefined, 'dense')].map((v) => Math.round(v * 1e6) / 1e6)).toEqual([75, 75, 100, 100, 100, 125, 150, 150]);
  });
  test('constants of the user are taken and shown as used', () => {
    const r = result({ assumptions: { 'row-volume.water': 0.12 } });
    expect(num(r.water.wanted)).toBeCloseTo(900, 9);
    expect(r.assumptions.get('row-volume.water')).toMatchObject({ value: 0.12, certainty: 'stated' });
    expect(num(result({ assumptions: { 'row-volume.water': 0.5 } }).water.wanted)).toBeCloseTo(750, 9);
  });
  test('outside the source\'s range it says so', () => {
    const flag = (parts: Parts) => {
      const i = answer('leaf-wall', parts).index;
      return i.kind === 'figure' && i.extrapolated;
    };
    expect(flag({})).toBe(false); // 12 500 m²/ha
    expect(flag({ canopy: { heightM: 2 } })).toBe(true); // 7500
    expect(flag({ canopy: { heightM: 4.5 } })).toBe(true); // 20 000
    const us = answer('us-row-volume', { canopy: { heightM: 10, widthM: 3 } }).water!;
    expect(us.kind === 'figure' && us.extrapolated).toBe(true); // 75 000 m³/ha
  });
});

describe('concentration', () => {
  test('dilute over applied', () => {
    const r = result({ label: {} });
    expect(num(r.product!.concentration)).toBeCloseTo(750 / num(r.sprayer.volume), 12);
  });
  test('unknown without a dilute water', () => expect(refusal(product({}, { block: { strategy: 'crown-height' } }).concentration)).toBe('no-dilute-water @ strategy'));
});
