import type { photoScreen as EN } from '../../en/row/photo-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the photograph on the screen. */
export const photoScreen: Translated<typeof EN> = {
  how: 'Colóquese en la calle, a la altura del centro de la copa, con el cielo o una tela blanca detrás de una sola fila. Lo mejor es cielo cubierto. La imagen se lee en este dispositivo y no va a ninguna parte.',
  choose: 'Elegir una imagen',
  other: 'Elegir otra imagen',
  reading: (done) => `Leyendo la imagen: ${done}`,
  stop: 'Detener',
  failed: 'Falló la lectura. Inténtelo de nuevo, o guarde la imagen más pequeña.',
  picture: 'Fotografía con el marco de la copa; lo rayado es lo que cuenta como hoja',
  size: (width, height) => `${width} × ${height} píxeles`,

  frame: 'Marco de la copa',
  frameNote: 'Arrastre los cuatro tiradores, o muévalos con las teclas de flecha: el borde superior a la cima, el inferior a la hoja más baja, los lados a la copa de una sola fila.',
  edge: { top: 'Cima de la copa', bottom: 'Hoja más baja', left: 'Lado izquierdo', right: 'Lado derecho' },
  at: { top: (p) => `${p} desde el borde superior de la imagen`, bottom: (p) => `${p} desde el borde superior de la imagen`, left: (p) => `${p} desde la izquierda`, right: (p) => `${p} desde la izquierda` },
  topHeight: 'El borde superior está a',
  skirtHeight: 'El borde inferior está a',
  upsideDown: 'El borde inferior no está por debajo del superior. Corrija una de las alturas.',
  band: 'Altura de una franja',

  threshold: 'Umbral en azul',
  thresholdSays: (level) => `Los píxeles con azul ${level} o más cuentan como hueco.`,
  proposal: (level, part) => `Propuesto: ${level}, que es el que mejor separa lo oscuro de lo claro (Otsu 1979, de memoria; el ${part} de la varianza está entre los dos).`,
  takeProposal: 'Tomar la propuesta',
  poor: 'Lo oscuro y lo claro se separan mal. Mire el rayado antes de fiarse.',
  mask: 'Rayar lo que cuenta como hoja',

  says: 'Qué dice la fotografía',
  density: 'Densidad de área foliar',
  atLeast: (value) => `al menos ${value}`,
  working: 'cómo se calcula',
  bands: 'Por altura, desde arriba',
  columns: { height: 'Altura', gaps: 'Huecos', density: 'Densidad de área foliar', width: 'Ancho' },
  doubt: (lower, higher, by) => `Con el umbral ${by} más bajo ${lower}, ${by} más alto ${higher}.`,
  none: 'sin indicar',
  saturated: (share) => `En el ${share} de la sección hay demasiado pocos huecos para saberlo; entra en la media con lo que tiene como mínimo.`,
  assumptions: 'Qué se supone de las hojas',
  assumptionsNote: 'Los dos entran en cada cifra de aquí y puede cambiarlos.',
  limits: 'Qué no puede decir',
  limit: [
    'Madera y fruta cuentan como hoja: descuente lo que se ve en el árbol sin hoja.',
    'Es una vista de un tramo de fila: tome varias, y de más de un árbol.',
    'Se toma cada hueco como cielo o tela. Donde la fila de detrás está en él, se cuenta hoja que no hay. Cuelgue la tela detrás de la fila.',
    'El cielo al lado de una copa o entre dos árboles, dentro del marco, cuenta como hueco: la densidad es entonces la de la fila tal como está, no la de las copas solas.',
    'El brillo en las hojas cuenta como hueco, un cielo oscuro como hoja: mire el rayado.',
    'Se toma la vista como horizontal y el camino a través de la copa como su ancho dibujado. Desde abajo, o con un ancho equivocado, la densidad es errónea en la misma medida.',
    'Las hojas agrupadas dejan más huecos que las hojas al azar, por lo que la cifra real es mayor; también la de una franja cuyos huecos están juntos.',
    'Los píxeles del borde de una hoja están mezclados; en una imagen basta se pierden los huecos pequeños.'
  ],
  byHeight: 'Con densidad por altura',
  byHeightDrawn: 'No se midieron anchos por altura: se anotaría el contorno tal como está dibujado, y después cuenta como medido.',
  use: 'Usar para esta etapa',
  used: 'La densidad de área foliar de esta etapa viene ahora de la fotografía.',
  kept: (bands, threshold) => `Con esta etapa se guardan los recuentos de una fotografía: ${bands} franjas, umbral ${threshold}.`,
  forget: 'Olvidar los recuentos',
  keptSays: (value) => `Con los supuestos de ahora dicen ${value}.`
};
