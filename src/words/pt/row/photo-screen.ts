import type { photoScreen as EN } from '../../en/row/photo-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the photograph on the screen. */
export const photoScreen: Translated<typeof EN> = {
  how: 'Fique na entrelinha, à altura do meio da copa, com céu ou um pano branco por trás de uma só linha. Com céu encoberto é melhor. A imagem é lida neste dispositivo e não vai para lado nenhum.',
  choose: 'Escolher uma imagem',
  other: 'Escolher outra imagem',
  reading: (done) => `A ler a imagem: ${done}`,
  stop: 'Parar',
  failed: 'A leitura falhou. Tente de novo, ou guarde a imagem mais pequena.',
  picture: 'Fotografia com a moldura da copa; tracejado está o que conta como folha',
  size: (width, height) => `${width} × ${height} píxeis`,

  frame: 'Moldura da copa',
  frameNote: 'Arraste as quatro pegas, ou mova-as com as teclas de seta: o bordo superior para o topo, o inferior para a folhagem mais baixa, os lados para a copa de uma só linha.',
  edge: { top: 'Topo da copa', bottom: 'Folhagem mais baixa', left: 'Lado esquerdo', right: 'Lado direito' },
  at: { top: (p) => `${p} a partir do bordo superior da imagem`, bottom: (p) => `${p} a partir do bordo superior da imagem`, left: (p) => `${p} a partir da esquerda`, right: (p) => `${p} a partir da esquerda` },
  topHeight: 'O bordo superior corresponde a',
  skirtHeight: 'O bordo inferior corresponde a',
  upsideDown: 'O bordo inferior não está abaixo do superior. Corrija uma das alturas.',
  band: 'Altura de uma faixa',

  threshold: 'Limiar no azul',
  thresholdSays: (level) => `Os píxeis com azul ${level} ou mais contam como falha.`,
  proposal: (level, part) => `Proposto: ${level}, que melhor separa o escuro do claro (Otsu 1979, de memória; ${part} da variância está entre os dois).`,
  takeProposal: 'Usar a proposta',
  poor: 'O escuro e o claro separam-se mal. Veja o tracejado antes de confiar nisto.',
  mask: 'Tracejar o que conta como folha',

  says: 'O que diz a fotografia',
  density: 'Densidade de área foliar',
  atLeast: (value) => `pelo menos ${value}`,
  working: 'como se calcula',
  bands: 'Por altura, o topo primeiro',
  columns: { height: 'Altura', gaps: 'Falhas', density: 'Densidade de área foliar', width: 'Largura' },
  doubt: (lower, higher, by) => `Com o limiar ${by} abaixo ${lower}, ${by} acima ${higher}.`,
  none: 'não indicado',
  saturated: (share) => `Em ${share} da secção há falhas a menos para o dizer; entra na média com o que tem no mínimo.`,
  assumptions: 'O que se supõe das folhas',
  assumptionsNote: 'Os dois entram em todos os valores daqui e pode alterá-los.',
  limits: 'O que não pode dizer',
  limit: [
    'A madeira e os frutos contam como folha: desconte o que vê na árvore sem folha.',
    'Uma vista de um troço de linha: tire várias, e de mais de uma árvore.',
    'Supõe-se que cada falha mostra céu ou pano. Onde se vê nela a linha de trás, conta-se folha que não está lá. Pendure o pano por trás da linha.',
    'O céu ao lado de uma copa ou entre duas árvores, dentro da moldura, conta como falha: a densidade é então a da linha como está, não só a das copas.',
    'O brilho nas folhas conta como falha, um céu escuro como folha: veja o tracejado.',
    'Supõe-se que a vista é horizontal e que o caminho através da copa é a sua largura desenhada. De baixo, ou com uma largura errada, a densidade erra outro tanto.',
    'Folhas em tufos deixam mais falhas do que folhas ao acaso, por isso o valor real é maior; também o de uma faixa cujas falhas estão juntas.',
    'Os píxeis no bordo de uma folha são mistos; as falhas pequenas numa imagem grosseira perdem-se.'
  ],
  byHeight: 'Com a densidade por altura',
  byHeightDrawn: 'Não se mediram larguras por altura: ficaria escrito o contorno como está desenhado, que depois conta como medido.',
  use: 'Usar nesta etapa',
  used: 'A densidade de área foliar desta etapa vem agora da fotografia.',
  kept: (bands, threshold) => `Com esta etapa estão guardadas as contagens de uma fotografia: ${bands} ${bands === 1 ? 'faixa' : 'faixas'}, limiar ${threshold}.`,
  forget: 'Esquecer as contagens',
  keptSays: (value) => `Com os pressupostos de agora dizem ${value}.`
};
