import type { earlierWords as EN } from '../../en/keep/earlier.ts';
import type { Translated } from '../../translation.ts';

/** Settings that were saved for a rung before. */
export const earlierWords: Translated<typeof EN> = {
  title: 'Regolazioni salvate prima',
  line: (n) => String(n),
  at: (moment) => `salvata: ${moment}`,
  back: 'Torna a questa',
  backTo: (moment) => `Torna alla regolazione salvata: ${moment}`,
  same: 'impostata ora',
  unordered: 'L’orologio di questo dispositivo è stato portato indietro tra alcune di queste: l’ordine è giusto, gli orari forse no.',
  nozzlesShut: (n) => (n === 0 ? 'tutti gli ugelli aperti' : n === 1 ? '1 ugello chiuso' : `${n} ugelli chiusi`)
};
