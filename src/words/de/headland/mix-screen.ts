import type { mixScreen as EN } from '../../en/headland/mix-screen.ts';
import type { Translated } from '../../translation.ts';

/** Beschriftungen des Schritts Füllungen. */
export const mixScreen: Translated<typeof EN> = {
  title: 'Zu füllen',
  answer: (count, amount) => `${count} × ${amount}`,
  last: (amount) => `und eine letzte mit ${amount}`,
  each: { one: (area) => `für ${area}`, many: (area) => `je ${area}` },
  eachRows: { one: (area, rows) => `für ${area}, etwa ${rows} Reihen`, many: (area, rows) => `je ${area}, etwa ${rows} Reihen` },
  extra: { one: (amount) => `Sie enthält ${amount} mehr: die technische Restmenge im Behälter.`, many: (amount) => `Die erste enthält ${amount} mehr: die technische Restmenge im Behälter.` },
  basis: (area, from, volume, by) => `${area} ${from}; ${volume} ${by}.`,
  noLoads: 'Noch keine Füllungen',
  answers: { count: 'Füllungen', load: 'Brühe einer Füllung', area: 'Fläche einer Füllung', volume: 'Wasser je Fläche', strength: (name) => `Konzentration der Brühe, ${name}`, product: (name) => `${name}, je Füllung`, beyond: 'Über die Fläche hinaus' },

  products: 'Im Behälter',
  product: (n) => `Mittel ${n}`,
  kindLabel: 'Art des Mittels',
  kindUnknown: 'nicht bekannt',
  atHand: 'vorrätig',
  needed: (amount) => `${amount} insgesamt`,
  dose: (dose) => `Dosis ${dose}`,
  add: 'Mittel hinzufügen',
  allIn: 'Jedes Mittel des Dokuments ist im Behälter. Ein weiteres an der Station Reihe anlegen.',
  noLabel: 'Noch kein Mittel. Eines an der Station Reihe anlegen: Aufwandmenge, Höchstmenge und Wasser wie in der Gebrauchsanleitung.',
  remove: (name) => `${name} herausnehmen`,

  ground: 'Fläche und Behälter',
  area: 'behandelte Fläche',
  rows: 'Reihen der Anlage',
  rowLength: 'Reihenlänge',
  fillsName: 'Wie die Füllungen aufgeteilt werden',
  fills: { equal: 'alle gleich', full: 'voll, letzte kleiner' },
  outerName: 'Randfahrten',
  outer: { 'one-sided': 'Außenseite zu', 'two-sided': 'beide Seiten offen' },
  turn: 'einmal wenden',
  fill: 'einmal füllen, mit dem Weg',

  order: 'Reihenfolge beim Ansetzen',
  cards: 'Am Füllplatz',
  progress: (done, all) => `${done} von ${all} gefüllt`,
  load: (n) => `Füllung ${n}`,
  fillIn: 'einfüllen',
  landRows: (area, rows) => `${area}, etwa ${rows} Reihen`,
  ofWhich: (amount) => `${amount} davon für die technische Restmenge`,
  filled: 'gefüllt',
  markFilled: (n) => `Füllung ${n} gefüllt`,
  putInOf: (n, name) => `in Füllung ${n} gegeben, ${name}`,
  more: (n) => (n === 1 ? '1 weitere Füllung erscheint, wenn diese gefüllt sind' : `${n} weitere Füllungen erscheinen, wenn diese gefüllt sind`),

  work: 'Arbeit',
  parts: { spraying: 'Ausbringen', outer: 'Randfahrten', turning: 'Wenden', filling: 'Füllen' },
  inAll: 'insgesamt',
  effective: (rate, share) => `${rate} mit Wenden und Füllen, ${share} der Flächenleistung beim Ausbringen`,
  passes: (passes, way) => `${passes} ${passes === '1' ? 'Überfahrt' : 'Überfahrten'}, ${way} entlang der Reihen`,
  workAnswers: { total: 'Zeit insgesamt', effective: 'Flächenleistung mit Wenden und Füllen', efficiency: 'Zeitausnutzung', faces: 'Brühe nach Reihenseiten', spare: 'Über die Randreihen hinaus' },

  rinse: 'Was zurückbleibt',
  cautions: 'Vor dem Ansetzen',
  active: {
    open: 'Nennt die Gebrauchsanleitung den Wirkstoff?',
    rate: 'Wirkstoff',
    percent: 'im Mittel, nach Gewicht',
    result: (amount) => `${amount} Mittel`,
    use: 'Als Aufwandmenge nehmen'
  }
};
