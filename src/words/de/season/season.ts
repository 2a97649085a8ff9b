import type { Part } from '../../language.ts';

/** Was eine Saison summiert, nach der Familie ihrer Formeln. */
const KINDS = { water: 'Wasser', mix: 'Brühe', loads: 'Füllungen', dose: 'Mittel je Fläche', product: 'Mittel auf der Anlage' } as const;
const each = (make: (kind: string, what: string) => readonly (readonly [string, string])[]): Record<string, string> => Object.fromEntries(Object.entries(KINDS).flatMap(([kind, what]) => make(kind, what)));

/** Worte der Saison. */
export const SEASON: Part = {
  refusals: {
    'season-rung-refused': '{rung} kann nicht berechnet werden: {reason} Berichtigen, oder die Behandlungen auf 0 setzen.',
    'season-above-label': '{product}: Die geplanten Behandlungen ergeben {planned} in der Saison; die Gebrauchsanleitung erlaubt {most}. Weniger planen.',
    'growth-evergreen': 'Hier steht das ganze Jahr Laub; die veröffentlichten Anteile gelten für einen Baum, der es abwirft. Die Reihe messen.',
    'growth-not-measured': '{rung} ist selbst ein Vorschlag. Messen, oder eine gemessene Stufe wählen.',
    'growth-no-stage': '{rung} hat kein Entwicklungsstadium. Den BBCH-Wert eingeben.',
    'growth-from-bare': '{rung} hat so gut wie kein Laub; aus nichts lässt sich kein Laub berechnen. Eine belaubte Stufe wählen.',
    'growth-no-date': '{rung} hat kein Datum. Eingeben.',
    'growth-no-neighbours': 'Nötig sind eine gemessene Stufe mit Datum vor {rung} und eine danach.',
    'growth-no-warmth': 'Zwischen {from} und {to} hat die Wetterdatei keine Gradtage über der Basis.',
    'dates-not-rising': '{to} liegt nicht nach {from}.',
    'dates-far-apart': '{from} und {to} liegen mehr als ein Jahr auseinander.',
    'weather-gap': 'Der Wetterdatei fehlen {days} Tage hintereinander, {from} bis {to}. Höchstens 7 werden überbrückt.'
  },
  formulas: {
    'growth-volume-ratio': 'Zuwachs des Baumreihenvolumens',
    'growth-height': 'Höhe nach dem Zuwachs',
    'growth-width': 'Breite nach dem Zuwachs',
    'growth-leaf-density': 'Blattflächendichte nach dem Zuwachs',
    'growth-way': 'Wie weit auf dem Weg, nach Gradtagen',
    'growth-length-between': 'Länge zwischen zwei Stufen',
    'growth-leaf-between': 'Blattflächenindex zwischen zwei Stufen',
    'growth-density-of-leaf': 'Blattflächendichte zu dieser Blattfläche',
    ...each((kind, what) => [
      [`treatments-${kind}`, `Behandlungen einer Stufe: ${what}`],
      [`season-${kind}`, `Saison: ${what}`],
      [`season-saving-${kind}`, `Ersparnis in der Saison: ${what}`],
      [`season-share-${kind}`, `Ersparnis als Anteil: ${what}`]
    ]),
    'sum-of-stages': 'Summe über die Stufen'
  },
  symbols: {
    Gv: 'Zuwachs des Baumreihenvolumens',
    gv: 'Zuwachs vom Frühjahr bis zum Sommer',
    sa: 'Anteil des Zuwachses an der Ausgangsstufe',
    sb: 'Anteil des Zuwachses an dieser Stufe',
    Ha: 'Höhe an der Ausgangsstufe',
    Wa: 'Breite an der Ausgangsstufe',
    LADa: 'Blattflächendichte an der Ausgangsstufe',
    ua: 'Anteil des entfalteten Laubs an der Ausgangsstufe',
    ub: 'Anteil des entfalteten Laubs an dieser Stufe',
    DDx: 'Gradtage bis zu diesem Datum',
    DDt: 'Gradtage des ganzen Wegs',
    fw: 'Anteil des Wegs',
    La: 'Länge an der Stufe davor',
    Lb: 'Länge an der Stufe danach',
    L: 'Länge auf dem Weg',
    LAIa: 'Blattflächenindex an der Stufe davor',
    LAIb: 'Blattflächenindex an der Stufe danach',
    X: 'eine Behandlung',
    Xn: 'Behandlungen einer Stufe',
    Xs: 'Saison',
    Xd: 'Ersparnis',
    Xf: 'Saison mit einer Einstellung',
    Xa: 'Saison angepasst',
    ...each((kind) => [
      [`treatments-${kind}.n`, 'Behandlungen'],
      [`season-share-${kind}.S`, 'Ersparnis']
    ])
  },
  assumptions: {
    'growth.volume': { label: 'Zuwachs des Baumreihenvolumens', meaning: 'Vom Frühjahr bis zum Sommer; veröffentlicht mit 20 bis 30 %, höchstens 50 %. Genommen wird die Mitte.' },
    'growth.base-temperature': { label: 'Basis der Gradtage', meaning: 'Die Blattfläche geht mit den Gradtagen über dieser Temperatur.' }
  },
  fields: {
    treatments: 'Behandlungen',
    date: 'Datum',
    evergreen: 'immergrün',
    weather: 'Gradtage der Wetterdatei',
    'canopy.proposed': 'vorgeschlagene Krone',
    'label.maxPerSeason': 'Höchstmenge je Saison laut Gebrauchsanleitung'
  }
};
