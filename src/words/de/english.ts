import type { ENGLISH } from '../en/english.ts';
import type { Translated } from '../translation.ts';

/** How German is written; the catalogues have twins of their own. */
const GERMAN: Pick<Translated<typeof ENGLISH>, 'code' | 'decimalMark' | 'and' | 'noLimit' | 'up' | 'down' | 'more' | 'less'> = {
  code: 'de',
  decimalMark: ',',
  and: 'und',
  noLimit: 'keine Grenze',
  up: 'nach oben',
  down: 'nach unten',
  more: 'mehr',
  less: 'weniger'
};
export { GERMAN as ENGLISH };
