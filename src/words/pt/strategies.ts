import type { Language } from '../words.ts';

const REFERENCE = 'Dose completa: a copa de referência dos pressupostos.';

export const STRATEGIES: Language['strategies'] = {
  'ground-area': { name: 'Por hectare de solo', line: 'O mesmo em cada hectare, seja o que for que lá esteja.', full: 'Dose completa: qualquer hectare.' },
  'row-length': { name: 'Comprimento de linha', line: 'Em proporção aos metros de linha; altura e largura não contam.', full: 'Dose completa: a distância entre linhas de referência.' },
  'crown-height': { name: 'Altura da copa', line: 'Em proporção à altura da saia ao topo; largura e distância entre linhas não contam.', full: 'Dose completa: a altura da copa de referência.' },
  'leaf-wall': { name: 'Área da parede foliar (LWA)', line: 'Em proporção às paredes tratadas, da saia ao topo; a largura não conta.', full: 'Dose completa: as duas paredes da copa de referência.' },
  'row-volume': { name: 'Volume de vegetação (TRV)', line: 'Em proporção à caixa da copa: da saia ao topo, maior largura.', full: REFERENCE },
  'us-row-volume': { name: 'TRV dos EUA', line: 'Caixa a partir do solo, maior largura, vezes densidade e fator de época.', full: 'Dose completa: o pomar padrão, 400 gal/acre em aplicação diluída.' },
  'metric-multiplier': { name: 'Multiplicador métrico', line: 'Caixa a partir do solo, maior largura, vezes um multiplicador em que 1 é denso.', full: 'Dose completa: o pomar padrão com folha densa.' },
  'swiss-affine': { name: 'Reta suíça', line: 'Caixa da copa, maior largura; a árvore mais pequena conserva parte da dose.', full: 'Dose completa: o volume de referência suíço.' },
  'unit-canopy-row': { name: 'Linha unitária de copa (UCR)', line: 'Linhas com 1 m de altura, 1 m de largura e 100 m de comprimento, contadas da saia ao topo e na maior largura.', full: REFERENCE },
  'row-distance': { name: 'Distância entre linhas e altura', line: 'Litros por 100 m de linha e metro de altura, da saia ao topo; a largura não conta.', full: 'Dose completa: a altura da copa e a distância entre linhas de referência.' },
  'stage-volume': { name: 'Estado e densidade', line: 'O que a copa retém dentro do seu contorno neste estado e com esta densidade.', full: 'Dose completa: a copa de referência com densidade média.' },
  'occupied-volume': { name: 'Volume ocupado', line: 'Litros por metro cúbico dentro do contorno real, sem as falhas.', full: REFERENCE },
  'leaf-area': { name: 'Área foliar', line: 'Uma deposição pretendida na folha que existe, a dividir pela parte que fica.', full: 'Dose completa: a copa de referência com a sua densidade foliar.' }
};

export const ACTS: Language['acts'] = {
  'label-dose-kept': 'mantém-se a dose por hectare do rótulo',
  'scaled-to-canopy': 'acompanha a copa',
  'not-above-label': 'limitada à dose do rótulo',
  floored: 'mantida no seu mínimo',
  'capped-at-label-maximum': 'atua o máximo do rótulo',
  'raised-to-label-minimum-water': 'elevada à água mínima do rótulo',
  'capped-at-label-maximum-water': 'limitada à água máxima do rótulo',
  'own-water': 'a sua própria água'
};
