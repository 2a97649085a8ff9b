/** Why a formula of the user's own is none, by the engine's code. */
export const OWN_REFUSALS: Readonly<Record<string, string>> = {
  'own-empty': 'The formula is empty. Write one over the canopy, such as TRVc / 10000.',
  'own-too-long': 'The formula has {length} characters; at most {most} are read. Shorten it.',
  'own-too-deep': 'More than {most} terms of the formula stand within each other. Take it apart, or leave brackets out.',
  'own-character': '“{character}” at place {at} belongs to no formula. Allowed are numbers with a decimal point, + - * / ^, brackets, names, and commas between the terms of a function.',
  'own-syntax': 'At place {at} something is missing or too much. Look for a sign, a term or a bracket there.',
  'own-number': '{number} cannot stand in a formula. Write numbers from 0.000001 to 1 000 000 000 000, without an exponent.',
  'own-unknown-name': '{name} is not the name of a canopy figure. There are: {known}.',
  'own-unknown-name-near': '{name} is not the name of a canopy figure. Did you mean {nearest}? There are: {known}.',
  'own-unknown-function': '{name} is no function here. There are: {known}. Write a multiplication with *.',
  'own-unknown-function-near': '{name} is no function here. Did you mean {nearest}? There are: {known}. Write a multiplication with *.',
  'own-arguments': '{name} takes {least} to {most} terms, {count} stand there. Put commas between them, and a point into decimals.',
  'own-member': 'A point stands between names. Write decimals with figures around the point, and names alone.',
  'own-several': 'This is not one formula: a sign is missing between two terms. Write a multiplication with *.',
  'own-not-arithmetic': 'This is more than arithmetic. Allowed are + - * / ^, brackets, numbers, names and functions.'
};
