import type { laserScreen as EN } from '../../en/row/laser-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of laser points on the screen. */
export const laserScreen: Translated<typeof EN> = {
  how: 'Pontos de um scanner laser parado ou em andamento numa entrelinha, como LAS, LAZ ou CSV (lateral_m, height_m, along_m). São lidos neste dispositivo e não vão para lado nenhum.',
  choose: 'Escolher um ficheiro de pontos',
  other: 'Escolher outro ficheiro',
  reading: (done) => `A ler os pontos: ${done}`,
  stop: 'Parar',
  failed: 'A leitura falhou. Tente de novo, ou recorte o ficheiro a uma só entrelinha.',
  judging: 'A avaliar os pontos …',
  refused: (lines) => `${lines} linhas do ficheiro não foram usadas. As primeiras:`,

  file: (kind, points) => `${kind}: ${points} pontos.`,
  kinds: { table: 'Tabela', las: (version, format) => `LAS ${version}, formato de ponto ${format}`, laz: (version, format) => `LAZ ${version}, formato de ponto ${format}` },
  everyOf: (every) => `Para poupar memória, leu-se um em cada ${every} pontos do ficheiro.`,
  marked: (n) => `${n} estão marcados no ficheiro como retidos ou ruído e foram passados à frente.`,
  tooFar: (n) => `${n} estão longe demais: mais de 100 m para o lado, 20 m abaixo ou 60 m acima do solo.`,

  place: 'Onde está a entrelinha no ficheiro',
  placeNote: 'Lido dos pontos. Se as duas linhas abaixo parecerem borradas, corrija primeiro a direção das linhas.',
  unit: 'O ficheiro está em',
  units: { m: 'metros', ft: 'pés' },
  bearing: 'Direção das linhas, graus de y para x',
  originX: 'Meio da entrelinha, x',
  originY: 'Meio da entrelinha, y',
  ground: 'Solo, z',

  rules: 'Que pontos contam',
  platform: 'Deixar de fora o suporte ou o veículo do próprio scanner',
  half: 'Mais perto do trajeto do que',
  from: 'Acima de',
  to: 'Abaixo de',
  groundRule: 'Solo e erva abaixo de',
  side: 'Linhas usadas',
  sides: { both: 'ambas', left: 'esquerda', right: 'direita' },
  skirt: 'Folhagem mais baixa',
  scanner: 'Altura do scanner',
  spacing: 'Ler dos pontos a distância entre linhas',
  spacingNote: (spacing) => `Senão é a da parcela, ${spacing}.`,

  plot: (points, height, width) => `Secção de ${points} pontos com o solo, os eixos das linhas e o contorno feito a partir deles: ${height} de altura, ${width} de largura`,
  legend: { used: 'conta', out: 'de fora', outline: 'contorno', face: 'face que foi vista', row: 'eixo da linha', platform: 'de fora, por ser suporte ou veículo' },

  says: 'O que dizem os pontos',
  used: (used, all) => `Contam ${used} de ${all} pontos.`,
  leftOut: {
    platform: 'o suporte ou veículo',
    ground: 'solo e erva',
    'other-side': 'linha que não se usa',
    beyond: 'linhas mais afastadas',
    'below-skirt': 'abaixo da folhagem mais baixa',
    'above-top': 'acima do topo'
  },
  leftOutTitle: 'De fora',
  figures: { height: 'Altura', skirt: 'Folhagem mais baixa', width: 'Maior largura', spacing: 'Distância entre linhas', filled: 'Parte preenchida da linha', box: 'Caixa', outline: 'Dentro do contorno', occupied: 'Ocupado' },
  seen: 'lida da linha de trás',
  given: 'da parcela',
  ofBox: (share) => `${share} da caixa`,
  box: 'da folhagem mais baixa ao topo, tão larga como a faixa mais larga, por comprimento de linha',
  noGaps: 'pontos a menos, ou um troço curto demais, para mostrar falhas da face',
  noFilled: (stretch) => `${stretch} de linha são curtos demais para mostrar falhas entre árvores`,
  noAlong: 'os pontos não dizem onde estão ao longo da linha',
  none: 'não indicado',
  spacingDiffers: (seen, block) => `Os pontos mostram linhas a ${seen}, a parcela tem ${block}. Verifique qual está certo: a largura depende disso.`,

  bands: 'Por altura, o topo primeiro',
  columns: { height: 'Altura', points: 'Pontos', width: 'Largura', gaps: 'Falhas', density: 'Densidade' },
  limits: 'O que não pode dizer',
  limit: [
    'O scanner vê a face próxima. Supõe-se que o eixo da linha está a meia distância entre linhas do meio da entrelinha, e que o lado afastado é como o próximo.',
    'A densidade são os pontos sobre a sua média: um sinal pouco firme de folha. Os pontos e a área foliar tiveram uma correlação de 0,88, o volume e a área foliar de 0,80, em 20 macieiras, cada uma em oito partes (Berk et al. 2020). A própria área foliar não é medida.',
    'Os raios ficam mais ralos quanto mais inclinados, por isso o topo parece menos denso do que é, a não ser que se indique a altura do scanner.',
    'As falhas da face são células de 0,1 m ao longo da linha sem nenhum ponto. O volume ocupado supõe que cada uma a atravessa, o que pode não acontecer.',
    'Numa encosta, as alturas têm de ser acima do solo por baixo; árvores inclinadas tornam o contorno espelhado largo ou estreito demais. Meça algumas árvores à mão.'
  ],
  use: 'Usar nesta etapa',
  taken: 'A copa desta etapa tem agora o contorno dos pontos.',
  useNote: 'Substituem-se a altura, a largura, a folhagem mais baixa, as larguras e a densidade por altura; também a parte preenchida, onde é indicada. Anular traz tudo de volta.'
};
