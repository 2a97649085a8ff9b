import type { Part } from '../../language.ts';
import { OWN_REFUSALS } from './own.ts';

/** What is said where strategies are compared. */
export const STRATEGY_PART: Part = {
  refusals: {
    ...OWN_REFUSALS,
    'own-no-figure': 'La fórmula de {name} no da aquí un número: una división por 0, una raíz o un logaritmo de algo menor que 0, o un resultado menor que 0. Cambie la fórmula.',
    'draws-out-of-range': 'Se pidieron {value} sorteos; se hacen de {least} a {most}. Pida un número entre ellos.',
    'seed-not-whole': 'La semilla es {value}; hace falta un número entero de 0 a 9 007 199 254 740 991. Escriba uno.',
    'nothing-uncertain': 'No se indicó ningún error de las medidas, así que no hay nada que sortear. Indique los errores estándar de altura, falda, ancho o distancia entre filas, o haga un muestreo de los árboles.',
    'draws-given-up': 'Los errores son tan grandes que la mayoría de las copas sorteadas no pueden existir: {tries} seguidas no tenían ancho o tenían la falda por encima de la cima. Mida más árboles.',
    'no-label-dose': 'La parcela no tiene etiqueta, así que no hay dosis. Elija una.'
  },
  formulas: {
    'own-index': 'Índice de dosis por una fórmula propia',
    'own-water': 'Agua por una fórmula propia'
  },
  validity: {
    'own-formula': 'Una fórmula propia. No se comprueba si sus unidades concuerdan.'
  }
};
