import type { Part } from '../../language.ts';

/** What a season adds up, by the family of its formulas. */
const KINDS = { water: 'agua', mix: 'caldo', loads: 'cargas', dose: 'producto por superficie', product: 'producto en la parcela' } as const;
const each = (make: (kind: string, what: string) => readonly (readonly [string, string])[]): Record<string, string> => Object.fromEntries(Object.entries(KINDS).flatMap(([kind, what]) => make(kind, what)));

/** Words of the season. */
export const SEASON: Part = {
  refusals: {
    'season-rung-refused': '{rung} no se puede calcular: {reason} Corríjala, o ponga sus tratamientos a 0.',
    'season-above-label': '{product}: los tratamientos previstos suman {planned} en la temporada; su etiqueta permite {most}. Prevea menos.',
    'growth-evergreen': 'Aquí hay hoja todo el año; las partes publicadas son de un árbol que la pierde. Mida la fila.',
    'growth-not-measured': '{rung} es ella misma una propuesta. Mídala, o elija una etapa que se haya medido.',
    'growth-no-stage': '{rung} no tiene estado fenológico. Indique su BBCH.',
    'growth-from-bare': '{rung} apenas tiene hoja; de la nada no se puede calcular hoja. Elija una etapa con hoja.',
    'growth-no-date': '{rung} no tiene fecha. Indíquela.',
    'growth-no-neighbours': 'Hacen falta una etapa medida con fecha anterior a {rung} y otra posterior.',
    'growth-no-warmth': 'Entre {from} y {to} el archivo de tiempo no tiene grados día por encima de la base.',
    'dates-not-rising': '{to} no es posterior a {from}.',
    'dates-far-apart': '{from} y {to} distan más de un año.',
    'weather-gap': 'Al archivo de tiempo le faltan {days} días seguidos, de {from} a {to}. Se salvan como máximo 7.'
  },
  formulas: {
    'growth-volume-ratio': 'Crecimiento del volumen de vegetación',
    'growth-height': 'Altura tras el crecimiento',
    'growth-width': 'Ancho tras el crecimiento',
    'growth-leaf-density': 'Densidad de área foliar tras el crecimiento',
    'growth-way': 'Parte recorrida según los grados día',
    'growth-length-between': 'Longitud entre dos etapas',
    'growth-leaf-between': 'Índice de área foliar entre dos etapas',
    'growth-density-of-leaf': 'Densidad de área foliar de esta área foliar',
    ...each((kind, what) => [
      [`treatments-${kind}`, `Tratamientos de una etapa: ${what}`],
      [`season-${kind}`, `Temporada: ${what}`],
      [`season-saving-${kind}`, `Ahorro en la temporada: ${what}`],
      [`season-share-${kind}`, `Ahorro como parte: ${what}`]
    ]),
    'sum-of-stages': 'suma de las etapas'
  },
  symbols: {
    Gv: 'crecimiento del volumen de vegetación',
    gv: 'crecimiento de primavera a verano',
    sa: 'parte del crecimiento hecha en la etapa de la que parte',
    sb: 'parte del crecimiento hecha en esta etapa',
    Ha: 'altura en la etapa de la que parte',
    Wa: 'ancho en la etapa de la que parte',
    LADa: 'densidad de área foliar en la etapa de la que parte',
    ua: 'parte de la hoja desplegada en la etapa de la que parte',
    ub: 'parte de la hoja desplegada en esta etapa',
    DDx: 'grados día hasta esta fecha',
    DDt: 'grados día de todo el recorrido',
    fw: 'parte del recorrido',
    La: 'longitud en la etapa anterior',
    Lb: 'longitud en la etapa posterior',
    L: 'longitud en el recorrido',
    LAIa: 'índice de área foliar en la etapa anterior',
    LAIb: 'índice de área foliar en la etapa posterior',
    X: 'un tratamiento',
    Xn: 'tratamientos de una etapa',
    Xs: 'temporada',
    Xd: 'ahorro',
    Xf: 'temporada con un solo ajuste',
    Xa: 'temporada adaptada',
    ...each((kind) => [
      [`treatments-${kind}.n`, 'tratamientos'],
      [`season-share-${kind}.S`, 'ahorro']
    ])
  },
  assumptions: {
    'growth.volume': { label: 'Crecimiento del volumen de vegetación', meaning: 'De primavera a verano; publicado como del 20 al 30 %, como mucho el 50 %. Se toma el centro.' },
    'growth.base-temperature': { label: 'Base de los grados día', meaning: 'El área foliar sigue a los grados día por encima de esta temperatura.' }
  },
  fields: {
    treatments: 'tratamientos',
    date: 'fecha',
    evergreen: 'hoja perenne',
    weather: 'grados día del archivo de tiempo',
    'canopy.proposed': 'copa propuesta',
    'label.maxPerSeason': 'máximo de la etiqueta por temporada'
  }
};
