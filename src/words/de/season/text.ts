import type { seasonText as EN } from '../../en/season/text.ts';
import type { Translated } from '../../translation.ts';

/** Was von einer Saison gesagt wird. */
export const seasonText: Translated<typeof EN> = {
  kinds: { water: 'Wasser je Fläche', mix: 'Brühe auf der Anlage', loads: 'Behälterfüllungen', 'dose-kg': 'je Fläche', 'dose-L': 'je Fläche', 'product-kg': 'auf der Anlage', 'product-L': 'auf der Anlage' },
  ofProduct: (product, what) => `${product}, ${what}`,
  opened: (nozzles, several) => `${nozzles} ${several ? 'werden' : 'wird'} geöffnet.`,
  shut: (nozzles, several) => `${nozzles} ${several ? 'werden' : 'wird'} geschlossen.`,
  same: 'Nichts ändert sich um mehr als 1 %.',
  fields: { heightM: 'Höhe', widthM: 'Breite', skirtM: 'unterstes Laub', ladM2PerM3: 'Blattflächendichte' },
  volume: 'Baumreihenvolumen im Umriss',
  by: {
    stage: (from) => `aus ${from}, nach Entwicklungsstadium`,
    'degree-days': (from, to) => `zwischen ${from} und ${to}, nach Gradtagen`
  },
  limits: {
    'apple-shares': 'Laub: 10 % seiner Fläche bei Vollblüte, 23 % beim Abfallen der Blütenblätter (Forshey et al. 1987, Apfel McIntosh); das Achtfache der Blüte vier Wochen später, aus dem Gedächtnis auf BBCH 73 gelegt. Andere Bäume weichen ab.',
    'volume-range': 'Umriss: Das Baumreihenvolumen wächst vom Frühjahr bis zum Sommer um 20 bis 30 %, höchstens um 50 % (BBZ Arenenberg, aus einer Zusammenfassung).',
    'one-stage': 'Der Bereich enthält 20 bis 30 % Zuwachs und ein um eins falsch abgelesenes Stadium. Er ist kein Vertrauensintervall.',
    alike: 'Höhe und Breite gelten als gleich wachsend, so wie sich das Laub entfaltet, und das unterste Laub als bleibend: angenommen, ohne Quelle.',
    pruning: 'Schnitt, maschineller Schnitt, Behang und hängende Äste sind nicht darin. Die Reihe messen, bevor man sich darauf verlässt.',
    'straight-between': 'Die Blattfläche geht mit den Gradtagen über der Basis (Litschmann et al. 2016, aus einer Zusammenfassung); dass es der Umriss auch tut, ist angenommen. Über einen langen Weg entfaltet sich Laub nicht gleichmäßig: wo die beiden Wege abweichen, messen.',
    'a-week': 'Der Bereich ist dasselbe Datum eine Woche früher und eine Woche später.',
    'density-left': 'Dort wurde keine Blattflächendichte gemessen, oder es bleibt zu wenig, um sie einzutragen: Es gilt die Vorgabe des Stadiums.',
    'from-bare': 'Aus einer kahlen Krone lässt sich kein Laub berechnen: Es gilt die Vorgabe des Stadiums.',
    'typical-year': 'Die Wetterdatei geht nach Monat und Tag: Ein typisches oder anderes Jahr steht für dieses.',
    bridged: 'Tage, die der Wetterdatei fehlen, werden aus ihren Nachbarn überbrückt.'
  },
  methods: {
    readings: 'Das Mittel der Grade jeder Ablesung über der Basis, darunter keine (gängige Praxis, ohne Quelle).',
    extremes: 'Das Mittel aus Tiefst- und Höchstwert des Tages minus Basis, darunter nichts (McMaster & Wilhelm 1997, aus dem Gedächtnis).',
    mean: 'Das Tagesmittel minus Basis, darunter nichts (gängige Praxis, ohne Quelle).'
  },
  weather: (days, from, to, readings) => `${days} ${days === 1 ? 'Tag' : 'Tage'}, ${from} bis ${to}, ${readings > 1 ? `${readings} Ablesungen am Tag` : 'eine Zeile je Tag'}.`,
  joined: (days, years, readings) =>
    `${days} ${days === 1 ? 'Tag' : 'Tage'}, ein Jahr, zusammengesetzt aus Monaten von ${years} ${years === 1 ? 'Jahr' : 'Jahren'}, ${readings > 1 ? `${readings} Ablesungen am Tag` : 'eine Zeile je Tag'}. Es geht nach Monat und Tag.`,
  base: (base) => `Basis ${base}.`,
  thin: (n) => (n === 1 ? '1 Tag hat zu wenige Ablesungen und zählt als fehlend.' : `${n} Tage haben zu wenige Ablesungen und zählen als fehlend.`),
  missing: (n) => (n === 1 ? '1 Tag dazwischen fehlt.' : `${n} Tage dazwischen fehlen.`),
  between: (from, to, sum, how) => `${from} bis ${to}: ${sum}${how}`,
  byMonthDay: (years) => (years === 1 ? ', nach Monat und Tag' : `, nach Monat und Tag, das Mittel von ${years} Jahren`),
  bridgedDays: (n) => (n === 1 ? '; 1 fehlender Tag überbrückt' : `; ${n} fehlende Tage überbrückt`),
  stop: (rung, finding) => `${rung}: ${finding}`,
  way: (share) => `${share} des Wegs`,
  reached: (rung, date) => `${rung} nach dem Laub: etwa ${date}`,
  treatmentsAssumed: 'Wo keine eingegeben war, wird eine Behandlung angenommen.',
  fixedAbove: (rung, product, fixed) => `Bei ${rung} brächte die eine Einstellung ${fixed} ${product} aus, mehr, als die Gebrauchsanleitung für diese Krone gibt: Sie steht zum Vergleich da, nicht zum Ausbringen.`,
  usesPassed: (product, uses, most) => `${product}: ${uses} Behandlungen sind geplant; die Gebrauchsanleitung erlaubt ${most} in einer Saison. Weniger planen.`,
  fixedIs: (rung) => `Eine Einstellung die ganze Saison: die von ${rung}.`,
  adaptedIs: 'Angepasst: jeder Stufe ihre eigene Einstellung, Mittel wie die Gebrauchsanleitung erlaubt.',
  label: 'Ersparnisse gelten für diese Pläne, nicht für Rechnungen. Die Gebrauchsanleitung entscheidet: Anpassen senkt das Wasser; das Mittel folgt nur so weit, wie Gebrauchsanleitung und örtliches Recht es zulassen.'
};
