import type { laserScreen as EN } from '../../en/row/laser-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of laser points on the screen. */
export const laserScreen: Translated<typeof EN> = {
  how: 'Points d’un scanner laser posé ou roulant dans un interrang, en LAS, LAZ ou CSV (lateral_m, height_m, along_m). Ils sont lus sur cet appareil et ne vont nulle part.',
  choose: 'Choisir un fichier de points',
  other: 'Choisir un autre fichier',
  reading: (done) => `Lecture des points : ${done}`,
  stop: 'Arrêter',
  failed: 'La lecture a échoué. Réessayez, ou réduisez le fichier à un interrang.',
  judging: 'Examen des points …',
  refused: (lines) => `Lignes du fichier non utilisées : ${lines}. Les premières :`,

  file: (kind, points) => `${kind} : ${points} points.`,
  kinds: { table: 'Tableau', las: (version, format) => `LAS ${version}, format de points ${format}`, laz: (version, format) => `LAZ ${version}, format de points ${format}` },
  everyOf: (every) => `Pour ménager la mémoire, un point du fichier sur ${every} a été lu.`,
  marked: (n) => `Points marqués dans le fichier comme retenus ou bruit, et passés : ${n}.`,
  tooFar: (n) => `Points trop éloignés : ${n}, à plus de 100 m de côté, 20 m sous le sol ou 60 m au-dessus.`,

  place: 'Où l’interrang se trouve dans le fichier',
  placeNote: 'Lu sur les points. Si les deux rangs ci-dessous paraissent brouillés, corrigez d’abord la direction des rangs.',
  unit: 'Le fichier est en',
  units: { m: 'mètres', ft: 'pieds' },
  bearing: 'Direction des rangs, degrés de y vers x',
  originX: 'Milieu de l’interrang, x',
  originY: 'Milieu de l’interrang, y',
  ground: 'Sol, z',

  rules: 'Quels points comptent',
  platform: 'Écarter le support ou le véhicule du scanner',
  half: 'Plus près de la trace que',
  from: 'Au-dessus de',
  to: 'Au-dessous de',
  groundRule: 'Sol et herbe au-dessous de',
  side: 'Rangs pris',
  sides: { both: 'les deux', left: 'gauche', right: 'droite' },
  skirt: 'Bas du feuillage',
  scanner: 'Hauteur du scanner',
  spacing: 'Lire la distance entre rangs sur les points',
  spacingNote: (spacing) => `Sinon c’est celle de la parcelle, ${spacing}.`,

  plot: (points, height, width) => `Section de ${points} points avec le sol, les lignes de rang et le contour qui en est tiré : ${height} de haut, ${width} de large`,
  legend: { used: 'compte', out: 'écarté', outline: 'contour', face: 'face vue', row: 'ligne de rang', platform: 'écarté comme support ou véhicule' },

  says: 'Ce que disent les points',
  used: (used, all) => `${used} points sur ${all} comptent.`,
  leftOut: {
    platform: 'support ou véhicule',
    ground: 'sol et herbe',
    'other-side': 'rang non pris',
    beyond: 'rangs plus éloignés',
    'below-skirt': 'sous le bas du feuillage',
    'above-top': 'au-dessus de la cime'
  },
  leftOutTitle: 'Écartés',
  figures: { height: 'Hauteur', skirt: 'Bas du feuillage', width: 'Plus grande largeur', spacing: 'Distance entre rangs', filled: 'Part occupée du rang', box: 'Bloc', outline: 'Dans le contour', occupied: 'Occupé' },
  seen: 'lu sur le rang derrière',
  given: 'de la parcelle',
  ofBox: (share) => `${share} du bloc`,
  box: 'du bas du feuillage à la cime, large comme la bande la plus large, par longueur de rang',
  noGaps: 'trop peu de points, ou un tronçon trop court, pour dire les vides de la face',
  noFilled: (stretch) => `${stretch} de rang, c’est trop court pour montrer des vides entre les arbres`,
  noAlong: 'les points ne disent pas où ils sont le long du rang',
  none: 'non dit',
  spacingDiffers: (seen, block) => `Les points montrent des rangs distants de ${seen}, la parcelle a ${block}. Vérifiez laquelle est juste : la largeur en dépend.`,

  bands: 'Par hauteur, de haut en bas',
  columns: { height: 'Hauteur', points: 'Points', width: 'Largeur', gaps: 'Vides', density: 'Densité' },
  limits: 'Ce que cela ne peut pas dire',
  limit: [
    'Le scanner voit la face proche. La ligne de rang est supposée à une demi-distance entre rangs du milieu de l’interrang, le côté éloigné semblable au proche.',
    'La densité est le nombre de points rapporté à leur moyenne : un signe vague de feuillage. Points et surface foliaire allaient ensemble avec une corrélation de 0,88, volume et surface foliaire avec 0,80, sur 20 pommiers en huit parties chacun (Berk et al. 2020). La surface foliaire elle-même n’est pas mesurée.',
    'Les faisceaux sont d’autant plus clairsemés qu’ils sont raides, la cime paraît donc moins dense qu’elle n’est, sauf si la hauteur du scanner est dite.',
    'Les vides de la face sont des cases de 0,1 m le long du rang sans point. Le volume occupé suppose que chacun traverse, ce qui peut être faux.',
    'Sur une pente, les hauteurs doivent être au-dessus du sol au-dessous ; des arbres penchés rendent le contour reflété trop large ou trop étroit. Mesurez quelques arbres à la main.'
  ],
  use: 'Utiliser pour cette étape',
  taken: 'La végétation de cette étape a maintenant le contour des points.',
  useNote: 'Hauteur, largeur, bas du feuillage, largeurs et densité par hauteur sont remplacés ; la part occupée aussi, si elle est dite. L’annulation les ramène.'
};
