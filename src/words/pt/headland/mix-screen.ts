import type { mixScreen as EN } from '../../en/headland/mix-screen.ts';
import type { Translated } from '../../translation.ts';

/** About so many rows. */
const linhas = (rows: string): string => `cerca de ${rows} ${rows === '1' ? 'linha' : 'linhas'}`;

/** Labels of the Loads step. */
export const mixScreen: Translated<typeof EN> = {
  title: 'Cargas a encher',
  answer: (count, amount) => `${count} × ${amount}`,
  last: (amount) => `e uma última de ${amount}`,
  each: { one: (area) => `para ${area}`, many: (area) => `${area} cada uma` },
  eachRows: { one: (area, rows) => `para ${area}, ${linhas(rows)}`, many: (area, rows) => `${area} cada uma, ${linhas(rows)}` },
  extra: { one: (amount) => `Leva mais ${amount}: o que fica no tanque.`, many: (amount) => `A primeira leva mais ${amount}: o que fica no tanque.` },
  basis: (area, from, volume, by) => `${area} ${from}; ${volume} ${by}.`,
  noLoads: 'Ainda sem cargas',
  answers: { count: 'Cargas', load: 'Calda de uma carga', area: 'Terreno de uma carga', volume: 'Água por área', strength: (name) => `Concentração da calda, ${name}`, product: (name) => `${name}, cada carga`, beyond: 'Além da área' },

  products: 'No tanque',
  product: (n) => `produto ${n}`,
  kindLabel: 'tipo de produto',
  kindUnknown: 'desconhecido',
  atHand: 'disponível',
  needed: (amount) => `${amount} no total`,
  dose: (dose) => `dose ${dose}`,
  add: 'Juntar um produto',
  allIn: 'Todos os rótulos do documento estão no tanque. Crie outro na área Linha.',
  noLabel: 'Ainda sem rótulo. Crie um na área Linha: dose, máximo e água como estão impressos.',
  remove: (name) => `Retirar ${name}`,

  ground: 'Terreno e tanque',
  area: 'área tratada',
  rows: 'linhas da parcela',
  rowLength: 'comprimento de linha',
  fillsName: 'Como se repartem as cargas',
  fills: { equal: 'todas iguais', full: 'cheias, a última menor' },
  outerName: 'Passagens exteriores',
  outer: { 'one-sided': 'lado de fora fechado', 'two-sided': 'os dois lados abertos' },
  turn: 'uma volta na cabeceira',
  fill: 'um enchimento, com o caminho',

  order: 'Ordem de mistura',
  cards: 'No ponto de enchimento',
  progress: (done, all) => `${done} de ${all} cheias`,
  load: (n) => `Carga ${n}`,
  fillIn: 'deitar',
  landRows: (area, rows) => `${area}, ${linhas(rows)}`,
  ofWhich: (amount) => `dos quais ${amount} pelo que fica no tanque`,
  filled: 'cheia',
  markFilled: (n) => `Carga ${n} cheia`,
  putInOf: (n, name) => `deitado na carga ${n}, ${name}`,
  more: (n) => (n === 1 ? 'mais 1 carga aparece à medida que estas se enchem' : `mais ${n} cargas aparecem à medida que estas se enchem`),

  work: 'Trabalho',
  parts: { spraying: 'a pulverizar', outer: 'passagens exteriores', turning: 'voltas', filling: 'enchimentos' },
  inAll: 'no total',
  effective: (rate, share) => `${rate} com voltas e enchimentos, ${share} da capacidade a pulverizar`,
  passes: (passes, way) => `${passes} passagens, ${way} ao longo das linhas`,
  workAnswers: { total: 'Tempo total', effective: 'Capacidade de trabalho com voltas e enchimentos', efficiency: 'Eficiência de campo', faces: 'Calda pelas faces das linhas', spare: 'Além das linhas exteriores' },

  rinse: 'O que fica no tanque',
  cautions: 'Antes de preparar a calda',
  active: {
    open: 'O rótulo indica substância ativa?',
    rate: 'substância ativa',
    percent: 'no produto, em peso',
    result: (amount) => `${amount} de produto`,
    use: 'Usar como dose do rótulo'
  }
};
