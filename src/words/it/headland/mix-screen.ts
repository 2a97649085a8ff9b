import type { mixScreen as EN } from '../../en/headland/mix-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Loads step. */
export const mixScreen: Translated<typeof EN> = {
  title: 'Carichi da preparare',
  answer: (count, amount) => `${count} × ${amount}`,
  last: (amount) => `e un ultimo di ${amount}`,
  each: { one: (area) => `per ${area}`, many: (area) => `ciascuno ${area}` },
  eachRows: { one: (area, rows) => `per ${area}, circa ${rows} filari`, many: (area, rows) => `ciascuno ${area}, circa ${rows} filari` },
  extra: { one: (amount) => `Contiene ${amount} in più: ciò che resta nel serbatoio.`, many: (amount) => `Il primo contiene ${amount} in più: ciò che resta nel serbatoio.` },
  basis: (area, from, volume, by) => `${area} ${from}; ${volume} ${by}.`,
  noLoads: 'Ancora nessun carico',
  answers: { count: 'Carichi', load: 'Miscela di un carico', area: 'Superficie di un carico', volume: 'Acqua per superficie', strength: (name) => `Concentrazione della miscela, ${name}`, product: (name) => `${name}, ogni carico`, beyond: 'Oltre la superficie' },

  products: 'Nel serbatoio',
  product: (n) => `prodotto ${n}`,
  kindLabel: 'tipo di prodotto',
  kindUnknown: 'non noto',
  atHand: 'disponibile',
  needed: (amount) => `${amount} in tutto`,
  dose: (dose) => `dose ${dose}`,
  add: 'Aggiungi un prodotto',
  allIn: 'Ogni etichetta del documento è nel serbatoio. Crearne un’altra in Filare.',
  noLabel: 'Ancora nessuna etichetta. Crearne una in Filare: dose, massimo e acqua come stampati.',
  remove: (name) => `Togli ${name}`,

  ground: 'Superficie e serbatoio',
  area: 'superficie trattata',
  rows: 'filari dell’appezzamento',
  rowLength: 'lunghezza dei filari',
  fillsName: 'Come si dividono i carichi',
  fills: { equal: 'tutti uguali', full: 'pieni, l’ultimo minore' },
  outerName: 'Passate esterne',
  outer: { 'one-sided': 'lato esterno chiuso', 'two-sided': 'due lati aperti' },
  turn: 'una svolta',
  fill: 'un riempimento, col tragitto',

  order: 'Ordine di miscelazione',
  cards: 'Al punto di riempimento',
  progress: (done, all) => `preparati ${done} di ${all}`,
  load: (n) => `Carico ${n}`,
  fillIn: 'versare',
  landRows: (area, rows) => `${area}, circa ${rows} filari`,
  ofWhich: (amount) => `di cui ${amount} per ciò che resta`,
  filled: 'preparato',
  markFilled: (n) => `Carico ${n} preparato`,
  putInOf: (n, name) => `versato nel carico ${n}, ${name}`,
  more: (n) => (n === 1 ? 'Un altro carico compare quando questi sono preparati' : `Altri ${n} carichi compaiono quando questi sono preparati`),

  work: 'Lavoro',
  parts: { spraying: 'irrorazione', outer: 'passate esterne', turning: 'svolte', filling: 'riempimenti' },
  inAll: 'in tutto',
  effective: (rate, share) => `${rate} con svolte e riempimenti, ${share} della capacità durante l’irrorazione`,
  passes: (passes, way) => `${passes} passate, ${way} lungo i filari`,
  workAnswers: { total: 'Tempo in tutto', effective: 'Capacità di lavoro con svolte e riempimenti', efficiency: 'Rendimento operativo', faces: 'Miscela per facce dei filari', spare: 'Oltre i filari esterni' },

  rinse: 'Ciò che resta',
  cautions: 'Prima di miscelare',
  active: {
    open: 'L’etichetta indica la sostanza attiva?',
    rate: 'sostanza attiva',
    percent: 'nel prodotto, in peso',
    result: (amount) => `${amount} di prodotto`,
    use: 'Usa come dose di etichetta'
  }
};
