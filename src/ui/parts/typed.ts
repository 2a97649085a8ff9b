import { language } from '#words/language.ts';

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)$/;
/** What is a thousand and some to one reader, and one and some thousandths to another. */
const UNCLEAR = { '.': /^[+-]?[1-9]\d{0,2},\d{3}$/, ',': /^[+-]?[1-9]\d{0,2}\.\d{3}$/ } as const;

/**
 * A number as people type it: decimal comma and point both count, spaces are grouping, a minus may be the printed one. NaN where it is none or
 * empty, and where the mark is not the language's own and three digits follow it: 1,234 in English may be 1234.
 */
export function numberTyped(text: string): number {
  const bare = text.replace(/[\s\u00a0\u202f]/g, '').replace('−', '-');
  if (UNCLEAR[language().decimalMark === ',' ? ',' : '.'].test(bare)) return NaN;
  const plain = bare.replace(',', '.');
  return NUMBER.test(plain) ? Number(plain) : NaN;
}

/** Binary arithmetic leaves 3.3000000000000003 of a step: twelve digits are more than anyone measures. */
export const tidy = (value: number): number => Number(value.toPrecision(12));
