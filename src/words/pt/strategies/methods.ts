import type { METHODS as EN } from '../../en/strategies/methods.ts';
import type { Translated } from '../../translation.ts';

/** Sentences of the methods text. */
export const METHODS: Translated<typeof EN> = {
  opening: (strategies, measurements) =>
    `A água e a dose foram calculadas com o Rowtailor para uma copa (${measurements}) segundo ${strategies === 1 ? 'uma estratégia' : `${strategies} estratégias`}. Todos os valores são métricos; cada fórmula está como foi calculada.`,
  canopy: (formulas) => `Valores da copa: ${formulas}.`,
  strategy: (name, cited, formulas, constants) => `${name}${cited}: ${formulas}${constants ? `; com ${constants}` : ''}.`,
  own: 'uma fórmula própria cuja dimensão não foi verificada',
  refused: (name) => `${name} não dá nenhum valor nesta copa.`,
  label: (name, rate, rules, formulas) => `O rótulo de ${name} indica ${rate}. ${rules}${formulas ? ` Produto: ${formulas}.` : ''}`,
  bases: {
    'per-hectare': 'um hectare de solo',
    'per-100-l-dilute': '100 L de calda em aplicação diluída',
    'per-leaf-wall': '10 000 m² de parede foliar',
    'per-crown-height': 'um hectare e um metro de altura da copa',
    'per-row-volume': '10 000 m³ de volume de vegetação',
    'percent-of-water': 'a água de referência, em percentagem dela'
  },
  /** "2 kg para um hectare de solo" */
  rate: (amount, basis) => `${amount} para ${basis}`,
  adaptations: {
    none: 'A dose não foi adaptada à copa.',
    downward: 'A dose foi reduzida com o índice de dose, nunca aumentada.',
    required: 'A dose foi adaptada ao índice de dose, para cima e para baixo.',
    byItself: 'A própria base do rótulo acompanha a copa.'
  },
  floor: (share) => ` Não foi reduzida abaixo de ${share} da dose do rótulo, um mínimo próprio.`,
  most: (amount) => ` Nunca está acima do máximo do rótulo, ${amount} por hectare.`,
  analytic: (errors, coverage, cited) =>
    `Os intervalos são a 95 %, por propagação de primeira ordem dos erros padrão (${errors})${cited}, sendo metade de um intervalo ${coverage} erros padrão. Não contêm mais nada: nem as constantes nem a escolha da estratégia.`,
  student: (nu) => `t de Student com ${nu} ${nu === 1 ? 'grau' : 'graus'} de liberdade`,
  normal: 'da distribuição normal',
  /** "2,09 (t de Student …)" */
  coverage: (factor, of) => `${factor} (${of})`,
  correlation: (r) => `correlação da altura e da largura ${r}`,
  draws: (draws, seed, distribution, cited) =>
    `Ao lado deles, ${draws} copas foram simuladas a partir dos mesmos erros, ${distribution}, com o gerador Philox 4×32-10 e a semente ${seed}${cited}; os seus intervalos são os 95 % probabilisticamente simétricos das simulações. As copas que não podem existir foram simuladas de novo.`,
  drawnNormal: 'com distribuição normal',
  drawnStudent: (nu) => `distribuídas como t de Student com ${nu} ${nu === 1 ? 'grau' : 'graus'} de liberdade`,
  drawnAssumptions: (ranges) => `As constantes para as quais se indica um intervalo foram simuladas com elas, uniformemente ao longo dele: ${ranges}.`,
  range: (name, low, high) => `${name} ${low} a ${high}`,
  closing: 'Os valores e as fórmulas marcados “de memória” têm de ser verificados na obra antes de serem citados. O rótulo do produto manda em todos os casos.',
  certainties: {
    exact: 'exato',
    measured: 'medido',
    stated: 'declarado pelo utilizador',
    published: 'publicado',
    derived: 'derivado de valores publicados',
    practice: 'prática comum',
    memory: 'de memória',
    assumed: 'pressuposto'
  },
  notWorks: { habit: 'prática comum', arithmetic: 'por definição', geometry: 'geometria', 'sqrt-law': 'hidráulica', 'fan-laws': 'leis dos ventiladores' }
};
