import type { REASON_EFFECTS as EN_EFFECTS, REASON_TEMPLATES as EN_TEMPLATES } from '../../en/strategies/reasons.ts';
import type { Translated } from '../../translation.ts';

/** Why two dose indices differ, by the engine's code; see the English module. */
export const REASON_TEMPLATES: Translated<typeof EN_TEMPLATES> = {
  reference: {
    one: 'Sur la végétation de référence de {trv}, « {a} » donne {shareA} de la dose, « {b} » {shareB}',
    both: 'Sur la végétation de référence de {trv}, « {a} » donne {shareA} de la dose, « {b} » {shareB}'
  },
  law: { one: '« {one} » est une droite qui garde {least} de la dose là où il n’y a rien ; par rapport à une proportion, cela fait', both: '« {a} » et « {b} » sont des droites qui gardent des parts différentes de la dose là où il n’y a rien' },
  spacing: { one: '« {one} » compte la distance entre rangs, {to} ici et {from} pour la référence ; « {other} » non', both: '« {a} » et « {b} » comptent différemment la distance entre rangs, {to} ici et {from} pour la référence' },
  height: { one: '« {one} » compte la hauteur de haie foliaire, {to} ici et {from} pour la référence ; « {other} » non', both: '« {a} » et « {b} » comptent différemment la hauteur de haie foliaire, {to} ici et {from} pour la référence' },
  skirt: { one: '« {one} » prend la hauteur depuis le sol, « {other} » ne compte pas les {to} sous le feuillage', both: '« {a} » et « {b} » comptent différemment les {to} sous le feuillage' },
  width: { one: '« {one} » compte la largeur, {to} ici et {from} pour la référence ; « {other} » non', both: '« {a} » et « {b} » comptent différemment la largeur, {to} ici et {from} pour la référence' },
  outline: { one: '« {one} » compte ce qui est dans le contour, « {other} » le bloc autour ou aucune largeur', both: '« {a} » et « {b} » comptent différemment le contour' },
  gaps: { one: '« {one} » écarte les vides, {to} du rang est occupé ; « {other} » non', both: '« {a} » et « {b} » comptent différemment les vides' },
  faces: { one: '« {one} » compte les faces traitées, « {other} » non', both: '« {a} » et « {b} » comptent différemment les faces traitées' },
  density: { one: '« {one} » compte la densité de la végétation, « {other} » non', both: '« {a} » et « {b} » comptent selon des échelles différentes la densité de la végétation' },
  stage: { one: '« {one} » compte le stade phénologique, « {other} » non', both: '« {a} » et « {b} » comptent différemment le stade phénologique' }
};

/** Behind the reason: what it makes. */
export const REASON_EFFECTS: Translated<typeof EN_EFFECTS> = {
  more: ' : {share} de plus par « {a} ».',
  less: ' : {share} de moins par « {a} ».',
  unknown: '. Ce que cela fait ne peut pas être dit isolément.'
};
