import type { Part } from '../../language.ts';

/** What a season adds up, by the family of its formulas. */
const KINDS = { water: 'água', mix: 'calda', loads: 'cargas', dose: 'produto por área', product: 'produto na parcela' } as const;
const each = (make: (kind: string, what: string) => readonly (readonly [string, string])[]): Record<string, string> => Object.fromEntries(Object.entries(KINDS).flatMap(([kind, what]) => make(kind, what)));

/** Words of the season. */
export const SEASON: Part = {
  refusals: {
    'season-rung-refused': '{rung} não pode ser calculada: {reason} Corrija-a, ou ponha os seus tratamentos a 0.',
    'season-above-label': '{product}: os tratamentos previstos somam {planned} na época; o seu rótulo permite {most}. Preveja menos.',
    'growth-evergreen': 'Aqui há folha todo o ano; as partes publicadas são de uma árvore que a perde. Meça a linha.',
    'growth-not-measured': '{rung} é ela própria uma proposta. Meça-a, ou escolha uma etapa que tenha sido medida.',
    'growth-no-stage': '{rung} não tem estado fenológico. Indique o seu BBCH.',
    'growth-from-bare': '{rung} quase não tem folha; a partir de nada não se pode calcular folha. Escolha uma etapa com folha.',
    'growth-no-date': '{rung} não tem data. Indique-a.',
    'growth-no-neighbours': 'São precisas uma etapa medida com data anterior a {rung} e outra posterior.',
    'growth-no-warmth': 'Entre {from} e {to}, o ficheiro meteorológico não tem graus-dia acima da base.',
    'dates-not-rising': '{to} não é depois de {from}.',
    'dates-far-apart': '{from} e {to} distam mais de um ano.',
    'weather-gap': 'Ao ficheiro meteorológico faltam {days} dias seguidos, de {from} a {to}. Preenchem-se no máximo 7.'
  },
  formulas: {
    'growth-volume-ratio': 'Crescimento do volume de vegetação',
    'growth-height': 'Altura depois do crescimento',
    'growth-width': 'Largura depois do crescimento',
    'growth-leaf-density': 'Densidade de área foliar depois do crescimento',
    'growth-way': 'Parte percorrida segundo os graus-dia',
    'growth-length-between': 'Comprimento entre duas etapas',
    'growth-leaf-between': 'Índice de área foliar entre duas etapas',
    'growth-density-of-leaf': 'Densidade de área foliar desta área foliar',
    ...each((kind, what) => [
      [`treatments-${kind}`, `Tratamentos de uma etapa: ${what}`],
      [`season-${kind}`, `Época: ${what}`],
      [`season-saving-${kind}`, `Poupança na época: ${what}`],
      [`season-share-${kind}`, `Poupança como parte: ${what}`]
    ]),
    'sum-of-stages': 'soma das etapas'
  },
  symbols: {
    Gv: 'crescimento do volume de vegetação',
    gv: 'crescimento da primavera ao verão',
    sa: 'parte do crescimento feita na etapa de que parte',
    sb: 'parte do crescimento feita nesta etapa',
    Ha: 'altura na etapa de que parte',
    Wa: 'largura na etapa de que parte',
    LADa: 'densidade de área foliar na etapa de que parte',
    ua: 'parte da folha já aberta na etapa de que parte',
    ub: 'parte da folha já aberta nesta etapa',
    DDx: 'graus-dia até esta data',
    DDt: 'graus-dia de todo o percurso',
    fw: 'parte do percurso',
    La: 'comprimento na etapa anterior',
    Lb: 'comprimento na etapa posterior',
    L: 'comprimento a caminho',
    LAIa: 'índice de área foliar na etapa anterior',
    LAIb: 'índice de área foliar na etapa posterior',
    X: 'um tratamento',
    Xn: 'tratamentos de uma etapa',
    Xs: 'época',
    Xd: 'poupança',
    Xf: 'época com uma só regulação',
    Xa: 'época adaptada',
    ...each((kind) => [
      [`treatments-${kind}.n`, 'tratamentos'],
      [`season-share-${kind}.S`, 'poupança']
    ])
  },
  assumptions: {
    'growth.volume': { label: 'Crescimento do volume de vegetação', meaning: 'Da primavera ao verão; publicado como 20 a 30 %, 50 % no máximo. Toma-se o meio.' },
    'growth.base-temperature': { label: 'Base dos graus-dia', meaning: 'A área foliar segue os graus-dia acima desta temperatura.' }
  },
  fields: {
    treatments: 'tratamentos',
    date: 'data',
    evergreen: 'folha persistente',
    weather: 'graus-dia do ficheiro meteorológico',
    'canopy.proposed': 'copa proposta',
    'label.maxPerSeason': 'máximo do rótulo por época'
  }
};
