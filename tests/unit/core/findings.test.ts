import { describe, expect, test } from 'vitest';
import { amount, finding, ranked, share, SEVERITIES, type Severity } from '#core/advice/finding.ts';
import { SOURCES } from '#core/sources/bibliography.ts';
import { HEADLAND_SOURCES } from '#core/sources/headland.ts';
import { given, refused } from '#core/working/answer.ts';
import { arcNozzles, codes, onlyOpen, result, shut, table, type Parts } from '../../support/sample.ts';

/**
 * Every finding: where it appears, with what, and where it does not. The sample: 438 L/ha against 750 wanted, air 30 000 against 24 000 m³/h,
 * crown 2.5 × 1.2 m in rows of 4 m, body 1.3 m.
 */
const of = (parts: Parts, code: string) => result(parts).findings.find((f) => f.code === code);
const near = (value: number) => expect.closeTo(value, 6) as unknown as number;
const m = (value: number) => ({ value: near(value), unit: 'm' });
const V = (600 * 16 * 0.6 * Math.sqrt(10 / 3)) / 24;
const litres = (value: number) => ({ value: near(value), unit: 'L/ha' });
const narrow: Parts['machine'] = { nozzles: arcNozzles({ coneAngleDeg: 5 }) };
const loose: Parts['machine'] = { nozzles: arcNozzles({ coneAngleDeg: 5, swivelDownDeg: -30, swivelUpDeg: 30 }) };
const fixed: Parts['machine'] = { nozzles: arcNozzles({ coneAngleDeg: 5, swivelDownDeg: 0, swivelUpDeg: 0 }) };
const fine = (fromClass: 'F' | 'M'): Parts => ({
  tables: [table(1, { sizes: [{ id: 'x', flowLPerMin: 1, droplets: [{ fromBar: 1, class: fromClass }] }] })],
  machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) }
});

interface Row {
  readonly code: string;
  readonly severity: Severity;
  readonly when: Parts;
  readonly not: readonly Parts[];
  readonly parameters?: Record<string, unknown>;
  readonly path?: string;
}

