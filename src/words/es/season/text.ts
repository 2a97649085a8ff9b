import type { seasonText as EN } from '../../en/season/text.ts';
import type { Translated } from '../../translation.ts';

/** What is said of a season. */
export const seasonText: Translated<typeof EN> = {
  kinds: { water: 'agua por superficie', mix: 'caldo en la parcela', loads: 'llenados del tanque', 'dose-kg': 'por superficie', 'dose-L': 'por superficie', 'product-kg': 'en la parcela', 'product-L': 'en la parcela' },
  ofProduct: (product, what) => `${product}, ${what}`,
  opened: (nozzles, several) => `Se ${several ? 'abren' : 'abre'} ${nozzles}.`,
  shut: (nozzles, several) => `Se ${several ? 'cierran' : 'cierra'} ${nozzles}.`,
  same: 'Nada cambia más del 1 %.',
  fields: { heightM: 'altura', widthM: 'ancho', skirtM: 'hoja más baja', ladM2PerM3: 'densidad de área foliar' },
  volume: 'volumen de vegetación dentro del contorno',
  by: {
    stage: (from) => `a partir de ${from}, por el estado fenológico`,
    'degree-days': (from, to) => `entre ${from} y ${to}, por grados día`
  },
  limits: {
    'apple-shares': 'Hoja: el 10 % de su área en plena floración, el 23 % en la caída de pétalos (Forshey et al. 1987, manzano McIntosh); ocho veces la de la floración cuatro semanas después, situado en BBCH 73 de memoria. Otros árboles difieren.',
    'volume-range': 'Contorno: el volumen de vegetación crece del 20 al 30 % de primavera a verano, como mucho el 50 % (BBZ Arenenberg, de un resumen).',
    'one-stage': 'El intervalo comprende del 20 al 30 % de crecimiento y un estado leído con uno de diferencia. No es un intervalo de confianza.',
    alike: 'Se toma que altura y ancho crecen por igual, según se despliega la hoja, y que la hoja más baja se mantiene: supuesto, sin fuente.',
    pruning: 'No incluye poda, poda mecánica, carga de fruta ni ramas vencidas. Mida la fila antes de fiarse.',
    'straight-between': 'El área foliar sigue a los grados día por encima de la base (Litschmann et al. 2016, de un resumen); que también lo haga el contorno es un supuesto. En un recorrido largo la hoja no se despliega de manera uniforme: donde las dos maneras difieran, mida.',
    'a-week': 'El intervalo es la misma fecha una semana antes y una semana después.',
    'density-left': 'Allí no se midió la densidad de área foliar, o queda demasiado poca para anotarla: se mantiene el valor por defecto del estado.',
    'from-bare': 'De una copa sin hoja no se puede calcular hoja: se mantiene el valor por defecto del estado.',
    'typical-year': 'El archivo de tiempo va por mes y día: un año típico u otro año representa a este.',
    bridged: 'Los días que faltan en el archivo de tiempo se completan con los vecinos.'
  },
  methods: {
    readings: 'La media de los grados de cada lectura por encima de la base, ninguno por debajo (práctica común, sin fuente).',
    extremes: 'La media de la mínima y la máxima del día menos la base, nada por debajo (McMaster & Wilhelm 1997, de memoria).',
    mean: 'La media del día menos la base, nada por debajo (práctica común, sin fuente).'
  },
  weather: (days, from, to, readings) => `${days} días, de ${from} a ${to}, ${readings > 1 ? `${readings} lecturas al día` : 'una línea al día'}.`,
  joined: (days, years, readings) => `${days} días, un año compuesto con meses de ${years} años, ${readings > 1 ? `${readings} lecturas al día` : 'una línea al día'}. Va por mes y día.`,
  base: (base) => `Base ${base}.`,
  thin: (n) => (n === 1 ? '1 día tiene demasiado pocas lecturas y cuenta como que falta.' : `${n} días tienen demasiado pocas lecturas y cuentan como que faltan.`),
  missing: (n) => (n === 1 ? 'Falta 1 día intermedio.' : `Faltan ${n} días intermedios.`),
  between: (from, to, sum, how) => `De ${from} a ${to}: ${sum}${how}`,
  byMonthDay: (years) => (years === 1 ? ', por mes y día' : `, por mes y día, la media de ${years} años`),
  bridgedDays: (n) => (n === 1 ? '; 1 día que faltaba, completado' : `; ${n} días que faltaban, completados`),
  stop: (rung, finding) => `${rung}: ${finding}`,
  way: (share) => `${share} del recorrido`,
  reached: (rung, date) => `${rung} por su hoja: hacia el ${date}`,
  treatmentsAssumed: 'Donde no se indicó ninguno se supone un tratamiento.',
  fixedAbove: (rung, product, fixed) => `En ${rung} el ajuste único aplicaría ${fixed} de ${product}, más de lo que su etiqueta da para esa copa: está para comparar, no para pulverizar.`,
  usesPassed: (product, uses, most) => `${product}: hay previstos ${uses} tratamientos; su etiqueta permite ${most} en una temporada. Prevea menos.`,
  fixedIs: (rung) => `Un solo ajuste toda la temporada: el de ${rung}.`,
  adaptedIs: 'Adaptado: el ajuste propio de cada etapa, el producto según permita su etiqueta.',
  label: 'Los ahorros son de estos planes, no de sus facturas. Manda la etiqueta: adaptar baja el agua; el producto la sigue solo hasta donde permitan la etiqueta y la ley local.'
};
