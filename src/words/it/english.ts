import type { ENGLISH } from '../en/english.ts';
import type { Translated } from '../translation.ts';

/** How Italian is written; the catalogues have twins of their own. */
const ITALIAN: Pick<Translated<typeof ENGLISH>, 'code' | 'decimalMark' | 'and' | 'noLimit' | 'up' | 'down' | 'more' | 'less'> = {
  code: 'it',
  decimalMark: ',',
  and: 'e',
  noLimit: 'nessun limite',
  up: 'verso l’alto',
  down: 'verso il basso',
  more: 'in più',
  less: 'in meno'
};
export { ITALIAN as ENGLISH };
