/** Why a formula of the user's own is none, by the engine's code. */
export const OWN_REFUSALS: Readonly<Record<string, string>> = {
  'own-empty': 'La fórmula está vacía. Escriba una con las cifras de la copa, como TRVc / 10000.',
  'own-too-long': 'La fórmula tiene {length} caracteres; se leen como máximo {most}. Acórtela.',
  'own-too-deep': 'Más de {most} términos de la fórmula están unos dentro de otros. Sepárela, o quite paréntesis.',
  'own-character': '«{character}» en la posición {at} no pertenece a ninguna fórmula. Se admiten números con punto decimal, + - * / ^, paréntesis, nombres, y comas entre los términos de una función.',
  'own-syntax': 'En la posición {at} falta o sobra algo. Busque ahí un signo, un término o un paréntesis.',
  'own-number': '{number} no puede estar en una fórmula. Escriba números de 0.000001 a 1 000 000 000 000, sin exponente.',
  'own-unknown-name': '{name} no es el nombre de una cifra de la copa. Hay: {known}.',
  'own-unknown-name-near': '{name} no es el nombre de una cifra de la copa. ¿Quería decir {nearest}? Hay: {known}.',
  'own-unknown-function': '{name} no es aquí una función. Hay: {known}. Escriba la multiplicación con *.',
  'own-unknown-function-near': '{name} no es aquí una función. ¿Quería decir {nearest}? Hay: {known}. Escriba la multiplicación con *.',
  'own-arguments': '{name} lleva de {least} a {most} términos, hay {count}. Ponga comas entre ellos, y un punto en los decimales.',
  'own-member': 'Hay un punto entre nombres. Escriba los decimales con cifras alrededor del punto, y los nombres solos.',
  'own-several': 'Esto no es una sola fórmula: falta un signo entre dos términos. Escriba la multiplicación con *.',
  'own-not-arithmetic': 'Esto es más que aritmética. Se admiten + - * / ^, paréntesis, números, nombres y funciones.'
};
