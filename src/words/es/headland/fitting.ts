import type { Part } from '../../language.ts';

/** What is said of a fitting of nozzles. */
export const FITTING: Part = {
  findings: {
    'fitting-position-off': '{nozzles} {nozzles#está|están} a más del {tolerance} del objetivo; la más alejada es {worst}, por un {off}. {nozzles#Recójala|Recójalas} primero en la cabecera.',
    'fitting-other-speed': 'Ninguna presión lleva estos calibres al objetivo a {present}: conduzca a {speed}. El aire por metro de fila cambia con ello.',
    'fitting-nothing-wanted': '{nozzles} {nozzles#toma|toman} el {share} del caudal donde no se desea nada. {nozzles#Ciérrela|Ciérrelas} primero y busque de nuevo.',
    'fitting-rule-upper-large': 'Para árboles grandes una regla publicada quiere del 65 al 80 % por la mitad superior de las boquillas abiertas; aquí es el {share}. Se siguieron los pesos, no la regla.',
    'fitting-rule-upper-low-machine': 'Para máquinas bajas en árboles de 6 a 7,6 m una regla publicada quiere alrededor del 70 % desde las posiciones superiores; aquí es el {share}. Se siguieron los pesos, no la regla.',
    'fitting-rule-two-thirds': 'Una regla de memoria quiere dos tercios por la mitad superior de las boquillas abiertas; aquí es el {share}. Se siguieron los pesos, no la regla.',
    'fitting-rule-middle-heavy': 'Para cítricos una regla publicada quiere las boquillas mayores en el centro del arco; aquí no están ahí. Se siguieron los pesos, no la regla.',
    'fitting-rule-proportional': 'Para torres junto a una pared de hoja una regla de memoria espera del 50 al 60 % por la mitad superior de las boquillas abiertas; aquí es el {share}. Se siguieron los pesos, no la regla.',
    'fitting-sides-unlike': 'Las boquillas tal como están difieren entre izquierda y derecha, por lo que no figuran en la lista. Quite «izquierda y derecha iguales» para conservarlas.',
    'fitting-present-unfit': 'Las boquillas tal como están no pueden alcanzar el objetivo: a {speed} necesitarían {pressure}, y ninguna otra velocidad permitida ayuda.'
  },
  refusals: {
    'no-own-weight': 'Ninguna posición abierta tiene peso. Dé al menos a una de ellas un peso mayor que cero.',
    'no-leaf-before-nozzles': 'Ninguna boquilla abierta alcanza hoja, así que la copa no da pesos. Abra las que miran a la hoja, o dé usted los pesos a las posiciones.',
    'nothing-wanted-here': 'No se desea nada de {position}.',
    'fitting-speed-apart': 'Las velocidades deseadas y las de la máquina no tienen nada en común: al menos {least}, como máximo {most}. Amplíe lo deseado.',
    'fitting-pressure-apart': 'Las presiones deseadas y las de la máquina no tienen nada en común: al menos {least}, como máximo {most}. Amplíe lo deseado.',
    'fitting-no-size': 'Una posición no tiene calibres entre los que elegir. Añada calibres que se puedan montar.',
    'fitting-class-unknown': 'La tabla «{table}» no imprime clases de gota, así que no se puede cumplir un deseo sobre ellas. Introdúzcalas de la hoja de la boquilla, o retire el deseo.',
    'fitting-class-unmet': 'Ningún calibre produce las clases de gota deseadas a una presión permitida. Amplíe las clases, las presiones o los calibres.',
    'fitting-pressure-tables': 'Se permiten de {least} a {most}, pero las tablas de boquillas valen de {tableLeast} a {tableMost}. Amplíe las presiones o elija otra tabla.',
    'fitting-too-little': 'Los calibres mayores a la presión más alta y la velocidad más baja dan {most}; se desean {target}. Añada calibres mayores, permita más presión o menos velocidad, o desee menos.',
    'fitting-too-much': 'Los calibres menores a la presión más baja y la velocidad más alta aún dan {least}; se desean {target}. Añada calibres menores, permita menos presión o más velocidad, cierre boquillas, o desee más.',
    'fitting-changes-bind': 'Con un máximo de {changes} boquillas cambiadas nada alcanza el objetivo. Permita más cambios, o amplíe presión o velocidad.',
    'fitting-none': 'Ninguna combinación de estos calibres alcanza el objetivo dentro de los límites. Añada calibres, o amplíe presión o velocidad.',
    'fitting-cancelled': 'La búsqueda se detuvo.'
  },
  fields: { 'fitting.targetLPerHa': 'volumen que alcanzar' },
  formulas: {
    'target-flow': 'Objetivo de una posición',
    'off-target': 'Distancia al objetivo',
    'profile-match': 'Concordancia del perfil',
    'top-share': 'Parte por la mitad superior'
  },
  symbols: {
    qw: 'caudal deseado aquí',
    'target-flow.w': 'peso de la posición',
    'target-flow.Q': 'caudal deseado',
    'off-target.d': 'diferencia con el objetivo',
    'profile-match.M': 'concordancia del perfil',
    'profile-match.e': 'suma de las diferencias entre partes y pesos',
    St: 'parte por la mitad superior',
    qt: 'caudal por la mitad superior'
  },
  assumptions: {
    'fitting.position-tolerance': { label: 'Posición fuera del objetivo', meaning: 'Se señala una boquilla más alejada que esto de su objetivo. Se usa al elegir calibres de un catálogo.' },
    'fitting.few-gain': { label: 'Lo que aportan pocos cambios', meaning: '«Pocos cambios» es el juego con menos cambios que aporta esta parte de lo que gana la mejor concordancia.' }
  }
};
