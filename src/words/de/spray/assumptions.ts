import type { AssumptionWords } from '../../words.ts';

const drops = (name: string): AssumptionWords => ({
  label: `Mittlerer Tropfen (VMD), ${name}`,
  meaning: 'Die Hälfte der Brühe ist in kleineren Tropfen. Klassen vergleichen Düsen; sie haben keine Grenzen in µm.'
});

/** Jede Konstante des Sprühmodells. */
export const SPRAY_ASSUMPTION_WORDS: Readonly<Record<string, AssumptionWords>> = {
  'spray.projection': { label: 'Laub, das der Brühe zugewandt ist', meaning: 'Teil der Blattfläche, der im Weg steht, ohne Blätter hintereinander. An eine Reihe von Weinbauversuchen angepasst; bewegt das Ergebnis am meisten.' },
  'spray.leaf-beta': { label: 'Umströmung eines Blatts', meaning: 'Je größer, desto mehr kleine Tropfen folgen der Luft um ein Blatt.' },
  'spray.leaf-size': { label: 'Blattgröße', meaning: 'Breite eines Blatts quer zur Luft.' },
  'spray.wood-beta': { label: 'Umströmung eines Zweigs', meaning: 'Je größer, desto mehr kleine Tropfen folgen der Luft um einen Zweig.' },
  'spray.wood-size': { label: 'Zweigstärke', meaning: 'Dicke des Holzes, das Tropfen auffängt.' },
  'spray.wood-density': { label: 'Holz in einem kahlen Baum', meaning: 'Schattenfläche des Holzes in einem Kubikmeter Krone.' },
  'spray.canopy-drag': { label: 'Widerstand der Krone', meaning: 'Wie stark Laub und Holz die Luft bremsen.' },
  'spray.entrainment': { label: 'Mitgerissene Luft, Schlitz', meaning: 'Wie schnell die Luft aus einem Schlitz ruhende Luft mitnimmt und langsamer wird.' },
  'spray.round-entrainment': { label: 'Mitgerissene Luft, Stutzen', meaning: 'Wie schnell die Luft aus einem runden Auslass ruhende Luft mitnimmt und langsamer wird.' },
  'spray.plume-spread': { label: 'Streuung des Strahls einer Düse', meaning: 'Standardabweichung seiner Richtung, als Teil des vollen Kegelwinkels.' },
  'spray.shell-share': { label: 'Tiefe der belaubten Hülle', meaning: 'Äußerer Teil der halben Breite, in dem das Laub am dichtesten steht.' },
  'spray.core-ratio': { label: 'Laub im Inneren der Krone', meaning: 'Laubdichte des inneren Teils durch die der Hülle.' },
  'spray.cross-wind': { label: 'Wind quer zu den Reihen', meaning: 'Oben an der Krone, von links. Er lenkt die Luft in der Zeichnung ab. Das Modell zeigt nicht, was Wind mit dem Belag macht.' },
  'spray.wind-decay': { label: 'Windabnahme in der Krone', meaning: 'Wie schnell der Wind von der Spitze der Krone nach unten abnimmt.' },
  'spray.delta-t': { label: 'Delta T für trocknende Tropfen', meaning: 'Trocken- minus Feuchtkugeltemperatur. Je größer, desto schneller schrumpfen Tropfen im Flug. Wo das Wetter des Tages eingegeben ist, kommt es von dort, wenn es nicht hier gesetzt wird.' },
  'spray.fine-part': { label: 'Feiner Teil des Spektrums', meaning: 'Tropfengröße, unter der ein Zehntel der Brühe liegt, durch die mittlere Größe.' },
  'spray.non-volatile': { label: 'Was nicht verdunstet', meaning: 'Teil der Flüssigkeit, der bleibt, wenn ein Tropfen getrocknet ist, nach Volumen.' },
  'spray.release-speed': { label: 'Geschwindigkeit aus der Düse', meaning: 'Geschwindigkeit, mit der Tropfen die Düse verlassen.' },
  'spray.rows': { label: 'Behandelte Reihen je Seite', meaning: 'Reihen der Anlage auf jeder Seite des Geräts. Jenseits der letzten ist außerhalb der Anlage.' },
  'spray.vmd-XF': drops('extrem fein'),
  'spray.vmd-VF': drops('sehr fein'),
  'spray.vmd-F': drops('fein'),
  'spray.vmd-M': drops('mittel'),
  'spray.vmd-C': drops('grob'),
  'spray.vmd-VC': drops('sehr grob'),
  'spray.vmd-XC': drops('extrem grob'),
  'spray.vmd-UC': drops('ultragrob'),
  'spray.vmd-unknown': { label: 'Mittlerer Tropfen (VMD), Klasse nicht bekannt', meaning: 'Für eine Düse, deren Tabelle keine Tropfengrößenklasse nennt.' }
};