const ROWS: readonly Row[] = [
  // canopy
  { code: 'skirt-above-top', severity: 'stop', when: { canopy: { skirtM: 3 } }, not: [{}, { canopy: { skirtM: 2.99 } }], parameters: { skirt: m(3), height: m(3) }, path: 'canopy.skirtM' },
  { code: 'canopy-closes-alley', severity: 'stop', when: { canopy: { widthM: 4 } }, not: [{}, { canopy: { widthM: 3.99 } }], parameters: { width: m(4), spacing: m(4) }, path: 'canopy.widthM' },
  { code: 'machine-wider-than-alley', severity: 'stop', when: { canopy: { widthM: 2.8 } }, not: [{}, { canopy: { widthM: 2.69 } }, { canopy: { widthM: 4 } }], parameters: { gap: m(1.2), body: m(1.3) }, path: 'rowSpacingM' },
  { code: 'tallest-below-mean', severity: 'warn', when: { canopy: { tallestTenthM: 2.9 } }, not: [{}, { canopy: { tallestTenthM: 3 } }], parameters: { tallest: m(2.9), height: m(3) }, path: 'canopy.tallestTenthM' },
  { code: 'tallest-sets-top', severity: 'note', when: { canopy: { tallestTenthM: 3.5 } }, not: [{}, { canopy: { tallestTenthM: 3.05 } }, { canopy: { tallestTenthM: 2.9 } }], parameters: { tallest: m(3.5), height: m(3) } },
  { code: 'looks-like-feet', severity: 'warn', when: { canopy: { heightM: 12, widthM: 7 }, block: { rowSpacingM: 16 } }, not: [{}, { canopy: { heightM: 9 }, block: { rowSpacingM: 16 } }, { canopy: { heightM: 12 }, block: { rowSpacingM: 9 } }], parameters: { height: m(12), spacing: m(16) } },
  { code: 'profile-differs', severity: 'note', when: { canopy: { profile: [{ heightM: 1, widthM: 1 }, { heightM: 2, widthM: 0.8 }] } }, not: [{}, { canopy: { profile: [{ heightM: 1, widthM: 1.1 }, { heightM: 2, widthM: 0.8 }] } }], parameters: { widest: m(1), width: m(1.2) } },
  { code: 'gaps-likely', severity: 'note', when: { block: { treeSpacingM: 2.5 } }, not: [{}, { block: { treeSpacingM: 2.4 } }, { block: { treeSpacingM: 2.5 }, canopy: { filledFraction: 0.8 } }], parameters: { spacing: m(2.5), width: m(1.2) } },
  { code: 'measure-this-next', severity: 'note', when: { canopy: { errors: { heightSeM: 0.1, widthSeM: 0.036 } } }, not: [{}, { canopy: { errors: { heightSeM: 0.1 } } }], parameters: { measurement: 'canopy.heightM', share: { value: expect.closeTo(64, 4), unit: '%' } }, path: 'canopy.heightM' },
  { code: 'measure-this-next', severity: 'note', when: { canopy: { errors: { heightSeM: 0.1, widthSeM: 0.1 } } }, not: [], parameters: { measurement: 'canopy.widthM' } },
  // aim
  { code: 'no-nozzle-open', severity: 'stop', when: { setting: { nozzles: onlyOpen() } }, not: [{}, { setting: { nozzles: onlyOpen('L3') } }], path: 'setting.nozzles' },
  { code: 'nozzle-in-canopy', severity: 'stop', when: { canopy: { widthM: 3 } }, not: [{}, { canopy: { widthM: 3 }, setting: { nozzles: onlyOpen('L8', 'R8') } }], path: 'rowSpacingM' },
  { code: 'nozzle-too-near', severity: 'warn', when: { canopy: { widthM: 2.4 }, machine: { bodyWidthM: 1 } }, not: [{}, { canopy: { widthM: 3.9 } }], parameters: { nozzles: ['L1', 'L2', 'L3', 'L4', 'R1', 'R2', 'R3', 'R4'], clearance: m(0.8 - 0.55 * Math.cos((15 / 7 / 180) * Math.PI)), least: m(0.3) } },
  { code: 'over-top-turn', severity: 'warn', when: { canopy: { heightM: 2.9 }, machine: narrow }, not: [{ canopy: { heightM: 2.9 }, machine: fixed }, { canopy: { heightM: 2.5 }, machine: narrow }], parameters: { nozzles: ['L7', 'R7'] }, path: 'setting.nozzles' },
  { code: 'over-top-shut', severity: 'warn', when: { canopy: { heightM: 2.5 }, machine: fixed }, not: [{ canopy: { heightM: 2.5 }, machine: fixed, setting: { nozzles: shut('L7', 'L8', 'R7', 'R8') } }], parameters: { nozzles: ['L7', 'L8', 'R7', 'R8'] }, path: 'setting.nozzles' },
  { code: 'under-skirt-turn', severity: 'warn', when: { canopy: { skirtM: 0.9 }, machine: narrow }, not: [{ canopy: { skirtM: 0.9 }, machine: fixed }, { canopy: { skirtM: 0 }, machine: narrow }], path: 'setting.nozzles' },
  { code: 'under-skirt-shut', severity: 'warn', when: { canopy: { skirtM: 0.9 }, machine: fixed }, not: [{ canopy: { skirtM: 0.9 }, machine: loose }, { canopy: { skirtM: 0.9 }, machine: fixed, setting: { nozzles: shut('L1', 'L2', 'R1', 'R2') } }], parameters: { nozzles: ['L1', 'L2', 'R1', 'R2'], lost: { value: expect.any(Number) as number, unit: '%' } } },
  { code: 'turn-gains', severity: 'note', when: { canopy: { heightM: 2.3 } }, not: [{ machine: fixed }] },
  { code: 'shut-in-leaf', severity: 'note', when: { setting: { nozzles: shut('L4', 'R8') } }, not: [{}, { setting: { nozzles: shut('R8') } }], parameters: { nozzles: ['L4'] } },
  { code: 'well-aimed', severity: 'good', when: { setting: { nozzles: onlyOpen('L3', 'L4', 'L5', 'R3', 'R4', 'R5') } }, not: [{}, { setting: { nozzles: onlyOpen('L8', 'R8') } }], parameters: { share: { value: expect.closeTo(100, 6), unit: '%' } } },
  { code: 'sides-differ', severity: 'warn', when: { setting: { nozzles: shut('L8') } }, not: [{}, { setting: { nozzles: shut('L8', 'R1') } }, { setting: { nozzles: shut(...arcNozzles().filter((n) => n.side === 'left').map((n) => n.id)) } }, { block: { pattern: { kind: 'one-side-one-face', side: 'left' } } }], parameters: { left: { value: near(7 * 0.6 * Math.sqrt(10 / 3)), unit: 'L/min' }, right: { value: near(8 * 0.6 * Math.sqrt(10 / 3)), unit: 'L/min' } } },
  { code: 'nozzle-unknown', severity: 'stop', when: { setting: { nozzles: [{ position: 'R2', size: 'none' }] } }, not: [{}, { setting: { nozzles: [{ position: 'R2', size: 'none', open: false }] } }], parameters: { nozzles: ['R2'] } },
  { code: 'pressure-outside-machine', severity: 'stop', when: { setting: { pressureBar: 18.1 } }, not: [{}, { setting: { pressureBar: 18 } }, { setting: { pressureBar: 4 } }], parameters: { pressure: { value: 18.1, unit: 'bar' }, least: { value: 4, unit: 'bar' }, most: { value: 18, unit: 'bar' } } },
  { code: 'pressure-outside-machine', severity: 'stop', when: { setting: { pressureBar: 3.9 } }, not: [] },
  { code: 'pressure-outside-nozzle', severity: 'warn', when: { setting: { pressureBar: 2.9 } }, not: [{}, { setting: { pressureBar: 3 } }, { setting: { pressureBar: 20 } }], parameters: { table: 'ISO 10625', pressure: { value: 2.9, unit: 'bar' }, least: { value: 3, unit: 'bar' }, most: { value: 20, unit: 'bar' } } },
  { code: 'pressure-outside-nozzle', severity: 'warn', when: { setting: { pressureBar: 20.1 } }, not: [] },
  { code: 'speed-outside-machine', severity: 'warn', when: { setting: { speedKmH: 8.1 } }, not: [{}, { setting: { speedKmH: 8 } }, { setting: { speedKmH: 3 } }], parameters: { speed: { value: 8.1, unit: 'km/h' }, least: { value: 3, unit: 'km/h' }, most: { value: 8, unit: 'km/h' } } },
  { code: 'speed-outside-machine', severity: 'warn', when: { setting: { speedKmH: 2.9 } }, not: [] },
  // water and product
  { code: 'no-wanted-water', severity: 'note', when: { block: { strategy: 'leaf-wall' } }, not: [{}, { block: { strategy: 'leaf-wall', ownWaterLPerHa: 400 } }], parameters: { strategy: 'leaf-wall' } },
  { code: 'volume-below-wanted', severity: 'warn', when: {}, not: [{ block: { ownWaterLPerHa: V } }, { block: { ownWaterLPerHa: 300 } }], parameters: { volume: litres(V), wanted: litres(750), off: { value: near((1 - V / 750) * 100), unit: '%' } } },
  { code: 'volume-below-wanted', severity: 'note', when: { block: { ownWaterLPerHa: V / 0.92 } }, not: [{ block: { ownWaterLPerHa: V / 0.96 } }] },
  { code: 'volume-above-wanted', severity: 'warn', when: { block: { ownWaterLPerHa: V / 1.2 } }, not: [{}, { block: { ownWaterLPerHa: V / 1.04 } }], parameters: { off: { value: near(20), unit: '%' } } },
  { code: 'volume-above-wanted', severity: 'note', when: { block: { ownWaterLPerHa: V / 1.08 } }, not: [] },
  { code: 'volume-on-target', severity: 'good', when: { block: { ownWaterLPerHa: V / 1.04 } }, not: [{}, { block: { ownWaterLPerHa: V / 1.06 } }, { block: { strategy: 'leaf-wall' } }], parameters: { volume: litres(V), wanted: litres(V / 1.04) } },
  { code: 'little-water', severity: 'warn', when: { block: { ownWaterLPerHa: 49 } }, not: [{}, { block: { ownWaterLPerHa: 50 } }, { block: { ownWaterLPerHa: 49 }, assumptions: { 'water.little': 40 } }, { block: { strategy: 'leaf-wall' } }], parameters: { wanted: litres(49), least: litres(50) }, path: 'strategy' },
  { code: 'far-face-under-dosed', severity: 'warn', when: { block: { pattern: { kind: 'alternate-alleys' } } }, not: [{}, { block: { pattern: { kind: 'one-side-one-face', side: 'left' } } }], path: 'pattern' },
  { code: 'early-rate', severity: 'note', when: { block: { strategy: 'us-row-volume' }, rung: { bbch: 57 } }, not: [{ block: { strategy: 'us-row-volume' }, rung: { bbch: 75 } }, { rung: { bbch: 57 } }, { block: { strategy: 'us-row-volume', evergreen: true }, rung: { bbch: 57 } }] },
  { code: 'strategy-extrapolated', severity: 'note', when: { block: { strategy: 'leaf-wall' }, canopy: { heightM: 1.5 } }, not: [{}, { block: { strategy: 'leaf-wall' } }], parameters: { strategy: 'leaf-wall' } },
  { code: 'label-minimum-water-acts', severity: 'note', when: { label: { minWaterLPerHa: 900 } }, not: [{ label: {} }, { label: { minWaterLPerHa: 700 } }], parameters: { free: litres(750), wanted: litres(900) } },
  { code: 'label-maximum-water-acts', severity: 'note', when: { label: { maxWaterLPerHa: 600 } }, not: [{ label: {} }, { label: { maxWaterLPerHa: 800 } }], parameters: { free: litres(750), wanted: litres(600) } },
  { code: 'no-label', severity: 'note', when: {}, not: [{ label: {} }], path: 'label' },
  { code: 'below-label-water', severity: 'stop', when: { label: { minWaterLPerHa: 439 } }, not: [{ label: { minWaterLPerHa: 438 } }, { label: {} }], parameters: { volume: litres(V), least: litres(439) } },
  { code: 'above-label-water', severity: 'stop', when: { label: { maxWaterLPerHa: 438 } }, not: [{ label: { maxWaterLPerHa: 439 } }, { label: {} }], parameters: { volume: litres(V), most: litres(438) } },
  { code: 'too-concentrated', severity: 'stop', when: { label: { maxConcentration: 1.7 } }, not: [{ label: { maxConcentration: 1.72 } }, { label: {} }], parameters: { factor: { value: near(750 / V), unit: '1' }, most: { value: 1.7, unit: '1' } } },
  { code: 'beyond-run-off', severity: 'warn', when: { label: {}, canopy: { heightM: 1.8 } }, not: [{ label: {} }, { label: {}, canopy: { heightM: 1.9 } }], parameters: { volume: litres(V) } },
  { code: 'no-dose', severity: 'stop', when: { label: { basis: 'percent-of-water' } }, not: [{ label: {} }], parameters: { reason: 'no-reference-water' } },
  { code: 'label-maximum-acts', severity: 'note', when: { label: { maxPerHa: 1.5 } }, not: [{ label: {} }, { label: { maxPerHa: 2 } }], parameters: { dose: { value: 1.5, unit: 'kg/ha' } } },
  // Crown 1.6 m × 1.2 m in 4 m rows: 4800 of 10 000 m³/ha; 1.7 m: 5100.
  { code: 'far-below-label', severity: 'warn', when: { label: { adaptation: 'downward' }, canopy: { heightM: 2.1 } }, not: [{ label: { adaptation: 'downward' }, canopy: { heightM: 2.2 } }, { label: {}, canopy: { heightM: 2.1 } }, { label: { adaptation: 'downward', floor: 0.5 }, canopy: { heightM: 2.1 } }], parameters: { dose: { value: near(0.96), unit: 'kg/ha' }, label: { value: 2, unit: 'kg/ha' } }, path: 'label.floor' },
  { code: 'concentration-ignored', severity: 'note', when: { block: { strategy: 'crown-height', concentration: 2 } }, not: [{ block: { concentration: 2 } }, { block: { strategy: 'crown-height' } }, { block: { strategy: 'crown-height', concentration: 1 } }], parameters: { strategy: 'crown-height' }, path: 'concentration' },
  { code: 'concentration-ignored', severity: 'note', when: { block: { concentration: 2, ownWaterLPerHa: 400 } }, not: [] },
  { code: 'floor-acts', severity: 'note', when: { label: { adaptation: 'downward', floor: 0.8 } }, not: [{ label: { adaptation: 'downward', floor: 0.7 } }, { label: { floor: 0.8 } }], parameters: { dose: { value: near(1.6), unit: 'kg/ha' } }, path: 'label.floor' },
  { code: 'not-above-label', severity: 'note', when: { label: { adaptation: 'downward' }, canopy: { heightM: 5 } }, not: [{ label: { adaptation: 'downward' } }, { label: { adaptation: 'required' }, canopy: { heightM: 5 } }], parameters: { dose: { value: 2, unit: 'kg/ha' } } },
  { code: 'dose-follows-canopy', severity: 'note', when: { label: { adaptation: 'required' } }, not: [{ label: {} }, { label: { adaptation: 'required', basis: 'percent-of-water' } }], parameters: { dose: { value: near(1.5), unit: 'kg/ha' }, label: { value: 2, unit: 'kg/ha' } } },
  { code: 'label-dose-kept', severity: 'note', when: { label: {} }, not: [{ label: {}, canopy: { heightM: 3.6 } }, { label: { adaptation: 'required' } }], parameters: { index: { value: near(75), unit: '%' } }, path: 'label.adaptation' },
  { code: 'droplets-too-fine', severity: 'stop', when: { ...fine('F'), label: { finestClass: 'M' } }, not: [{ ...fine('M'), label: { finestClass: 'M' } }, { ...fine('F'), label: { finestClass: 'F' } }, { ...fine('F'), label: {} }, { label: { finestClass: 'M' } }, { ...fine('F'), label: { finestClass: 'M' }, setting: { nozzles: onlyOpen() } }], parameters: { nozzles: arcNozzles().map((n) => n.id), class: 'M' } },
  // air
  { code: 'gear-unknown', severity: 'stop', when: { setting: { gear: 'none' } }, not: [{}], parameters: { gear: 'none' } },
  { code: 'air-short', severity: 'warn', when: { canopy: { heightM: 5 } }, not: [{}, { canopy: { heightM: 4.4 } }, { canopy: { heightM: 5 }, assumptions: { 'air.tolerance': 0.3 } }], parameters: { given: { value: near(30000), unit: 'm3/h' }, needed: { value: near(40000), unit: 'm3/h' }, off: { value: near(25), unit: '%' } } },
  { code: 'air-too-much', severity: 'warn', when: {}, not: [{ assumptions: { 'air.tolerance': 0.3 } }, { canopy: { heightM: 5 } }, { canopy: { heightM: 3.3 } }], parameters: { given: { value: near(30000), unit: 'm3/h' }, needed: { value: near(24000), unit: 'm3/h' }, off: { value: near(25), unit: '%' } } },
  { code: 'air-matched', severity: 'good', when: { canopy: { heightM: 3.75 } }, not: [{}, { canopy: { heightM: 5 } }], parameters: { off: { value: near(0), unit: '%' } } },
  { code: 'pto-outside-machine', severity: 'warn', when: { setting: { ptoRpm: 561 } }, not: [{}, { setting: { ptoRpm: 560 } }, { setting: { ptoRpm: 400 } }], parameters: { pto: { value: 561, unit: 'rpm' }, least: { value: 400, unit: 'rpm' }, most: { value: 560, unit: 'rpm' } } },
  { code: 'pto-outside-machine', severity: 'warn', when: { setting: { ptoRpm: 399 } }, not: [] },
  // weather
  { code: 'no-weather', severity: 'note', when: {}, not: [{ day: { windMPerS: 2 } }], path: 'day' },
  { code: 'delta-t-below', severity: 'note', when: { day: { temperatureC: 20, humidityPct: 95 } }, not: [{ day: { temperatureC: 20, humidityPct: 60 } }, { day: { temperatureC: 30, humidityPct: 20 } }], parameters: { value: { value: expect.closeTo(0.59, 1), unit: 'K' }, bound: { value: 2, unit: 'K' } } },
  { code: 'delta-t-above', severity: 'note', when: { day: { temperatureC: 25, humidityPct: 40 } }, not: [{ day: { temperatureC: 20, humidityPct: 60 } }], parameters: { value: { value: expect.closeTo(8.9, 0), unit: 'K' }, bound: { value: 8, unit: 'K' } } },
  { code: 'delta-t-above', severity: 'warn', when: { day: { temperatureC: 24, humidityPct: 10 } }, not: [], parameters: { bound: { value: 10, unit: 'K' } } },
  { code: 'wind-below', severity: 'note', when: { day: { windMPerS: 0.5 } }, not: [{ day: { windMPerS: 1 } }], parameters: { value: { value: 0.5, unit: 'm/s' }, bound: { value: 1, unit: 'm/s' } } },
  { code: 'wind-above', severity: 'note', when: { day: { windMPerS: 4 } }, not: [{ day: { windMPerS: 3 } }], parameters: { bound: { value: 3, unit: 'm/s' } } },
  { code: 'wind-above', severity: 'warn', when: { day: { windMPerS: 6 } }, not: [], parameters: { bound: { value: 5, unit: 'm/s' } } },
  { code: 'temperature-above', severity: 'warn', when: { day: { temperatureC: 26 } }, not: [{ day: { temperatureC: 25 } }], parameters: { value: { value: 26, unit: 'degC' }, bound: { value: 25, unit: 'degC' } } },
  { code: 'humidity-below', severity: 'warn', when: { day: { humidityPct: 45 } }, not: [{ day: { humidityPct: 50 } }], parameters: { value: { value: 45, unit: '%' }, bound: { value: 50, unit: '%' } } },
  { code: 'inversion-risk', severity: 'warn', when: { day: { windMPerS: 2, sunLow: true } }, not: [{ day: { windMPerS: 2 } }] },
  { code: 'inversion-risk', severity: 'warn', when: { day: { windMPerS: 0.5 } }, not: [] },
  { code: 'weather-inside', severity: 'good', when: { day: { temperatureC: 20, humidityPct: 60, windMPerS: 2 } }, not: [{}, { day: { temperatureC: 20, humidityPct: 60, windMPerS: 4 } }, { day: { windMPerS: 2, sunLow: true } }, { day: { altitudeM: 100 } }] }
];

