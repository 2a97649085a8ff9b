import type { ENGLISH } from '../en/english.ts';
import type { Translated } from '../translation.ts';

/** How Spanish is written; the catalogues have twins of their own. */
const SPANISH: Pick<Translated<typeof ENGLISH>, 'code' | 'decimalMark' | 'and' | 'noLimit' | 'up' | 'down' | 'more' | 'less'> = {
  code: 'es',
  decimalMark: ',',
  and: 'y',
  noLimit: 'sin límite',
  up: 'hacia arriba',
  down: 'hacia abajo',
  more: 'más',
  less: 'menos'
};
export { SPANISH as ENGLISH };
