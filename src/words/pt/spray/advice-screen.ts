import type { adviceScreen as EN } from '../../en/spray/advice-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the search for better settings. */
export const adviceScreen: Translated<typeof EN> = {
  title: 'Regulações melhores?',
  line: 'Bicos, a sua orientação, gotas, ar e velocidade dentro dos limites da máquina',
  intro: 'Procura regulações desta máquina que ponham mais nas árvores, de forma mais uniforme, com menos perdas, com os litros por hectare de hoje ou menos. Nada se altera sem que o diga.',
  start: 'Procurar regulações melhores',
  again: 'Procurar de novo',
  searching: 'A procurar …',
  part: (done) => `${done} feito`,
  stop: 'Parar',
  stopped: 'Parado.',
  failed: 'Não foi possível fazer a procura aqui. Carregue a página de novo.',
  outdated: 'A regulação mudou entretanto: o que aqui está é da anterior.',
  looked: (settings) => `${settings} regulações vistas.`,
  front: 'O que se pode conseguir',
  frontNote: 'Nenhuma destas é melhor em tudo do que outra. Por baixo de cada valor, a diferença face à de hoje; ≈ é sem diferença clara.',
  today: 'hoje',
  columns: { setting: 'regulação', trees: 'nas árvores', lost: 'perdido', cv: 'CV', rate: 'capacidade de trabalho' },
  plotTrees: 'nas árvores →',
  plotLost: 'perdido ↑',
  noClear: 'sem diferença clara',
  plan: (n, names) => (names ? `Regulação ${n}: ${names}` : `Regulação ${n}`),
  names: {
    'most-on-trees': 'mais nas árvores',
    'least-lost': 'menos perdas',
    'most-even': 'mais uniforme',
    fastest: 'mais rápida',
    'fewest-changes': 'menos alterações'
  },
  all: (effects) => `Tudo em conjunto ${effects}.`,
  steps: 'Passo a passo',
  volume: (litres) => `Pulveriza ${litres}.`,
  use: 'Usar esta regulação',
  useOf: (name) => `Usar: ${name}`,
  inUse: 'É a que está regulada agora',
  used: (name) => `Regulado: ${name}. Verifique as fitas e o papel antes de pulverizar uma parcela com ela.`,
  undo: 'Anular'
};
