import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SEVERITIES } from '#core/advice/finding.ts';
import { TICK_ITEMS } from '#core/check/types.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import '../../support/engine.ts';
import type { SourceId } from '#core/sources/bibliography.ts';
import { ALL_SOURCES } from '#core/sources/cite.ts';
import { PHOTO_ASSUMPTIONS } from '#core/canopy/photo/assumptions.ts';
import { SEASON_ASSUMPTIONS } from '#core/season/assumptions.ts';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import { LIMITS } from '#core/weather/weather.ts';
import { CERTAINTIES } from '#core/working/answer.ts';
import { formulas } from '#core/working/formula.ts';
import { FINDING_CODES, REFUSAL_CODES } from '#words/codes.ts';
import { certaintyWord, formulaTitle, language, severityWord, sourceLine, symbolName } from '#words/index.ts';

/** The catalogue against the engine's own text: a code that is added there without words here fails by name. */
const root = new URL('../../../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');
/** The engine, and the readers of pictures and of laser files, which refuse as it does. */
const sources = ['src/core', 'src/job/laser', 'src/job/photo'].flatMap((folder) => readdirSync(new URL(`${folder}/`, root), { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith('.ts')).map((f) => `${folder}/${f}`));
const text = sources.map(read).join('\n');
const codesIn = (pattern: RegExp, where = text): string[] => [...new Set([...where.matchAll(pattern)].map((m) => m[1]!))];

const words = language();
const same = (found: Iterable<string>, told: Iterable<string>) => expect([...told].sort()).toEqual([...found].sort());

describe('every code of the engine has words, and no words are left over:', () => {
  it('findings', () => {
    const plain = codesIn(/finding\(\s*'([a-z-]+)'/g);
    const water = codesIn(/finding\(off > 0 \? '([a-z-]+)'/g).concat(codesIn(/finding\(off > 0 \? '[a-z-]+' : '([a-z-]+)'/g));
    const missed = ['over-top', 'under-skirt'].flatMap((miss) => codesIn(/finding\(`\$\{miss\}-([a-z]+)`/g).map((end) => `${miss}-${end}`));
    const weather = LIMITS.flatMap((l) => [...(l.least === undefined ? [] : [`${l.of}-below`]), ...(l.most === undefined ? [] : [`${l.of}-above`])]);
    expect(water.length).toBe(2);
    expect(missed.length).toBe(4);
    const faults = TICK_ITEMS.map((item) => `check-fault-${item}`);
    const all = new Set([...plain, ...water, ...missed, ...weather, ...faults]);
    for (const code of FINDING_CODES) expect(all).toContain(code);
    same(all, Object.keys(words.findings));
  });
  it('refusals', () => {
    const own = codesIn(/(?:refuse|stop)\(\s*'(own-[a-z-]+)'/g, read('src/core/dose/own/parse.ts'));
    const near = codesIn(/unknown\('(own-[a-z-]+)'/g, read('src/core/dose/own/parse.ts')).flatMap((code) => [code, `${code}-near`]);
    const all = [...codesIn(/refused\(\s*'([a-z-]+)'/g), ...own, ...near];
    for (const code of REFUSAL_CODES) expect(all).toContain(code);
    same(all, Object.keys(words.refusals));
  });
  it('differences', () => {
    const file = read('src/core/advice/difference.ts');
    same([...codesIn(/line\('([a-z-]+)'/g, file), ...codesIn(/code: '([a-z-]+)'/g, file)], Object.keys(words.differences));
  });
  it('remarks on options', () => same(codesIn(/remark\('([a-z-]+)'/g), Object.keys(words.remarks)));
  it('acts', () => {
    const pushed = [...text.matchAll(/acts\.push\((.*)\);/g)].flatMap((m) => codesIn(/'([a-z-]+)'/g, m[1]!));
    same(new Set([...pushed, 'own-water']), Object.keys(words.acts));
  });
  it('assumptions', () => same([...ASSUMPTIONS.keys(), ...[...SPRAY_ASSUMPTIONS, ...SEASON_ASSUMPTIONS, ...PHOTO_ASSUMPTIONS].map((a) => a.id)], Object.keys(words.assumptions)));
  it('strategies', () => same(STRATEGIES.keys(), Object.keys(words.strategies)));
  it('validity', () => same(new Set([...[...STRATEGIES.values()].flatMap((s) => s.validity), 'own-formula']), Object.keys(words.validity)));
  it('certainties', () => same(CERTAINTIES, Object.keys(words.certainties)));
  it('severities', () => same(SEVERITIES, Object.keys(words.severities)));
  it('fields that the engine names', () => {
    const paths = codesIn(/path: '([\w.]+)'/g).filter((p) => !p.endsWith('.'));
    for (const p of paths) if (p !== 'setting' && p !== 'pattern.widthM') expect(words.fields, p).toHaveProperty([p]);
  });
});

it('every formula has a title and every symbol of it a name', () => {
  expect(formulas().size).toBeGreaterThan(60);
  for (const f of formulas().values()) {
    expect(formulaTitle(f.id), f.id).not.toBe(f.id);
    for (const symbol of [f.symbol, ...Object.keys(f.inputs)]) expect(symbolName(symbol, f.id), `${f.id}.${symbol}`).not.toBe(symbol);
  }
});

it('a symbol that means several things is told apart by its formula', () => {
  expect(symbolName('k', 'us-row-volume-water')).toBe('density factor');
  expect(symbolName('k', 'air-needed')).toBe('air carried along');
  expect(symbolName('c', 'share-between-flat-fan')).toBe('lower direction');
  expect(symbolName('c', 'label-percent-of-water-kg')).toBe('label percentage');
  expect(symbolName('L7', 'total-flow')).toBe('nozzle L7');
});

it('an id that is no code stands for itself, even one of the language’s own machinery', () => {
  expect(formulaTitle('constructor')).toBe('constructor');
  expect(symbolName('__proto__')).toBe('__proto__');
});

it('the verdicts are the four words of the trade', () => {
  expect(['in-leaf', 'over-top', 'under-skirt', 'shut'].map((v) => words.verdicts[v as 'shut'])).toEqual(['in leaf', 'over the top', 'under the skirt', 'shut']);
});

it('cautions end at the label', () => {
  for (const code of ['delta-t-below', 'delta-t-above', 'wind-below', 'wind-above', 'temperature-above', 'humidity-below', 'inversion-risk', 'weather-inside', 'early-rate', 'far-face-under-dosed', 'label-dose-kept', 'dose-follows-canopy', 'below-label-water', 'above-label-water', 'too-concentrated'] as const)
    expect(words.findings[code], code).toContain('label');
  for (const code of ['air-short', 'air-too-much', 'air-matched'] as const) expect(words.findings[code]).toContain('ribbon');
});

it('says memory where a value is from memory', () => {
  expect(certaintyWord('memory')).toBe('from memory, check it');
  expect(severityWord('stop')).toBe('Stop');
});

it('a source is one line with who, what and how it was read', () => {
  expect(sourceLine('fao-56')).toBe('Allen, R. G.; Pereira, L. S.; Raes, D.; Smith, M. (1998): Crop evapotranspiration, FAO Irrigation and Drainage Paper 56 [quoted from memory]');
  expect(sourceLine('furness-1998')).toContain('doi:10.1016/S0261-2194(98)00064-7');
  for (const id of Object.keys(ALL_SOURCES) as SourceId[]) expect(sourceLine(id)).not.toMatch(/undefined|, ,|,$|\n/);
});
