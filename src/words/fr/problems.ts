import type { ToldProblem } from '../en/problems.ts';
import { whyNoFormula } from '../strategies/formula.ts';

type P = Readonly<Record<string, number | string>>;
/** What is said of a field: after its name, `said` with the value that stands there. */
type Sentence = (p: P, value: string) => string;

/** 12345.6 → 12 345,6 */
const figure = (n: number | string | undefined): string =>
  typeof n === 'number' ? n.toLocaleString('en', { maximumSignificantDigits: 12 }).replaceAll(',', '\u202f').replace('.', ',') : String(n);
const UNITS: Readonly<Record<string, string>> = { '1': '', deg: '°', degC: '°C', 'm2/m3': 'm²/m³', 'm3/h': 'm³/h', 'gal/1000 ft3': 'US gal par 1000 ft³' };
const unitOf = (p: P): string => {
  const unit = UNITS[String(p['unit'])] ?? String(p['unit'] ?? '');
  return unit && ' ' + unit;
};
const span = (p: P): string => (p['least'] === undefined ? '' : `de ${figure(p['least'])} à ${figure(p['most'])}${unitOf(p)}`);
const meant = (p: P): string => (p['nearest'] ? `Vouliez-vous dire « ${p['nearest']} » ?` : '');

/** Remedies by unit: most numbers out of range were written in another unit, or with a slipped decimal point. */
const CHECK_UNIT: Readonly<Record<string, string>> = {
  m: 'Vérifiez la virgule décimale, et que c’est en mètres : 1 ft fait 0,3048 m.',
  ft: 'Vérifiez la virgule décimale, et que c’est en pieds : 1 m fait 3,28 ft.',
  bar: 'Vérifiez la virgule décimale, et que c’est en bar : 100 psi font 6,9 bar.',
  'km/h': 'Vérifiez la virgule décimale, et que c’est en km/h : 1 mph fait 1,61 km/h.',
  'L/ha': 'Vérifiez la virgule décimale, et que c’est en litres par hectare : 1 US gal/acre fait 9,35 L/ha.',
  L: 'Vérifiez la virgule décimale, et que c’est en litres : 1 US gal fait 3,79 L.',
  'L/min': 'Vérifiez la virgule décimale, et que c’est en litres par minute : 1 US gal/min fait 3,79 L/min.',
  'm3/h': 'Vérifiez la virgule décimale, et que c’est en mètres cubes par heure : 1 cfm fait 1,70 m³/h.',
  degC: 'Vérifiez que c’est en degrés Celsius : 77 °F font 25 °C.',
  'm/s': 'Vérifiez que c’est en mètres par seconde : 1 mph fait 0,447 m/s.',
  ha: 'Vérifiez la virgule décimale, et que c’est en hectares : 1 acre fait 0,405 ha.',
  'm2/m3': 'Vérifiez la virgule décimale, et que c’est la surface de feuilles, une face comptée, par volume de végétation.',
  'gal/1000 ft3': 'Vérifiez la virgule décimale, et que c’est en gallons US par 1000 pieds cubes.'
};
const checkUnit = (p: P): string => CHECK_UNIT[String(p['unit'])] ?? 'Vérifiez la virgule décimale et corrigez.';

const KINDS: Readonly<Record<string, string>> = {
  number: 'un nombre',
  string: 'un texte entre guillemets',
  boolean: 'true ou false',
  object: 'un objet { … }',
  array: 'une liste [ … ]'
};
const wanted = (p: P): string => {
  if (p['choices']) return `l’une de ces valeurs : ${p['choices']}`;
  const kind = KINDS[String(p['wanted'])] ?? String(p['wanted']);
  return p['least'] === undefined ? kind : `${kind}, ${span(p)}`;
};

const REFERENCES: Readonly<Record<string, string>> = {
  machine: 'aucune machine de ce fichier',
  label: 'aucune étiquette de ce fichier',
  gear: 'aucun rapport de la machine',
  position: 'aucune position de buse de la machine',
  table: 'aucun tableau de buses de ce fichier',
  size: 'aucun calibre du tableau de buses',
  assumption: 'aucune hypothèse de ce programme',
  rung: 'aucune étape de la parcelle',
  record: 'aucun enregistrement du fichier ni de ceux gardés ici'
};

