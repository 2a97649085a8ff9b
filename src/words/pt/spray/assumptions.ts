import type { AssumptionWords } from '../../words.ts';

const drops = (name: string): AssumptionWords => ({
  label: `Gota mediana, ${name}`,
  meaning: 'Metade da calda está em gotas menores. As classes comparam bicos; não têm limites em µm.'
});

/** Every constant of the spray model. */
export const SPRAY_ASSUMPTION_WORDS: Readonly<Record<string, AssumptionWords>> = {
  'spray.projection': { label: 'Folha virada para a calda', meaning: 'Parte da área foliar que se põe no caminho, descontadas as folhas umas atrás das outras. Ajustada a uma só série em vinha; é o que mais move a resposta.' },
  'spray.leaf-beta': { label: 'Desvio em torno de uma folha', meaning: 'Quanto maior, mais gotas pequenas seguem o ar em torno de uma folha.' },
  'spray.leaf-size': { label: 'Tamanho da folha', meaning: 'Largura de uma folha transversal ao ar.' },
  'spray.wood-beta': { label: 'Desvio em torno de um raminho', meaning: 'Quanto maior, mais gotas pequenas seguem o ar em torno de um raminho.' },
  'spray.wood-size': { label: 'Tamanho dos raminhos', meaning: 'Grossura da madeira que apanha gotas.' },
  'spray.wood-density': { label: 'Madeira numa árvore sem folha', meaning: 'Silhueta da madeira num metro cúbico de copa.' },
  'spray.canopy-drag': { label: 'Arrasto da copa', meaning: 'Com que força a folha e a madeira travam o ar.' },
  'spray.entrainment': { label: 'Ar arrastado por uma cortina', meaning: 'Com que rapidez o ar de uma fenda leva consigo o ar parado e abranda.' },
  'spray.round-entrainment': { label: 'Ar arrastado por uma boca', meaning: 'Com que rapidez o ar de uma saída redonda leva consigo o ar parado e abranda.' },
  'spray.plume-spread': { label: 'Abertura do jato de um bico', meaning: 'Desvio padrão da sua direção, como parte do ângulo total do cone.' },
  'spray.shell-share': { label: 'Profundidade da camada de folha', meaning: 'Parte exterior da meia largura em que a folha é mais densa.' },
  'spray.core-ratio': { label: 'Folha dentro da copa', meaning: 'Densidade foliar da parte interior sobre a da camada exterior.' },
  'spray.cross-wind': { label: 'Vento através das linhas', meaning: 'No topo da copa, da esquerda. Curva o ar no desenho. O modelo não mostra o que o vento faz à deposição.' },
  'spray.wind-decay': { label: 'Vento perdido na copa', meaning: 'Com que rapidez o vento baixa do topo da copa para baixo.' },
  'spray.delta-t': { label: 'Delta T para gotas que secam', meaning: 'Bolbo seco menos bolbo húmido. Quanto maior, mais depressa as gotas encolhem em voo. Onde se indicou o tempo do dia vem daí, a não ser que o fixe aqui.' },
  'spray.fine-part': { label: 'Parte fina do espectro', meaning: 'Tamanho de gota abaixo do qual está um décimo da calda, sobre o tamanho mediano.' },
  'spray.non-volatile': { label: 'O que não evapora', meaning: 'Parte do líquido que fica quando uma gota secou, em volume.' },
  'spray.release-speed': { label: 'Velocidade à saída do bico', meaning: 'Velocidade a que as gotas deixam o bico.' },
  'spray.rows': { label: 'Linhas tratadas de cada lado', meaning: 'Linhas da parcela de cada lado da máquina. Para lá da última é fora da parcela.' },
  'spray.vmd-XF': drops('extremamente fina'),
  'spray.vmd-VF': drops('muito fina'),
  'spray.vmd-F': drops('fina'),
  'spray.vmd-M': drops('média'),
  'spray.vmd-C': drops('grossa'),
  'spray.vmd-VC': drops('muito grossa'),
  'spray.vmd-XC': drops('extremamente grossa'),
  'spray.vmd-UC': drops('ultragrossa'),
  'spray.vmd-unknown': { label: 'Gota mediana, classe desconhecida', meaning: 'Para um bico cuja tabela não imprime classe de gota.' }
};
