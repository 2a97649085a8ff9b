import type { mixText as EN } from '../../en/headland/mix-text.ts';
import type { Translated } from '../../translation.ts';

/** What the Loads step says of the mix. */
export const mixText: Translated<typeof EN> = {
  areaFrom: { mix: 'según lo indicado para este tratamiento', block: 'de la parcela', rows: 'por las filas, su longitud y su distancia' },
  volumeFrom: { check: 'según lo medido en la cabecera', setting: 'según el ajuste, aún sin medir' },
  groups: {
    conditioners: 'acondicionador de agua',
    'soluble-powders': 'polvo o granulado soluble',
    'dry-powders': 'polvo o granulado seco',
    'liquid-flowables': 'suspensión líquida',
    emulsifiables: 'emulsionable',
    solutions: 'solución',
    adjuvants: 'coadyuvante',
    unknown: 'tipo desconocido'
  },
  formulations: {
    WP: 'WP, polvo mojable',
    WG: 'WG, granulado dispersable en agua',
    DF: 'DF, granulado seco dispersable',
    SG: 'SG, granulado soluble en agua',
    SP: 'SP, polvo soluble en agua',
    SC: 'SC, suspensión concentrada',
    SE: 'SE, suspoemulsión',
    F: 'F, suspensión líquida',
    ME: 'ME, microemulsión',
    CS: 'CS, suspensión de cápsulas',
    EC: 'EC, concentrado emulsionable',
    EW: 'EW, emulsión en agua',
    OD: 'OD, dispersión en aceite',
    SL: 'SL, concentrado soluble',
    adjuvant: 'coadyuvante',
    conditioner: 'acondicionador de agua',
    other: 'otro, no figura'
  },
  order: {
    water: (share) => `Agua: al menos el ${share} de ella antes del primer producto.`,
    agitate: 'Agitación en marcha, y así hasta vaciar el tanque.',
    product: (name, group) => `${name} (${group}). Deje que se disperse del todo antes del siguiente.`,
    one: (name, group) => `${name} (${group}).`,
    'fill-up': 'Complete con agua hasta lo que lleva la carga y vaya a pulverizar: no deje reposar un caldo.'
  },
  labelFirst: 'El orden de las etiquetas va primero; búsquelo en cada una. Donde no digan nada, en este orden:',
  orderNotes: [
    'Orden por tipo de producto: North Dakota State University, 2021. Los acondicionadores al principio, la parte de agua y los coadyuvantes al final son práctica común.',
    'Otro orden en uso agita después de los productos mojables y termina con los tensioactivos; algunos llenan medio tanque antes de mezclar.',
    'Antes de una mezcla que no haya hecho nunca: una prueba en frasco con la misma agua, y mirar si la mezcla está permitida.'
  ],
  cautions: [
    'Manejar el concentrado es el paso más peligroso del día: equipo de protección como dice cada etiqueta, agua limpia al alcance, nadie más cerca.',
    'Llene con una manguera que no pueda aspirar de vuelta. No deje nunca solo un tanque que se está llenando.',
    'Pese en una balanza, mida en una jarra: los tapones y las marcas del tanque pueden fallar en una décima parte.'
  ],
  rinse: {
    tenfold: (water, residual) => `Enjuague con ${water}: diez veces los ${residual} que se quedan.`,
    tenth: (water) => `Enjuague con ${water}: una décima parte del tanque, porque no se sabe cuánto se queda.`,
    left: (once, thrice) => `Usada de una vez deja el ${once} de la concentración; en tres partes, pulverizando cada una, el ${thrice}.`,
    out: 'Pulverice el enjuague sobre el cultivo, en capa fina y en movimiento, según permitan la etiqueta y la ley local; nunca en un solo sitio ni en un desagüe.'
  },
  hours: (h, min) => (h === 0 ? `${min} min` : `${h} h ${min.padStart(2, '0')} min`)
};
