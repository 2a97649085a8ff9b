import type { glossary as EN, terms as TERMS } from '../../en/guide/glossary.ts';
import type { Translated } from '../../translation.ts';

/** Formelzeichen kommen aus den Formeln selbst; Begriffe sind die des Fachs und eigene. */
export const glossary: Translated<typeof EN> = {
  title: 'Formelzeichen und Begriffe',
  find: 'Zeichen, Wort oder Einheit suchen',
  found: (n) => `${n} gefunden`,
  none: 'Nichts gefunden. Ein kürzeres Wort versuchen.',
  all: 'Alle zeigen',
  symbols: 'Formelzeichen',
  terms: 'Begriffe',
  more: (n) => `und ${n} weitere`,
  same: 'Ein Zeichen steht einmal für jede seiner Bedeutungen. Formeln rechnen in den Einheiten, die hier stehen, was auch immer der Bildschirm zeigt.',
  close: 'Schließen'
};

export const terms: Translated<typeof TERMS> = {
  alley: ['Fahrgasse', 'Boden zwischen zwei Baumreihen, auf dem das Sprühgerät fährt.'],
  skirt: ['Kronenansatz', 'Unterer Rand der Laubwand: Höhe des tiefsten Blattes über dem Boden.'],
  trv: ['Baumreihenvolumen, TRV', 'Raum, den die Kronen eines Hektars füllten, als Wand so hoch und so breit wie die Bäume.'],
  lwa: ['Laubwandfläche, LWA', 'Fläche beider Seiten der Laubwand auf einem Hektar: Wandhöhe mal Reihenlänge, zweimal.'],
  lad: ['Blattflächendichte, LAD', 'Blattfläche, eine Seite, in einem Kubikmeter Krone.'],
  bbch: ['Entwicklungsstadium, BBCH', 'Zwei Ziffern dafür, wie weit die Kultur ist, von der Winterruhe bis zum Blattfall.'],
  ladder: ['Saisonstufen', 'Stadien einer Anlage in ihrer Folge; eine Stufe für jedes, mit Krone und Einstellung.'],
  section: ['Querschnitt', 'Zeichnung quer zur Fahrgasse: die Maschine in der Mitte, je eine halbe Reihe daneben.'],
  setting: ['Einstellung', 'Was für eine Anlage in einem Stadium eingestellt wird: offene Düsen, Größen, Druck, Geschwindigkeit, Gebläse.'],
  working: ['Rechenweg', 'Wie eine Zahl entstand: Formel, Werte, Quelle, und wie sicher sie ist.'],
  verdict: ['ins Laub, oben vorbei, unten vorbei, geschlossen', 'Wohin die Brühe einer Düse zielt: allein nach der Geometrie, ohne Wind und Tropfen.'],
  rate: ['Aufwandmenge an Wasser', 'Liter Brühe auf einem Hektar.'],
  concentration: ['Konzentrierungsfaktor', 'Wie viel Mal weniger Wasser ausgebracht wird als die Grundmenge der Zulassung.'],
  load: ['Füllung', 'Ein Behälter voll.'],
  headland: ['Prüfung am Vorgewende', 'Fahrproben, Nachfüllen und Auslitern, die eine Einstellung belegen.'],
  card: ['Kabinenkarte', 'Eine gedruckte Seite mit der Einstellung, für die Kabine.'],
  strategies: ['Strategietabelle', 'Veröffentlichte Wege, Wasser und Dosis an die Krone anzupassen, nebeneinander.'],
  vmd: ['Tropfengrößenklasse', 'Fein bis grob, nach den Tropfen, die eine Düse bei einem Druck macht.'],
  deltaT: ['Delta T', 'Trockentemperatur weniger Feuchttemperatur: wie schnell Tropfen trocknen.'],
  buffer: ['Abstandsstreifen', 'Streifen neben Wasser oder Nachbarn, der nicht behandelt werden darf. Wie breit, sagen Zulassung und Ortsrecht.'],
  drift: ['Abdrift', 'Brühe, die durch die Luft das behandelte Land verlässt.'],
  ucr: ['UCR', 'Einheit aus einer Strategie: ein festes kleines Kronenvolumen entlang der Reihe.']
};
