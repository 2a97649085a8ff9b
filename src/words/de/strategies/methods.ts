import type { METHODS as EN } from '../../en/strategies/methods.ts';
import type { Translated } from '../../translation.ts';

/** Sätze des Methodentexts. */
export const METHODS: Translated<typeof EN> = {
  opening: (strategies, measurements) =>
    `Wasser und Dosis wurden mit Rowtailor für eine Krone (${measurements}) nach ${strategies === 1 ? 'einer Strategie' : `${strategies} Strategien`} berechnet. Alle Werte sind metrisch; jede Formel steht so da, wie sie gerechnet wurde.`,
  canopy: (formulas) => `Kennzahlen der Krone: ${formulas}.`,
  strategy: (name, cited, formulas, constants) => `${name}${cited}: ${formulas}${constants ? `; mit ${constants}` : ''}.`,
  own: 'eine eigene Formel, deren Dimension nicht geprüft wurde',
  refused: (name) => `${name} ergibt für diese Krone keinen Wert.`,
  label: (name, rate, rules, formulas) => `Die Gebrauchsanleitung von ${name} nennt ${rate}. ${rules}${formulas ? ` Mittel: ${formulas}.` : ''}`,
  bases: {
    'per-hectare': 'je Hektar Grundfläche',
    'per-100-l-dilute': 'je 100 L bei einfacher Konzentration',
    'per-leaf-wall': 'je 10 000 m² Laubwandfläche',
    'per-crown-height': 'je Hektar und Meter Kronenhöhe',
    'per-row-volume': 'je 10 000 m³ Baumreihenvolumen',
    'percent-of-water': 'vom Bezugswasser, in Prozent davon'
  },
  rate: (amount, basis) => `${amount} ${basis}`,
  adaptations: {
    none: 'Die Dosis wurde nicht an die Krone angepasst.',
    downward: 'Die Dosis wurde mit dem Dosisindex gesenkt, nie erhöht.',
    required: 'Die Dosis wurde an den Dosisindex angepasst, nach oben und unten.',
    byItself: 'Der Bezug der Gebrauchsanleitung folgt selbst der Krone.'
  },
  floor: (share) => ` Sie wurde nicht unter ${share} der Dosis der Gebrauchsanleitung gesenkt, eine eigene Untergrenze.`,
  most: (amount) => ` Sie wurde auf die Höchstmenge der Gebrauchsanleitung von ${amount} je Hektar begrenzt.`,
  analytic: (errors, coverage, cited) =>
    `Intervalle sind 95 %, durch Fehlerfortpflanzung erster Ordnung der Standardfehler (${errors})${cited}; ein halbes Intervall sind ${coverage} Standardfehler. Sie enthalten nichts anderes: weder die Konstanten noch die Wahl der Strategie.`,
  student: (nu) => `Student-t mit ${nu} ${nu === 1 ? 'Freiheitsgrad' : 'Freiheitsgraden'}`,
  normal: 'der Normalverteilung',
  coverage: (factor, of) => `${factor} (${of})`,
  correlation: (r) => `Korrelation von Höhe und Breite ${r}`,
  draws: (draws, seed, distribution, cited) =>
    `Daneben wurden ${draws} Kronen aus denselben Fehlern gezogen, ${distribution}, mit dem Generator Philox 4×32-10 und dem Startwert ${seed}${cited}; ihre Intervalle sind die wahrscheinlichkeitssymmetrischen 95 % der Ziehungen. Kronen, die nicht stehen können, wurden neu gezogen.`,
  drawnNormal: 'normalverteilt',
  drawnStudent: (nu) => `verteilt wie Student-t mit ${nu} ${nu === 1 ? 'Freiheitsgrad' : 'Freiheitsgraden'}`,
  drawnAssumptions: (ranges) => `Konstanten, für die ein Bereich angegeben ist, wurden mitgezogen, gleichmäßig darüber: ${ranges}.`,
  range: (name, low, high) => `${name} ${low} bis ${high}`,
  closing: 'Werte und Formeln mit dem Vermerk „aus dem Gedächtnis“ müssen am Werk geprüft werden, bevor sie zitiert werden. Die Gebrauchsanleitung des Mittels entscheidet in jedem Fall.',
  certainties: {
    exact: 'genau',
    measured: 'gemessen',
    stated: 'vom Nutzer angegeben',
    published: 'veröffentlicht',
    derived: 'aus veröffentlichten Werten abgeleitet',
    practice: 'gängige Praxis',
    memory: 'aus dem Gedächtnis',
    assumed: 'angenommen'
  },
  notWorks: { habit: 'gängige Praxis', arithmetic: 'nach Definition', geometry: 'Geometrie', 'sqrt-law': 'Hydraulik', 'fan-laws': 'Gebläsegesetze' }
};
