import type { ENGLISH } from '../en/english.ts';
import type { Translated } from '../translation.ts';

/** How Portuguese is written; the catalogues have twins of their own. */
const PORTUGUESE: Pick<Translated<typeof ENGLISH>, 'code' | 'decimalMark' | 'and' | 'noLimit' | 'up' | 'down' | 'more' | 'less'> = {
  code: 'pt',
  decimalMark: ',',
  and: 'e',
  noLimit: 'sem limite',
  up: 'para cima',
  down: 'para baixo',
  more: 'mais',
  less: 'menos'
};
export { PORTUGUESE as ENGLISH };
