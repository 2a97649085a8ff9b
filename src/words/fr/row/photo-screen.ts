import type { photoScreen as EN } from '../../en/row/photo-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the photograph on the screen. */
export const photoScreen: Translated<typeof EN> = {
  how: 'Placez-vous dans l’interrang, à hauteur du milieu de la végétation, avec le ciel ou un drap blanc derrière un seul rang. Un ciel couvert convient le mieux. L’image est lue sur cet appareil et ne va nulle part.',
  choose: 'Choisir une image',
  other: 'Choisir une autre image',
  reading: (done) => `Lecture de l’image : ${done}`,
  stop: 'Arrêter',
  failed: 'La lecture a échoué. Réessayez, ou enregistrez l’image plus petite.',
  picture: 'Photo avec le cadre de la végétation ; ce qui compte comme feuillage est hachuré',
  size: (width, height) => `${width} × ${height} pixels`,

  frame: 'Cadre de la végétation',
  frameNote: 'Tirez les quatre poignées, ou déplacez-les avec les flèches : le bord supérieur à la cime, le bord inférieur au bas du feuillage, les côtés à la végétation d’un seul rang.',
  edge: { top: 'Cime', bottom: 'Bas du feuillage', left: 'Côté gauche', right: 'Côté droit' },
  at: { top: (p) => `${p} depuis le bord supérieur de l’image`, bottom: (p) => `${p} depuis le bord supérieur de l’image`, left: (p) => `${p} depuis la gauche`, right: (p) => `${p} depuis la gauche` },
  topHeight: 'Le bord supérieur correspond à',
  skirtHeight: 'Le bord inférieur correspond à',
  upsideDown: 'Le bord inférieur n’est pas au-dessous du supérieur. Corrigez l’une des hauteurs.',
  band: 'Hauteur d’une bande',

  threshold: 'Seuil sur le bleu',
  thresholdSays: (level) => `Les pixels dont le bleu est ${level} ou plus comptent comme vide.`,
  proposal: (level, part) => `Proposé : ${level}, qui sépare le mieux le sombre du clair (Otsu 1979, de mémoire ; ${part} de la variance est entre les deux).`,
  takeProposal: 'Prendre la proposition',
  poor: 'Sombre et clair se séparent mal. Regardez les hachures avant de vous y fier.',
  mask: 'Hachurer ce qui compte comme feuillage',

  says: 'Ce que dit la photo',
  density: 'Densité foliaire',
  atLeast: (value) => `au moins ${value}`,
  working: 'comment c’est calculé',
  bands: 'Par hauteur, de haut en bas',
  columns: { height: 'Hauteur', gaps: 'Vides', density: 'Densité foliaire', width: 'Largeur' },
  doubt: (lower, higher, by) => `Avec le seuil ${by} plus bas ${lower}, ${by} plus haut ${higher}.`,
  none: 'non dit',
  saturated: (share) => `Dans ${share} de la section, il y a trop peu de vides pour le dire ; elle compte dans la moyenne avec ce qu’elle a au moins.`,
  assumptions: 'Ce qui est supposé des feuilles',
  assumptionsNote: 'Les deux entrent dans chaque chiffre ici et peuvent être changés.',
  limits: 'Ce que cela ne peut pas dire',
  limit: [
    'Bois et fruits comptent comme feuillage : retirez ce que vous voyez sur l’arbre nu.',
    'Une vue d’un seul tronçon de rang : prenez-en plusieurs, et plus d’un arbre.',
    'Chaque vide est supposé montrer le ciel ou le drap. Là où le rang de derrière s’y trouve, du feuillage est compté qui n’y est pas. Tendez le drap derrière le rang.',
    'Le ciel à côté d’un arbre ou entre deux arbres, dans le cadre, compte comme vide : la densité est alors celle du rang tel qu’il est, pas des arbres seuls.',
    'Un reflet sur les feuilles compte comme vide, un ciel sombre comme feuillage : regardez les hachures.',
    'La vue est supposée horizontale et le chemin à travers la végétation égal à sa largeur dessinée. D’en bas, ou avec une largeur fausse, la densité est fausse d’autant.',
    'Des feuilles groupées laissent plus de vides que des feuilles au hasard, le vrai chiffre est donc plus haut ; de même celui d’une bande dont les vides sont groupés.',
    'Les pixels au bord d’une feuille sont mêlés ; dans une image grossière, les petits vides se perdent.'
  ],
  byHeight: 'Avec la densité par hauteur',
  byHeightDrawn: 'Aucune largeur par hauteur n’a été mesurée : le contour dessiné serait écrit, et compterait alors comme mesuré.',
  use: 'Utiliser pour cette étape',
  used: 'La densité foliaire de cette étape vient maintenant de la photo.',
  kept: (bands, threshold) => `Les comptages d’une photo sont gardés avec cette étape : ${bands} ${bands < 2 ? 'bande' : 'bandes'}, seuil ${threshold}.`,
  forget: 'Oublier les comptages',
  keptSays: (value) => `Avec les hypothèses actuelles, ils disent ${value}.`
};
