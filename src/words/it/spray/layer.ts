import { shown } from '#core/quantity/units.ts';
import type { Fate } from '#core/spray/types.ts';
import type { layerScreen as EN_SCREEN, layerWords as EN_WORDS, sheetWords as EN_SHEET } from '../../en/spray/layer.ts';
import { formatNumber, formatUnit } from '../../format.ts';
import type { Translated } from '../../translation.ts';

/** Shares are good to some fifteen points: nobody reads a decimal. */
const percent = (share: number): string => (share > 0 && share < 0.005 ? 'meno di 1\u00a0%' : `${formatNumber(share * 100, 0)}\u00a0%`);

/** What does not stay on the trees, by where it ends. */
const LOSS: Readonly<Partial<Record<Fate, readonly [whole: string, short: string]>>> = {
  over: ['sopra la chioma', 'sopra'],
  through: ['attraverso il filare', 'attraverso'],
  'ground-in': ['terreno nell’appezzamento', 'terreno'],
  'ground-out': ['terreno fuori', 'fuori'],
  dried: ['asciugato in aria', 'asciugato']
};

/** Words of the spray in the drawing. */
export const layerWords: Translated<typeof EN_WORDS> = (system) => ({
  onTrees: 'sulle piante',
  alone: (position) => `solo ${position}, sulle piante`,
  all: (share) => `tutti gli ugelli ${share}`,
  band: ([least, most]) => `da ${formatNumber(least * 100, 0)} a ${percent(most)}`,
  atLeast: (points) => `almeno ± ${formatNumber(points * 100, 0)}`,
  share: percent,
  loss: (loss, short) => LOSS[loss]?.[short ? 1 : 0] ?? loss,
  axis: (bare) => `deposito su ${bare ? 'legno' : 'foglia'}`,
  mean: (mean, spread, short) => (short ? `${mean} ${formatUnit('uL/cm2', system)}` : `${mean} ± ${spread} ${formatUnit('uL/cm2', system)}`),
  deposit: (ulPerCm2) => formatNumber(ulPerCm2, ulPerCm2 < 9.995 ? 2 : 1),
  // A tenth is finer than the model.
  speed: (mPerS) => `${formatNumber(shown(mPerS, 'm/s', system), 0)}\u00a0${formatUnit('m/s', system)}`
});

/** Of the controls under the drawing. */
export const layerScreen: Translated<typeof EN_SCREEN> = {
  controls: 'Miscela nel disegno',
  play: 'Mostra lentamente una passata',
  stop: 'Ferma',
  still: 'Mostra gocce',
  hideStill: 'Nascondi gocce',
  files: { svg: 'Salva SVG', png: 'Salva PNG' },
  spoken: (share, within) => `Sulle piante: ${share}, ${within}.`,
  spokenAlone: (position, share) => `Solo ${position}: ${share} sulle piante.`,
  legend: {
    title: 'Come si legge',
    shading: 'miscela in aria, da rada a densa',
    air: 'aria: più spessa è, più è veloce; non si disegna sotto',
    deposit: 'deposito per altezza, media dei due lati, e la sua dispersione',
    depositGhost: 'deposito per altezza, media dei due lati, e la sua dispersione; tratti sottili: ciò con cui si confronta',
    losses: 'perso: freccia larga quanto la sua parte'
  },
  limits: 'Un modello. Ordina regolazioni; non predice né residui né la deriva ai fini di legge. Giudicano cartine e nastro.',
  failed: 'Il modello di irrorazione non ha funzionato con questa regolazione.',
  retry: 'Riprova',
  pngFailed: 'Questo browser non ha potuto disegnare l’immagine; salvarla come SVG.',
  slow: (times) => `${times} volte più lento del vero`
};

/** Of the sheet that is saved as a picture. */
export const sheetWords: Translated<typeof EN_SHEET> = {
  measures: { height: 'cima della chioma', width: 'larghezza della chioma', skirt: 'base della chioma', spacing: 'distanza tra i filari' },
  setting: (s) => `irrorano ${s.open} di ${s.nozzles} ugelli, ${s.pressure}, ${s.speed}, ${s.volume}, ${s.gear} a ${s.pto}`,
  model: (share, within, alone) =>
    `Modello; sulle piante ${share}, banda ${within}.${alone === null ? '' : ` Ombreggiatura e frecce: solo ${alone}.`} Ordina regolazioni; non predice né residui né la deriva ai fini di legge.`,
  rules: 'Confronto di regolazioni, non una raccomandazione. L’etichetta del prodotto, la legge locale e la consulenza abilitata prevalgono su ogni valore qui riportato.'
};
