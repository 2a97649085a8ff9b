import type { mixScreen as EN } from '../../en/headland/mix-screen.ts';
import type { Translated } from '../../translation.ts';

/** Beside a load that takes hardly a row. */
const filas = (rows: string): string => (rows === '1' ? 'cerca de 1 fila' : `unas ${rows} filas`);

/** Labels of the Loads step. */
export const mixScreen: Translated<typeof EN> = {
  title: 'Cargas que llenar',
  answer: (count, amount) => `${count} × ${amount}`,
  last: (amount) => `y una última de ${amount}`,
  each: { one: (area) => `para ${area}`, many: (area) => `${area} cada una` },
  eachRows: { one: (area, rows) => `para ${area}, ${filas(rows)}`, many: (area, rows) => `${area} cada una, ${filas(rows)}` },
  extra: { one: (amount) => `Lleva ${amount} más: lo que se queda en el tanque.`, many: (amount) => `La primera lleva ${amount} más: lo que se queda en el tanque.` },
  basis: (area, from, volume, by) => `${area} ${from}; ${volume} ${by}.`,
  noLoads: 'Aún no hay cargas',
  answers: { count: 'Cargas', load: 'Caldo de una carga', area: 'Terreno de una carga', volume: 'Agua por superficie', strength: (name) => `Concentración del caldo, ${name}`, product: (name) => `${name}, cada carga`, beyond: 'Más allá de la superficie' },

  products: 'En el tanque',
  product: (n) => `producto ${n}`,
  kindLabel: 'tipo de producto',
  kindUnknown: 'desconocido',
  atHand: 'disponible',
  needed: (amount) => `${amount} en total`,
  dose: (dose) => `dosis ${dose}`,
  add: 'Añadir un producto',
  allIn: 'Todas las etiquetas del documento están en el tanque. Haga otra en la sección Fila.',
  noLabel: 'Aún no hay etiqueta. Haga una en la sección Fila: dosis, máximo y agua tal como están impresos.',
  remove: (name) => `Quitar ${name}`,

  ground: 'Terreno y tanque',
  area: 'superficie tratada',
  rows: 'filas de la parcela',
  rowLength: 'longitud de las filas',
  fillsName: 'Cómo se reparten las cargas',
  fills: { equal: 'todas iguales', full: 'llenas, la última menor' },
  outerName: 'Pasadas exteriores',
  outer: { 'one-sided': 'lado exterior cerrado', 'two-sided': 'los dos lados abiertos' },
  turn: 'un giro',
  fill: 'un llenado, con el trayecto',

  order: 'Orden de mezcla',
  cards: 'En el punto de llenado',
  progress: (done, all) => `${done} de ${all} llenas`,
  load: (n) => `Carga ${n}`,
  fillIn: 'echar',
  landRows: (area, rows) => `${area}, ${filas(rows)}`,
  ofWhich: (amount) => `de ello ${amount} por lo que se queda`,
  filled: 'llena',
  markFilled: (n) => `Carga ${n} llena`,
  putInOf: (n, name) => `echado en la carga ${n}, ${name}`,
  more: (n) => (n === 1 ? 'aparece 1 carga más cuando se llenan estas' : `aparecen ${n} cargas más cuando se llenan estas`),

  work: 'Trabajo',
  parts: { spraying: 'pulverizar', outer: 'pasadas exteriores', turning: 'girar', filling: 'llenar' },
  inAll: 'en total',
  effective: (rate, share) => `${rate} con giros y llenados, el ${share} de la capacidad al pulverizar`,
  passes: (passes, way) => `${passes} pasadas, ${way} a lo largo de las filas`,
  workAnswers: { total: 'Tiempo total', effective: 'Capacidad de trabajo con giros y llenados', efficiency: 'Eficiencia de campo', faces: 'Caldo por las caras de las filas', spare: 'Más allá de las filas exteriores' },

  rinse: 'Lo que se queda',
  cautions: 'Antes de mezclar',
  active: {
    open: '¿La etiqueta da sustancia activa?',
    rate: 'sustancia activa',
    percent: 'en el producto, en peso',
    result: (amount) => `${amount} de producto`,
    use: 'Usar como dosis de la etiqueta'
  }
};
