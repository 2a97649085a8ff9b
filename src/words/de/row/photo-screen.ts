import type { photoScreen as EN } from '../../en/row/photo-screen.ts';
import type { Translated } from '../../translation.ts';

/** Beschriftungen des Fotos auf dem Bildschirm. */
export const photoScreen: Translated<typeof EN> = {
  how: 'In der Fahrgasse stehen, auf Höhe der Kronenmitte, mit Himmel oder einem weißen Tuch hinter nur einer Reihe. Bedeckter Himmel ist am besten. Das Bild wird auf diesem Gerät gelesen und geht nirgendwohin.',
  choose: 'Bild wählen',
  other: 'Anderes Bild wählen',
  reading: (done) => `Bild wird gelesen: ${done}`,
  stop: 'Anhalten',
  failed: 'Das Lesen ist fehlgeschlagen. Noch einmal versuchen, oder das Bild kleiner speichern.',
  picture: 'Foto mit dem Rahmen der Krone; schraffiert ist, was als Laub zählt',
  size: (width, height) => `${width} × ${height} Pixel`,

  frame: 'Rahmen der Krone',
  frameNote: 'Die vier Griffe ziehen oder mit den Pfeiltasten bewegen: die obere Kante an die Spitze, die untere an das unterste Laub, die Seiten an die Krone nur einer Reihe.',
  edge: { top: 'Kronenspitze', bottom: 'Unterstes Laub', left: 'Linke Seite', right: 'Rechte Seite' },
  at: { top: (p) => `${p} vom oberen Bildrand`, bottom: (p) => `${p} vom oberen Bildrand`, left: (p) => `${p} von links`, right: (p) => `${p} von links` },
  topHeight: 'Obere Kante steht für',
  skirtHeight: 'Untere Kante steht für',
  upsideDown: 'Die untere Kante steht nicht unter der oberen. Eine der Höhen berichtigen.',
  band: 'Höhe einer Höhenstufe',

  threshold: 'Schwelle im Blau',
  thresholdSays: (level) => `Pixel mit Blau ${level} oder mehr zählen als Lücke.`,
  proposal: (level, part) => `Vorschlag: ${level}, was Dunkel und Hell am besten trennt (Otsu 1979, aus dem Gedächtnis; ${part} der Varianz liegen zwischen den beiden).`,
  takeProposal: 'Vorschlag nehmen',
  poor: 'Dunkel und Hell trennen sich schlecht. Auf die Schraffur sehen, bevor man sich darauf verlässt.',
  mask: 'Schraffieren, was als Laub zählt',

  says: 'Was das Foto sagt',
  density: 'Blattflächendichte',
  atLeast: (value) => `mindestens ${value}`,
  working: 'wie sie berechnet wird',
  bands: 'Nach Höhe, oben zuerst',
  columns: { height: 'Höhe', gaps: 'Lücken', density: 'Blattflächendichte', width: 'Breite' },
  doubt: (lower, higher, by) => `Mit einer um ${by} niedrigeren Schwelle ${lower}, um ${by} höher ${higher}.`,
  none: 'nicht angegeben',
  saturated: (share) => `In ${share} des Querschnitts sind zu wenige Lücken, um es zu sagen; im Mittel steht er mit dem, was er mindestens hat.`,
  assumptions: 'Was über die Blätter angenommen wird',
  assumptionsNote: 'Beides geht in jeden Wert hier ein und ist änderbar.',
  limits: 'Was es nicht sagen kann',
  limit: [
    'Holz und Früchte zählen als Laub: abziehen, was im kahlen Baum zu sehen ist.',
    'Ein Blick auf ein Stück Reihe: mehrere aufnehmen, und mehr als einen Baum.',
    'Jede Lücke gilt als Himmel oder Tuch. Wo die Reihe dahinter darin steht, zählt Laub, das nicht da ist. Das Tuch hinter die Reihe hängen.',
    'Himmel neben einer Krone oder zwischen zwei Bäumen, im Rahmen, zählt als Lücke: Die Dichte ist dann die der Reihe, wie sie steht, nicht die der Kronen allein.',
    'Glanz auf Blättern zählt als Lücke, ein dunkler Himmel als Laub: auf die Schraffur sehen.',
    'Der Blick gilt als waagrecht und der Weg durch die Krone als ihre gezeichnete Breite. Von unten oder mit falscher Breite ist die Dichte um ebenso viel falsch.',
    'Blätter in Büscheln lassen mehr Lücken als zufällig verteilte, darum ist der wahre Wert höher; ebenso der einer Höhenstufe, deren Lücken beieinanderliegen.',
    'Pixel am Rand eines Blatts sind gemischt; kleine Lücken gehen in einem groben Bild verloren.'
  ],
  byHeight: 'Mit Dichte nach Höhe',
  byHeightDrawn: 'Keine Breiten nach Höhe wurden gemessen: Eingetragen würde der gezeichnete Umriss, und er zählt dann als gemessen.',
  use: 'Für diese Stufe verwenden',
  used: 'Die Blattflächendichte dieser Stufe kommt jetzt aus dem Foto.',
  kept: (bands, threshold) => `Zählungen eines Fotos sind bei dieser Stufe gespeichert: ${bands} ${bands === 1 ? 'Höhenstufe' : 'Höhenstufen'}, Schwelle ${threshold}.`,
  forget: 'Zählungen löschen',
  keptSays: (value) => `Mit den jetzigen Annahmen sagen sie ${value}.`
};
