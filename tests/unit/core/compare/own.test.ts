import fc from 'fast-check';
import { create, all } from 'mathjs';
import { describe, expect, it, test } from 'vitest';
import { toSql } from '#cli/sql/expression.ts';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { OWN_NAMES } from '#core/dose/own/names.ts';
import { compileOwn } from '#core/dose/own/own.ts';
import { parseOwn } from '#core/dose/own/parse.ts';
import type { Strategy } from '#core/dose/strategy.ts';
import type { Formula } from '#core/working/answer.ts';
import '#words/strategies/join.ts';
import { refusalSentence, workingLines } from '#words/index.ts';
import { document, refusal, result } from '../../../support/sample.ts';

/** A parser of arithmetic that is not the one under test. */
const math = create(all!, { predictable: true });

const index = (text: string): Formula => {
  const s = compileOwn({ id: 't', name: 'Test', index: text });
  if ('kind' in s) throw new Error(`${s.code} ${JSON.stringify(s.parameters)}`);
  return s.index;
};
const NAMES = Object.keys(OWN_NAMES);
const VALUES: Record<string, number> = Object.fromEntries(NAMES.map((n, i) => [n, 0.7 + 0.31 * i]));
/** mathjs has `log` as we have it; e, i and pi are no names of ours. */
const oracle = (text: string): number => Number(math.evaluate(text, { ...VALUES }));

/** Arithmetic in random spelling: brackets and blanks more than needed. */
const { text: formulaText } = fc.letrec<{ text: string }>((tie) => ({
  text: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constantFrom(...NAMES),
    fc.double({ min: 0.01, max: 50, noNaN: true }).map((v) => v.toFixed(3)),
    fc.tuple(tie('text'), fc.constantFrom('+', '-', '*', '/', ' + ', ' - ', ' * ', ' / '), tie('text')).map((t) => t.join('')),
    fc.tuple(fc.constantFrom('(', '( '), tie('text'), fc.constantFrom(')', ' )')).map((t) => t.join('')),
    fc.tuple(tie('text'), fc.constantFrom('^2', ' ^ 0.5', '^-1', '^(1/3)')).map(([a, b]) => `(${a})${b}`),
    fc.tuple(fc.constantFrom(...NAMES), fc.constantFrom('^2^0.5', '^-2^2')).map((t) => t.join('')),
    tie('text').map((t) => `-${t}`),
    fc.tuple(fc.constantFrom('min', 'max'), tie('text'), tie('text')).map(([f, a, b]) => `${f}(${a}, ${b})`),
    fc.tuple(fc.constantFrom('sqrt', 'exp', 'log', 'abs'), tie('text')).map(([f, a]) => `${f}(${a})`)
  )
}));

