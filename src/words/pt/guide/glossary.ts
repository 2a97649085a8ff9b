import type { glossary as EN, terms as TERMS } from '../../en/guide/glossary.ts';
import type { Translated } from '../../translation.ts';

/** Os símbolos vêm das próprias fórmulas; os termos são os do ofício e os nossos. */
export const glossary: Translated<typeof EN> = {
  title: 'Símbolos e termos',
  find: 'Procurar um símbolo, uma palavra ou uma unidade',
  found: (n) => (n === 1 ? '1 encontrado' : `${n} encontrados`),
  none: 'Nada encontrado. Experimente uma palavra mais curta.',
  all: 'Mostrar tudo',
  symbols: 'Símbolos',
  terms: 'Termos',
  more: (n) => `e mais ${n}`,
  same: 'Um símbolo figura uma vez por cada significado. As fórmulas calculam nas unidades aqui escritas, mostre o ecrã o que mostrar.',
  close: 'Fechar'
};

export const terms: Translated<typeof TERMS> = {
  alley: ['entrelinha', 'Solo entre duas linhas de árvores, por onde passa o pulverizador.'],
  skirt: ['saia', 'Bordo inferior da copa: altura da folha mais baixa acima do solo.'],
  trv: ['volume da linha de árvores, TRV', 'Volume que encheriam as copas de um hectare, como um muro tão alto e largo como as árvores.'],
  lwa: ['área de parede foliar, LWA', 'Área das duas faces da copa num hectare: altura da parede vezes comprimento das linhas, duas vezes.'],
  lad: ['densidade de área foliar, LAD', 'Área de folha, de uma face, num metro cúbico de copa.'],
  bbch: ['estado de desenvolvimento, BBCH', 'Dois algarismos que dizem até onde chegou a cultura, do gomo dormente à queda da folha.'],
  ladder: ['etapas da época', 'Estados de um bloco pela sua ordem; uma etapa para cada um, com a sua copa e a sua regulação.'],
  section: ['secção', 'Desenho através da entrelinha: a máquina no meio, meia linha de cada lado.'],
  setting: ['regulação', 'O que se regula para um bloco num estado: bicos abertos, calibres, pressão, velocidade, ventilador.'],
  working: ['cálculo', 'Como se obteve um número: fórmula, valores, fonte e quão seguro é.'],
  verdict: ['na folha, por cima, sob a saia, fechado', 'Para onde aponta a calda de um bico: só por geometria, sem vento nem gotas.'],
  rate: ['volume de aplicação', 'Litros de calda num hectare.'],
  concentration: ['fator de concentração', 'Quantas vezes menos água do que o volume diluído do rótulo.'],
  load: ['carga', 'Um enchimento do depósito.'],
  headland: ['verificação na cabeceira', 'Ensaios de velocidade, de reenchimento e de recolha que provam uma regulação.'],
  card: ['ficha da cabina', 'Uma página impressa com a regulação, para a cabina.'],
  strategies: ['tabela de estratégias', 'Modos publicados de adaptar água e dose à copa, lado a lado.'],
  vmd: ['classe de tamanho de gota', 'De fina a grossa, segundo as gotas que um bico faz a uma pressão.'],
  deltaT: ['delta T', 'Temperatura seca menos temperatura húmida: quão depressa secam as gotas.'],
  buffer: ['faixa de proteção', 'Faixa junto à água ou aos vizinhos que não se pode pulverizar. A largura é dita pelo rótulo e pela lei local.'],
  drift: ['deriva', 'Calda que sai pelo ar do terreno tratado.'],
  ucr: ['UCR', 'Unidade de uma estratégia: um pequeno volume fixo de copa ao longo da linha.']
};
