import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'No se dio la distancia entre filas, y no se ve ninguna fila detrás de la primera más allá de una franja libre. Indíquela: --row-spacing 3.5.',
    'laser-too-few': 'Quedan {found} puntos de la fila; hacen falta al menos {fewest}, en dos franjas de altura o más. Tome más puntos, o compruebe lado, plataforma y suelo.',
    'laser-skirt-above-top': 'La falda a {skirt} m no está por debajo de la cima de los puntos a {top} m. Bájela.',
    'laser-no-face': 'La cara de la fila está a {face} m del centro de la calle, en la línea de fila de filas separadas {spacing} m o más allá. Compruebe la distancia entre filas.',
    'las-empty': 'El archivo está vacío. Elija otro.',
    'las-not-las': 'El archivo no es ni LAS ni LAZ: no empieza por LASF, ni es una tabla de texto. Exporte los puntos como LAS 1.2 a 1.4, LAZ o CSV.',
    'las-header-short': 'El archivo termina dentro de su cabecera: {found} bytes, y hacen falta al menos {least}. Cópielo o expórtelo de nuevo.',
    'las-version': 'El archivo es LAS {version}; se leen de 1.0 a 1.4. Expórtelo como uno de estos.',
    'las-format': 'El archivo contiene puntos de formato {format}; se leen de 0 a {most}. Expórtelo de nuevo.',
    'las-record-short': 'Un punto de formato {format} ocupa {least} bytes, pero el archivo dice {found}. Está dañado: expórtelo de nuevo.',
    'las-scale': 'La escala de {axis} es {found}; se admite más de 0 y hasta {most}. La cabecera está dañada, o los puntos son demasiado bastos para mostrar una copa: exporte con una escala de 0,001.',
    'las-offset': 'El desplazamiento de {axis} es {found}, que no es un número. La cabecera está dañada: exporte de nuevo el archivo.',
    'las-no-points': 'El archivo no contiene puntos, o ninguno que no marque como retenido o ruido. Expórtelo con puntos.',
    'las-cut-short': 'El archivo anuncia {wanted} puntos pero termina antes. Está cortado: cópielo de nuevo.',
    'las-damaged': 'Después de {found} de {wanted} puntos el resto no se puede descomprimir. El archivo está dañado: cópielo o expórtelo de nuevo.',
    'las-laz-large': 'El archivo LAZ tiene {size} MB; se descomprimen como máximo {most} MB. Recorte la calle, o exporte como LAS, que puede ser mayor.',
    'las-far-apart': 'Los puntos distan {apart} km; el máximo son {most} km. Recorte una sola calle con sus dos filas.'
  }
};
