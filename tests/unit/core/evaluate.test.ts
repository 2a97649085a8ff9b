import { describe, expect, test } from 'vitest';
import { differences } from '#core/advice/difference.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { sameSetting } from '#core/setting/result-of.ts';
import type { StrategyId } from '#core/dose/types.ts';
import { arcNozzles, document, num, refusal, result, setting, shut, table } from '../../support/sample.ts';
import { faultsOf, workingOf } from '../../support/working.ts';

describe('refusals by name', () => {
  const refusedWith = (block: string, rung: string, d = document()) => evaluate(d, block, rung);
  test('an unknown block, rung, machine or strategy', () => {
    expect(refusedWith('none', 'now')).toEqual({ kind: 'refused', code: 'unknown-block', path: 'blocks', parameters: { id: 'none' } });
    expect(refusedWith('block', 'none')).toEqual({ kind: 'refused', code: 'unknown-rung', path: 'blocks.block.rungs', parameters: { id: 'none' } });
    expect(refusedWith('block', 'now', document({ block: { machine: 'none' } }))).toEqual({ kind: 'refused', code: 'unknown-machine', path: 'blocks.block.machine', parameters: { id: 'none' } });
    expect(refusedWith('block', 'now', document({ block: { strategy: 'none' as StrategyId } }))).toEqual({ kind: 'refused', code: 'unknown-strategy', path: 'blocks.block.strategy', parameters: { id: 'none' } });
  });
});

test('the result names what it was made of', () => {
  const d = document({ label: {} });
  const r = result({ label: {} });
  expect(r.block).toEqual(d.blocks[0]);
  expect(r.machine).toEqual(d.machines[0]);
  expect(r.rung.id).toBe('now');
  expect(r.setting).toEqual(setting());
  expect(r.product!.label).toEqual(d.labels[0]);
  expect(result({ block: { label: 'none' } }).product).toBeNull();
});

describe('settings alike', () => {
  const s = setting();
  test('in every value that the operator sets', () => {
    expect(sameSetting(s, s)).toBe(true);
    expect(sameSetting(s, setting())).toBe(true);
    for (const more of [{ speedKmH: 5 }, { pressureBar: 9 }, { gear: 'low' }, { ptoRpm: 500 }]) expect(sameSetting(s, setting(more))).toBe(false);
    for (const n of [{ open: false }, { swivelDeg: 1 }, { size: '02' }, { table: 'own' }]) {
      expect(sameSetting(s, setting({ nozzles: [{ position: 'L1', ...n }] }))).toBe(false);
      expect(sameSetting(setting({ nozzles: [{ position: 'L1', ...n }] }), s)).toBe(false);
    }
  });
  test('whatever was left to the default', () => {
    expect(sameSetting(s, setting({ nozzles: [] }))).toBe(true);
    expect(sameSetting(s, setting({ nozzles: [{ position: 'L1', open: true, swivelDeg: 0 }] }))).toBe(true);
    expect(sameSetting(setting({ nozzles: shut('L1', 'R1') }), setting({ nozzles: shut('R1', 'L1') }))).toBe(true);
  });
  test('a saved setting that is the same is no change', () => {
    expect(result({ saved: { nozzles: [] } }).saved).toBeNull();
    expect(result({ saved: { speedKmH: 5 } }).saved).not.toBeNull();
    expect(result().saved).toBeNull();
  });
});

test('every figure\'s inputs are in the units of its formula, and its value is the formula\'s', () => {
  for (const basis of ['per-hectare', 'per-100-l-dilute', 'per-leaf-wall', 'per-crown-height', 'per-row-volume', 'percent-of-water'] as const)
    for (const unit of ['kg', 'L'] as const) {
      const r = result({
        label: { basis, unit, rate: 1, referenceWaterLPerHa: 1000, maxPerHa: 0.5, adaptation: 'required', minWaterLPerHa: 2000 },
        block: { concentration: 2, pattern: { kind: 'one-side-both-faces', side: 'left' } },
        saved: { speedKmH: 5 },
        tables: [table(1, { sizes: [{ id: 'x', flowLPerMin: 1, points: [{ pressureBar: 5, flowLPerMin: 0.7 }, { pressureBar: 15, flowLPerMin: 1.2 }] }] })],
        machine: { nozzles: arcNozzles().map((n, i) => (i % 2 ? n : { ...n, table: 'own', size: 'x' })) },
        day: { temperatureC: 20, humidityPct: 50 }
      });
      expect(faultsOf(r), `${basis} ${unit}`).toEqual([]);
      expect(workingOf(r).figures.length).toBeGreaterThan(150);
    }
});