describe.each(ROWS.map((r, i) => [`${r.code} ${i}`, r] as const))('%s', (_, row) => {
  test('appears', () => {
    const f = of(row.when, row.code);
    if (!f) throw new Error(`only ${codes(result(row.when)).join(' ')}`);
    expect(f.severity).toBe(row.severity);
    if (row.parameters) expect(f.parameters).toMatchObject(row.parameters);
    if (row.path) expect(f.path).toBe(row.path);
    for (const s of f.sources) expect({ ...SOURCES, ...HEADLAND_SOURCES }).toHaveProperty(s);
  });
  row.not.forEach((parts, i) => test(`and not here ${i}`, () => {
    const f = of(parts, row.code);
    expect(f === undefined || f.severity !== row.severity).toBe(true);
  }));
});

/** Field that each finding leads to, none where it is about no single one, and the works that it rests on. Those of a strategy or of a day have the works of these. */
const LEADS: Readonly<Record<string, readonly [field: string | undefined, ...works: string[]]>> = {
  'skirt-above-top': ['canopy.skirtM'],
  'canopy-closes-alley': ['canopy.widthM'],
  'machine-wider-than-alley': ['rowSpacingM'],
  'tallest-below-mean': ['canopy.tallestTenthM'],
  'tallest-sets-top': ['canopy.tallestTenthM', 'lwk-nrw'],
  'looks-like-feet': ['canopy.heightM'],
  'profile-differs': ['canopy.profile'],
  'gaps-likely': ['canopy.filledFraction', 'canada-trv'],
  'no-nozzle-open': ['setting.nozzles'],
  'nozzle-in-canopy': ['rowSpacingM'],
  'nozzle-too-near': ['rowSpacingM', 'comite-citricos-2024'],
  'over-top-turn': ['setting.nozzles', 'duga-2015'],
  'under-skirt-turn': ['setting.nozzles', 'duga-2015'],
  'over-top-shut': ['setting.nozzles', 'lwk-nrw'],
  'under-skirt-shut': ['setting.nozzles', 'lwk-nrw'],
  'turn-gains': ['setting.nozzles', 'duga-2015'],
  'shut-in-leaf': ['setting.nozzles'],
  'well-aimed': [undefined, 'geometry'],
  'sides-differ': ['setting.nozzles', 'habit'],
  'nozzle-unknown': ['setting.nozzles'],
  'pressure-outside-machine': ['setting.pressureBar'],
  'pressure-outside-nozzle': ['setting.pressureBar'],
  'speed-outside-machine': ['setting.speedKmH'],
  'no-wanted-water': ['ownWaterLPerHa'],
  'volume-below-wanted': [undefined, 'ozkan-2021', 'texas-worksheet'],
  'volume-above-wanted': [undefined, 'ozkan-2021', 'texas-worksheet'],
  'volume-on-target': [undefined, 'ozkan-2021'],
  'little-water': ['strategy', 'habit'],
  'far-face-under-dosed': ['pattern', 'habit'],
  'early-rate': [undefined, 'rutgers-1998', 'sutton-unrath-1988'],
  'label-minimum-water-acts': [undefined, 'waac-concentration'],
  'label-maximum-water-acts': [undefined],
  'no-label': ['label'],
  'below-label-water': ['setting', 'waac-concentration'],
  'above-label-water': ['setting'],
  'too-concentrated': ['setting', 'waac-concentration'],
  'beyond-run-off': [undefined, 'furness-thompson'],
  'no-dose': ['strategy'],
  'label-maximum-acts': [undefined],
  'far-below-label': ['label.floor', 'sutton-unrath-1984'],
  'concentration-ignored': ['concentration'],
  'floor-acts': ['label.floor', 'sutton-unrath-1984'],
  'not-above-label': [undefined],
  'droplets-too-fine': ['label.finestClass'],
  'gear-unknown': ['setting.gear'],
  'air-short': ['setting.gear', 'landers-air', 'ucce-airblast'],
  'air-too-much': ['setting.gear', 'landers-air', 'ucce-airblast'],
  'air-matched': [undefined, 'landers-air', 'ucce-airblast'],
  'pto-outside-machine': ['setting.ptoRpm'],
  'no-weather': ['day'],
  'inversion-risk': ['day', 'grdc-10'],
  'weather-inside': ['day', 'bom-delta-t', 'waikato-plan']
};
test.each(Object.entries(LEADS))('%s leads to its field and names its works', (code, [field, ...works]) => {
  const row = ROWS.find((r) => r.code === code)!;
  const f = of(row.when, code)!;
  expect([f.path, f.sources]).toEqual([field, works]);
});
test('the works of a strategy are named with what it says', () => {
  const of = (parts: Parts, code: string) => result(parts).findings.find((f) => f.code === code)!;
  for (const code of ['label-dose-kept', 'dose-follows-canopy']) {
    const parts: Parts = { label: code === 'label-dose-kept' ? {} : { adaptation: 'required' } };
    expect(of(parts, code).sources, code).toEqual(['walklate-2003', 'sutton-unrath-1984']);
  }
  const day = result({ day: { windMPerS: 4, temperatureC: 26 } }).findings;
  expect(day.filter((f) => /above/.test(f.code)).map((f) => [f.code, f.path, f.sources])).toEqual([['temperature-above', 'day', ['tuebingen-2023']], ['wind-above', 'day', ['waikato-plan']]]);
});
test('shut in leaf is told where three quarters of its spray would meet it, of those that are shut', () => {
  const shutIn = (parts: Parts) => of(parts, 'shut-in-leaf')?.parameters['nozzles'];
  // With the allowance above the top a nozzle may count as in leaf though little of its spray is.
  const low: Parts = { canopy: { heightM: 2.2 }, machine: { nozzles: arcNozzles({ coneAngleDeg: 20 }) }, assumptions: { 'aim.overshoot': 1.5 } };
  const all = result({ ...low, setting: { nozzles: onlyOpen('L3', 'R3') } });
  const told = shutIn({ ...low, setting: { nozzles: onlyOpen('L3', 'R3') } }) as string[];
  const leafy = all.sprayer.nozzles.filter((n) => !n.open && n.would === 'in-leaf');
  const share = (id: string) => (all.sprayer.nozzles.find((n) => n.position.id === id)!.shares.inLeaf as { value: number }).value;
  expect(leafy.some((n) => share(n.position.id) < 0.75)).toBe(true);
  expect(told.every((id) => share(id) >= 0.75 && id !== 'L3' && id !== 'R3')).toBe(true);
});
test('sides differ by a tenth of the larger one', () => {
  // Eight against seven are an eighth less, ten against nine of one size a tenth.
  const differs = (parts: Parts) => of(parts, 'sides-differ') !== undefined;
  expect(differs({ setting: { nozzles: shut('L8') } })).toBe(true);
  const ten = (side: 'left' | 'right') => Array.from({ length: 10 }, (_, i) => ({ ...arcNozzles()[side === 'left' ? 3 : 11]!, id: `${side[0]}${i}` }));
  expect(differs({ machine: { nozzles: [...ten('left'), ...ten('right')] }, setting: { nozzles: shut('l9') } })).toBe(false);
});