/** Sentences about a document or a table, by code: what stands there, what is allowed, what to do. */
export const PROBLEM_SENTENCES = {
  'too-large': (p) => `compte ${figure(p['length'])} caractères ; ${figure(p['most'])} au plus sont lus. Divisez-le en plusieurs fichiers.`,
  empty: () => 'est vide ; un document est attendu. Choisissez un autre fichier.',
  'not-json': (p, v) =>
    v
      ? `n’est pas du JSON : ${v} ne peut pas se trouver à la ligne ${p['line']}, colonne ${p['column']}. Cherchez juste avant une virgule, un guillemet ou un crochet qui manque.`
      : `n’est pas du JSON : il finit trop tôt, à la ligne ${p['line']}, colonne ${p['column']}. Le fichier a pu être coupé ; enregistrez-le ou envoyez-le de nouveau.`,
  'too-deep': (p) => `est imbriqué sur plus de ${p['most']} niveaux ; un document ne l’est jamais. Ce n’est pas un fichier de ce programme, ou il est endommagé.`,
  'too-many-values': (p) => `contient plus de ${figure(p['most'])} valeurs. Divisez-le en plusieurs fichiers.`,
  'duplicate-key': (p) => `figure deux fois dans le même objet, la seconde à la ligne ${p['line']}, colonne ${p['column']} ; une clé peut y figurer une fois. Gardez l’une des deux.`,
  'forbidden-key': (p) => `ne doit pas servir de clé (ligne ${p['line']}, colonne ${p['column']}). Retirez-la.`,
  'other-format': (p, v) => `${v ? `vaut ${v}` : 'manque'} ; seul « ${p['wanted']} » est lu. Ce fichier a été fait par ou pour un autre programme.`,
  'not-a-version': (p, v) => `${v ? `vaut ${v}` : 'manque'} ; un nombre entier de 1 à ${p['newest']} est attendu. Écrivez 1, sauf si un programme plus récent a fait le fichier.`,
  'newer-version': (p, v) => `vaut ${v} ; ce programme lit les versions jusqu’à ${p['newest']}. Le fichier a été fait par un programme plus récent : mettez celui-ci à jour.`,

  missing: (p) => `manque ; il faut ${wanted(p)}. Ajoutez-le.`,
  'wrong-type': (p, v) => `vaut ${v} ; il faut ${wanted(p)}. ${p['wanted'] === 'number' ? 'Écrivez le chiffre seul, sans guillemets.' : 'Écrivez cela à la place.'}`,
  'not-finite': (p, v) => `vaut ${v}, trop grand pour être un nombre ; est admis : ${span(p)}. ${checkUnit(p)}`,
  'out-of-range': (p, v) => `vaut ${v} ; est admis : ${span(p)}. ${checkUnit(p)}`,
  'not-whole': (p, v) => `vaut ${v} ; il faut un nombre entier, ${span(p)}. Arrondissez.`,
  'too-short': (p, v) => `vaut ${v} ; il faut au moins ${p['bound']} caractère. Écrivez quelque chose.`,
  'too-long': (p, v) => `vaut ${v}, ${figure(p['length'])} caractères ; ${p['bound']} au plus sont admis. Raccourcissez.`,
  'too-few': (p) => `compte ${p['length']} ${Number(p['length']) < 2 ? 'entrée' : 'entrées'} ; il en faut au moins ${p['bound']}. Ajoutez ce qui manque.`,
  'too-many': (p) => `compte ${figure(p['length'])} entrées ; ${p['bound']} au plus sont admises. Divisez en plusieurs.`,
  'not-a-choice': (p, v) => `vaut ${v} ; sont admis : ${p['choices']}. ${meant(p) || 'Choisissez-en un.'}`,
  'unknown-key': (p) => `n’est pas un champ ici ; sont connus : ${p['known']}. ${meant(p) || 'Corrigez-le ou retirez-le.'}`,
  'not-an-id': (p, v) => `vaut ${v}, qui ne peut pas être un identifiant : 1 à ${p['most']} lettres, chiffres, points, traits d’union ou tirets bas, une lettre ou un chiffre d’abord. Renommez-le.`,
  'not-a-date': (_, v) => `vaut ${v} ; il faut un jour du calendrier écrit comme 2031-04-27. Écrivez-le ainsi.`,
  'not-a-time': (_, v) => `vaut ${v} ; il faut une heure du jour écrite comme 07:30. Écrivez-la ainsi.`,
  'not-a-moment': (_, v) => `${v ? `vaut ${v}` : 'est vide'} ; il faut un jour et une heure écrits comme 2031-04-27T07:30:00+02:00. Écrivez-les ainsi.`,
  'unfit-characters': (_, v) => `vaut ${v}, avec des tabulations ou d’autres caractères de commande, ou avec � à la place de caractères perdus ; il faut du texte simple. Retirez-les, ou enregistrez de nouveau le fichier en UTF-8.`,
  'not-plain-text': (_, v) => `vaut ${v}, avec des sauts de ligne ou des caractères de commande ; il faut du texte simple sur une ligne. Retirez-les.`,

  'duplicate-id': (p, v) => `vaut ${v}, que porte déjà l’entrée ${p['first']} de la même liste ; chaque identifiant y figure une fois. Renommez l’une des deux.`,
  'same-place': (p) =>
    `se trouve à ${figure(p['heightM'])} m de haut et à ${figure(p['offsetM'])} m du milieu, où se trouve déjà l’entrée ${p['first']} de la même liste ; chaque place est prise une fois. Déplacez l’une des deux, ou retirez-la.`,
  'reserved-id': (p, v) => `vaut ${v}, l’identifiant du tableau intégré ; tout autre est admis. Renommez-le, ou retirez le tableau et prenez celui qui est intégré.`,
  'no-such-reference': (p, v) =>
    `vaut ${v}, mais ${REFERENCES[String(p['kind'])] ?? `aucun ${p['kind']}`}${p['within'] ? ` « ${p['within']} »` : ''} ne porte ce nom ; ` +
    (p['choices'] ? `il y a : ${p['choices']}. ${meant(p) || 'Choisissez-en un, ou ajoutez-le.'}` : 'il n’y en a pas. Ajoutez-le, ou laissez ce champ de côté.'),
  'not-rising': (p, v) => `vaut ${v}, pas plus que ${figure(p['before'])} à l’entrée précédente ; il faut plus de ${figure(p['before'])}. Mettez les entrées en ordre croissant.`,
  'least-above-most': (p, v) => `vaut ${v}, plus que ${p['mostField']}, qui vaut ${figure(p['most'])} ; c’est le plus qui soit admis. Échangez ou corrigez les deux.`,

  'bad-formula': (p, v) => `vaut ${v}, qui ne peut pas être calculé. ${whyNoFormula(p)}`,

  'amends-itself': (_, v) => `vaut ${v}, son propre identifiant ; un enregistrement en rectifie un plus ancien. Nommez celui qu’il remplace.`,
  'amends-in-circle': (_, v) => `vaut ${v}, qui ramène à cet enregistrement ; les rectifications remontent à un premier enregistrement qui n’en rectifie aucun. Corrigez l’une d’elles.`,
  'amends-other-kind': (p, v) => `vaut ${v}, un enregistrement de type ${p['other']} ; un enregistrement ${p['kind']} en rectifie un du même type. Nommez-en un autre, ou faites un nouvel enregistrement.`,
  'amendment-without-reason': () => 'manque ; une rectification dit pourquoi elle a été faite. Ajoutez le motif.',
  'reason-without-amendment': (_, v) => `vaut ${v}, mais rien n’est rectifié ; un motif va avec une rectification. Nommez l’enregistrement rectifié, ou retirez le motif.`,
  'other-content': (_, v) => `vaut ${v}, un enregistrement déjà présent ici et qui dit autre chose ; un enregistrement fait n’est jamais changé. Laissez-le de côté, ou apportez le changement comme rectification avec son propre identifiant.`,

  'no-header': (p) => `n’a pas de ligne d’en-tête ; les noms des colonnes doivent être dans la première ligne. Ajoutez-les : ${p['columns'] ?? 'block, row_spacing_m, tree_height_m, canopy_width_m'}.`,
  'no-rows': () => 'a un en-tête et aucune ligne en dessous. Choisissez un fichier avec au moins un jour, ou écrivez-en un.',
  'unknown-column': (p, v) => `: « ${v} » n’est pas une colonne connue ; sont connues : ${p['known']}. ${meant(p) || 'Renommez-la, ou faites-la commencer par note_ pour qu’elle soit passée.'}`,
  'duplicate-column': (_, v) => `: « ${v} » figure deux fois ; chaque colonne figure une fois. Retirez ou renommez l’une des deux.`,
  'two-units': (p) => `: ${p['columns']} donnent la même grandeur en deux unités ; une seule est admise. Retirez l’autre.`,
  'missing-column': (p) => `manque ; il faut l’une de ${p['columns']}. Ajoutez-la à l’en-tête et à chaque ligne.`,
  'field-count': (p) => `a ${p['found']} champs, l’en-tête ${p['wanted']} ; il en faut autant que dans l’en-tête. Cherchez un séparateur qui manque ou de trop, ou une virgule décimale dans un fichier séparé par des virgules.`,
  absent: (p) => `est vide ; il faut ${p['choices'] ? `l’une de ces valeurs : ${p['choices']}` : p['least'] === undefined ? 'un nom' : `une valeur ${span(p)}`}. Remplissez, ou retirez la ligne.`,
  'not-a-number': (p, v) => `vaut ${v} ; il faut un nombre, ${span(p)}. Écrivez des chiffres seuls, sans unité.`,
  'skirt-not-below-top': (p, v) => `vaut ${v || '0'}, mais ${p['heightColumn']} vaut ${p['height']} ; le bas du feuillage doit être plus bas que la cime. Corrigez l’une des deux valeurs.`,
  'width-above-top': (p, v) => `vaut ${v}, mais ${p['heightColumn']} vaut ${p['height']} ; au-dessus de sa cime, un arbre n’a pas de largeur. Videz la cellule, ou corrigez l’une des deux valeurs.`,
  'name-too-long': (p, v) => `vaut ${v}, ${figure(p['length'])} caractères ; ${p['most']} au plus sont admis. Raccourcissez.`,
  'not-utf8': (_, v) => `vaut ${v}, avec des octets qui ne sont pas du texte UTF-8 ; chaque � remplace un caractère perdu. Enregistrez de nouveau le fichier en UTF-8.`,
  'bad-quotes': (_, v) => `(${v}) a un guillemet ouvert et non fermé, ou du texte après un guillemet fermant ; un champ entre guillemets finit au second. Fermez-le, et doublez un guillemet placé dans un champ.`,
  'line-too-long': (p) => `a plus de ${figure(p['most'])} caractères, le plus qui soit admis. Vérifiez que le fichier est un tableau avec des sauts de ligne.`,
  'unclear-dates': (_, v) => `vaut ${v}, et aucune date du fichier ne dit si le jour ou le mois vient d’abord ; un jour du calendrier écrit comme 2031-04-27 est clair. Écrivez ainsi les dates.`,
  'unit-unsaid': (_, v) => `: « ${v} » ne dit pas dans quelle unité elle est ; il faut un nom qui finit par _c ou _f. Renommez-la, comme temperature_c ou temperature_f.`,
  'moment-again': (_, v) => `vaut ${v}, qu’une ligne précédente a déjà ; chaque moment est lu une fois. Retirez l’une des deux.`,
  'min-above-max': (p, v) => `vaut ${v}, plus que ${p['mostColumn']}, qui vaut ${p['most']} ; la plus basse est au plus la plus haute. Échangez ou corrigez les deux.`,
  'not-parquet': () => 'n’est pas un fichier Parquet : il n’en a pas le début. Si c’est du texte, faites finir son nom par .csv ; sinon enregistrez-le de nouveau en Parquet.',
  'cut-off': () => 'est un fichier Parquet sans sa fin ; il a pu être coupé. Enregistrez-le ou envoyez-le de nouveau.',
  damaged: (p) => `ne peut pas être lu${p['rows'] ? `, ni les ${figure(p['rows'])} lignes à partir de là` : ''} : ${p['why']}. Le fichier est endommagé, ou écrit d’une façon inconnue ici ; écrivez-le de nouveau.`,
  'column-type': (p, v) => `est de type ${v} ; il faut ${p['wanted'] === 'name' ? 'du texte ou des nombres entiers' : 'des nombres'}. Écrivez de nouveau la colonne en ${p['wanted'] === 'name' ? 'texte' : 'DOUBLE'}.`,
  'too-many-lines': (p) => `et toutes les suivantes ne sont pas lues ; ${figure(p['most'])} lignes au plus le sont. Réduisez-les, ou divisez le fichier.`
} as const satisfies Record<string, Sentence>;

