import { shown } from '#core/quantity/units.ts';
import type { Fate } from '#core/spray/types.ts';
import type { layerScreen as EN_SCREEN, layerWords as EN_WORDS, sheetWords as EN_SHEET } from '../../en/spray/layer.ts';
import { formatNumber, formatUnit } from '../../format.ts';
import type { Translated } from '../../translation.ts';

/** Shares are good to some fifteen points: nobody reads a decimal. */
const percent = (share: number): string => (share > 0 && share < 0.005 ? 'menos de 1\u00a0%' : `${formatNumber(share * 100, 0)}\u00a0%`);

/** What does not stay on the trees, by where it ends. */
const LOSS: Readonly<Partial<Record<Fate, readonly [whole: string, short: string]>>> = {
  over: ['por cima da copa', 'por cima'],
  through: ['através da linha', 'através'],
  'ground-in': ['solo na parcela', 'solo'],
  'ground-out': ['solo fora', 'fora'],
  dried: ['seco no ar', 'seco']
};

/** Words of the spray in the drawing. */
export const layerWords: Translated<typeof EN_WORDS> = (system) => ({
  onTrees: 'nas árvores',
  alone: (position) => `só ${position}, nas árvores`,
  all: (share) => `todos os bicos ${share}`,
  band: ([least, most]) => `${formatNumber(least * 100, 0)} a ${percent(most)}`,
  atLeast: (points) => `pelo menos ± ${formatNumber(points * 100, 0)}`,
  share: percent,
  loss: (loss, short) => LOSS[loss]?.[short ? 1 : 0] ?? loss,
  axis: (bare) => `deposição na ${bare ? 'madeira' : 'folha'}`,
  mean: (mean, spread, short) => (short ? `${mean} ${formatUnit('uL/cm2', system)}` : `${mean} ± ${spread} ${formatUnit('uL/cm2', system)}`),
  deposit: (ulPerCm2) => formatNumber(ulPerCm2, ulPerCm2 < 9.995 ? 2 : 1),
  // A tenth is finer than the model.
  speed: (mPerS) => `${formatNumber(shown(mPerS, 'm/s', system), 0)}\u00a0${formatUnit('m/s', system)}`
});

/** Of the controls under the drawing. */
export const layerScreen: Translated<typeof EN_SCREEN> = {
  controls: 'Calda no desenho',
  play: 'Reproduzir devagar uma passagem',
  stop: 'Parar',
  still: 'Mostrar gotas',
  hideStill: 'Ocultar gotas',
  files: { svg: 'Guardar SVG', png: 'Guardar PNG' },
  spoken: (share, within) => `Nas árvores: ${share}, ${within}.`,
  spokenAlone: (position, share) => `Só ${position}: ${share} nas árvores.`,
  legend: {
    title: 'Como se lê',
    shading: 'calda no ar, de rala a densa',
    air: 'ar: quanto mais grosso, mais rápido; não se desenha abaixo de',
    deposit: 'deposição por altura, média dos dois lados, e a sua dispersão',
    depositGhost: 'deposição por altura, média dos dois lados, e a sua dispersão; traços finos: aquilo com que se compara',
    losses: 'perdido: seta tão larga como a sua parte'
  },
  limits: 'Um modelo. Ordena regulações; não prevê resíduos nem a deriva para efeitos legais. O papel e a fita são os juízes.',
  failed: 'O modelo de pulverização falhou com esta regulação.',
  retry: 'Tentar de novo',
  pngFailed: 'Este navegador não conseguiu desenhar a imagem; guarde-a como SVG.',
  slow: (times) => `${times} vezes mais lento do que é`
};

/** Of the sheet that is saved as a picture. */
export const sheetWords: Translated<typeof EN_SHEET> = {
  measures: { height: 'topo da copa', width: 'largura da copa', skirt: 'saia', spacing: 'distância entre linhas' },
  setting: (s) => `pulverizam ${s.open} de ${s.nozzles} bicos, ${s.pressure}, ${s.speed}, ${s.volume}, ${s.gear} a ${s.pto}`,
  model: (share, within, alone) =>
    `Modelo; nas árvores ${share}, margem ${within}.${alone === null ? '' : ` Sombreado e setas: só ${alone}.`} Ordena regulações; não prevê resíduos nem a deriva para efeitos legais.`,
  rules: 'Comparação de regulações, não uma recomendação. O rótulo do produto, a lei local e o aconselhamento de técnico habilitado prevalecem sobre todos os valores aqui indicados.'
};
