import type { Language } from '../words.ts';

export const VERDICTS: Language['verdicts'] = {
  'in-leaf': 'ins Laub',
  'over-top': 'oben vorbei',
  'under-skirt': 'unten vorbei',
  shut: 'geschlossen',
  unknown: 'unbekannt'
};

export const SIDES: Language['sides'] = { left: 'links', right: 'rechts' };

export const PATTERNS: Language['patterns'] = {
  'every-alley': 'jede Fahrgasse, beide Seiten offen',
  'one-side-both-faces': 'jede Fahrgasse zweimal, nur {side} offen, am Ende beide Reihenseiten',
  'one-side-one-face': 'eine Seite jeder Reihe, nur {side} offen',
  'alternate-alleys': 'jede zweite Fahrgasse, beide Seiten offen',
  'whole-rows': '{rows} ganze Reihen je Überfahrt',
  swath: '{width} Arbeitsbreite je Überfahrt'
};

/** Tropfengrößenklassen nach ISO 25358, deutsch aus dem Gedächtnis. */
export const DROPLETS: Language['droplets'] = {
  XF: 'extrem fein',
  VF: 'sehr fein',
  F: 'fein',
  M: 'mittel',
  C: 'grob',
  VC: 'sehr grob',
  XC: 'extrem grob',
  UC: 'ultragrob'
};

/** Farben der Düsentabellen, nach ihrem Namen in ISO 10625. */
export const COLOURS: Language['colours'] = {
  purple: 'purpur',
  olive: 'oliv',
  pink: 'rosa',
  orange: 'orange',
  'light-green': 'hellgrün',
  green: 'grün',
  yellow: 'gelb',
  lilac: 'lila',
  blue: 'blau',
  'brown-red': 'braunrot',
  red: 'rot',
  brown: 'braun',
  grey: 'grau',
  white: 'weiß',
  'light-blue': 'hellblau',
  'yellow-green': 'gelbgrün',
  black: 'schwarz'
};

/** Vorhandene gegen nötige Luft, Wege zum Ausgleich, und was maßgebend ist. */
export const AIR: Language['air'] = {
  short: 'Luft nötig etwa {needed}, vorhanden {given}: {off} zu wenig.',
  over: 'Luft nötig etwa {needed}, vorhanden {given}: {off} zu viel.',
  matched: 'Luft nötig etwa {needed}, vorhanden {given}: passt auf {tolerance}.',
  unknown: 'Die Luft wird nicht berechnet: {reason}',
  rule: 'Die Regel füllt die Fahrgasse: mitgerissene Luft {k}-fach, {certainty}.',
  speed: '{value} würden passen; derselbe Ausstoß ergibt dann {volume}.',
  'speed-bare': '{value} würden passen; die Liter je Hektar ändern sich mit.',
  'speed-beyond': '{value} würden passen, aber die Grenze des Geräts ist {limit}.',
  gear: 'Gebläsestufe {gear} gibt {value} bei dieser Zapfwellendrehzahl, {share} des Bedarfs; Ausstoß und Geschwindigkeit bleiben.',
  pto: 'Zapfwelle mit {value} in Gebläsestufe {gear} würde passen. Eine Pumpe an dieser Welle ändert den Ausstoß mit: Druck neu einstellen.',
  'pto-beyond': 'Zapfwelle mit {value} in Gebläsestufe {gear} würde passen, aber die Grenze des Geräts ist {limit}.',
  judge:
    'Maßgebend: Bändchen in die Baumspitzen binden und mit laufendem Gebläse vorbeifahren, ohne zu spritzen. Sie sollen schräg nach außen schwingen. Hängen sie weiter, ist es zu schnell oder zu wenig Luft; stehen sie gerade hoch, kann schneller gefahren oder weniger Luft genommen werden. Blätter auf der abgewandten Seite flattern nur leicht.'
};
