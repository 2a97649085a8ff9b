import { describe, expect, it } from 'vitest';
import { differences } from '#core/advice/difference.ts';
import { finding } from '#core/advice/finding.ts';
import { refused } from '#core/working/answer.ts';
import { FINDING_CODES, type FindingCode } from '#words/codes.ts';
import { differenceLine, findingSentence, language, patternPhrase, refusalSentence } from '#words/index.ts';
import { canopy, onlyOpen, result, setting, shut, table, type Parts } from '../../support/sample.ts';

const seen = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

/** For each code a block in which the rules find it. */
const SCENES: Readonly<Record<FindingCode, Parts>> = {
  'skirt-above-top': { canopy: { skirtM: 3.2 } },
  'canopy-closes-alley': { canopy: { widthM: 4.2 } },
  'machine-wider-than-alley': { canopy: { widthM: 3 } },
  'tallest-below-mean': { canopy: { tallestTenthM: 2.5 } },
  'tallest-sets-top': { canopy: { tallestTenthM: 3.4 } },
  'looks-like-feet': { canopy: { heightM: 10 }, block: { rowSpacingM: 13 } },
  'profile-differs': { canopy: { profile: [{ heightM: 1, widthM: 2 }, { heightM: 2, widthM: 1 }] } },
  'gaps-likely': { block: { treeSpacingM: 3 } },
  'measure-this-next': { canopy: { errors: { heightSeM: 0.1, widthSeM: 0.1 } } },
  'no-nozzle-open': { setting: { nozzles: onlyOpen() } },
  'nozzle-in-canopy': { canopy: { widthM: 3.4 } },
  'nozzle-too-near': { canopy: { widthM: 2.6 } },
  'over-top-turn': {},
  'over-top-shut': {},
  'under-skirt-turn': { canopy: { skirtM: 1.15 } },
  'under-skirt-shut': { canopy: { skirtM: 2 } },
  'turn-gains': {},
  'shut-in-leaf': { setting: { nozzles: shut('L3', 'R3') } },
  'well-aimed': { setting: { nozzles: shut('L1', 'L6', 'L7', 'L8', 'R1', 'R6', 'R7', 'R8') } },
  'sides-differ': { setting: { nozzles: shut('L3', 'L4') } },
  'nozzle-unknown': { setting: { nozzles: [{ position: 'L3', size: 'none' }] } },
  'pressure-outside-machine': { setting: { pressureBar: 19 } },
  'pressure-outside-nozzle': { tables: [table(1, { pressureMaxBar: 9 })], setting: { nozzles: [{ position: 'L3', table: 'own', size: 'x' }] } },
  'speed-outside-machine': { setting: { speedKmH: 9 } },
  'no-wanted-water': { block: { strategy: 'ground-area' } },
  'volume-above-wanted': { block: { ownWaterLPerHa: 100 } },
  'volume-below-wanted': {},
  'volume-on-target': { block: { ownWaterLPerHa: 438 } },
  'little-water': { block: { ownWaterLPerHa: 49 } },
  'far-face-under-dosed': { block: { pattern: { kind: 'alternate-alleys' } } },
  'early-rate': { block: { strategy: 'us-row-volume' }, rung: { bbch: 55 } },
  'strategy-extrapolated': { block: { strategy: 'leaf-wall' }, canopy: { heightM: 1.5 } },
  'label-minimum-water-acts': { label: { minWaterLPerHa: 900 } },
  'label-maximum-water-acts': { label: { maxWaterLPerHa: 500 } },
  'no-label': {},
  'below-label-water': { label: { minWaterLPerHa: 900 } },
  'above-label-water': { label: { maxWaterLPerHa: 300 } },
  'too-concentrated': { label: { maxConcentration: 1.2 } },
  'beyond-run-off': { label: {}, canopy: { heightM: 1.2, widthM: 0.5 } },
  'no-dose': { label: { basis: 'per-100-l-dilute' }, block: { strategy: 'ground-area' } },
  'label-maximum-acts': { label: { basis: 'per-leaf-wall', rate: 3, maxPerHa: 2 } },
  'far-below-label': { label: { adaptation: 'downward' }, canopy: { heightM: 2 } },
  'concentration-ignored': { block: { strategy: 'crown-height', concentration: 3 } },
  'floor-acts': { label: { adaptation: 'downward', floor: 0.9 } },
  'not-above-label': { label: { adaptation: 'downward' }, canopy: { heightM: 5, widthM: 2 } },
  'dose-follows-canopy': { label: { adaptation: 'downward' } },
  'label-dose-kept': { label: {} },
  'droplets-too-fine': {
    label: { finestClass: 'M' },
    tables: [table(1, { sizes: [{ id: 'x', flowLPerMin: 1, droplets: [{ fromBar: 2, class: 'VF' }] }] })],
    setting: { nozzles: [{ position: 'L3', table: 'own', size: 'x' }] }
  },
  'gear-unknown': { setting: { gear: 'fifth' } },
  'air-short': { setting: { speedKmH: 8, gear: 'low' } },
  'air-too-much': {},
  'air-matched': { setting: { gear: 'low' } },
  'pto-outside-machine': { setting: { ptoRpm: 600 } },
  'no-weather': {},
  'delta-t-below': { day: { temperatureC: 12, humidityPct: 95 } },
  'delta-t-above': { day: { temperatureC: 30, humidityPct: 20 } },
  'wind-below': { day: { windMPerS: 0.5 } },
  'wind-above': { day: { windMPerS: 4 } },
  'temperature-above': { day: { temperatureC: 28 } },
  'humidity-below': { day: { humidityPct: 30 } },
  'inversion-risk': { day: { sunLow: true } },
  'weather-inside': { day: { temperatureC: 20, humidityPct: 60, windMPerS: 2 } }
};

