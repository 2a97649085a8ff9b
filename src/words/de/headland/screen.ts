import type { headlandScreen as EN } from '../../en/headland/screen.ts';
import type { Translated } from '../../translation.ts';

/** Beschriftungen des Rahmens der Station Vorgewende. Jeder Schritt bringt seine eigenen. */
export const headlandScreen: Translated<typeof EN> = {
  steps: {
    before: 'Vor dem Beginn',
    speed: 'Geschwindigkeit',
    output: 'Ausstoß',
    result: 'Ergebnis',
    fitting: 'Düsenbestückung',
    loads: 'Füllungen',
    record: 'Aufzeichnung',
    card: 'Kabinenkarte'
  },
  step: 'Schritt',
  place: (n, all) => `Schritt ${n} von ${all}`,
  option: (n, name) => `${n}  ${name}`,
  back: 'Zurück',
  next: 'Weiter',
  loading: 'Wird geladen …',
  failed: 'Dieser Schritt konnte nicht geladen werden. Die Seite neu laden.'
};
