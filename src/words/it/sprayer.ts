import type { Language } from '../words.ts';

export const VERDICTS: Language['verdicts'] = {
  'in-leaf': 'su foglia',
  'over-top': 'oltre cima',
  'under-skirt': 'sotto base',
  shut: 'chiuso',
  unknown: 'non noto'
};

export const SIDES: Language['sides'] = { left: 'sinistro', right: 'destro' };

export const PATTERNS: Language['patterns'] = {
  'every-alley': 'ogni interfila, entrambi i lati aperti',
  'one-side-both-faces': 'ogni interfila due volte, lato {side} aperto, alla fine entrambe le facce',
  'one-side-one-face': 'una faccia di ogni filare, lato {side} aperto',
  'alternate-alleys': 'interfile alterne, entrambi i lati aperti',
  'whole-rows': '{rows} filari interi per passata',
  swath: 'una fascia di {width} per passata'
};

/** Droplet size classes as ISO 25358 orders them; they agree with the Italian for drops. */
export const DROPLETS: Language['droplets'] = {
  XF: 'estremamente fini',
  VF: 'molto fini',
  F: 'fini',
  M: 'medie',
  C: 'grossolane',
  VC: 'molto grossolane',
  XC: 'estremamente grossolane',
  UC: 'ultra grossolane'
};

export const COLOURS: Language['colours'] = {
  purple: 'viola',
  olive: 'oliva',
  pink: 'rosa',
  orange: 'arancio',
  'light-green': 'verde chiaro',
  green: 'verde',
  yellow: 'giallo',
  lilac: 'lilla',
  blue: 'blu',
  'brown-red': 'rosso bruno',
  red: 'rosso',
  brown: 'marrone',
  grey: 'grigio',
  white: 'bianco',
  'light-blue': 'azzurro',
  'yellow-green': 'verde giallastro',
  black: 'nero'
};

/** Air given against air needed, ways to match them, and the judge. */
export const AIR: Language['air'] = {
  short: 'Aria necessaria circa {needed}, data {given}: mancano {off}.',
  over: 'Aria necessaria circa {needed}, data {given}: {off} di troppo.',
  matched: 'Aria necessaria circa {needed}, data {given}: adeguata entro {tolerance}.',
  unknown: 'L’aria non si calcola: {reason}',
  rule: 'La regola riempie l’interfila: aria trascinata {k} volte, {certainty}.',
  speed: 'La velocità {value} sarebbe adeguata; la stessa portata dà allora {volume}.',
  'speed-bare': 'La velocità {value} sarebbe adeguata; i litri per ettaro cambiano con essa.',
  'speed-beyond': 'La velocità {value} sarebbe adeguata, ma il limite della macchina è {limit}.',
  gear: 'La marcia {gear} dà {value} a questo regime della presa di potenza, {share} del necessario; portata e velocità restano.',
  pto: 'La presa di potenza a {value} in marcia {gear} sarebbe adeguata. Una pompa su quell’albero cambia con essa la portata: regolare di nuovo la pressione.',
  'pto-beyond': 'La presa di potenza a {value} in marcia {gear} sarebbe adeguata, ma il limite della macchina è {limit}.',
  judge:
    'Chi giudica: legare nastri in cima alle piante e passare con il ventilatore acceso, senza irrorare. Devono sventolare in obliquo verso l’esterno. Se restano appesi, si va troppo veloci o l’aria è poca; se stanno dritti verso l’alto, si può andare più veloci o usare meno aria. Le foglie sulla faccia lontana si muovono appena.'
};
