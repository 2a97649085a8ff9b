import type { Part } from '../../language.ts';

/** Was von einer Düsenbestückung gesagt wird. */
export const FITTING: Part = {
  findings: {
    'fitting-position-off': '{nozzles} {nozzles#liegt|liegen} mehr als {tolerance} vom Ziel; am weitesten {worst} mit {off}. {nozzles#Diese Düse|Diese Düsen} am Vorgewende zuerst auslitern.',
    'fitting-other-speed': 'Kein Druck bringt diese Größen bei {present} auf das Ziel: {speed} fahren. Die Luft je Meter Reihe ändert sich mit.',
    'fitting-nothing-wanted': '{nozzles} {nozzles#nimmt|nehmen} {share} des Ausstoßes, wo nichts gewünscht ist. Zuerst schließen, dann neu bestücken.',
    'fitting-rule-upper-large': 'Für große Bäume will eine veröffentlichte Regel 65 bis 80 % durch die obere Hälfte der offenen Düsen; hier sind es {share}. Den Gewichten wurde gefolgt, nicht der Regel.',
    'fitting-rule-upper-low-machine': 'Für niedrige Geräte in Bäumen von 6 bis 7,6 m will eine veröffentlichte Regel etwa 70 % aus den oberen Positionen; hier sind es {share}. Den Gewichten wurde gefolgt, nicht der Regel.',
    'fitting-rule-two-thirds': 'Eine Regel aus dem Gedächtnis will zwei Drittel durch die obere Hälfte der offenen Düsen; hier sind es {share}. Den Gewichten wurde gefolgt, nicht der Regel.',
    'fitting-rule-middle-heavy': 'Für Zitrus will eine veröffentlichte Regel die größten Düsen in der Mitte des Bogens; hier sitzen sie nicht dort. Den Gewichten wurde gefolgt, nicht der Regel.',
    'fitting-rule-proportional': 'Für Turmgebläse vor einer Laubwand erwartet eine Regel aus dem Gedächtnis 50 bis 60 % durch die obere Hälfte der offenen Düsen; hier sind es {share}. Den Gewichten wurde gefolgt, nicht der Regel.',
    'fitting-sides-unlike': 'Die Düsen sind, wie sie sind, links und rechts verschieden, darum stehen sie nicht in der Liste. „Links und rechts gleich“ abwählen, um sie zu behalten.',
    'fitting-present-unfit': 'Die Düsen können, wie sie sind, das Ziel nicht erreichen: Bei {speed} bräuchten sie {pressure}, und keine andere zulässige Geschwindigkeit hilft.'
  },
  refusals: {
    'no-own-weight': 'Keine offene Position hat ein Gewicht. Mindestens einer ein Gewicht über null geben.',
    'no-leaf-before-nozzles': 'Keine offene Düse trifft Laub, also gibt die Krone keine Gewichte. Die Düsen öffnen, vor denen Laub steht, oder die Positionen selbst gewichten.',
    'nothing-wanted-here': 'Von {position} ist nichts gewünscht.',
    'fitting-speed-apart': 'Die gewünschten Geschwindigkeiten und die des Geräts haben nichts gemeinsam: mindestens {least}, höchstens {most}. Den Wunsch erweitern.',
    'fitting-pressure-apart': 'Die gewünschten Drücke und die des Geräts haben nichts gemeinsam: mindestens {least}, höchstens {most}. Den Wunsch erweitern.',
    'fitting-no-size': 'Eine Position hat keine Größe zur Wahl. Größen hinzufügen, die eingebaut werden dürfen.',
    'fitting-class-unknown': 'Die Tabelle „{table}“ nennt keine Tropfengrößenklassen, also kann ein Wunsch danach nicht erfüllt werden. Aus dem Datenblatt der Düse eingeben, oder den Wunsch fallen lassen.',
    'fitting-class-unmet': 'Keine Größe macht bei zulässigem Druck die gewünschten Tropfengrößenklassen. Klassen, Drücke oder Größen erweitern.',
    'fitting-pressure-tables': 'Zulässig sind {least} bis {most}, aber die Düsentabellen gelten von {tableLeast} bis {tableMost}. Die Drücke erweitern oder eine andere Tabelle wählen.',
    'fitting-too-little': 'Die größten Größen beim höchsten Druck und bei der kleinsten Geschwindigkeit geben {most}; gewünscht sind {target}. Größere Größen hinzufügen, mehr Druck oder eine kleinere Geschwindigkeit zulassen, oder weniger wünschen.',
    'fitting-too-much': 'Die kleinsten Größen beim kleinsten Druck und bei der höchsten Geschwindigkeit geben immer noch {least}; gewünscht sind {target}. Kleinere Größen hinzufügen, weniger Druck oder eine höhere Geschwindigkeit zulassen, Düsen schließen, oder mehr wünschen.',
    'fitting-changes-bind': 'Mit höchstens {changes} gewechselten Düsen erreicht nichts das Ziel. Mehr Wechsel zulassen, oder Druck oder Geschwindigkeit erweitern.',
    'fitting-none': 'Keine Kombination dieser Größen erreicht das Ziel innerhalb der Grenzen. Größen hinzufügen, oder Druck oder Geschwindigkeit erweitern.',
    'fitting-cancelled': 'Die Suche wurde angehalten.'
  },
  fields: { 'fitting.targetLPerHa': 'Brüheaufwand, auf den bestückt wird' },
  formulas: {
    'target-flow': 'Ziel einer Position',
    'off-target': 'Abstand vom Ziel',
    'profile-match': 'Übereinstimmung des Profils',
    'top-share': 'Anteil durch die obere Hälfte'
  },
  symbols: {
    qw: 'hier gewünschter Ausstoß',
    'target-flow.w': 'Gewicht der Position',
    'target-flow.Q': 'gewünschter Ausstoß',
    'off-target.d': 'Abstand vom Ziel',
    'profile-match.M': 'Übereinstimmung des Profils',
    'profile-match.e': 'Summe der Unterschiede zwischen Anteilen und Gewichten',
    St: 'Anteil durch die obere Hälfte',
    qt: 'Ausstoß durch die obere Hälfte'
  },
  assumptions: {
    'fitting.position-tolerance': { label: 'Position neben dem Ziel', meaning: 'Eine Düse, die weiter als das von ihrem Ziel liegt, wird genannt. Üblich, wenn Größen aus einem Katalog gewählt werden.' },
    'fitting.few-gain': { label: 'Was wenige Wechsel bringen', meaning: '„Wenige Wechsel“ ist die Bestückung mit den wenigsten Wechseln, die diesen Anteil vom Gewinn der besten Übereinstimmung bringt.' }
  }
};
