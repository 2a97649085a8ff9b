import type { Part } from '../../language.ts';

/** What is said of a canopy in a photograph. */
export const PHOTO: Part = {
  refusals: {
    'photo-flat': 'La imagen tiene una sola luminosidad, así que no se distinguen hoja y fondo. Tómela contra el cielo o una tela blanca.',
    'photo-no-bands': 'No hay ninguna franja de altura marcada. Marque el marco de la copa.',
    'photo-few-pixels': 'Entre {from} m y {to} m solo se contaron {pixels} píxeles; hacen falta al menos {fewest}. Marque un marco mayor, tome franjas más altas o una imagen mayor.',
    'photo-no-width': 'Entre {from} m y {to} m la copa no tiene ancho. Corrija sus anchos, o las alturas del marco.',
    'photo-saturated': 'Entre {from} m y {to} m muestran hueco {gaps} píxeles; hacen falta al menos {fewest} para saber el área foliar. Ahí la hoja es demasiado densa para esta imagen.',
    'photo-mostly-saturated': 'El {share} % de la sección muestra demasiado pocos huecos para saber el área foliar. Tome una imagen más nítida, de más cerca o en un estado más temprano.',
    'photo-no-leaf': 'El marco apenas muestra hoja: {found} m²/m³, y {least} m²/m³ es lo mínimo que se guarda. Compruebe el marco y el umbral.',
    'photo-too-dense': 'El marco muestra {found} m²/m³ de hoja, y {most} m²/m³ es lo máximo que se guarda. Compruebe el marco, el umbral y el ancho de copa.',
    'photo-not-picture': 'El archivo no es una imagen JPEG, PNG o WebP. Elija una de estas; la mayoría de los teléfonos pueden guardar o compartir una imagen como JPEG.',
    'photo-empty': 'El archivo está vacío. Elija otro.',
    'photo-cut-short': 'La imagen termina antes de decir su tamaño. El archivo está cortado: cópielo de nuevo.',
    'photo-file-large': 'El archivo tiene {size} MB; se leen como máximo {most} MB. Guarde la imagen más pequeña.',
    'photo-too-large': 'La imagen tiene {width} × {height} píxeles; se leen como máximo {most} millones de píxeles. Guárdela más pequeña.',
    'photo-too-small': 'La imagen tiene {width} × {height} píxeles; hacen falta al menos {least} píxeles en cada sentido. Tome una mayor.',
    'photo-undecodable': 'La imagen está dañada, o es de un tipo que este navegador no lee. Ábrala en otro programa y guárdela como JPEG.'
  },
  fields: { photo: 'fotografía', 'photo.bands': 'fotografía' },
  formulas: {
    'gap-fraction': 'Fracción de huecos',
    'leaf-density-by-gaps': 'Densidad de área foliar según los huecos',
    'section-with-band': 'Sección hasta esta franja',
    'leaf-density-with-band': 'Densidad media de área foliar hasta esta franja'
  },
  symbols: {
    'gap-fraction.P': 'fracción de huecos',
    'gap-fraction.g': 'píxeles que muestran hueco',
    'gap-fraction.n': 'píxeles contados',
    'leaf-density-by-gaps.P': 'fracción de huecos',
    'leaf-density-by-gaps.G': 'parte de su área que muestra una hoja',
    'leaf-density-by-gaps.C': 'agrupación',
    'leaf-density-by-gaps.W': 'camino a través de la copa',
    A0: 'sección por debajo',
    'section-with-band.z': 'altura de la franja',
    'leaf-density-with-band.z': 'altura de la franja',
    LADb: 'densidad de área foliar de la franja',
    'leaf-density-with-band.LAD0': 'media por debajo'
  },
  assumptions: {
    'photo.projection': { label: 'Hoja que encuentra la mirada', meaning: 'Parte de su área que una hoja muestra a la cámara, en promedio. Las hojas orientadas por igual en todas direcciones muestran la mitad.' },
    'photo.clumping': { label: 'Agrupación de las hojas', meaning: '1 son hojas colocadas al azar. Las hojas agrupadas dejan más huecos que eso, así que el factor real es menor que 1 y hay más hoja de la que dice 1.' }
  }
};
