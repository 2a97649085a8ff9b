import type { Part } from '../../language.ts';

/** What is said of a fitting of nozzles. */
export const FITTING: Part = {
  findings: {
    'fitting-position-off': '{nozzles} {nozzles#está|estão} a mais de {tolerance} do objetivo; o mais afastado é {worst}, com {off}. Faça {nozzles#a sua recolha|estas recolhas} primeiro na cabeceira.',
    'fitting-other-speed': 'Nenhuma pressão leva estes calibres ao objetivo a {present}: conduza a {speed}. O ar por metro de linha muda com isso.',
    'fitting-nothing-wanted': '{nozzles} {nozzles#leva|levam} {share} do caudal onde nada se pretende. {nozzles#Feche-o|Feche-os} primeiro e escolha de novo.',
    'fitting-rule-upper-large': 'Para árvores grandes, uma regra publicada quer 65 a 80 % pela metade superior dos bicos abertos; aqui é {share}. Seguiram-se os pesos, não a regra.',
    'fitting-rule-upper-low-machine': 'Para máquinas baixas em árvores de 6 a 7,6 m, uma regra publicada quer cerca de 70 % das posições de cima; aqui é {share}. Seguiram-se os pesos, não a regra.',
    'fitting-rule-two-thirds': 'Uma regra de memória quer dois terços pela metade superior dos bicos abertos; aqui é {share}. Seguiram-se os pesos, não a regra.',
    'fitting-rule-middle-heavy': 'Para citrinos, uma regra publicada quer os bicos maiores no meio do arco; aqui não estão lá. Seguiram-se os pesos, não a regra.',
    'fitting-rule-proportional': 'Para torres ao lado de uma parede de folha, uma regra de memória espera 50 a 60 % pela metade superior dos bicos abertos; aqui é {share}. Seguiram-se os pesos, não a regra.',
    'fitting-sides-unlike': 'Os bicos atuais diferem entre a esquerda e a direita, por isso não estão na lista. Retire “esquerda e direita iguais” para os conservar.',
    'fitting-present-unfit': 'Os bicos atuais não conseguem atingir o objetivo: a {speed} precisariam de {pressure}, e nenhuma outra velocidade permitida ajuda.'
  },
  refusals: {
    'no-own-weight': 'Nenhuma posição aberta tem peso. Dê a pelo menos uma um peso acima de zero.',
    'no-leaf-before-nozzles': 'Nenhum bico aberto atinge folha, por isso a copa não dá pesos. Abra os que estão virados para a folha, ou indique os pesos das posições.',
    'nothing-wanted-here': 'De {position} nada se pretende.',
    'fitting-speed-apart': 'As velocidades pretendidas e as da máquina não têm nada em comum: no mínimo {least}, no máximo {most}. Alargue o pedido.',
    'fitting-pressure-apart': 'As pressões pretendidas e as da máquina não têm nada em comum: no mínimo {least}, no máximo {most}. Alargue o pedido.',
    'fitting-no-size': 'Uma posição não tem calibre à escolha. Junte calibres que se possam montar.',
    'fitting-class-unknown': 'A tabela “{table}” não imprime classes de gota, por isso não se pode cumprir um pedido de classe. Indique-as a partir da ficha do bico, ou retire o pedido.',
    'fitting-class-unmet': 'Nenhum calibre produz as classes de gota pretendidas a uma pressão permitida. Alargue as classes, as pressões ou os calibres.',
    'fitting-pressure-tables': 'São permitidos {least} a {most}, mas as tabelas de bicos vão de {tableLeast} a {tableMost}. Alargue as pressões ou escolha outra tabela.',
    'fitting-too-little': 'Os calibres maiores, à pressão mais alta e à velocidade mais baixa, dão {most}; pretendem-se {target}. Junte calibres maiores, permita mais pressão ou uma velocidade mais baixa, ou peça menos.',
    'fitting-too-much': 'Os calibres menores, à pressão mais baixa e à velocidade mais alta, ainda dão {least}; pretendem-se {target}. Junte calibres menores, permita menos pressão ou uma velocidade mais alta, feche bicos, ou peça mais.',
    'fitting-changes-bind': 'Com, no máximo, {changes} bicos trocados nada atinge o objetivo. Permita mais trocas, ou alargue a pressão ou a velocidade.',
    'fitting-none': 'Nenhuma combinação destes calibres atinge o objetivo dentro dos limites. Junte calibres, ou alargue a pressão ou a velocidade.',
    'fitting-cancelled': 'A procura foi parada.'
  },
  fields: { 'fitting.targetLPerHa': 'volume a atingir' },
  formulas: {
    'target-flow': 'Objetivo de uma posição',
    'off-target': 'Distância ao objetivo',
    'profile-match': 'Concordância do perfil',
    'top-share': 'Parte pela metade superior'
  },
  symbols: {
    qw: 'caudal aqui pretendido',
    'target-flow.w': 'peso da posição',
    'target-flow.Q': 'caudal pretendido',
    'off-target.d': 'desvio do objetivo',
    'profile-match.M': 'concordância do perfil',
    'profile-match.e': 'soma das diferenças entre partes e pesos',
    St: 'parte pela metade superior',
    qt: 'caudal pela metade superior'
  },
  assumptions: {
    'fitting.position-tolerance': { label: 'Posição fora do objetivo', meaning: 'Um bico mais afastado do seu objetivo do que isto é indicado. Usa-se quando os calibres são escolhidos de um catálogo.' },
    'fitting.few-gain': { label: 'O que poucas trocas trazem', meaning: '“Poucas trocas” é o conjunto com menos trocas que traz esta parte do que ganha a melhor concordância.' }
  }
};
