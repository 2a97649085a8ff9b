import type { Language } from '../words.ts';

export const VALIDITY: Language['validity'] = {
  'blind-to-canopy': 'Beachtet die Krone nicht.',
  'blind-to-height-and-width': 'Beachtet Höhe und Breite nicht.',
  'blind-to-row-spacing': 'Beachtet Reihenabstand und Breite nicht.',
  'retired-for-new-labels': 'Nur ältere Gebrauchsanleitungen; neuere rechnen mit der Laubwandfläche.',
  'blind-to-width-and-density': 'Beachtet Breite und Dichte nicht.',
  'suits-narrow-walls': 'Für schmale Wände gemacht, nicht für runde oder breite Bäume.',
  'under-doses-small-trees': 'Im Verhältnis zum Volumen bekamen die kleinsten Bäume in Versuchen zu wenig.',
  'box-volume': 'Ein Quader fasst mehr als die Krone darin; keine wahren Volumen einsetzen.',
  'early-rate-disputed': 'Die Quellen sind uneins über geringeren Aufwand früh in der Saison.',
  'memory-law': 'Die Gerade ist aus dem Gedächtnis: am aktuellen Verzeichnis prüfen.',
  'swiss-labels-only': 'Nur für Schweizer Gebrauchsanleitungen.',
  'volume-by-crop': 'Die Liter je Reiheneinheit sind je Kultur verschieden, von 9 bis 50.',
  'run-off-judged-in-field': 'Die Abtropfgrenze im Feld beurteilen.',
  'measured-in-citrus': 'In Zitrus gemessen.',
  'outline-volume': 'Für das Volumen im wahren Umriss, nie für den Quader.',
  'sensor-coefficient': 'Gemacht für ein Sprühgerät, das Lücken erkennt.',
  'leaf-density-rarely-known': 'Die Blattflächendichte wird selten gemessen; die Vorgabe ist geschätzt.',
  'recovery-uncertain': 'Der Anteil, der haften bleibt, schwankt stark.'
};
