import { shown, type UnitSystem } from '#core/quantity/units.ts';
import type { Fate, Range } from '#core/spray/types.ts';
import type { layerScreen as SCREEN, layerWords as WORDS, sheetWords as SHEET } from '../../en/spray/layer.ts';
import { formatNumber, formatUnit } from '../../format.ts';
import type { Translated } from '../../translation.ts';

/** Anteile gelten auf etwa fünfzehn Punkte: Niemand liest eine Nachkommastelle. */
const percent = (share: number): string => (share > 0 && share < 0.005 ? 'unter 1\u00a0%' : `${formatNumber(share * 100, 0)}\u00a0%`);
const band = ([least, most]: Range): string => `${formatNumber(least * 100, 0)} bis ${percent(most)}`;

/** Was nicht auf den Bäumen bleibt, nach seinem Ende. */
const LOSS: Readonly<Partial<Record<Fate, readonly [whole: string, short: string]>>> = {
  over: ['über die Krone', 'darüber'],
  through: ['durch die Reihe', 'hindurch'],
  'ground-in': ['Boden in der Anlage', 'Boden'],
  'ground-out': ['Boden außerhalb', 'außerhalb'],
  dried: ['in der Luft verdunstet', 'verdunstet']
};

/** Worte zur Brühe in der Zeichnung. */
export const layerWords: Translated<typeof WORDS> = (system: UnitSystem) => ({
  onTrees: 'auf den Bäumen',
  alone: (position: string) => `nur ${position}, auf den Bäumen`,
  all: (share: string) => `alle Düsen ${share}`,
  band,
  atLeast: (points: number) => `mindestens ± ${formatNumber(points * 100, 0)}`,
  share: percent,
  loss: (loss: Fate, short: boolean) => LOSS[loss]?.[short ? 1 : 0] ?? loss,
  axis: (bare: boolean) => `Belag auf ${bare ? 'Holz' : 'Laub'}`,
  mean: (mean: string, spread: string, short: boolean) => (short ? `${mean} ${formatUnit('uL/cm2', system)}` : `${mean} ± ${spread} ${formatUnit('uL/cm2', system)}`),
  deposit: (ulPerCm2: number) => formatNumber(ulPerCm2, ulPerCm2 < 9.995 ? 2 : 1),
  // Ein Zehntel ist feiner als das Modell.
  speed: (mPerS: number) => `${formatNumber(shown(mPerS, 'm/s', system), 0)}\u00a0${formatUnit('m/s', system)}`
});

/** Der Bedienung unter der Zeichnung. */
export const layerScreen: Translated<typeof SCREEN> = {
  controls: 'Brühe in der Zeichnung',
  play: 'Eine Überfahrt langsam zeigen',
  stop: 'Anhalten',
  still: 'Tropfen zeigen',
  hideStill: 'Tropfen verbergen',
  files: { svg: 'SVG sichern', png: 'PNG sichern' },
  spoken: (share, within) => `Auf den Bäumen: ${share}, ${within}.`,
  spokenAlone: (position, share) => `Nur ${position}: ${share} auf den Bäumen.`,
  legend: {
    title: 'Wie es zu lesen ist',
    shading: 'Brühe in der Luft, dünn bis dicht',
    air: 'Luft: je dicker, desto schneller; keine gezeichnet unter',
    deposit: 'Belag nach Höhe, Mittel beider Seiten, und seine Streuung',
    depositGhost: 'Belag nach Höhe, Mittel beider Seiten, und seine Streuung; dünn gestrichelt: womit verglichen wird',
    losses: 'verloren: Pfeil so breit wie sein Anteil'
  },
  limits: 'Ein Modell. Es ordnet Einstellungen; es sagt weder Rückstände noch Abdrift im Sinne des Rechts voraus. Maßgebend sind Papier und Bändchen.',
  failed: 'Das Sprühmodell versagte bei dieser Einstellung.',
  retry: 'Noch einmal versuchen',
  pngFailed: 'Dieser Browser konnte das Bild nicht zeichnen; als SVG sichern.',
  slow: (times) => `${times}-mal langsamer als in Wirklichkeit`
};

/** Des Blatts, das als Bild gesichert wird. */
export const sheetWords: Translated<typeof SHEET> = {
  measures: { height: 'Kronenspitze', width: 'Kronenbreite', skirt: 'Kronenansatz', spacing: 'Reihenabstand' },
  setting: (s) => `${s.open} von ${s.nozzles} Düsen spritzen, ${s.pressure}, ${s.speed}, ${s.volume}, ${s.gear} bei ${s.pto}`,
  model: (share, within, alone) =>
    `Modell; auf den Bäumen ${share}, Spanne ${within}.${alone === null ? '' : ` Tönung und Pfeile: nur ${alone}.`} Es ordnet Einstellungen; es sagt weder Rückstände noch Abdrift im Sinne des Rechts voraus.`,
  rules: 'Vergleich von Einstellungen, keine Empfehlung. Gebrauchsanleitung des Mittels, örtliches Recht und sachkundige Beratung gehen jeder Zahl hier vor.'
};
