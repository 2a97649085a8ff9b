import type { fittingWords as EN } from '../../en/headland/fitting-words.ts';
import type { Translated } from '../../translation.ts';

/** Names that the screen and the command line share. */
export const fittingWords: Translated<typeof EN> = {
  names: { 'no-change': 'Sem trocar bicos', 'few-changes': 'Poucas trocas', 'best-match': 'Melhor concordância' },
  weightings: { canopy: 'como está a copa', uniform: 'todos iguais', own: 'os meus pesos' },
  rules: {
    'upper-large': 'árvores grandes: 65 a 80 % pela metade superior',
    'upper-low-machine': 'máquina baixa, árvores de 6 a 7,6 m: cerca de 70 % de cima',
    'two-thirds': 'dois terços pela metade superior',
    'middle-heavy': 'citrinos: bicos maiores no meio',
    proportional: 'torre: 50 a 60 % pela metade superior'
  },
  limits: 'Calda em linha reta e caudais de tabela: o ar desvia a calda e os bicos gastos dão mais. Faça a recolha em cada bico e pendure papel antes de confiar nisto.',
  rounded: (step) => `As tabelas não têm um passo comum: os caudais foram contados em passos de ${step}, muito mais finos do que qualquer copo.`,
  bent: 'Algumas tabelas imprimem caudais a várias pressões: os calibres foram escolhidos pelo caudal à pressão atual e depois a pressão foi resolvida pela tabela. Aí a escolha é aproximada.'
};
