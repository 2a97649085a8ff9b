import type { Language } from '../words.ts';

const REFERENCE = 'Volle Dosis: die Bezugskrone unter den Annahmen.';

export const STRATEGIES: Language['strategies'] = {
  'ground-area': { name: 'Je Hektar Grundfläche', line: 'Auf jedem Hektar gleich, was immer darauf steht.', full: 'Volle Dosis: jeder Hektar.' },
  'row-length': { name: 'Reihenlänge', line: 'Im Verhältnis zu den Metern Reihe; Höhe und Breite zählen nicht.', full: 'Volle Dosis: der Bezugsreihenabstand.' },
  'crown-height': { name: 'Kronenhöhe', line: 'Im Verhältnis zur Höhe vom Ansatz bis zur Spitze; Breite und Abstand zählen nicht.', full: 'Volle Dosis: die Bezugskronenhöhe.' },
  'leaf-wall': { name: 'Laubwandfläche', line: 'Im Verhältnis zu den behandelten Laubwänden, Ansatz bis Spitze; die Breite zählt nicht.', full: 'Volle Dosis: beide Laubwände der Bezugskrone.' },
  'row-volume': { name: 'Baumreihenvolumen (TRV)', line: 'Im Verhältnis zum Kronenquader: Ansatz bis Spitze, größte Breite.', full: REFERENCE },
  'us-row-volume': { name: 'US-Baumreihenvolumen', line: 'Quader vom Boden an, größte Breite, mal Dichte und Saisonfaktor.', full: 'Volle Dosis: die Standardanlage, 400 gal/acre bei einfacher Konzentration.' },
  'metric-multiplier': { name: 'Metrischer Faktor', line: 'Quader vom Boden an, größte Breite, mal einem Faktor, bei dem 1 dicht ist.', full: 'Volle Dosis: die Standardanlage in dichtem Laub.' },
  'swiss-affine': { name: 'Schweizer Gerade', line: 'Kronenquader, größte Breite; der kleinste Baum behält einen Teil der Dosis.', full: 'Volle Dosis: das Schweizer Bezugsvolumen.' },
  'unit-canopy-row': { name: 'Einheitsreihe', line: 'Reihen von 1 m Höhe, 1 m Breite und 100 m Länge, gezählt vom Ansatz bis zur Spitze mit der größten Breite.', full: REFERENCE },
  'row-distance': { name: 'Reihenstrecke und Höhe', line: 'Liter je 100 m Reihe und Meter Höhe, Ansatz bis Spitze; die Breite zählt nicht.', full: 'Volle Dosis: Bezugskronenhöhe und Bezugsreihenabstand.' },
  'stage-volume': { name: 'Stadium und Dichte', line: 'Was die Krone in ihrem Umriss bei diesem Stadium und dieser Dichte hält.', full: 'Volle Dosis: die Bezugskrone bei mittlerer Dichte.' },
  'occupied-volume': { name: 'Belegtes Kronenvolumen', line: 'Liter je Kubikmeter im wahren Umriss, ohne Lücken.', full: REFERENCE },
  'leaf-area': { name: 'Blattfläche', line: 'Ein gewünschter Belag auf dem vorhandenen Laub, geteilt durch den Anteil, der haften bleibt.', full: 'Volle Dosis: die Bezugskrone mit ihrer Blattflächendichte.' }
};

export const ACTS: Language['acts'] = {
  'label-dose-kept': 'Dosis der Gebrauchsanleitung je Hektar bleibt',
  'scaled-to-canopy': 'folgt der Krone',
  'not-above-label': 'auf die Dosis der Gebrauchsanleitung begrenzt',
  floored: 'auf der eigenen Untergrenze gehalten',
  'capped-at-label-maximum': 'Höchstmenge der Gebrauchsanleitung greift',
  'raised-to-label-minimum-water': 'auf den Mindestwasseraufwand der Gebrauchsanleitung angehoben',
  'capped-at-label-maximum-water': 'auf den höchsten Wasseraufwand der Gebrauchsanleitung begrenzt',
  'own-water': 'eigener Wasseraufwand'
};
