import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseNumber } from '#job/csv/number.ts';

const read = (t: string, comma = false): number => parseNumber(`x${t}y`, 1, 1 + t.length, comma);

it('gives the very double that the language gives, for any decimal writing of it', () => {
  const writing = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
    fc.tuple(fc.constantFrom('', '-', '+'), fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: 1, maxLength: 18 }), fc.string({ unit: fc.constantFrom(...'0123456789'), maxLength: 18 })).map(([s, a, b]) => `${s}${a}.${b}`),
    fc.integer().map(String)
  );
  fc.assert(fc.property(writing, (t) => void expect(read(t)).toBe(Number(t))), { numRuns: 5000 });
});
it('reads a decimal comma where it may stand', () => {
  fc.assert(fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => void expect(read(String(x).replace('.', ','), true)).toBe(Number(String(x)))));
  expect(read('3,5')).toBeNaN();
  expect(read('1.234,5', true)).toBeNaN();
  expect(read('1,234,5', true)).toBeNaN();
});
it.each(['', '.', '-', '+', '3m', '3 5', '0x10', '1_000', '1e', 'e5', 'Infinity', 'NaN', '--3', '3..5', '３', '1e99999'])('%j is no number', (t) => expect(read(t)).toBeNaN());
it('an overflow is infinite', () => expect(read('1e999')).toBe(Infinity));
