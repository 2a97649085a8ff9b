import { shown } from '#core/quantity/units.ts';
import type { Fate } from '#core/spray/types.ts';
import type { layerScreen as EN_SCREEN, layerWords as EN_WORDS, sheetWords as EN_SHEET } from '../../en/spray/layer.ts';
import { formatNumber, formatUnit } from '../../format.ts';
import type { Translated } from '../../translation.ts';

/** Shares are good to some fifteen points: nobody reads a decimal. */
const percent = (share: number): string => (share > 0 && share < 0.005 ? 'menos del 1\u00a0%' : `${formatNumber(share * 100, 0)}\u00a0%`);

/** What does not stay on the trees, by where it ends. */
const LOSS: Readonly<Partial<Record<Fate, readonly [whole: string, short: string]>>> = {
  over: ['por encima de la copa', 'por encima'],
  through: ['a través de la fila', 'a través'],
  'ground-in': ['suelo en la parcela', 'suelo'],
  'ground-out': ['suelo fuera', 'fuera'],
  dried: ['secado en el aire', 'secado']
};

/** Words of the spray in the drawing. */
export const layerWords: Translated<typeof EN_WORDS> = (system) => ({
  onTrees: 'en los árboles',
  alone: (position) => `solo ${position}, en los árboles`,
  all: (share) => `todas las boquillas ${share}`,
  band: ([least, most]) => `${formatNumber(least * 100, 0)} a ${percent(most)}`,
  atLeast: (points) => `al menos ± ${formatNumber(points * 100, 0)}`,
  share: percent,
  loss: (loss, short) => LOSS[loss]?.[short ? 1 : 0] ?? loss,
  axis: (bare) => `deposición en ${bare ? 'madera' : 'hoja'}`,
  mean: (mean, spread, short) => (short ? `${mean} ${formatUnit('uL/cm2', system)}` : `${mean} ± ${spread} ${formatUnit('uL/cm2', system)}`),
  deposit: (ulPerCm2) => formatNumber(ulPerCm2, ulPerCm2 < 9.995 ? 2 : 1),
  // A tenth is finer than the model.
  speed: (mPerS) => `${formatNumber(shown(mPerS, 'm/s', system), 0)}\u00a0${formatUnit('m/s', system)}`
});

/** Of the controls under the drawing. */
export const layerScreen: Translated<typeof EN_SCREEN> = {
  controls: 'Caldo en el dibujo',
  play: 'Reproducir despacio una pasada',
  stop: 'Detener',
  still: 'Mostrar gotas',
  hideStill: 'Ocultar gotas',
  files: { svg: 'Guardar SVG', png: 'Guardar PNG' },
  spoken: (share, within) => `En los árboles: ${share}, ${within}.`,
  spokenAlone: (position, share) => `Solo ${position}: ${share} en los árboles.`,
  legend: {
    title: 'Cómo se lee',
    shading: 'caldo en el aire, de ralo a denso',
    air: 'aire: cuanto más grueso, más rápido; no se dibuja por debajo de',
    deposit: 'deposición por altura, media de los dos lados, y su dispersión',
    depositGhost: 'deposición por altura, media de los dos lados, y su dispersión; trazos finos: con lo que se compara',
    losses: 'perdido: flecha tan ancha como su parte'
  },
  limits: 'Un modelo. Ordena ajustes; no predice ni residuos ni la deriva a efectos legales. Juzgan el papel y la cinta.',
  failed: 'El modelo de pulverización falló con este ajuste.',
  retry: 'Intentar de nuevo',
  pngFailed: 'Este navegador no pudo dibujar la imagen; guárdela como SVG.',
  slow: (times) => `${times} veces más lento que en la realidad`
};

/** Of the sheet that is saved as a picture. */
export const sheetWords: Translated<typeof EN_SHEET> = {
  measures: { height: 'cima de la copa', width: 'ancho de copa', skirt: 'falda', spacing: 'distancia entre filas' },
  setting: (s) => `pulverizan ${s.open} de ${s.nozzles} boquillas, ${s.pressure}, ${s.speed}, ${s.volume}, ${s.gear} a ${s.pto}`,
  model: (share, within, alone) =>
    `Modelo; en los árboles ${share}, margen ${within}.${alone === null ? '' : ` Sombreado y flechas: solo ${alone}.`} Ordena ajustes; no predice ni residuos ni la deriva a efectos legales.`,
  rules: 'Comparación de ajustes, no una recomendación. La etiqueta del producto, la ley local y el asesoramiento habilitado prevalecen sobre cualquier cifra de aquí.'
};