/** `/blocks/0/canopy/heightM` as it is read aloud: blocks[0].canopy.heightM */
function fieldName(path: string): string {
  const steps = path.split('/').slice(1).map((s) => s.replaceAll('~1', '/').replaceAll('~0', '~'));
  return steps.map((s) => (/^\d+$/.test(s) ? `[${s}]` : `.${printable(s)}`)).join('').replace(/^\./, '');
}

/** A key of a foreign file, with what a terminal would obey made visible. */
const printable = (key: string): string =>
  (key.length > 60 ? key.slice(0, 59) + '…' : key).replace(/\p{C}/gu, (c) => '\\u' + (c.codePointAt(0) ?? 0).toString(16).padStart(4, '0'));

/** Where something stands in a table. */
export const placeInTable = (line: number, counted?: 'rows'): string => (line === 0 ? 'Le fichier' : `${counted ? 'Rangée' : 'Ligne'} ${line}`);

/** One problem as a sentence or two that name the place, what stands there, what is allowed, and a remedy. */
export const problemSentence = ({ code, path, line, counted, column, value, parameters }: ToldProblem): string => {
  const sentence = (PROBLEM_SENTENCES as Record<string, Sentence>)[code];
  const said = sentence ? sentence(parameters, value) : `est refusé (${code}).`;
  const place =
    line === undefined ? fieldName(path ?? '') || 'Le fichier' : placeInTable(line, counted) + (column && !said.startsWith(':') ? `, ${column}` : '');
  return `${place}${said.startsWith(':') ? '\u00a0' : ' '}${said}`;
};

/** What follows a list of problems that was cut. */
export const moreProblems = (more: number): string => (more > 0 ? `Et ${figure(more)} ${more === 1 ? 'autre problème' : 'autres problèmes'}.` : '');
