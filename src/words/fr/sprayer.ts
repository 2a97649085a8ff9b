import type { Language } from '../words.ts';

export const VERDICTS: Language['verdicts'] = {
  'in-leaf': 'feuillage',
  'over-top': 'par-dessus',
  'under-skirt': 'par-dessous',
  shut: 'fermée',
  unknown: 'inconnu'
};

export const SIDES: Language['sides'] = { left: 'gauche', right: 'droit' };

export const PATTERNS: Language['patterns'] = {
  'every-alley': 'chaque interrang, deux côtés ouverts',
  'one-side-both-faces': 'chaque interrang deux fois, côté {side} ouvert, deux faces à la fin',
  'one-side-one-face': 'une face de chaque rang, côté {side} ouvert',
  'alternate-alleys': 'un interrang sur deux, deux côtés ouverts',
  'whole-rows': '{rows} rangs entiers par passage',
  swath: 'une bande de {width} par passage'
};

/** Droplet size classes as ISO 25358 orders them. */
export const DROPLETS: Language['droplets'] = {
  XF: 'extrêmement fines',
  VF: 'très fines',
  F: 'fines',
  M: 'moyennes',
  C: 'grossières',
  VC: 'très grossières',
  XC: 'extrêmement grossières',
  UC: 'ultra-grossières'
};

export const COLOURS: Language['colours'] = {
  purple: 'violet',
  olive: 'olive',
  pink: 'rose',
  orange: 'orange',
  'light-green': 'vert clair',
  green: 'vert',
  yellow: 'jaune',
  lilac: 'lilas',
  blue: 'bleu',
  'brown-red': 'rouge-brun',
  red: 'rouge',
  brown: 'marron',
  grey: 'gris',
  white: 'blanc',
  'light-blue': 'bleu clair',
  'yellow-green': 'vert-jaune',
  black: 'noir'
};

/** Air given against air needed, ways to match them, and the judge. */
export const AIR: Language['air'] = {
  short: 'Air nécessaire environ {needed}, fourni {given} : il manque {off}.',
  over: 'Air nécessaire environ {needed}, fourni {given} : {off} de trop.',
  matched: 'Air nécessaire environ {needed}, fourni {given} : accordé à {tolerance} près.',
  unknown: 'L’air n’est pas calculé : {reason}',
  rule: 'La règle remplit l’interrang : air entraîné {k} fois, {certainty}.',
  speed: 'Une vitesse de {value} l’accorderait ; le même débit donne alors {volume}.',
  'speed-bare': 'Une vitesse de {value} l’accorderait ; les litres par hectare changent avec elle.',
  'speed-beyond': 'Une vitesse de {value} l’accorderait, mais la limite de la machine est de {limit}.',
  gear: 'Le rapport {gear} donne {value} à ce régime de prise de force, {share} du besoin ; débit et vitesse restent.',
  pto: 'La prise de force à {value}, rapport {gear}, l’accorderait. Une pompe sur cet arbre change de débit avec elle : réglez de nouveau la pression.',
  'pto-beyond': 'La prise de force à {value}, rapport {gear}, l’accorderait, mais la limite de la machine est de {limit}.',
  judge:
    'Le juge : attachez des rubans à la cime des arbres, passez ventilateur en marche, sans pulvériser. Ils doivent s’écarter en oblique. S’ils pendent, vous allez trop vite ou l’air manque ; s’ils se dressent à la verticale, vous pouvez aller plus vite ou mettre moins d’air. Les feuilles de la face éloignée frémissent à peine.'
};