describe('differences between two stages', () => {
  const spring = () => result({ canopy: { heightM: 2.8, widthM: 0.9 }, rung: { bbch: 57 }, label: { rate: 2, adaptation: 'downward' }, setting: { speedKmH: 7, pressureBar: 8 } });
  const full = () => result({ canopy: { heightM: 3.3, widthM: 1.2 }, rung: { bbch: 75 }, label: { rate: 2, adaptation: 'downward' } });
  test('one line each, with both values, the change and its direction', () => {
    const lines = Object.fromEntries(differences(spring(), full()).map((d) => [d.code, d.parameters]));
    expect(Object.keys(lines)).toEqual(expect.arrayContaining(['row-volume', 'leaf-area', 'water', 'volume', 'product', 'air', 'speed', 'pressure']));
    expect(lines['row-volume']).toEqual({ from: { value: expect.closeTo(5175, 6), unit: 'm3/ha' }, to: { value: expect.closeTo(8400, 6), unit: 'm3/ha' }, change: { value: expect.closeTo(62.3188, 3), unit: '%' }, direction: 'more' });
    expect(lines.speed).toEqual({ from: { value: 7, unit: 'km/h' }, to: { value: 6, unit: 'km/h' }, change: { value: expect.closeTo(14.2857, 3), unit: '%' }, direction: 'less' });
    expect(lines.product).toMatchObject({ from: { value: expect.closeTo(1.035, 9) }, to: { value: expect.closeTo(1.68, 9) } });
  });
  test('what stays within 1 % is left out', () => {
    expect(differences(full(), full())).toEqual([]);
    const codes = (speedKmH: number) => differences(result(), result({ setting: { speedKmH } })).map((d) => d.code);
    expect(codes(6.05)).not.toContain('speed');
    expect(codes(6.07)).toContain('speed');
    expect(codes(6.07)).not.toContain('pressure');
  });
  test('nozzles that gain and lose leaf', () => {
    const cone = { machine: { nozzles: arcNozzles({ coneAngleDeg: 5 }) } };
    const [low, high] = [result({ ...cone, canopy: { heightM: 2 } }), result({ ...cone, canopy: { heightM: 4 } })];
    const gained = differences(low, high).find((d) => d.code === 'nozzles-gain-leaf')!.parameters.nozzles as string[];
    const lost = differences(high, low).find((d) => d.code === 'nozzles-lose-leaf')!.parameters.nozzles as string[];
    expect(gained).toEqual(lost);
    expect(gained.filter((id) => id.startsWith('L'))).toEqual(['L6', 'L7']);
    expect(differences(low, high).some((d) => d.code === 'nozzles-lose-leaf')).toBe(false);
  });
  test('what one of them cannot tell is left out; from nothing there is no percentage', () => {
    expect(differences(result({ canopy: { skirtM: 3 } }), result()).some((d) => d.code === 'row-volume')).toBe(false);
    expect(differences(result(), result({ label: {} })).some((d) => d.code === 'product')).toBe(false);
    const bare = differences(result({ rung: { bbch: 0 } }), result({ rung: { bbch: 75 } })).find((d) => d.code === 'leaf-area')!;
    expect(bare.parameters).toEqual({ from: { value: 0, unit: '1' }, to: { value: 1.5, unit: '1' }, direction: 'more' });
  });
});

describe('bare canopies', () => {
  test('no leaf, no water by leaf area, and nothing divided by it', () => {
    const r = result({ rung: { bbch: 0 }, block: { strategy: 'leaf-area' }, label: { rate: 2, adaptation: 'downward' } });
    expect(num(r.water.wanted)).toBe(0);
    expect(r.options).toEqual([]);
    expect(num(r.product!.perHa)).toBe(0);
    expect(r.findings.map((f) => f.code)).toContain('no-wanted-water');
  });
  test('a skirt above the top leaves machine and air to be told', () => {
    const r = result({ canopy: { skirtM: 3.5 }, label: {} });
    expect(refusal(r.water.wanted)).toBe('skirt-above-top @ canopy.skirtM');
    expect(num(r.sprayer.volume)).toBeGreaterThan(400);
    expect(num(r.air.needed)).toBeCloseTo(24_000, 6);
    expect(num(r.product!.perHa)).toBe(2);
  });
});

describe('evergreen blocks', () => {
  test('the stage changes neither leaf nor water', () => {
    const r = result({ block: { evergreen: true, strategy: 'us-row-volume' }, rung: { bbch: 57 } });
    const full = result({ block: { strategy: 'us-row-volume' }, rung: { bbch: 75 } });
    expect(num(r.water.wanted)).toBe(num(full.water.wanted));
    expect(num(r.canopy.figures.LAI)).toBe(num(full.canopy.figures.LAI));
    expect(r.air.k.value).toBe(full.air.k.value);
    expect(num(result({ block: { evergreen: false, strategy: 'us-row-volume' }, rung: { bbch: 57 } }).water.wanted)).toBeLessThan(num(full.water.wanted) / 2);
  });
});
