import type { RowCode } from './header.ts';
import type { Parameters } from '../problem.ts';

export const LONGEST_NAME = 200;
/** What a decoder puts where bytes are no UTF-8. */
const REPLACEMENT = '\uFFFD';
/** What a terminal or a page would obey: control characters save line breaks, and those that turn the direction of what follows. */
const OBEYED = /[\u0000-\u0009\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\uFFFD]/;

/** What is wrong with the name of a canopy; null where nothing is. */
export function nameFault(name: string): readonly [code: RowCode, parameters: Parameters] | null {
  if (name.length > LONGEST_NAME) return ['name-too-long', { length: name.length, most: LONGEST_NAME }];
  if (!OBEYED.test(name)) return null;
  return [name.includes(REPLACEMENT) ? 'not-utf8' : 'unfit-characters', {}];
}
