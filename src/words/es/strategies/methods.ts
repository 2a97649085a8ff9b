import type { METHODS as EN } from '../../en/strategies/methods.ts';
import type { Translated } from '../../translation.ts';

/** Sentences of the methods text. */
export const METHODS: Translated<typeof EN> = {
  opening: (strategies, measurements) =>
    `Agua y dosis se calcularon con Rowtailor para una copa (${measurements}) por ${strategies === 1 ? 'una estrategia' : `${strategies} estrategias`}. Todos los valores son métricos; cada fórmula figura tal como se calculó.`,
  canopy: (formulas) => `Cifras de la copa: ${formulas}.`,
  strategy: (name, cited, formulas, constants) => `${name}${cited}: ${formulas}${constants ? `; con ${constants}` : ''}.`,
  own: 'una fórmula propia cuya dimensión no se comprobó',
  refused: (name) => `${name} no da ninguna cifra en esta copa.`,
  label: (name, rate, rules, formulas) => `La etiqueta de ${name} indica ${rate}. ${rules}${formulas ? ` Producto: ${formulas}.` : ''}`,
  bases: {
    'per-hectare': 'hectárea de suelo',
    'per-100-l-dilute': '100 L de caldo en aplicación diluida',
    'per-leaf-wall': '10 000 m² de pared foliar',
    'per-crown-height': 'hectárea y metro de altura de copa',
    'per-row-volume': '10 000 m³ de volumen de vegetación',
    'percent-of-water': 'agua de referencia, en porcentaje de ella'
  },
  /** "2 kg por hectárea de suelo" */
  rate: (amount, basis) => `${amount} por ${basis}`,
  adaptations: {
    none: 'La dosis no se adaptó a la copa.',
    downward: 'La dosis se bajó con el índice de dosis, nunca se subió.',
    required: 'La dosis se adaptó al índice de dosis, hacia arriba y hacia abajo.',
    byItself: 'La propia base de la etiqueta sigue a la copa.'
  },
  floor: (share) => ` No se bajó de ${share} de la dosis de la etiqueta, un mínimo propio.`,
  most: (amount) => ` Se limitó al máximo de la etiqueta, ${amount} por hectárea.`,
  analytic: (errors, coverage, cited) =>
    `Los intervalos son del 95 %, por propagación de primer orden de los errores estándar (${errors})${cited}; medio intervalo son ${coverage} errores estándar. No comprenden nada más: ni las constantes ni la elección de la estrategia.`,
  student: (nu) => `t de Student con ${nu} ${nu === 1 ? 'grado' : 'grados'} de libertad`,
  normal: 'de la distribución normal',
  /** "2,09 (t de Student …)" */
  coverage: (factor, of) => `${factor} (${of})`,
  correlation: (r) => `correlación de altura y ancho ${r}`,
  draws: (draws, seed, distribution, cited) =>
    `Además se sortearon ${draws} copas con los mismos errores, ${distribution}, con el generador Philox 4×32-10 y la semilla ${seed}${cited}; sus intervalos son el 95 % probabilísticamente simétrico de los sorteos. Las copas que no pueden existir se sortearon de nuevo.`,
  drawnNormal: 'con distribución normal',
  drawnStudent: (nu) => `con distribución t de Student con ${nu} ${nu === 1 ? 'grado' : 'grados'} de libertad`,
  drawnAssumptions: (ranges) => `Con ellas se sortearon las constantes que tienen un intervalo declarado, de manera uniforme en él: ${ranges}.`,
  range: (name, low, high) => `${name} de ${low} a ${high}`,
  closing: 'Los valores y fórmulas marcados «de memoria» se han de comprobar en la obra antes de citarlos. La etiqueta del producto manda en todos los casos.',
  certainties: {
    exact: 'exacto',
    measured: 'medido',
    stated: 'declarado por el usuario',
    published: 'publicado',
    derived: 'derivado de cifras publicadas',
    practice: 'práctica común',
    memory: 'de memoria',
    assumed: 'supuesto'
  },
  notWorks: { habit: 'práctica común', arithmetic: 'por definición', geometry: 'geometría', 'sqrt-law': 'hidráulica', 'fan-laws': 'leyes de los ventiladores' }
};
