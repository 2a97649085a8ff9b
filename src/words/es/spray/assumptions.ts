import type { AssumptionWords } from '../../words.ts';

const drops = (name: string): AssumptionWords => ({
  label: `Gota mediana, ${name}`,
  meaning: 'La mitad del caldo está en gotas menores. Las clases comparan boquillas; no tienen límites en µm.'
});

/** Every constant of the spray model. */
export const SPRAY_ASSUMPTION_WORDS: Readonly<Record<string, AssumptionWords>> = {
  'spray.projection': { label: 'Hoja que da la cara al caldo', meaning: 'Parte del área foliar que se interpone, descontadas las hojas que quedan detrás de otras. Ajustada a una sola serie de viñedo; es lo que más mueve la respuesta.' },
  'spray.leaf-beta': { label: 'Paso alrededor de una hoja', meaning: 'Cuanto mayor, más gotas pequeñas siguen al aire alrededor de una hoja.' },
  'spray.leaf-size': { label: 'Tamaño de la hoja', meaning: 'Ancho de una hoja transversal al aire.' },
  'spray.wood-beta': { label: 'Paso alrededor de una ramilla', meaning: 'Cuanto mayor, más gotas pequeñas siguen al aire alrededor de una ramilla.' },
  'spray.wood-size': { label: 'Tamaño de la ramilla', meaning: 'Grosor de la madera que recoge gotas.' },
  'spray.wood-density': { label: 'Madera en un árbol sin hoja', meaning: 'Silueta de la madera en un metro cúbico de copa.' },
  'spray.canopy-drag': { label: 'Arrastre de la copa', meaning: 'Con qué fuerza hoja y madera frenan el aire.' },
  'spray.entrainment': { label: 'Aire arrastrado por una cortina', meaning: 'Con qué rapidez el aire de una ranura arrastra aire quieto y se frena.' },
  'spray.round-entrainment': { label: 'Aire arrastrado por una boca', meaning: 'Con qué rapidez el aire de una salida redonda arrastra aire quieto y se frena.' },
  'spray.plume-spread': { label: 'Apertura del caldo de una boquilla', meaning: 'Desviación estándar de su dirección, como parte del ángulo completo del cono.' },
  'spray.shell-share': { label: 'Profundidad de la capa de hojas', meaning: 'Parte exterior del semiancho en la que la hoja es más densa.' },
  'spray.core-ratio': { label: 'Hoja dentro de la copa', meaning: 'Densidad foliar de la parte interior entre la de la capa exterior.' },
  'spray.cross-wind': { label: 'Viento transversal a las filas', meaning: 'En la cima de la copa, desde la izquierda. Curva el aire en el dibujo. El modelo no muestra lo que el viento hace a la deposición.' },
  'spray.wind-decay': { label: 'Viento perdido en la copa', meaning: 'Con qué rapidez decae el viento desde la cima de la copa hacia abajo.' },
  'spray.delta-t': { label: 'Delta T para el secado de gotas', meaning: 'Bulbo seco menos bulbo húmedo. Cuanto mayor, más deprisa menguan las gotas en vuelo. Si se escribió el tiempo del día, viene de ahí, salvo que usted lo fije aquí.' },
  'spray.fine-part': { label: 'Parte fina del espectro', meaning: 'Tamaño de gota por debajo del cual está una décima parte del caldo, entre el tamaño mediano.' },
  'spray.non-volatile': { label: 'Lo que no se evapora', meaning: 'Parte del líquido que queda cuando una gota se ha secado, en volumen.' },
  'spray.release-speed': { label: 'Velocidad de salida de la boquilla', meaning: 'Velocidad con la que las gotas salen de la boquilla.' },
  'spray.rows': { label: 'Filas tratadas a cada lado', meaning: 'Filas de la parcela a cada lado de la máquina. Más allá de la última es fuera de la parcela.' },
  'spray.vmd-XF': drops('extremadamente fina'),
  'spray.vmd-VF': drops('muy fina'),
  'spray.vmd-F': drops('fina'),
  'spray.vmd-M': drops('media'),
  'spray.vmd-C': drops('gruesa'),
  'spray.vmd-VC': drops('muy gruesa'),
  'spray.vmd-XC': drops('extremadamente gruesa'),
  'spray.vmd-UC': drops('ultragruesa'),
  'spray.vmd-unknown': { label: 'Gota mediana, clase desconocida', meaning: 'Para una boquilla cuya tabla no imprime clase de gota.' }
};
