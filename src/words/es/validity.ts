import type { Language } from '../words.ts';

export const VALIDITY: Language['validity'] = {
  'blind-to-canopy': 'No tiene en cuenta la copa.',
  'blind-to-height-and-width': 'No tiene en cuenta la altura ni el ancho.',
  'blind-to-row-spacing': 'No tiene en cuenta la distancia entre filas ni el ancho.',
  'retired-for-new-labels': 'Solo etiquetas antiguas; las nuevas usan la pared foliar.',
  'blind-to-width-and-density': 'No tiene en cuenta el ancho ni la densidad.',
  'suits-narrow-walls': 'Hecha para paredes estrechas, no para árboles redondos o anchos.',
  'under-doses-small-trees': 'En proporción al volumen, los árboles más pequeños recibieron demasiado poco en ensayos.',
  'box-volume': 'Una caja contiene más que la copa que hay dentro; no introduzca volúmenes reales.',
  'early-rate-disputed': 'Las fuentes no coinciden sobre dosis menores al principio de la temporada.',
  'memory-law': 'La recta es de memoria: compruébela con el registro vigente.',
  'swiss-labels-only': 'Solo para etiquetas suizas.',
  'volume-by-crop': 'Los litros por fila unitaria dependen del cultivo, de 9 a 50.',
  'run-off-judged-in-field': 'El punto de escurrimiento se valora en el campo.',
  'measured-in-citrus': 'Medida en cítricos.',
  'outline-volume': 'Para el volumen dentro del contorno real, nunca para la caja.',
  'sensor-coefficient': 'Hecha para un pulverizador que detecta los huecos.',
  'leaf-density-rarely-known': 'La densidad foliar rara vez se mide; el valor por defecto es una conjetura.',
  'recovery-uncertain': 'La parte que queda varía mucho.'
};
