import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** What is said where strategies are compared. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'A fórmula de {name} não dá aqui nenhum número: uma divisão por 0, uma raiz ou um logaritmo de algo abaixo de 0, ou um resultado abaixo de 0. Altere a fórmula.',
    'draws-out-of-range': 'Pediram-se {value} simulações; fazem-se de {least} a {most}. Peça um número entre estes.',
    'seed-not-whole': 'A semente é {value}; é preciso um número inteiro de 0 a 9 007 199 254 740 991. Escreva um.',
    'nothing-uncertain': 'Não se indicou nenhum erro das medições, por isso não há nada a simular. Indique os erros padrão da altura, da saia, da largura ou da distância entre linhas, ou faça uma amostra das árvores.',
    'draws-given-up': 'Os erros são tão grandes que a maior parte das copas simuladas a partir deles não pode existir: {tries} seguidas não tinham largura ou tinham a saia acima do topo. Meça mais árvores.',
    'no-label-dose': 'A parcela não tem rótulo, por isso não há dose. Escolha um.'
  },
  formulas: {
    'own-index': 'Índice de dose por uma fórmula própria',
    'own-water': 'Água por uma fórmula própria'
  },
  validity: {
    'own-formula': 'Uma fórmula própria. Não se verifica se as suas unidades batem certo.'
  }
};
