import type { glossary as EN, terms as TERMS } from '../../en/guide/glossary.ts';
import type { Translated } from '../../translation.ts';

/** Los símbolos vienen de las propias fórmulas; los términos son los del oficio y los nuestros. */
export const glossary: Translated<typeof EN> = {
  title: 'Símbolos y términos',
  find: 'Buscar un símbolo, una palabra o una unidad',
  found: (n) => (n === 1 ? '1 encontrado' : `${n} encontrados`),
  none: 'Nada encontrado. Pruebe con una palabra más corta.',
  all: 'Mostrar todo',
  symbols: 'Símbolos',
  terms: 'Términos',
  more: (n) => `y ${n} más`,
  same: 'Un símbolo aparece una vez por cada significado. Las fórmulas calculan en las unidades escritas aquí, muestre lo que muestre la pantalla.',
  close: 'Cerrar'
};

export const terms: Translated<typeof TERMS> = {
  alley: ['calle', 'Suelo entre dos filas de árboles, por donde pasa el pulverizador.'],
  skirt: ['falda', 'Borde inferior de la copa: altura de la hoja más baja sobre el suelo.'],
  trv: ['volumen de fila de árboles, TRV', 'Volumen que llenarían las copas de una hectárea, como un muro tan alto y ancho como los árboles.'],
  lwa: ['área de pared foliar, LWA', 'Área de las dos caras de la copa en una hectárea: altura de la pared por longitud de las filas, dos veces.'],
  lad: ['densidad de área foliar, LAD', 'Área de hoja, de una cara, en un metro cúbico de copa.'],
  bbch: ['estado de desarrollo, BBCH', 'Dos cifras que dicen hasta dónde ha llegado el cultivo, de la yema dormida a la caída de la hoja.'],
  ladder: ['etapas de la temporada', 'Estados de un bloque en su orden; una etapa para cada uno, con su copa y su ajuste.'],
  section: ['sección', 'Dibujo a través de la calle: la máquina en medio, media fila a cada lado.'],
  setting: ['ajuste', 'Lo que se fija para un bloque en un estado: boquillas abiertas, tamaños, presión, velocidad, ventilador.'],
  working: ['cálculo', 'Cómo se obtuvo un número: fórmula, valores, fuente y cuán seguro es.'],
  verdict: ['en hoja, por encima, bajo la falda, cerrada', 'Adónde apunta el caldo de una boquilla: solo por geometría, sin viento ni gotas.'],
  rate: ['volumen de aplicación', 'Litros de caldo en una hectárea.'],
  concentration: ['factor de concentración', 'Cuántas veces menos agua se usa que el volumen diluido de la etiqueta.'],
  load: ['carga', 'Un llenado del tanque.'],
  headland: ['comprobación en la cabecera', 'Pruebas de velocidad, de rellenado y de recogida que demuestran un ajuste.'],
  card: ['ficha de cabina', 'Una página impresa con el ajuste, para la cabina.'],
  strategies: ['tabla de estrategias', 'Formas publicadas de adaptar agua y dosis a la copa, una al lado de otra.'],
  vmd: ['clase de tamaño de gota', 'De fina a gruesa, según las gotas que hace una boquilla a una presión.'],
  deltaT: ['delta T', 'Temperatura seca menos temperatura húmeda: cuán rápido se secan las gotas.'],
  buffer: ['franja de seguridad', 'Franja junto al agua o a los vecinos que no debe pulverizarse. Su ancho lo dicen la etiqueta y la ley local.'],
  drift: ['deriva', 'Caldo que sale por el aire del terreno tratado.'],
  ucr: ['UCR', 'Unidad de una estrategia: un pequeño volumen fijo de copa a lo largo de la fila.']
};
