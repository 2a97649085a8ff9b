import type { laserScreen as EN } from '../../en/row/laser-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of laser points on the screen. */
export const laserScreen: Translated<typeof EN> = {
  how: 'Puntos de un escáner láser que estuvo parado o circuló por una calle, en LAS, LAZ o CSV (lateral_m, height_m, along_m). Se leen en este dispositivo y no van a ninguna parte.',
  choose: 'Elegir un archivo de puntos',
  other: 'Elegir otro archivo',
  reading: (done) => `Leyendo los puntos: ${done}`,
  stop: 'Detener',
  failed: 'Falló la lectura. Inténtelo de nuevo, o recorte el archivo a una sola calle.',
  judging: 'Valorando los puntos …',
  refused: (lines) => (lines === '1' ? 'No se usó 1 línea del archivo:' : `No se usaron ${lines} líneas del archivo. Las primeras:`),

  file: (kind, points) => `${kind}: ${points} puntos.`,
  kinds: { table: 'Tabla', las: (version, format) => `LAS ${version}, formato de punto ${format}`, laz: (version, format) => `LAZ ${version}, formato de punto ${format}` },
  everyOf: (every) => `Para ocupar poca memoria se leyó uno de cada ${every} puntos del archivo.`,
  marked: (n) => `${n} están marcados en el archivo como retenidos o ruido y se pasaron por alto.`,
  tooFar: (n) => `${n} están demasiado lejos: a más de 100 m de lado, a 20 m por debajo o a 60 m por encima del suelo.`,

  place: 'Dónde está la calle en el archivo',
  placeNote: 'Leído de los puntos. Si las dos filas de abajo se ven borrosas, corrija primero la dirección de las filas.',
  unit: 'El archivo está en',
  units: { m: 'metros', ft: 'pies' },
  bearing: 'Dirección de las filas, grados de y hacia x',
  originX: 'Centro de la calle, x',
  originY: 'Centro de la calle, y',
  ground: 'Suelo, z',

  rules: 'Qué puntos cuentan',
  platform: 'Excluir el soporte o vehículo del propio escáner',
  half: 'A menos de esto de la rodada',
  from: 'Por encima de',
  to: 'Por debajo de',
  groundRule: 'Suelo e hierba por debajo de',
  side: 'Filas tomadas',
  sides: { both: 'las dos', left: 'izquierda', right: 'derecha' },
  skirt: 'Hoja más baja',
  scanner: 'Altura del escáner',
  spacing: 'Leer de los puntos la distancia entre filas',
  spacingNote: (spacing) => `Si no, es la de la parcela, ${spacing}.`,

  plot: (points, height, width) => `Sección de ${points} puntos con el suelo, las líneas de fila y el contorno hecho con ellos: ${height} de alto, ${width} de ancho`,
  legend: { used: 'cuenta', out: 'excluido', outline: 'contorno', face: 'cara que se vio', row: 'línea de fila', platform: 'excluido como soporte o vehículo' },

  says: 'Qué dicen los puntos',
  used: (used, all) => `Cuentan ${used} de ${all} puntos.`,
  leftOut: {
    platform: 'el soporte o vehículo',
    ground: 'suelo e hierba',
    'other-side': 'fila que no se toma',
    beyond: 'filas más alejadas',
    'below-skirt': 'por debajo de la hoja más baja',
    'above-top': 'por encima de la cima'
  },
  leftOutTitle: 'Excluidos',
  figures: { height: 'Altura', skirt: 'Hoja más baja', width: 'Mayor ancho', spacing: 'Distancia entre filas', filled: 'Parte llena de la fila', box: 'Caja', outline: 'Dentro del contorno', occupied: 'Ocupado' },
  seen: 'leída de la fila de detrás',
  given: 'la de la parcela',
  ofBox: (share) => `${share} de la caja`,
  box: 'de la hoja más baja a la cima, tan ancha como la franja más ancha, por longitud de fila',
  noGaps: 'demasiado pocos puntos, o un tramo demasiado corto, para saber los huecos de la cara',
  noFilled: (stretch) => `${stretch} de fila es demasiado corto para mostrar huecos entre árboles`,
  noAlong: 'los puntos no dicen en qué lugar a lo largo de la fila están',
  none: 'sin indicar',
  spacingDiffers: (seen, block) => `Los puntos muestran filas separadas ${seen}, la parcela tiene ${block}. Compruebe cuál es correcta: de ella depende el ancho.`,

  bands: 'Por altura, desde arriba',
  columns: { height: 'Altura', points: 'Puntos', width: 'Ancho', gaps: 'Huecos', density: 'Densidad' },
  limits: 'Qué no puede decir',
  limit: [
    'El escáner ve la cara cercana. Se toma que la línea de fila está a media distancia entre filas del centro de la calle, y que el lado lejano es como el cercano.',
    'La densidad son los puntos entre su media: un indicio vago de hoja. Puntos y área foliar fueron juntos con una correlación de 0,88, volumen y área foliar con 0,80, en 20 manzanos de ocho partes cada uno (Berk et al. 2020). El área foliar misma no se mide.',
    'Los haces están más separados cuanto más inclinados, así que la cima parece menos densa de lo que es, salvo que se indique la altura del escáner.',
    'Los huecos de la cara son celdas de 0,1 m a lo largo de la fila sin ningún punto. El volumen ocupado toma que cada uno la atraviesa del todo, lo que puede no ser así.',
    'En una pendiente las alturas deben ser sobre el suelo que hay debajo; los árboles inclinados hacen el contorno reflejado demasiado ancho o demasiado estrecho. Mida algunos árboles a mano.'
  ],
  use: 'Usar para esta etapa',
  taken: 'La copa de esta etapa tiene ahora el contorno de los puntos.',
  useNote: 'Se sustituyen altura, ancho, hoja más baja, anchos y densidad por altura; también la parte llena, si se indica. Deshacer los recupera.'
};
