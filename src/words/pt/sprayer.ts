import type { Language } from '../words.ts';

export const VERDICTS: Language['verdicts'] = {
  'in-leaf': 'na folha',
  'over-top': 'por cima',
  'under-skirt': 'sob a saia',
  shut: 'fechado',
  unknown: 'desconhecido'
};

export const SIDES: Language['sides'] = { left: 'esquerdo', right: 'direito' };

export const PATTERNS: Language['patterns'] = {
  'every-alley': 'todas as entrelinhas, os dois lados abertos',
  'one-side-both-faces': 'todas as entrelinhas duas vezes, lado {side} aberto, no fim as duas faces',
  'one-side-one-face': 'uma face de cada linha, lado {side} aberto',
  'alternate-alleys': 'entrelinhas alternadas, os dois lados abertos',
  'whole-rows': '{rows} linhas inteiras por passagem',
  swath: 'uma faixa de {width} por passagem'
};

/** Droplet size classes as ISO 25358 orders them. */
export const DROPLETS: Language['droplets'] = {
  XF: 'extremamente fina',
  VF: 'muito fina',
  F: 'fina',
  M: 'média',
  C: 'grossa',
  VC: 'muito grossa',
  XC: 'extremamente grossa',
  UC: 'ultragrossa'
};

export const COLOURS: Language['colours'] = {
  purple: 'roxo',
  olive: 'azeitona',
  pink: 'rosa',
  orange: 'laranja',
  'light-green': 'verde-claro',
  green: 'verde',
  yellow: 'amarelo',
  lilac: 'lilás',
  blue: 'azul',
  'brown-red': 'vermelho-acastanhado',
  red: 'vermelho',
  brown: 'castanho',
  grey: 'cinzento',
  white: 'branco',
  'light-blue': 'azul-claro',
  'yellow-green': 'verde-amarelado',
  black: 'preto'
};

/** Air given against air needed, ways to match them, and the judge. */
export const AIR: Language['air'] = {
  short: 'Ar necessário, cerca de {needed}; há {given}: falta {off}.',
  over: 'Ar necessário, cerca de {needed}; há {given}: sobra {off}.',
  matched: 'Ar necessário, cerca de {needed}; há {given}: certo dentro de {tolerance}.',
  unknown: 'O ar não é calculado: {reason}',
  rule: 'A regra enche a entrelinha: ar arrastado {k} vezes, {certainty}.',
  speed: 'A velocidade {value} acertaria; o mesmo caudal dá então {volume}.',
  'speed-bare': 'A velocidade {value} acertaria; os litros por hectare mudam com ela.',
  'speed-beyond': 'A velocidade {value} acertaria, mas o limite da máquina é {limit}.',
  gear: 'A marcha {gear} dá {value} a esta rotação da TDF, {share} do necessário; caudal e velocidade mantêm-se.',
  pto: 'TDF a {value} na marcha {gear} acertaria. Uma bomba nesse veio muda o caudal com ela: regule de novo a pressão.',
  'pto-beyond': 'TDF a {value} na marcha {gear} acertaria, mas o limite da máquina é {limit}.',
  judge:
    'O juiz: ate fitas no topo das árvores e passe com o ventilador ligado, sem pulverizar. Devem abanar em diagonal para fora. Se continuam penduradas, vai depressa demais ou há pouco ar; se ficam na vertical, pode ir mais depressa ou usar menos ar. As folhas da face mais afastada apenas estremecem.'
};