describe('turns are told apart by their angle', () => {
  test('nozzles that want the same turn stand together, up and down never mixed', () => {
    const all = result({ canopy: { heightM: 2, skirtM: 0.9 }, machine: narrow }).findings.filter((f) => f.code.endsWith('-turn') || f.code === 'turn-gains');
    const turns = all.map((f) => (f.parameters.turn as { value: number }).value);
    expect(turns.some((t) => t > 0) && turns.some((t) => t < 0)).toBe(true);
    for (const f of all) {
      expect((f.parameters.after as { value: number }).value).toBeGreaterThanOrEqual(50);
      const nozzles = f.parameters.nozzles as string[];
      for (const id of nozzles) expect(nozzles).toContain(id.startsWith('L') ? id.replace('L', 'R') : id.replace('R', 'L'));
    }
  });
  test('what is lost is what goes over the top or under the skirt', () => {
    const lost = (parts: Parts, code: string) => (of(parts, code)!.parameters.lost as { value: number }).value;
    expect(lost({ canopy: { heightM: 1.8 }, machine: fixed, setting: { nozzles: onlyOpen('L8', 'R8') } }, 'over-top-shut')).toBeCloseTo(100, 6);
    // L1 points 15° down from 0.81 m: all of its 5° passes under a skirt of 0.9 m.
    expect(lost({ canopy: { skirtM: 0.9 }, machine: fixed, setting: { nozzles: onlyOpen('L1', 'R1') } }, 'under-skirt-shut')).toBeCloseTo(100, 6);
  });
});

