import { afterEach, describe, expect, it } from 'vitest';
import { language, speak } from '#words/language.ts';
import { numberTyped } from '#ui/parts/typed.ts';

const english = language();
afterEach(() => speak(english));
const inGerman = () => speak({ ...english, decimalMark: ',' });

describe('a number that is typed', () => {
  it.each([['3.2', 3.2], ['3,2', 3.2], [' 1 234.5 ', 1234.5], ['1\u202f234', 1234], ['-0.25', -0.25], ['−0,25', -0.25], ['.5', 0.5], ['5.', 5], ['0,125', 0.125], ['1.234', 1.234], ['12,34', 12.34], ['1234,567', 1234.567]])('%s is %f', (text, value) => expect(numberTyped(text)).toBe(value));
  it.each(['', ' ', 'x', '0x10', '1e3', '0b1', 'Infinity', 'NaN', '1,2,3', '1_000', '٣', '--1', '+-1'])('%j is none', (text) => expect(numberTyped(text)).toBeNaN());
  it('is refused where it may be a thousand times another: the mark is not the language’s own and three digits follow', () => {
    expect(numberTyped('1,234')).toBeNaN();
    expect(numberTyped('-12,345')).toBeNaN();
    inGerman();
    expect(numberTyped('1.234')).toBeNaN();
    expect(numberTyped('1,234')).toBe(1.234);
    expect(numberTyped('1.25')).toBe(1.25);
    expect(numberTyped('0.125')).toBe(0.125);
  });
});
