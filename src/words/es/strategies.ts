import type { Language } from '../words.ts';

const REFERENCE = 'Dosis completa: la copa de referencia que figura en los supuestos.';

export const STRATEGIES: Language['strategies'] = {
  'ground-area': { name: 'Por hectárea de suelo', line: 'Lo mismo en cada hectárea, haya lo que haya en ella.', full: 'Dosis completa: cualquier hectárea.' },
  'row-length': { name: 'Longitud de fila', line: 'En proporción a los metros de fila; la altura y el ancho no cuentan.', full: 'Dosis completa: la distancia entre filas de referencia.' },
  'crown-height': { name: 'Altura de copa', line: 'En proporción a la altura de la falda a la cima; el ancho y la distancia entre filas no cuentan.', full: 'Dosis completa: la altura de copa de referencia.' },
  'leaf-wall': { name: 'Área de pared foliar (LWA)', line: 'En proporción a las paredes tratadas, de la falda a la cima; el ancho no cuenta.', full: 'Dosis completa: las dos paredes de la copa de referencia.' },
  'row-volume': { name: 'Volumen de vegetación (TRV)', line: 'En proporción a la caja de la copa: de la falda a la cima, mayor ancho.', full: REFERENCE },
  'us-row-volume': { name: 'TRV de EE. UU.', line: 'Caja desde el suelo, mayor ancho, por la densidad y el factor de temporada.', full: 'Dosis completa: la plantación estándar, 400 gal/acre en aplicación diluida.' },
  'metric-multiplier': { name: 'Multiplicador métrico', line: 'Caja desde el suelo, mayor ancho, por un multiplicador en el que 1 es denso.', full: 'Dosis completa: la plantación estándar con hoja densa.' },
  'swiss-affine': { name: 'Recta suiza', line: 'Caja de la copa, mayor ancho; el árbol más pequeño conserva parte de la dosis.', full: 'Dosis completa: el volumen de referencia suizo.' },
  'unit-canopy-row': { name: 'Fila unitaria de copa (UCR)', line: 'Filas de 1 m de alto, 1 m de ancho y 100 m de largo, contadas de la falda a la cima y con el mayor ancho.', full: REFERENCE },
  'row-distance': { name: 'Distancia entre filas y altura', line: 'Litros por 100 m de fila y metro de altura, de la falda a la cima; el ancho no cuenta.', full: 'Dosis completa: la altura de copa y la distancia entre filas de referencia.' },
  'stage-volume': { name: 'Estado y densidad', line: 'Lo que retiene la copa dentro de su contorno en este estado y con esta densidad.', full: 'Dosis completa: la copa de referencia con densidad media.' },
  'occupied-volume': { name: 'Volumen ocupado', line: 'Litros por metro cúbico dentro del contorno real, sin los huecos.', full: REFERENCE },
  'leaf-area': { name: 'Área foliar', line: 'Una deposición deseada sobre la hoja que hay, dividida por la parte que queda.', full: 'Dosis completa: la copa de referencia con su densidad foliar.' }
};

export const ACTS: Language['acts'] = {
  'label-dose-kept': 'se mantiene la dosis por hectárea de la etiqueta',
  'scaled-to-canopy': 'sigue a la copa',
  'not-above-label': 'limitada a la dosis de la etiqueta',
  floored: 'mantenida en su mínimo',
  'capped-at-label-maximum': 'actúa el máximo de la etiqueta',
  'raised-to-label-minimum-water': 'subida al agua mínima de la etiqueta',
  'capped-at-label-maximum-water': 'limitada al agua máxima de la etiqueta',
  'own-water': 'agua propia'
};
