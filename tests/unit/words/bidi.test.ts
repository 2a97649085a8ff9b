import { afterEach, describe, expect, test, vi } from 'vitest';
import { given, kept, ltr, unmarked } from '../../../src/words/bidi.ts';
import { fill } from '../../../src/words/fill.ts';
import { formatAmount, formatFigure, formatNumber, formatPlain, formatRange, formatShare, formatSpan } from '../../../src/words/format.ts';
import { translated } from '../../../src/words/translation.ts';

const [LRI, FSI, PDI] = ['\u2066', '\u2068', '\u2069'];
const page = (dir: string) => vi.stubGlobal('document', { documentElement: { dir } });
afterEach(() => vi.unstubAllGlobals());

/** A Hebrew word, and names that try to turn what stands after them. */
const HEBREW = 'בוסתן';
const OVERRIDE = 'bench\u202Egnp.exe';

describe('no page', () => {
  test('figures and names get no marks: files and terminals', () => {
    expect(formatRange(4, 6, 'm', 'metric')).toBe('4.00–6.00\u00a0m');
    expect([given(HEBREW), given(OVERRIDE), kept(HEBREW)]).toEqual([HEBREW, OVERRIDE, HEBREW]);
    expect(fill('At {rung}.', { rung: HEBREW }, 'metric')).toBe(`At ${HEBREW}.`);
  });
});

describe('a page that is read from the left', () => {
  test('figures stand as they are', () => {
    page('');
    expect(formatAmount(-3.2, 'bar', 'metric')).toBe('−3.2\u00a0bar');
    expect(ltr('10 × 0.5')).toBe('10 × 0.5');
  });

  test('a name in Latin letters stands as it is, one that is written from the right or turns is kept to itself', () => {
    page('');
    expect(given('Lower bench')).toBe('Lower bench');
    expect(given(HEBREW)).toBe(FSI + HEBREW + PDI);
    expect(given('سبتمبر 4')).toBe(`${FSI}سبتمبر 4${PDI}`);
    expect(given(OVERRIDE)).toBe(`${FSI}benchgnp.exe${PDI}`);
  });

  test('isolates that stand in a name are closed in it, and none closes what is around it', () => {
    page('');
    expect(given('a\u2067b')).toBe(`${FSI}a\u2067b${PDI}${PDI}`);
    expect(given('a\u2069b\u2069')).toBe(`${FSI}ab${PDI}`);
    expect(given('a\u2066b\u2069c')).toBe(`${FSI}a\u2066b\u2069c${PDI}`);
  });

  test('what is put into a sentence is kept to itself, by template and by function', () => {
    page('');
    expect(fill('Set for {rung}, 4 rows.', { rung: HEBREW }, 'metric')).toBe(`Set for ${FSI}${HEBREW}${PDI}, 4 rows.`);
    const say = translated({ of: (name: string, n: number) => `${name}: ${n}` }, undefined);
    expect(say.of(HEBREW, 4)).toBe(`${FSI}${HEBREW}${PDI}: 4`);
    expect(say.of('Bench', 4)).toBe('Bench: 4');
    expect(translated({ of: say.of }, { of: (name: string, n: number) => `${n} von ${name}` }).of(OVERRIDE, 4)).toBe(`4 von ${FSI}benchgnp.exe${PDI}`);
  });
});

describe('a page that is read from the right', () => {
  test.each([
    ['a sign', () => formatNumber(-3.2, 1), '−3.2'],
    ['a sign and a unit', () => formatAmount(-3.2, 'bar', 'metric'), '−3.2\u00a0bar'],
    ['an angle', () => formatAmount(12, 'deg', 'metric'), '12.0°'],
    ['an interval', () => formatSpan(410, 460, 'L/ha', 'metric'), '410–460'],
    ['a share', () => formatShare(0.94), '94\u00a0%'],
    ['a power', () => formatNumber(1.26e15, 0), '1.26e+15'],
    ['a sum', () => ltr('10 × 0.5'), '10 × 0.5']
  ])('%s is read from the left', (_, say, text) => {
    page('rtl');
    expect(say()).toBe(LRI + text + PDI);
  });

  test('a range holds its two figures', () => {
    page('rtl');
    expect(unmarked(formatRange(-1, 6, 'm', 'metric'))).toBe('−1.00–6.00\u00a0m');
    expect(formatRange(4, 6, 'm', 'metric').startsWith(LRI)).toBe(true);
  });

  test('a number alone keeps its order by itself, and a field to type in has no marks', () => {
    page('rtl');
    expect(formatFigure(8600, 'm3/ha', 'metric')).toBe('8\u202f600');
    expect(formatPlain(-2.5, 'degC', 'metric')).toBe('-2.5');
    expect([formatNumber(NaN, 1), formatAmount(NaN, 'bar', 'metric'), formatShare(NaN)]).toEqual(['–', '–', '–']);
  });

  test('names in Latin letters are kept to themselves; what may be a code is not touched', () => {
    page('rtl');
    expect(given('Arc, 8 + 8')).toBe(`${FSI}Arc, 8 + 8${PDI}`);
    expect(kept('metric')).toBe('metric');
    expect(unmarked(given('Arc, 8 + 8'))).toBe('Arc, 8 + 8');
  });
});
