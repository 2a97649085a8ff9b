import type { laserScreen as EN } from '../../en/row/laser-screen.ts';
import type { Translated } from '../../translation.ts';

/** Beschriftungen der Laserpunkte auf dem Bildschirm. */
export const laserScreen: Translated<typeof EN> = {
  how: 'Punkte eines Laserscanners, der in einer Fahrgasse stand oder fuhr, als LAS, LAZ oder CSV (lateral_m, height_m, along_m). Sie werden auf diesem Gerät gelesen und gehen nirgendwohin.',
  choose: 'Punktdatei wählen',
  other: 'Andere Datei wählen',
  reading: (done) => `Punkte werden gelesen: ${done}`,
  stop: 'Anhalten',
  failed: 'Das Lesen ist fehlgeschlagen. Noch einmal versuchen, oder die Datei auf eine Fahrgasse zuschneiden.',
  judging: 'Punkte werden beurteilt …',
  refused: (lines) => `${lines} Zeilen der Datei wurden nicht verwendet. Die ersten davon:`,

  file: (kind, points) => `${kind}: ${points} Punkte.`,
  kinds: { table: 'Tabelle', las: (version, format) => `LAS ${version}, Punktformat ${format}`, laz: (version, format) => `LAZ ${version}, Punktformat ${format}` },
  everyOf: (every) => `Um wenig Speicher zu brauchen, wurde jeder ${every}. Punkt der Datei gelesen.`,
  marked: (n) => `${n} sind in der Datei als zurückgehalten oder Rauschen gekennzeichnet und wurden übergangen.`,
  tooFar: (n) => `${n} liegen zu weit weg: mehr als 100 m zur Seite, 20 m unter oder 60 m über dem Boden.`,

  place: 'Wo die Fahrgasse in der Datei liegt',
  placeNote: 'Aus den Punkten abgelesen. Sehen die beiden Reihen unten verschmiert aus, zuerst die Richtung der Reihen berichtigen.',
  unit: 'Die Datei steht in',
  units: { m: 'Metern', ft: 'Fuß' },
  bearing: 'Richtung der Reihen, Grad von y nach x',
  originX: 'Mitte der Fahrgasse, x',
  originY: 'Mitte der Fahrgasse, y',
  ground: 'Boden, z',

  rules: 'Welche Punkte zählen',
  platform: 'Stativ oder Fahrzeug des Scanners weglassen',
  half: 'Näher an der Spur als',
  from: 'Über',
  to: 'Unter',
  groundRule: 'Boden und Gras unter',
  side: 'Genommene Reihen',
  sides: { both: 'beide', left: 'links', right: 'rechts' },
  skirt: 'Unterstes Laub',
  scanner: 'Höhe des Scanners',
  spacing: 'Reihenabstand aus den Punkten ablesen',
  spacingNote: (spacing) => `Sonst gilt der der Anlage, ${spacing}.`,

  plot: (points, height, width) => `Querschnitt von ${points} Punkten mit Boden, Reihenlinien und dem daraus gemachten Umriss: ${height} hoch, ${width} breit`,
  legend: { used: 'zählt', out: 'weggelassen', outline: 'Umriss', face: 'gesehene Seite', row: 'Reihenlinie', platform: 'als Stativ oder Fahrzeug weggelassen' },

  says: 'Was die Punkte sagen',
  used: (used, all) => `${used} von ${all} Punkten zählen.`,
  leftOut: {
    platform: 'Stativ oder Fahrzeug',
    ground: 'Boden und Gras',
    'other-side': 'nicht genommene Reihe',
    beyond: 'weiter entfernte Reihen',
    'below-skirt': 'unter dem untersten Laub',
    'above-top': 'über der Spitze'
  },
  leftOutTitle: 'Weggelassen',
  figures: { height: 'Höhe', skirt: 'Unterstes Laub', width: 'Größte Breite', spacing: 'Reihenabstand', filled: 'Gefüllter Anteil der Reihe', box: 'Quader', outline: 'Im Umriss', occupied: 'Belegt' },
  seen: 'an der Reihe dahinter abgelesen',
  given: 'der Anlage',
  ofBox: (share) => `${share} des Quaders`,
  box: 'vom untersten Laub bis zur Spitze, so breit wie die breiteste Höhenstufe, je Reihenlänge',
  noGaps: 'zu wenige Punkte oder ein zu kurzes Stück, um Lücken der Seite anzugeben',
  noFilled: (stretch) => `${stretch} Reihe sind zu kurz, um Lücken zwischen Bäumen zu zeigen`,
  noAlong: 'die Punkte sagen nicht, wo entlang der Reihe sie liegen',
  none: 'nicht angegeben',
  spacingDiffers: (seen, block) => `Die Punkte zeigen ${seen} Reihenabstand, die Anlage hat ${block}. Prüfen, was stimmt: Die Breite hängt davon ab.`,

  bands: 'Nach Höhe, oben zuerst',
  columns: { height: 'Höhe', points: 'Punkte', width: 'Breite', gaps: 'Lücken', density: 'Dichte' },
  limits: 'Was es nicht sagen kann',
  limit: [
    'Der Scanner sieht die nahe Seite. Die Reihenlinie gilt als halben Reihenabstand von der Mitte der Fahrgasse entfernt, die abgewandte Seite als gleich der nahen.',
    'Dichte sind Punkte durch ihr Mittel: ein loses Zeichen für Laub. Punkte und Blattfläche gingen mit einer Korrelation von 0,88 zusammen, Volumen und Blattfläche mit 0,80, an 20 Apfelbäumen in je acht Teilen (Berk et al. 2020). Die Blattfläche selbst wird nicht gemessen.',
    'Strahlen liegen dünner, je steiler sie sind, darum sieht die Spitze weniger dicht aus, als sie ist, außer die Höhe des Scanners ist angegeben.',
    'Lücken der Seite sind Zellen von 0,1 m entlang der Reihe ohne Punkt. Das belegte Volumen nimmt jede als durchgehend an, was sie vielleicht nicht ist.',
    'Am Hang müssen Höhen über dem Boden darunter gelten; schiefe Bäume machen den gespiegelten Umriss zu breit oder zu schmal. Einige Bäume von Hand messen.'
  ],
  use: 'Für diese Stufe verwenden',
  taken: 'Die Krone dieser Stufe hat jetzt den Umriss der Punkte.',
  useNote: 'Höhe, Breite, unterstes Laub, Breiten und Dichte nach Höhe werden ersetzt; auch der gefüllte Anteil, wo er angegeben ist. Rückgängig bringt sie zurück.'
};
