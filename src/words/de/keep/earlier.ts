import type { earlierWords as EN } from '../../en/keep/earlier.ts';
import type { Translated } from '../../translation.ts';

/** Einstellungen, die für eine Stufe früher gespeichert wurden. */
export const earlierWords: Translated<typeof EN> = {
  title: 'Früher gespeicherte Einstellungen',
  line: (n) => String(n),
  at: (moment) => `gespeichert ${moment}`,
  back: 'Dorthin zurück',
  backTo: (moment) => `Zurück zur Einstellung vom ${moment}`,
  same: 'jetzt eingestellt',
  unordered: 'Die Uhr dieses Geräts wurde zwischen einigen davon zurückgestellt: Die Reihenfolge stimmt, die Zeiten vielleicht nicht.',
  nozzlesShut: (n) => (n === 0 ? 'alle Düsen offen' : `${n} ${n === 1 ? 'Düse' : 'Düsen'} geschlossen`)
};
