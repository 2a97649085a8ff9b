import { shown } from '#core/quantity/units.ts';
import type { Fate } from '#core/spray/types.ts';
import type { layerScreen as EN_SCREEN, layerWords as EN_WORDS, sheetWords as EN_SHEET } from '../../en/spray/layer.ts';
import { formatNumber, formatUnit } from '../../format.ts';
import type { Translated } from '../../translation.ts';

/** Shares are good to some fifteen points: nobody reads a decimal. */
const percent = (share: number): string => (share > 0 && share < 0.005 ? 'moins de 1\u00a0%' : `${formatNumber(share * 100, 0)}\u00a0%`);

/** What does not stay on the trees, by where it ends. */
const LOSS: Readonly<Partial<Record<Fate, readonly [whole: string, short: string]>>> = {
  over: ['au-dessus de la cime', 'au-dessus'],
  through: ['à travers le rang', 'à travers'],
  'ground-in': ['sol de la parcelle', 'sol'],
  'ground-out': ['sol hors parcelle', 'dehors'],
  dried: ['séché dans l’air', 'séché']
};

/** Words of the spray in the drawing. */
export const layerWords: Translated<typeof EN_WORDS> = (system) => ({
  onTrees: 'sur les arbres',
  alone: (position) => `${position} seule, sur les arbres`,
  all: (share) => `toutes les buses ${share}`,
  band: ([least, most]) => `${formatNumber(least * 100, 0)} à ${percent(most)}`,
  atLeast: (points) => `au moins ± ${formatNumber(points * 100, 0)}`,
  share: percent,
  loss: (loss, short) => LOSS[loss]?.[short ? 1 : 0] ?? loss,
  axis: (bare) => `dépôt sur ${bare ? 'bois' : 'feuille'}`,
  mean: (mean, spread, short) => (short ? `${mean} ${formatUnit('uL/cm2', system)}` : `${mean} ± ${spread} ${formatUnit('uL/cm2', system)}`),
  deposit: (ulPerCm2) => formatNumber(ulPerCm2, ulPerCm2 < 9.995 ? 2 : 1),
  // A tenth is finer than the model.
  speed: (mPerS) => `${formatNumber(shown(mPerS, 'm/s', system), 0)}\u00a0${formatUnit('m/s', system)}`
});

/** Of the controls under the drawing. */
export const layerScreen: Translated<typeof EN_SCREEN> = {
  controls: 'Pulvérisation dans le dessin',
  play: 'Jouer un passage au ralenti',
  stop: 'Arrêter',
  still: 'Montrer les gouttes',
  hideStill: 'Masquer les gouttes',
  files: { svg: 'Enregistrer SVG', png: 'Enregistrer PNG' },
  spoken: (share, within) => `Sur les arbres : ${share}, ${within}.`,
  spokenAlone: (position, share) => `${position} seule : ${share} sur les arbres.`,
  legend: {
    title: 'Comment le lire',
    shading: 'bouillie dans l’air, de claire à dense',
    air: 'air : plus le trait est épais, plus il est rapide ; rien de dessiné au-dessous de',
    deposit: 'dépôt par hauteur, moyenne des deux côtés, et sa dispersion',
    depositGhost: 'dépôt par hauteur, moyenne des deux côtés, et sa dispersion ; tirets fins : la comparaison',
    losses: 'perdu : flèche aussi large que sa part'
  },
  limits: 'Un modèle. Il classe des réglages ; il ne prédit ni résidus ni dérive au sens de la loi. Papier et ruban jugent.',
  failed: 'Le modèle de pulvérisation a échoué sur ce réglage.',
  retry: 'Réessayer',
  pngFailed: 'Ce navigateur n’a pas pu dessiner l’image ; enregistrez-la en SVG.',
  slow: (times) => `${times} fois plus lent que la réalité`
};

/** Of the sheet that is saved as a picture. */
export const sheetWords: Translated<typeof EN_SHEET> = {
  measures: { height: 'cime', width: 'largeur de végétation', skirt: 'bas du feuillage', spacing: 'distance entre rangs' },
  setting: (s) => `${s.open} ${s.open < 2 ? 'buse pulvérise' : 'buses pulvérisent'} sur ${s.nozzles}, ${s.pressure}, ${s.speed}, ${s.volume}, ${s.gear} à ${s.pto}`,
  model: (share, within, alone) =>
    `Modèle ; sur les arbres ${share}, marge ${within}.${alone === null ? '' : ` Ombrage et flèches : ${alone} seule.`} Il classe des réglages ; il ne prédit ni résidus ni dérive au sens de la loi.`,
  rules: 'Comparaison de réglages, pas une recommandation. L’étiquette du produit, la loi locale et le conseil agréé priment sur tout chiffre donné ici.'
};
