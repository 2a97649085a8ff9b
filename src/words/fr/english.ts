import type { ENGLISH } from '../en/english.ts';
import type { Translated } from '../translation.ts';

/** How French is written; the catalogues have twins of their own. */
const FRENCH: Pick<Translated<typeof ENGLISH>, 'code' | 'decimalMark' | 'and' | 'noLimit' | 'up' | 'down' | 'more' | 'less'> = {
  code: 'fr',
  decimalMark: ',',
  and: 'et',
  noLimit: 'sans limite',
  up: 'vers le haut',
  down: 'vers le bas',
  more: 'de plus',
  less: 'de moins'
};
export { FRENCH as ENGLISH };
