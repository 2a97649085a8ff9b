import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'La distance entre rangs n’a pas été donnée, et aucun rang derrière le premier ne se voit au-delà d’une bande libre. Donnez-la ; en ligne de commande, --row-spacing 3.5.',
    'laser-too-few': 'Points du rang restants : {found} ; il en faut au moins {fewest}, dans deux bandes de hauteur ou plus. Prenez plus de points, ou vérifiez côté, support et sol.',
    'laser-skirt-above-top': 'Le bas du feuillage, à {skirt} m, n’est pas au-dessous du sommet des points, à {top} m. Abaissez-le.',
    'laser-no-face': 'La face du rang est à {face} m du milieu de l’interrang, sur la ligne de rang ou au-delà pour des rangs distants de {spacing} m. Vérifiez la distance entre rangs.',
    'las-empty': 'Le fichier est vide. Choisissez-en un autre.',
    'las-not-las': 'Le fichier n’est ni LAS ni LAZ : il ne commence pas par LASF, et ce n’est pas un tableau de texte. Exportez les points en LAS 1.2 à 1.4, LAZ ou CSV.',
    'las-header-short': 'Le fichier finit dans son en-tête : {found} octets, et il en faut au moins {least}. Copiez-le ou exportez-le de nouveau.',
    'las-version': 'Le fichier est en LAS {version} ; 1.0 à 1.4 sont lus. Exportez-le dans l’une de ces versions.',
    'las-format': 'Le fichier contient des points au format {format} ; 0 à {most} sont lus. Exportez-le de nouveau.',
    'las-record-short': 'Un point au format {format} prend {least} octets, mais le fichier dit {found}. Il est endommagé : exportez-le de nouveau.',
    'las-scale': 'L’échelle de {axis} est {found} ; est admis plus de 0 et jusqu’à {most}. L’en-tête est endommagé, ou les points sont trop grossiers pour montrer une végétation : exportez avec une échelle de 0.001.',
    'las-offset': 'Le décalage de {axis} est {found}, qui n’est pas un nombre. L’en-tête est endommagé : exportez de nouveau le fichier.',
    'las-no-points': 'Le fichier ne contient pas de points, ou aucun qu’il ne marque comme retenu ou bruit. Exportez-le avec des points.',
    'las-cut-short': 'Le fichier annonce {wanted} points mais finit avant. Il a été coupé : copiez-le de nouveau.',
    'las-damaged': 'Après {found} points sur {wanted}, le reste ne peut pas être décompressé. Le fichier est endommagé : copiez-le ou exportez-le de nouveau.',
    'las-laz-large': 'Le fichier LAZ fait {size} Mo ; {most} Mo au plus sont décompressés. Découpez l’interrang, ou exportez en LAS, qui peut être plus grand.',
    'las-far-apart': 'Les points sont distants de {apart} km ; {most} km est le maximum. Découpez un interrang avec ses deux rangs.'
  }
};
