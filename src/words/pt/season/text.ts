import type { seasonText as EN } from '../../en/season/text.ts';
import type { Translated } from '../../translation.ts';

/** What screen and command line both say of a season. */
export const seasonText: Translated<typeof EN> = {
  kinds: { water: 'água por área', mix: 'calda na parcela', loads: 'enchimentos do tanque', 'dose-kg': 'por área', 'dose-L': 'por área', 'product-kg': 'na parcela', 'product-L': 'na parcela' },
  ofProduct: (product, what) => `${product}, ${what}`,
  opened: (nozzles, several) => `${several ? 'Abrem-se' : 'Abre-se'} ${nozzles}.`,
  shut: (nozzles, several) => `${several ? 'Fecham-se' : 'Fecha-se'} ${nozzles}.`,
  same: 'Nada muda mais de 1 %.',
  fields: { heightM: 'altura', widthM: 'largura', skirtM: 'folhagem mais baixa', ladM2PerM3: 'densidade de área foliar' },
  volume: 'volume de vegetação (contorno)',
  by: {
    stage: (from) => `a partir de ${from}, pelo estado fenológico`,
    'degree-days': (from, to) => `entre ${from} e ${to}, por graus-dia`
  },
  limits: {
    'apple-shares': 'Folha: 10 % da sua área em plena floração, 23 % na queda das pétalas (Forshey et al. 1987, macieira McIntosh); oito vezes a da floração quatro semanas depois, o que se situa em BBCH 73 de memória. Outras árvores diferem.',
    'volume-range': 'Contorno: o volume de vegetação cresce 20 a 30 % da primavera ao verão, 50 % no máximo (BBZ Arenenberg, a partir de um resumo).',
    'one-stage': 'O intervalo abrange 20 a 30 % de crescimento e um estado lido com erro de um. Não é um intervalo de confiança.',
    alike: 'Supõe-se que altura e largura crescem por igual, à medida que a folha abre, e que a folhagem mais baixa fica: pressuposto, sem fonte.',
    pruning: 'Não inclui poda, corte mecânico, carga de frutos nem ramos vergados. Meça a linha antes de confiar nisto.',
    'straight-between': 'A área foliar segue os graus-dia acima da base (Litschmann et al. 2016, a partir de um resumo); que o contorno também os siga é suposto. Num percurso longo a folha não abre por igual: onde as duas formas diferem, meça.',
    'a-week': 'O intervalo é a mesma data uma semana antes e uma semana depois.',
    'density-left': 'Aí não se mediu a densidade de área foliar, ou resta pouco demais para se escrever: fica o valor predefinido do próprio estado.',
    'from-bare': 'A partir de uma copa sem folha não se pode calcular folha: fica o valor predefinido do próprio estado.',
    'typical-year': 'O ficheiro meteorológico vai por mês e dia: um ano típico ou outro ano está no lugar deste.',
    bridged: 'Os dias que faltam no ficheiro meteorológico são preenchidos a partir dos vizinhos.'
  },
  methods: {
    readings: 'A média dos graus de cada leitura acima da base, nenhum abaixo dela (prática comum, sem fonte).',
    extremes: 'A média da mínima e da máxima do dia menos a base, nada abaixo dela (McMaster & Wilhelm 1997, de memória).',
    mean: 'A média do dia menos a base, nada abaixo dela (prática comum, sem fonte).'
  },
  weather: (days, from, to, readings) => `${days} ${days === 1 ? 'dia' : 'dias'}, de ${from} a ${to}, ${readings > 1 ? `${readings} leituras por dia` : 'uma linha por dia'}.`,
  joined: (days, years, readings) => `${days} dias, um ano composto de meses de ${years} anos, ${readings > 1 ? `${readings} leituras por dia` : 'uma linha por dia'}. Vai por mês e dia.`,
  base: (base) => `Base ${base}.`,
  thin: (n) => (n === 1 ? '1 dia tem leituras a menos e conta como em falta.' : `${n} dias têm leituras a menos e contam como em falta.`),
  missing: (n) => (n === 1 ? 'Falta 1 dia pelo meio.' : `Faltam ${n} dias pelo meio.`),
  between: (from, to, sum, how) => `${from} a ${to}: ${sum}${how}`,
  byMonthDay: (years) => (years === 1 ? ', por mês e dia' : `, por mês e dia, a média de ${years} anos`),
  bridgedDays: (n) => (n === 1 ? '; 1 dia em falta preenchido' : `; ${n} dias em falta preenchidos`),
  stop: (rung, finding) => `${rung}: ${finding}`,
  way: (share) => `${share} do percurso`,
  reached: (rung, date) => `${rung} pela sua folha: cerca de ${date}`,
  treatmentsAssumed: 'Supõe-se um tratamento onde nenhum foi indicado.',
  fixedAbove: (rung, product, fixed) => `Em ${rung}, a regulação única aplicaria ${fixed} de ${product}, mais do que o seu rótulo dá para essa copa: está aí para comparar, não para pulverizar.`,
  usesPassed: (product, uses, most) => `${product}: estão previstos ${uses} tratamentos; o seu rótulo permite ${most} por época. Preveja menos.`,
  fixedIs: (rung) => `Uma só regulação toda a época: a de ${rung}.`,
  adaptedIs: 'Adaptada: a regulação própria de cada etapa, o produto como o seu rótulo permite.',
  label: 'As poupanças são destes planos, não das suas contas. O rótulo manda: adaptar baixa a água; o produto só acompanha até onde o rótulo e a lei local o permitem.'
};
