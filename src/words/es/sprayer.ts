import type { Language } from '../words.ts';

export const VERDICTS: Language['verdicts'] = {
  'in-leaf': 'en hoja',
  'over-top': 'por encima',
  'under-skirt': 'bajo la falda',
  shut: 'cerrada',
  unknown: 'desconocido'
};

export const SIDES: Language['sides'] = { left: 'izquierdo', right: 'derecho' };

export const PATTERNS: Language['patterns'] = {
  'every-alley': 'todas las calles, los dos lados abiertos',
  'one-side-both-faces': 'todas las calles dos veces, lado {side} abierto, al final las dos caras',
  'one-side-one-face': 'una cara de cada fila, lado {side} abierto',
  'alternate-alleys': 'calles alternas, los dos lados abiertos',
  'whole-rows': '{rows} filas enteras por pasada',
  swath: 'una banda de {width} por pasada'
};

/** Droplet size classes as ISO 25358 orders them. */
export const DROPLETS: Language['droplets'] = {
  XF: 'extremadamente fina',
  VF: 'muy fina',
  F: 'fina',
  M: 'media',
  C: 'gruesa',
  VC: 'muy gruesa',
  XC: 'extremadamente gruesa',
  UC: 'ultragruesa'
};

export const COLOURS: Language['colours'] = {
  purple: 'morado',
  olive: 'oliva',
  pink: 'rosa',
  orange: 'naranja',
  'light-green': 'verde claro',
  green: 'verde',
  yellow: 'amarillo',
  lilac: 'lila',
  blue: 'azul',
  'brown-red': 'rojo pardo',
  red: 'rojo',
  brown: 'marrón',
  grey: 'gris',
  white: 'blanco',
  'light-blue': 'azul claro',
  'yellow-green': 'verde amarillento',
  black: 'negro'
};

/** Air given against air needed, ways to match them, and the judge. */
export const AIR: Language['air'] = {
  short: 'Aire necesario, unos {needed}; hay {given}: falta un {off}.',
  over: 'Aire necesario, unos {needed}; hay {given}: sobra un {off}.',
  matched: 'Aire necesario, unos {needed}; hay {given}: adecuado dentro del {tolerance}.',
  unknown: 'No se calcula el aire: {reason}',
  rule: 'La regla llena la calle: aire arrastrado {k} veces, {certainty}.',
  speed: 'Una velocidad de {value} lo igualaría; el mismo caudal da entonces {volume}.',
  'speed-bare': 'Una velocidad de {value} lo igualaría; los litros por hectárea cambian con ella.',
  'speed-beyond': 'Una velocidad de {value} lo igualaría, pero el límite de la máquina es {limit}.',
  gear: 'La marcha {gear} da {value} a este régimen de la TDF, el {share} de lo necesario; caudal y velocidad se mantienen.',
  pto: 'La TDF a {value} en la marcha {gear} lo igualaría. Una bomba en ese eje cambia el caudal con ella: ajuste de nuevo la presión.',
  'pto-beyond': 'La TDF a {value} en la marcha {gear} lo igualaría, pero el límite de la máquina es {limit}.',
  judge:
    'El juez: ate cintas en la cima de los árboles y pase con el ventilador en marcha, sin pulverizar. Deben ondear en oblicuo hacia fuera. Si siguen colgando, va demasiado deprisa o hay poco aire; si se ponen verticales, puede ir más deprisa o usar menos aire. Las hojas de la cara más alejada solo se agitan un poco.'
};
