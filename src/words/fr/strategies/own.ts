/** Why a formula of the user's own is none, by the engine's code. */
export const OWN_REFUSALS: Readonly<Record<string, string>> = {
  'own-empty': 'La formule est vide. Écrivez-en une sur la végétation, comme TRVc / 10000.',
  'own-too-long': 'La formule a {length} caractères ; {most} au plus sont lus. Raccourcissez-la.',
  'own-too-deep': 'Plus de {most} termes de la formule sont l’un dans l’autre. Décomposez-la, ou supprimez des parenthèses.',
  'own-character': '« {character} », à la place {at}, n’appartient à aucune formule. Sont permis les nombres à point décimal, + - * / ^, les parenthèses, les noms, et les virgules entre les termes d’une fonction.',
  'own-syntax': 'À la place {at}, quelque chose manque ou est de trop. Cherchez-y un signe, un terme ou une parenthèse.',
  'own-number': '{number} ne peut pas figurer dans une formule. Écrivez des nombres de 0.000001 à 1 000 000 000 000, sans exposant.',
  'own-unknown-name': '{name} n’est pas le nom d’un chiffre de la végétation. Il y a : {known}.',
  'own-unknown-name-near': '{name} n’est pas le nom d’un chiffre de la végétation. Vouliez-vous dire {nearest} ? Il y a : {known}.',
  'own-unknown-function': '{name} n’est pas une fonction ici. Il y a : {known}. Écrivez une multiplication avec *.',
  'own-unknown-function-near': '{name} n’est pas une fonction ici. Vouliez-vous dire {nearest} ? Il y a : {known}. Écrivez une multiplication avec *.',
  'own-arguments': '{name} prend {least} à {most} termes, il y en a {count}. Mettez des virgules entre eux, et un point dans les décimaux.',
  'own-member': 'Un point se trouve entre des noms. Écrivez les décimaux avec des chiffres autour du point, et les noms seuls.',
  'own-several': 'Ce n’est pas une seule formule : un signe manque entre deux termes. Écrivez une multiplication avec *.',
  'own-not-arithmetic': 'C’est plus que de l’arithmétique. Sont permis + - * / ^, les parenthèses, les nombres, les noms et les fonctions.'
};