describe('a formula of the user’s own', () => {
  test('computes what another parser makes of it, and of how it is printed', () => {
    let compared = 0;
    fc.assert(
      fc.property(formulaText.filter((t) => t.length <= 300), (text) => {
        const tree = parseOwn(text, 'x');
        if (tree.kind === 'refused') return;
        const f = index(text);
        const ours = f.compute(VALUES);
        if (Number.isNaN(ours)) return;
        const [theirs, printed] = [oracle(text), oracle(f.expression)];
        compared++;
        const near = (a: number, b: number) => expect(Math.abs(a - b), text).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(a)));
        near(ours, theirs);
        near(ours, printed);
      }),
      { seed: 5, numRuns: 2000 }
    );
    // Most formulas of the sample have a value at or above 0.
    expect(compared).toBeGreaterThan(500);
  });
  test('is printed so that it is read again as the same, here and as SQL', () => {
    fc.assert(
      fc.property(formulaText.filter((t) => t.length <= 300), (text) => {
        const tree = parseOwn(text, 'x');
        if (tree.kind === 'refused') return;
        const { expression } = index(text);
        expect(parseOwn(expression, 'x')).toEqual(tree);
        if (!expression.includes('abs')) expect(toSql(expression, (s) => s)).not.toBe('');
      }),
      { seed: 6, numRuns: 500 }
    );
  });
  test('any text at all is a formula or refused, never thrown at', () => {
    const words = fc.array(fc.constantFrom('(', ')', ',', '.', '+', '-', '*', '/', '^', ' ', '1', '2.5', 'TRVc', 'h', 'sqrt', 'min(', '__proto__', 'constructor', '=', '[', '"', '\\', ';', '?', '🌳'), { maxLength: 30 }).map((w) => w.join(''));
    fc.assert(
      fc.property(fc.oneof(fc.string({ maxLength: 400 }), words), (text) => {
        const s = compileOwn({ id: 't', name: 'T', index: text });
        if ('kind' in s) {
          const sentence = refusalSentence(s, 'metric');
          expect(sentence).not.toBe(s.code);
          expect(sentence).not.toMatch(/\{\w+\}|undefined/);
        } else expect(typeof s.index.compute(VALUES)).toBe('number');
      }),
      { seed: 7, numRuns: 3000 }
    );
  });
  it.each<[string, string]>([
    ['', 'own-empty'],
    ['   ', 'own-empty'],
    ['1'.repeat(301), 'own-too-long'],
    ['-'.repeat(60) + 'h', 'own-too-deep'],
    ['h = 3', 'own-character'],
    ['"h"', 'own-character'],
    ['h ? 1 : 2', 'own-character'],
    ['h[0]', 'own-character'],
    ['h.W', 'own-member'],
    ['h W', 'own-several'],
    ['2 h', 'own-several'],
    ['1, 2', 'own-several'],
    ['()', 'own-several'],
    ['h +', 'own-syntax'],
    ['* h', 'own-syntax'],
    ['(h', 'own-syntax'],
    ['h)', 'own-syntax'],
    ['2h', 'own-syntax'],
    ['min(1,,2)', 'own-syntax'],
    ['1e-9', 'own-number'],
    ['9e99', 'own-number'],
    ['TRV', 'own-unknown-name-near'],
    ['this', 'own-not-arithmetic'],
    ['constructor', 'own-unknown-name'],
    ['__proto__', 'own-unknown-name'],
    ['sgrt(h)', 'own-unknown-function-near'],
    ['toString(1)', 'own-unknown-function'],
    ['h(2)', 'own-unknown-function'],
    ['(h)(2)', 'own-unknown-function'],
    ['min(h)', 'own-arguments'],
    ['sqrt(h, 2)', 'own-arguments']
  ])('%j is refused as %s', (text, code) => {
    const s = compileOwn({ id: 't', name: 'T', index: text });
    expect('kind' in s ? [s.code, s.path] : s).toEqual([code, 'ownStrategies.t.index']);
  });
  it('offers the names that begin alike', () => {
    const s = compileOwn({ id: 't', name: 'T', index: 'trv / 2' });
    expect('kind' in s && s.parameters.nearest).toBe('TRVg, TRVc, TRVs');
    expect('kind' in s && refusalSentence(s, 'metric')).toContain('Did you mean TRVg, TRVc, TRVs?');
  });
  it('takes signs as they are printed here', () => {
    expect(index('TRVc÷10000 − 0.5·h×2').expression).toBe('TRVc / 10000 - 0.5 * h * 2');
  });
});

describe('what a formula of the user’s own gives', () => {
  const rowOf = (text: string, water?: string) => {
    const d = { ...document({ label: { adaptation: 'required' } }), ownStrategies: [{ id: 'mine', name: 'Mine', index: text, ...(water ? { water } : {}) }] };
    return strategyRows(d, result({ label: { adaptation: 'required' } })).find((r) => r.own)!;
  };
  it.each(['1 / (h - h)', '1 / (1 / (h - h))', '(0 / (h - h)) ^ 0', 'log(h - 10)', 'sqrt(h - 10)', 'h - 10', 'exp(1000 * h)', 'min(1, 1 / (h - h))', '1 / exp(1000 * h)'])('%s is refused by name, and no dose is made of it', (text) => {
    const row = rowOf(text);
    expect(refusal(row.index)).toBe('own-no-figure @ ownStrategies.mine.index');
    expect(row.dose?.kind).toBe('refused');
    expect(row.intervals.index).toBeNull();
  });
  it('is a row like the others: index, water, dose, working, name', () => {
    const row = rowOf('0.4 + 0.6 * TRVc / 10000', '0.1 * TRVc');
    expect([row.id, row.strategy.name, row.index.kind, row.water?.kind, row.dose?.kind]).toEqual(['own.mine', 'Mine', 'figure', 'figure', 'figure']);
    const lines = workingLines(row.index, 'metric');
    expect([lines.title, lines.symbol, lines.formula]).toEqual(['Dose index by a formula of your own', 'I', 'I = 0.4 + 0.6·TRVc / 10\u202f000']);
    expect(row.dilute).toBe(row.water);
    expect(row.strategy.validity).toEqual(['own-formula']);
  });
  it('tells the conventions that its names stand for', () => {
    const s = (text: string) => compileOwn({ id: 't', name: 'T', index: text }) as Strategy;
    expect([s('TRVg').descriptor, s('TRVg').height, s('TRVg').width]).toEqual(['TRVg', 'ground', 'greatest']);
    expect([s('TRVs').descriptor, s('TRVs').height, s('TRVs').width]).toEqual(['TRVs', 'crown', 'outline']);
    expect([s('RL').descriptor, s('RL').height, s('RL').width]).toEqual(['RL', 'none', 'none']);
    expect([s('TRVc / LWA').descriptor, s('1').descriptor]).toEqual([null, null]);
  });
});
