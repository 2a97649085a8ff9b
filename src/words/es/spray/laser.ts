import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'No se dio la distancia entre filas, y no se ve ninguna fila detrás de la primera más allá de una franja libre. Indíquela: --row-spacing 3.5.',
    'laser-too-few': 'Quedan {found} puntos de la fila; hacen falta al menos {fewest}, en dos franjas de altura o más. Tome más puntos, o compruebe lado, plataforma y suelo.',
    'laser-skirt-above-top': 'La falda a {skirt} m no está por debajo de la cima de los puntos a {top} m. Bájela.',
    'laser-no-face': 'La cara de la fila está a {face} m del centro de la calle, en la línea de fila de filas separadas {spacing} m o más allá. Compruebe la distancia entre filas.'
  }
};
