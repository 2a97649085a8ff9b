import { describe, expect, it } from 'vitest';
import { filledExpression, prettyExpression, prettySymbol } from '#words/index.ts';

const seen = (text: string): string => text.replaceAll('\u202f', '_');

describe('prettyExpression', () => {
  it.each([
    ['600 * Q / (v * B)', '600·Q / (v·B)'],
    ['P1 * (Q2 / Q1) ^ 2', 'P₁·(Q₂ / Q₁)²'],
    ['(N / N1) ^ 3', '(N / N₁)³'],
    ['q1 * sqrt(P / P1) / sqrt(SG)', 'q₁·√(P / P₁) / √(SG)'],
    ['H - Hs', 'H − Hs'],
    ['min(max(I0, F), Imax)', 'min(max(I₀, F), Imax)'],
    ['10000 * H * W * f / R', '10_000·H·W·f / R'],
    ['max(2 * (b - t) / a, -1)', 'max(2·(b − t) / a, −1)'],
    ['asin(u) / 3.141592653589793', 'asin(u) / π'],
    ['log(q2 / q1)', 'ln(q₂ / q₁)'],
    ['((293 - 0.0065 * z) / 293) ^ 5.26', '((293 − 0.0065·z) / 293)^5.26']
  ])('writes %s as %s', (plain, pretty) => expect(seen(prettyExpression(plain))).toBe(pretty));
});

it.each([['q1', 'q₁'], ['TRV0', 'TRV₀'], ['V100', 'V₁₀₀'], ['TRVg', 'TRVg'], ['ΔT', 'ΔT']])('writes the symbol %s as %s', (s, pretty) => expect(prettySymbol(s)).toBe(pretty));

describe('filledExpression', () => {
  it('puts values in place of symbols', () => expect(filledExpression('600 * Q / (v * B)', { Q: '14.2', v: '5', B: '4' })).toBe('600 × 14.2 / (5 × 4)'));
  it('keeps negative values in brackets', () => expect(filledExpression('b - t', { b: '71.5', t: '−15' })).toBe('71.5 − (−15)'));
  it('leaves symbols that have no value', () => expect(filledExpression('es(Tw) - p', { p: '101.3' })).toBe('eₛ(Tw) − 101.3'));
  it('takes no symbol for another that begins alike', () => expect(filledExpression('q1 + q', { q: '1', q1: '2' })).toBe('2 + 1'));
});