test('a breach of a limit silences the milder line of the same kind', () => {
  const winds = result({ day: { windMPerS: 6 } }).findings.filter((f) => f.code === 'wind-above');
  expect(winds).toHaveLength(1);
  expect(winds[0]).toMatchObject({ severity: 'warn', sources: ['austria-chambers'] });
  expect(result({ day: { windMPerS: 4 } }).findings.filter((f) => f.code === 'wind-above')[0]).toMatchObject({ sources: ['waikato-plan'] });
});

test('no nozzle open stands alone among the findings of the aim', () => {
  const all = codes(result({ setting: { nozzles: onlyOpen(), pressureBar: 1 } }));
  expect(all).toContain('no-nozzle-open');
  for (const code of ['well-aimed', 'shut-in-leaf', 'pressure-outside-machine', 'volume-below-wanted', 'volume-on-target']) expect(all).not.toContain(code);
});

test('an unknown gear has no comparison of air', () => {
  const all = codes(result({ setting: { gear: 'none', ptoRpm: 1000 } }));
  expect(all.filter((c) => c.startsWith('air-') || c === 'pto-outside-machine')).toEqual([]);
});

test('worst first, in the order found within a kind', () => {
  const f = (code: string, s: Severity) => finding(code, s);
  expect(ranked([f('a', 'good'), f('b', 'note'), f('c', 'stop'), f('d', 'warn'), f('e', 'stop')]).map((x) => x.code)).toEqual(['c', 'e', 'd', 'b', 'a']);
  const order = result({ canopy: { skirtM: 3 }, setting: { gear: 'none' } }).findings.map((x) => SEVERITIES.indexOf(x.severity));
  expect(order).toEqual([...order].sort());
  expect(SEVERITIES).toEqual(['stop', 'warn', 'note', 'good']);
});

test('parameters', () => {
  expect(amount(given(3, 'm'))).toEqual({ value: 3, unit: 'm' });
  expect(amount(refused('x', 'y'))).toEqual({ value: NaN, unit: '1' });
  expect(share(0.25)).toEqual({ value: 25, unit: '%' });
  expect(finding('x', 'note')).toEqual({ code: 'x', severity: 'note', parameters: {}, sources: [] });
  expect(finding('x', 'note', {}, ['habit'], 'p')).toEqual({ code: 'x', severity: 'note', parameters: {}, sources: ['habit'], path: 'p' });
});