const found = (code: FindingCode) => {
  const f = result(SCENES[code]).findings.find((each) => each.code === code);
  if (!f) throw new Error(`${code} was not found in its scene`);
  return f;
};

describe('findingSentence', () => {
  it.each(FINDING_CODES)('says %s in one whole line, in both systems of units', (code) => {
    const f = found(code);
    for (const system of ['metric', 'us'] as const) {
      const sentence = findingSentence(f, system);
      expect(sentence).toMatch(/^[\p{Lu}\d“].*[.?]$/u);
      expect(sentence).not.toMatch(/[{}#|\n]|undefined|NaN|(^| )–( |,|\.|$)/);
      expect(sentence.length).toBeLessThan(200);
    }
  });

  it.each(FINDING_CODES)('%s asks for no value that the rules do not give', (code) => {
    const places = [...language().findings[code].matchAll(/\{(\w+)/g)].map((m) => m[1]!);
    expect(Object.keys(found(code).parameters)).toEqual(expect.arrayContaining(places));
  });

  it('names nozzles, what is lost, and what to do', () => {
    expect(seen(findingSentence(found('over-top-turn'), 'metric'))).toBe('L7 and R7 send 73 % over the top. Turn them 15° down: 66 % then meets leaf.');
    expect(seen(findingSentence(found('nozzle-unknown'), 'metric'))).toBe('L3: the size is not in the nozzle table, so the flow is unknown. Choose one that is.');
  });

  it('speaks of one nozzle as of one', () => {
    const one = finding('over-top-shut', 'warn', { nozzles: ['L8'], lost: { value: 100, unit: '%' } });
    expect(seen(findingSentence(one, 'metric'))).toBe('L8 sends 100 % over the top. Shut it, then set the litres per hectare again.');
  });

  it('gives amounts in the units of the reader', () => {
    const f = finding('volume-below-wanted', 'warn', { volume: { value: 438, unit: 'L/ha' }, wanted: { value: 750, unit: 'L/ha' }, off: { value: 41.6, unit: '%' } });
    expect(seen(findingSentence(f, 'metric'))).toContain('438 L/ha is 42 % below the wanted 750 L/ha');
    expect(seen(findingSentence(f, 'us'))).toContain('46.8 gal/ac is 42 % below the wanted 80.2 gal/ac');
  });

  it('gives the code where it knows no words', () => expect(findingSentence(finding('brand-new', 'note'), 'metric')).toBe('brand-new'));
});

describe('refusalSentence', () => {
  const out = (least: number, most: number) => refused('input-out-of-range', 'x', { formula: 'application-volume', symbol: 'v', value: -2, least, most, unit: 'km/h' });
  it('names the value and what it must be', () => {
    expect(seen(refusalSentence(out(Number.MIN_VALUE, Number.MAX_VALUE), 'metric'))).toBe('Forward speed is −2.0 km/h; it must be above zero.');
    expect(seen(refusalSentence(out(0, Number.MAX_VALUE), 'metric'))).toBe('Forward speed is −2.0 km/h; it must be zero or more.');
    expect(seen(refusalSentence(out(1, 8), 'us'))).toBe('Forward speed is −1.2 mph; it must be 0.6 mph to 5.0 mph.');
    expect(seen(refusalSentence(out(-Infinity, Infinity), 'metric'))).toContain('a finite number');
  });
  it('fills in names', () => expect(refusalSentence(refused('unknown-nozzle', 'm', { table: 'own', size: '9' }), 'metric')).toBe('Nozzle table “own” has no size “9”.'));
});

describe('differenceLine', () => {
  it('tells two stages apart, one line each', () => {
    const spring = result({ canopy: { heightM: 2.5, widthM: 0.8 }, setting: { pressureBar: 8 } });
    const summer = result();
    const lines = differences(spring, summer).map((d) => seen(differenceLine(d, 'metric')));
    expect(lines).toContain('Tree-row volume 4 000 m³/ha → 7 500 m³/ha, 88 % more.');
    expect(lines).toContain('Pressure 8.0 bar → 10.0 bar.');
    for (const l of lines) expect(l).not.toMatch(/[{}]|–$|undefined/);
  });
  it('leaves out a percentage that says nothing', () => {
    const line = (from: number, change?: number) =>
      seen(differenceLine({ code: 'water', parameters: { from: { value: from, unit: 'L/ha' }, to: { value: 500, unit: 'L/ha' }, ...(change === undefined ? {} : { change: { value: change, unit: '%' } }), direction: 'more' } }, 'metric'));
    expect(line(0)).toBe('Wanted water 0 L/ha → 500 L/ha.');
    expect(line(10, 4900)).toBe('Wanted water 10 L/ha → 500 L/ha.');
    expect(line(400, 25)).toBe('Wanted water 400 L/ha → 500 L/ha, 25 % more.');
  });
});

it('patternPhrase tells how the alleys are driven', () => {
  expect(patternPhrase({ kind: 'one-side-both-faces', side: 'left' }, 'metric')).toBe('every alley twice, left side on, both faces in the end');
  expect(seen(patternPhrase({ kind: 'swath', widthM: 3.048 }, 'us'))).toBe('a swath of 10.0 ft per pass');
  expect(patternPhrase({ kind: 'whole-rows', rows: 2 }, 'metric')).toBe('2 whole rows per pass');
});

it('the sample is an ordinary block', () => expect([canopy().heightM, setting().speedKmH]).toEqual([3, 6]));
