import type { CHANGES as EN_CHANGES, EFFECTS as EN_EFFECTS } from '../../en/spray/advice.ts';
import type { Part } from '../../language.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/** What the search for settings finds and refuses. */
export const SPRAY_ADVICE: Part = {
  findings: {
    'spray-advice-ribbon-decides': 'Isto dá {off} menos ar do que pede a regra da entrelinha, mais do que os {tolerance} que contam como certos. Pendure primeiro fitas por trás da linha: só vale se ainda se moverem.',
    'spray-advice-ribbon-unruled': 'Isto dá menos ar do que agora, e aqui não há regra que diga se chega. Pendure primeiro fitas por trás da linha: só vale se ainda se moverem.',
    'spray-advice-thinner-bottom': 'O terço mais baixo da copa recebe {less} menos da dose. Se a praga está aí, deixe como está.',
    'spray-advice-thinner-middle': 'O terço do meio da copa recebe {less} menos da dose. Se a praga está aí, deixe como está.',
    'spray-advice-thinner-top': 'O terço de cima da copa recebe {less} menos da dose. Se a praga está aí, deixe como está.',
    'spray-advice-no-clear-difference': 'Sem diferença clara face à regulação de hoje: o que ganha está dentro do que o modelo não pode dizer.',
    'spray-advice-remix': 'Os litros mudam de {from} para {to}: calcule de novo a calda e respeite a água e a dose do rótulo.',
    'spray-advice-understated': 'O que menos ar poupa está aqui subestimado: ensaios publicados encontraram perdas muito menores.',
    'spray-advice-check-pressure': 'A bomba roda com a TDF: regule de novo a pressão para {pressure} e veja a agitação.',
    'spray-advice-speed-unseen': 'O modelo não vê efeito da velocidade de avanço. Cada metro de linha recebe {air} menos ar: decide a fita.',
    'spray-advice-today-stands': 'Dentro dos limites da máquina nada é melhor numa coisa sem ser pior noutra. Mantém-se a regulação de hoje.',
    'spray-advice-holds-litres': 'Isto mantém a água onde tem de estar: {litres} depois disso.',
    'spray-advice-today-stopped': 'A regulação de hoje não pode ser usada como está: veja os avisos. Os planos respeitam os limites.',
    'spray-advice-none-clear': 'Nenhuma regulação encontrada é claramente melhor do que a de hoje.',
    'spray-advice-classes-unknown': 'A tabela de um bico não imprime classes de gota: tomou-se para ele um cone oco habitual. Indique as classes a partir da sua ficha.',
    'spray-advice-judges': 'Isto ordena regulações; não é uma recomendação. Decidem as fitas, o papel hidrossensível, o rótulo e as regras locais.'
  },
  refusals: {
    'advice-cancelled': 'A procura foi parada.',
    'advice-too-windy': 'Há vento demais para pulverizar: não se aconselha nenhuma regulação. Espere, como dizem o rótulo e as regras locais.',
    'advice-inversion': 'Há sinais de inversão térmica, em que as gotas finas ficam no ar: não se aconselha nenhuma regulação. Espere, como dizem o rótulo e as regras locais.',
    'advice-drops-dry': 'Hoje as gotas secam depressa demais: não se aconselha nenhuma regulação. Espere, como dizem o rótulo e as regras locais.',
    'advice-too-hot': 'Está calor demais para pulverizar: não se aconselha nenhuma regulação. Espere, como dizem o rótulo e as regras locais.',
    'advice-too-dry': 'O ar está seco demais para pulverizar: não se aconselha nenhuma regulação. Espere, como dizem o rótulo e as regras locais.',
    'advice-below-label-water': 'A regulação dá menos água do que o rótulo quer, e nada aqui pode dar mais. Leve primeiro a água até ao rótulo.',
    'advice-stopped': 'Uma observação diz parar, e nenhuma regulação a levanta. Corrija isso primeiro.'
  }
};

/** One change, as the subject of a sentence. */
export const CHANGES: Translated<typeof EN_CHANGES> = {
  shut: 'Fechar {nozzles}',
  open: 'Abrir {nozzles}',
  swivel: 'Girar {nozzles} {turn}',
  size: 'Montar {to} em vez de {from} em {nozzles} (gota {toClass} em vez de {fromClass})',
  pressure: 'Regular {to} em vez de {from}',
  gear: 'Usar a marcha {to} do ventilador em vez de {from}',
  pto: 'Pôr a TDF a {to} em vez de {from}',
  'gear-and-pto': 'Usar a marcha {to} do ventilador a {rpm} em vez de {from} a {fromRpm}',
  speed: 'Conduzir a {to} em vez de {from}'
};
/** A change of pressure that makes other drops. */
export const PRESSURE_DROPS: Template = ' (gota {toClass} em vez de {fromClass})';

/** What it does, as the rest of the sentence. */
export const EFFECTS: Translated<typeof EN_EFFECTS> = {
  onTrees: { more: 'põe nas árvores {share} mais do que se pulveriza', less: 'põe nas árvores {share} menos do que se pulveriza' },
  lost: { more: 'perde menos {points} pontos', less: 'perde mais {points} pontos' },
  evenness: { more: 'distribui de forma mais uniforme', less: 'distribui de forma menos uniforme' },
  workRate: { more: 'aumenta a capacidade de trabalho {share}', less: 'baixa a capacidade de trabalho {share}' },
  none: 'não faz diferença clara'
};
