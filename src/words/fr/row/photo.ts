import type { Part } from '../../language.ts';

/** What is said of a canopy in a photograph. */
export const PHOTO: Part = {
  refusals: {
    'photo-flat': 'L’image n’a qu’une seule luminosité, feuillage et fond ne peuvent donc pas se distinguer. Prenez-la contre le ciel ou un drap blanc.',
    'photo-no-bands': 'Aucune bande de hauteur n’est marquée. Marquez le cadre de la végétation.',
    'photo-few-pixels': 'Entre {from} m et {to} m, seuls {pixels} pixels ont été comptés ; il en faut au moins {fewest}. Marquez un cadre plus grand, prenez des bandes plus hautes ou une image plus grande.',
    'photo-no-width': 'Entre {from} m et {to} m, la végétation n’a pas de largeur. Corrigez ses largeurs, ou les hauteurs du cadre.',
    'photo-saturated': 'Entre {from} m et {to} m, pixels qui montrent un vide : {gaps} ; il en faut au moins {fewest} pour dire la surface foliaire. Le feuillage y est trop dense pour cette image.',
    'photo-mostly-saturated': '{share} % de la section montre trop peu de vides pour dire la surface foliaire. Prenez une image plus nette, de plus près, ou à un stade plus précoce.',
    'photo-no-leaf': 'Le cadre ne montre presque pas de feuillage : {found} m²/m³, et {least} m²/m³ est le moins qui soit gardé. Vérifiez le cadre et le seuil.',
    'photo-too-dense': 'Le cadre montre {found} m²/m³ de feuillage, et {most} m²/m³ est le plus qui soit gardé. Vérifiez le cadre, le seuil et la largeur de végétation.',
    'photo-not-picture': 'Le fichier n’est pas une image JPEG, PNG ou WebP. Choisissez l’un de ces formats ; la plupart des téléphones peuvent enregistrer ou partager une image en JPEG.',
    'photo-empty': 'Le fichier est vide. Choisissez-en un autre.',
    'photo-cut-short': 'L’image finit avant de dire sa taille. Le fichier a été coupé : copiez-le de nouveau.',
    'photo-file-large': 'Le fichier fait {size} Mo ; {most} Mo au plus sont lus. Enregistrez l’image plus petite.',
    'photo-too-large': 'L’image fait {width} × {height} pixels ; {most} millions de pixels au plus sont lus. Enregistrez-la plus petite.',
    'photo-too-small': 'L’image fait {width} × {height} pixels ; il en faut au moins {least} dans chaque sens. Prenez-en une plus grande.',
    'photo-undecodable': 'L’image est endommagée, ou d’un type que ce navigateur ne lit pas. Ouvrez-la dans un autre programme et enregistrez-la en JPEG.'
  },
  fields: { photo: 'photo', 'photo.bands': 'photo' },
  formulas: {
    'gap-fraction': 'Fraction de vides',
    'leaf-density-by-gaps': 'Densité foliaire d’après les vides',
    'section-with-band': 'Section jusqu’à cette bande',
    'leaf-density-with-band': 'Densité foliaire moyenne jusqu’à cette bande'
  },
  symbols: {
    'gap-fraction.P': 'fraction de vides',
    'gap-fraction.g': 'pixels qui montrent un vide',
    'gap-fraction.n': 'pixels comptés',
    'leaf-density-by-gaps.P': 'fraction de vides',
    'leaf-density-by-gaps.G': 'part de sa surface qu’une feuille montre',
    'leaf-density-by-gaps.C': 'groupement',
    'leaf-density-by-gaps.W': 'chemin à travers la végétation',
    A0: 'section au-dessous',
    'section-with-band.z': 'hauteur de la bande',
    'leaf-density-with-band.z': 'hauteur de la bande',
    LADb: 'densité foliaire de la bande',
    'leaf-density-with-band.LAD0': 'moyenne au-dessous'
  },
  assumptions: {
    'photo.projection': { label: 'Feuille qu’une vue rencontre', meaning: 'Part de sa surface qu’une feuille montre à l’appareil, en moyenne. Des feuilles tournées également de tous côtés en montrent la moitié.' },
    'photo.clumping': { label: 'Groupement des feuilles', meaning: '1 : feuilles placées au hasard. Des feuilles groupées laissent plus de vides, le vrai facteur est donc au-dessous de 1 et il y a plus de feuillage que 1 ne le dit.' }
  }
};
