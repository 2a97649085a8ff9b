import type { adviceScreen as EN } from '../../en/spray/advice-screen.ts';
import type { Translated } from '../../translation.ts';

/** Beschriftungen der Suche nach besseren Einstellungen. */
export const adviceScreen: Translated<typeof EN> = {
  title: 'Bessere Einstellungen?',
  line: 'Düsen, ihr Winkel, Tropfen, Luft und Geschwindigkeit in den Grenzen des Geräts',
  intro: 'Sucht Einstellungen dieses Geräts, die mehr auf die Bäume bringen, gleichmäßiger, mit weniger Verlust, bei den heutigen Litern je Hektar oder weniger. Nichts wird geändert, bevor es gewählt wird.',
  start: 'Bessere Einstellungen suchen',
  again: 'Noch einmal suchen',
  searching: 'Suche läuft …',
  part: (done) => `${done} fertig`,
  stop: 'Anhalten',
  stopped: 'Angehalten.',
  failed: 'Die Suche konnte hier nicht laufen. Die Seite neu laden.',
  outdated: 'Die Einstellung hat sich seither geändert: Was hier steht, gehört zur früheren.',
  looked: (settings) => `${settings} Einstellungen angesehen.`,
  front: 'Was zu haben ist',
  frontNote: 'Keine davon ist in allem besser als eine andere. Unter jedem Wert die Änderung gegenüber heute; ≈ ist kein klarer Unterschied.',
  today: 'heute',
  columns: { setting: 'Einstellung', trees: 'auf den Bäumen', lost: 'verloren', cv: 'CV', rate: 'Flächenleistung' },
  plotTrees: 'auf den Bäumen →',
  plotLost: 'verloren ↑',
  noClear: 'kein klarer Unterschied',
  plan: (n, names) => (names ? `Einstellung ${n}: ${names}` : `Einstellung ${n}`),
  names: {
    'most-on-trees': 'am meisten auf den Bäumen',
    'least-lost': 'am wenigsten verloren',
    'most-even': 'am gleichmäßigsten',
    fastest: 'am schnellsten',
    'fewest-changes': 'wenigste Änderungen'
  },
  all: (effects) => `Alles zusammen ${effects}.`,
  steps: 'Schritt für Schritt',
  volume: (litres) => `Bringt ${litres} aus.`,
  use: 'Diese Einstellung nehmen',
  useOf: (name) => `Nehmen: ${name}`,
  inUse: 'Das ist jetzt eingestellt',
  used: (name) => `Eingestellt: ${name}. Bändchen und Papier prüfen, bevor eine Anlage damit behandelt wird.`,
  undo: 'Rückgängig'
};
