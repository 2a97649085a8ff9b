import type { fittingWords as EN } from '../../en/headland/fitting-words.ts';
import type { Translated } from '../../translation.ts';

/** Namen rund um die Bestückung. */
export const fittingWords: Translated<typeof EN> = {
  names: { 'no-change': 'Kein Wechsel von Düsen', 'few-changes': 'Wenige Wechsel', 'best-match': 'Beste Übereinstimmung' },
  weightings: { canopy: 'wie die Krone steht', uniform: 'alle gleich', own: 'eigene Gewichte' },
  rules: {
    'upper-large': 'große Bäume: 65 bis 80 % durch die obere Hälfte',
    'upper-low-machine': 'niedriges Gerät, Bäume von 6 bis 7,6 m: etwa 70 % von oben',
    'two-thirds': 'zwei Drittel durch die obere Hälfte',
    'middle-heavy': 'Zitrus: größte Düsen in der Mitte',
    proportional: 'Turmgebläse: 50 bis 60 % durch die obere Hälfte'
  },
  limits: 'Gerader Strahl und Ausstoß nach Tabelle: Luft lenkt den Strahl ab, und abgenutzte Düsen geben mehr. Jede Düse auslitern und Papier aufhängen, bevor man sich darauf verlässt.',
  rounded: (step) => `Die Tabellen haben keinen gemeinsamen Schritt: Gezählt wurde der Ausstoß in Schritten von ${step}, viel feiner als jeder Becher.`,
  bent: 'Manche Tabellen nennen den Ausstoß bei mehreren Drücken: Die Größen wurden nach dem Ausstoß beim jetzigen Druck gewählt, dann wurde der Druck mit der Tabelle bestimmt. Dort ist die Wahl eine Näherung.'
};
